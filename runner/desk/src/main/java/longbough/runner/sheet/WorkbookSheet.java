package longbough.runner.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** One sheet of a workbook: texts, numbers, true and false; of a formula its last value. */
final class WorkbookSheet {
  private static final int LETTERS = 26;

  /** Decimal digits of a number as a person typed it; beyond lies the noise of binary fractions. */
  private static final int DIGITS = 12;

  private final String place;
  private final List<String> texts;
  private final RowGatherer rows;
  private int line;
  private List<String> cells = new ArrayList<>();

  private WorkbookSheet(String place, List<String> texts) {
    this.place = place;
    this.texts = texts;
    this.rows = new RowGatherer(place);
  }

  static List<SheetRow> rows(String place, byte[] part, List<String> texts)
      throws XMLStreamException {
    WorkbookSheet sheet = new WorkbookSheet(place, texts);
    XMLStreamReader xml = SafeXml.open(part);
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("row")) {
        sheet.line = sheet.rowNumber(xml.getAttributeValue(null, "r"));
        sheet.cells = new ArrayList<>();
      } else if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("c")) {
        sheet.cell(xml);
      } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("row")) {
        sheet.rows.add(sheet.line, sheet.cells);
      }
    }
    return sheet.rows.rows();
  }

  private int rowNumber(String written) {
    if (written == null) {
      return line + 1;
    }
    if (!written.matches("[1-9]\\d{0,6}")) {
      throw SheetFaults.fatal(
          place, 0, "a row numbered " + SheetFaults.quoted(written), "", "save the workbook again");
    }
    return Integer.parseInt(written);
  }

  private void cell(XMLStreamReader xml) throws XMLStreamException {
    int column = column(xml.getAttributeValue(null, "r"));
    String type = xml.getAttributeValue(null, "t");
    String value = type != null && type.equals("inlineStr") ? SharedTexts.text(xml, "c") : raw(xml);
    String text = text(type == null ? "n" : type, value);
    if (text.isEmpty()) {
      return;
    }
    if (column >= SheetLimits.COLUMNS) {
      throw SheetFaults.fatal(
          place,
          line,
          "a value beyond column " + SheetLimits.COLUMNS,
          "up to " + SheetLimits.COLUMNS + " columns",
          "take out what stands to the right of the table");
    }
    while (cells.size() <= column) {
      cells.add("");
    }
    cells.set(column, text);
  }

  /** The text of the value inside a cell; what stands in a formula is left out. */
  private String raw(XMLStreamReader xml) throws XMLStreamException {
    StringBuilder value = new StringBuilder();
    boolean inside = false;
    boolean formula = false;
    while (xml.hasNext()) {
      int event = xml.next();
      String name = xml.hasName() ? xml.getLocalName() : "";
      if (event == XMLStreamConstants.END_ELEMENT && name.equals("c")) {
        break;
      }
      formula |= name.equals("f");
      if (name.equals("v")) {
        inside = event == XMLStreamConstants.START_ELEMENT;
      } else if (event == XMLStreamConstants.CHARACTERS && inside) {
        value.append(xml.getText());
      }
    }
    if (formula && value.isEmpty()) {
      throw SheetFaults.fatal(
          place,
          line,
          "a formula that was never calculated",
          "values",
          "open and save the workbook in a spreadsheet, or write the value");
    }
    return value.toString();
  }

  private String text(String type, String value) {
    return switch (type) {
      case "s" -> shared(value.strip());
      case "b" -> value.strip().equals("1") ? "true" : "false";
      case "n" -> number(value.strip());
      default -> value; // text, the text of a formula, or an error's name, which no column allows
    };
  }

  private String shared(String index) {
    if (!index.matches("\\d{1,7}") || Integer.parseInt(index) >= texts.size()) {
      throw SheetFaults.fatal(
          place, line, "a text that isn't there", "", "save the workbook again");
    }
    return texts.get(Integer.parseInt(index));
  }

  private static String number(String value) {
    if (!value.matches("[-+]?[\\d.]{1,30}([eE][-+]?\\d{1,3})?")) {
      return value;
    }
    try {
      BigDecimal number = new BigDecimal(value).round(new java.math.MathContext(DIGITS));
      boolean readable = Math.abs(number.scale()) < 2 * DIGITS;
      return readable ? number.stripTrailingZeros().toPlainString() : value;
    } catch (NumberFormatException e) {
      return value;
    }
  }

  /** Column from 0 of an address such as C4; the next one where it has none. */
  private int column(String address) {
    if (address == null) {
      return cells.size();
    }
    int column = 0;
    for (int i = 0; i < address.length() && Character.isLetter(address.charAt(i)); i++) {
      int letter = Character.toUpperCase(address.charAt(i)) - 'A' + 1;
      if (letter < 1 || letter > LETTERS || column > SheetLimits.COLUMNS) {
        return SheetLimits.COLUMNS;
      }
      column = LETTERS * column + letter;
    }
    return column - 1 < 0 ? SheetLimits.COLUMNS : column - 1;
  }
}
