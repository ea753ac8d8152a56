package longbough.runner.sheet;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The texts that a workbook's cells share; phonetic hints are left out. */
final class SharedTexts {

  private SharedTexts() {}

  static List<String> read(String place, byte[] part) throws XMLStreamException {
    List<String> texts = new ArrayList<>();
    XMLStreamReader xml = SafeXml.open(part);
    while (xml.hasNext()) {
      if (SafeXml.starts(xml, "si")) {
        texts.add(text(xml, "si"));
        if (texts.size() > SheetLimits.SHARED_TEXTS) {
          throw SheetFaults.fatal(
              place, 0, "more than " + SheetLimits.SHARED_TEXTS + " texts", "", "split the file");
        }
      }
    }
    return texts;
  }

  /** All text up to the end of an element. */
  static String text(XMLStreamReader xml, String element) throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    int hints = 0;
    boolean shown = false;
    while (xml.hasNext()) {
      int event = xml.next();
      String name = xml.hasName() ? xml.getLocalName() : "";
      if (event == XMLStreamConstants.END_ELEMENT && name.equals(element)) {
        break;
      }
      if (name.equals("rPh")) {
        hints += event == XMLStreamConstants.START_ELEMENT ? 1 : -1;
      } else if (name.equals("t")) {
        shown = event == XMLStreamConstants.START_ELEMENT;
      } else if (event == XMLStreamConstants.CHARACTERS && shown && hints == 0) {
        text.append(xml.getText());
      }
    }
    return text.toString();
  }
}
