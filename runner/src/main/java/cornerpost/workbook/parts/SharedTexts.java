package cornerpost.workbook.parts;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The texts that cells share, and text in several looks. */
final class SharedTexts {
  private SharedTexts() {}

  static List<String> read(byte[] xml) {
    try {
      var texts = new ArrayList<String>();
      var in = Element.reader(xml);
      while (in.hasNext()) {
        int event = in.next();
        Element.refuseDocumentType(event);
        if (event == XMLStreamConstants.START_ELEMENT && in.getLocalName().equals("si")) {
          texts.add(richText(in));
        }
      }
      return texts;
    } catch (XMLStreamException e) {
      throw new DamagedFileException(String.valueOf(e.getMessage()));
    }
  }

  /** The text of an element, its runs joined; how to pronounce it is left out. */
  static String richText(XMLStreamReader in) throws XMLStreamException {
    var text = new StringBuilder();
    for (int event = in.next(); event != XMLStreamConstants.END_ELEMENT; event = in.next()) {
      if (event != XMLStreamConstants.START_ELEMENT) continue;
      switch (in.getLocalName()) {
        case "t" -> text.append(in.getElementText());
        case "r" -> text.append(richText(in));
        default -> skip(in);
      }
    }
    return Markup.cellText(text.toString());
  }

  static void skip(XMLStreamReader in) throws XMLStreamException {
    for (int depth = 1; depth > 0; ) {
      int event = in.next();
      if (event == XMLStreamConstants.START_ELEMENT) depth++;
      if (event == XMLStreamConstants.END_ELEMENT) depth--;
    }
  }
}
