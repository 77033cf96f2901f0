package cornerpost.workbook.parts;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * An element of a small part, which can be changed and written again: names keep the prefixes they
 * came with, so that nothing of another program's is lost. Found by local name, since programs
 * differ in prefixes.
 */
public final class Element {
  /** Namespace of the links between parts, as an attribute names them. */
  static final String LINKS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private static final XMLInputFactory FACTORY = factory();

  private String prefix;
  private final String name;
  private final Map<String, String> attributes = new LinkedHashMap<>();
  private final List<Object> content = new ArrayList<>();

  private Element(String prefix, String name) {
    this.prefix = prefix == null ? "" : prefix;
    this.name = name;
  }

  /** An element without prefix. */
  public static Element of(String name) {
    return new Element("", name);
  }

  /** The same under a prefix, before it has any content. */
  Element prefixed(String itsPrefix) {
    prefix = itsPrefix;
    return this;
  }

  private static XMLInputFactory factory() {
    var factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    return factory;
  }

  static XMLStreamReader reader(byte[] xml) throws XMLStreamException {
    return FACTORY.createXMLStreamReader(new ByteArrayInputStream(xml));
  }

  /**
   * The root element of a part.
   *
   * @throws DamagedFileException if it is not XML, or declares a document type
   */
  public static Element read(byte[] xml) {
    return read(xml, "");
  }

  /**
   * The same, with one element left empty: a sheet without its rows.
   *
   * @param emptied local name of the element whose content is passed over
   */
  public static Element read(byte[] xml, String emptied) {
    try {
      var in = reader(xml);
      while (in.hasNext()) {
        int event = in.next();
        refuseDocumentType(event);
        if (event == XMLStreamConstants.START_ELEMENT) return element(in, emptied);
      }
      throw new DamagedFileException("a part without a root element");
    } catch (XMLStreamException e) {
      throw new DamagedFileException(String.valueOf(e.getMessage()));
    }
  }

  static void refuseDocumentType(int event) {
    if (event == XMLStreamConstants.DTD) {
      throw new DamagedFileException(
          DamagedFileException.Kind.DOCUMENT_TYPE, "a document type is declared");
    }
  }

  /** The element the reader stands on; it then stands on its end. */
  private static Element element(XMLStreamReader in, String emptied) throws XMLStreamException {
    var made = new Element(in.getPrefix(), in.getLocalName());
    for (int i = 0; i < in.getNamespaceCount(); i++) {
      var prefix = in.getNamespacePrefix(i);
      var uri = in.getNamespaceURI(i);
      made.attributes.put(prefix == null ? "xmlns" : "xmlns:" + prefix, uri == null ? "" : uri);
    }
    for (int i = 0; i < in.getAttributeCount(); i++) {
      var prefix = in.getAttributePrefix(i);
      var local = in.getAttributeLocalName(i);
      made.attributes.put(
          prefix == null || prefix.isEmpty() ? local : prefix + ":" + local,
          in.getAttributeValue(i));
    }
    boolean kept = !made.name.equals(emptied);
    for (int event = in.next(); event != XMLStreamConstants.END_ELEMENT; event = in.next()) {
      if (event == XMLStreamConstants.START_ELEMENT) {
        if (kept) made.content.add(element(in, emptied));
        else SharedTexts.skip(in);
      } else if (kept && in.hasText() && event != XMLStreamConstants.COMMENT) {
        made.content.add(in.getText());
      }
    }
    return made;
  }

  String prefix() {
    return prefix;
  }

  boolean isPrefixed() {
    return !prefix.isEmpty();
  }

  /** The local name. */
  public String name() {
    return name;
  }

  // ---- attributes ---------------------------------------------------------------------------

  /** The value of an attribute without prefix; empty where there is none. */
  public String get(String attribute) {
    return attributes.getOrDefault(attribute, "");
  }

  public boolean has(String attribute) {
    return attributes.containsKey(attribute);
  }

  /** A whole number, or another where the attribute is missing or not one. */
  public int number(String attribute, int otherwise) {
    try {
      return has(attribute) ? Integer.parseInt(get(attribute).strip()) : otherwise;
    } catch (NumberFormatException e) {
      return otherwise;
    }
  }

  /** Whether an attribute says yes, as XML Schema writes it. */
  public boolean says(String attribute) {
    return get(attribute).equals("1") || get(attribute).equals("true");
  }

  public Element set(String attribute, Object value) {
    attributes.put(attribute, String.valueOf(value));
    return this;
  }

  public Element unset(String attribute) {
    attributes.remove(attribute);
    return this;
  }

  /** The id of the link to another part, under whatever prefix. */
  public String link() {
    return attributes.entrySet().stream()
        .filter(a -> a.getKey().endsWith(":id"))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("");
  }

  /** Sets that id, with its prefix declared here. */
  public Element link(String id) {
    return set("xmlns:r", LINKS).set("r:id", id);
  }

  /** Whether a namespace is declared on it. */
  boolean declares(String namespace) {
    return attributes.containsValue(namespace);
  }

  // ---- content ------------------------------------------------------------------------------

  /** All child elements, in order. */
  public List<Element> children() {
    return content.stream().filter(Element.class::isInstance).map(Element.class::cast).toList();
  }

  public List<Element> children(String localName) {
    return children().stream().filter(e -> e.name.equals(localName)).toList();
  }

  public Optional<Element> child(String localName) {
    for (var c : content) {
      if (c instanceof Element e && e.name.equals(localName)) return Optional.of(e);
    }
    return Optional.empty();
  }

  /** The first element of a name at any depth. */
  public Optional<Element> inside(String localName) {
    for (var c : children()) {
      if (c.name.equals(localName)) return Optional.of(c);
      var deeper = c.inside(localName);
      if (deeper.isPresent()) return deeper;
    }
    return Optional.empty();
  }

  /** Adds a child under this element's own prefix; the child. */
  public Element add(String localName) {
    var child = new Element(prefix, localName);
    content.add(child);
    return child;
  }

  /** Adds a child under this element's own prefix before another, or at the end; the child. */
  public Element addBefore(Optional<Element> other, String localName) {
    var child = new Element(prefix, localName);
    content.add(other.map(content::indexOf).orElse(content.size()), child);
    return child;
  }

  /** Adds an element made without prefix; it and all in it take this one's. */
  public void add(Element child) {
    child.adopt(prefix);
    content.add(child);
  }

  private void adopt(String newPrefix) {
    if (!prefix.isEmpty()) return;
    prefix = newPrefix;
    for (var c : children()) c.adopt(newPrefix);
  }

  public Element text(String text) {
    content.clear();
    content.add(text);
    return this;
  }

  /** The text directly in it. */
  public String text() {
    var text = new StringBuilder();
    for (var c : content) {
      if (c instanceof String s) text.append(s);
    }
    return text.toString();
  }

  public void removeIf(Predicate<Element> unwanted) {
    content.removeIf(c -> c instanceof Element e && unwanted.test(e));
  }

  public void sort(java.util.Comparator<Element> order) {
    var sorted = new ArrayList<>(children());
    sorted.sort(order);
    content.removeIf(Element.class::isInstance);
    content.addAll(sorted);
  }

  // ---- writing ------------------------------------------------------------------------------

  /** A part with this as its root. */
  public byte[] part() {
    var xml = new StringBuilder(1 << 12);
    xml.append("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n");
    write(xml);
    return xml.toString().getBytes(StandardCharsets.UTF_8);
  }

  public void write(StringBuilder xml) {
    open(xml);
    if (content.isEmpty()) {
      xml.append("/>");
      return;
    }
    xml.append('>');
    for (var c : content) {
      if (c instanceof Element e) e.write(xml);
      else Markup.escape((String) c, xml);
    }
    close(xml);
  }

  /** The start tag, still open for what follows it. */
  private void open(StringBuilder xml) {
    xml.append('<');
    qualified(xml);
    for (var a : attributes.entrySet()) {
      xml.append(' ').append(a.getKey()).append("=\"");
      Markup.escapeAttribute(a.getValue(), xml);
      xml.append('"');
    }
  }

  private void close(StringBuilder xml) {
    xml.append("</");
    qualified(xml);
    xml.append('>');
  }

  private void qualified(StringBuilder xml) {
    if (!prefix.isEmpty()) xml.append(prefix).append(':');
    xml.append(name);
  }
}
