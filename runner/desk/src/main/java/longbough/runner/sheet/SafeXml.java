package longbough.runner.sheet;

import java.io.StringReader;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import longbough.runner.yaml.Utf8;

/** XML without document types and entities, so that a few lines cannot stand for gigabytes. */
final class SafeXml {
  private static final XMLInputFactory FACTORY = factory();

  private SafeXml() {}

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    return factory;
  }

  /** Opens a part in UTF-8; decoded here, since the parser complains of bad bytes on its own. */
  static XMLStreamReader open(byte[] part) throws XMLStreamException {
    Utf8 read = Utf8.of(part);
    if (read.text() == null) {
      throw new XMLStreamException("not UTF-8");
    }
    return FACTORY.createXMLStreamReader(new StringReader(read.text()));
  }

  /** Goes one step on and says whether an element of that local name starts there. */
  static boolean starts(XMLStreamReader xml, String name) throws XMLStreamException {
    return xml.next() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals(name);
  }

  /** An attribute by its local name, whatever its namespace. */
  static String attribute(XMLStreamReader xml, String name) {
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      if (xml.getAttributeLocalName(i).equals(name) && xml.getAttributePrefix(i) != null) {
        if (!xml.getAttributePrefix(i).isEmpty()) {
          return xml.getAttributeValue(i);
        }
      }
    }
    return null;
  }
}
