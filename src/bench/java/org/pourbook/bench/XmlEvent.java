package org.pourbook.bench;

import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.XMLStreamWriter;

/**
 * A part of an XML file: a start tag, text, or an end tag.
 *
 * @param name of a tag as written, blank for text
 * @param texts names and values of the attributes and namespaces in turn, or the text, or nothing
 */
record XmlEvent(String name, boolean start, String... texts) {

  private static final XmlEvent NOTHING = new XmlEvent("", false, "");
  private static final XmlEvent END = new XmlEvent("end", false);

  /** Returns what a reader has come to, and moves it on. */
  static XmlEvent of(XMLStreamReader reader) throws XMLStreamException {
    return switch (reader.next()) {
      case XMLStreamConstants.START_ELEMENT -> start(reader);
      case XMLStreamConstants.END_ELEMENT -> END;
      case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE ->
          new XmlEvent("", false, reader.getText());
      default -> NOTHING;
    };
  }

  private static XmlEvent start(XMLStreamReader reader) {
    int spaces = reader.getNamespaceCount();
    int attributes = reader.getAttributeCount();
    String[] texts = new String[2 * (spaces + attributes)];
    int n = 0;
    for (int i = 0; i < spaces; i++) {
      String prefix = reader.getNamespacePrefix(i);
      texts[n++] = prefix == null ? "xmlns" : "xmlns:" + prefix;
      texts[n++] = reader.getNamespaceURI(i);
    }
    for (int i = 0; i < attributes; i++) {
      texts[n++] = named(reader.getAttributePrefix(i), reader.getAttributeLocalName(i));
      texts[n++] = reader.getAttributeValue(i);
    }
    return new XmlEvent(named(reader.getPrefix(), reader.getLocalName()), true, texts);
  }

  private static String named(String prefix, String name) {
    return prefix == null || prefix.isEmpty() ? name : prefix + ":" + name;
  }

  void writeTo(XMLStreamWriter writer) throws XMLStreamException {
    if (start) {
      writer.writeStartElement(name);
      for (int i = 0; i < texts.length; i += 2) {
        writer.writeAttribute(texts[i], texts[i + 1]);
      }
    } else if (this == END) {
      writer.writeEndElement();
    } else {
      writer.writeCharacters(texts[0]);
    }
  }
}
