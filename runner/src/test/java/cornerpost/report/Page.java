package cornerpost.report;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A page read back: it is well-formed as XML too, so the JDK's own parser is the judge. */
final class Page {
  private final Document document;

  Page(byte[] html) {
    try {
      var factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
      factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
      document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(html));
    } catch (Exception e) {
      throw new AssertionError("not well-formed: " + e.getMessage(), e);
    }
  }

  List<Element> all(String tag) {
    return all(tag, e -> true);
  }

  List<Element> all(String tag, Predicate<Element> which) {
    var root = document.getDocumentElement();
    var found = new ArrayList<Element>();
    if (root.getTagName().equals(tag) && which.test(root)) found.add(root);
    found.addAll(in(root, tag, which));
    return found;
  }

  static List<Element> in(Element root, String tag, Predicate<Element> which) {
    var found = new ArrayList<Element>();
    var nodes = root.getElementsByTagName(tag);
    for (int i = 0; i < nodes.getLength(); i++) {
      var e = (Element) nodes.item(i);
      if (which.test(e)) found.add(e);
    }
    return found;
  }

  Element id(String id) {
    return all("*", e -> e.getAttribute("id").equals(id)).get(0);
  }

  /** The first element below {@code root} with that attribute. */
  static Element with(Element root, String attribute, String value) {
    var found = in(root, "*", e -> e.getAttribute(attribute).equals(value));
    if (found.isEmpty()) throw new AssertionError("nothing has " + attribute + "=" + value);
    return found.get(0);
  }

  /** x, y, width and height of a rectangle, in millimetres. */
  static double[] rect(Element e) {
    var rect = e.getTagName().equals("rect") ? e : in(e, "rect", x -> true).get(0);
    return new double[] {
      number(rect, "x"), number(rect, "y"), number(rect, "width"), number(rect, "height")
    };
  }

  static double number(Element e, String attribute) {
    return Double.parseDouble(e.getAttribute(attribute));
  }

  String text(String id) {
    return id(id).getTextContent().replaceAll("\\s+", " ").strip();
  }
}
