package longbough.runner.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The sheets of an Office Open XML workbook (ECMA-376, part 1, SpreadsheetML), values only. Read
 * here rather than by a library because a sheet's addresses are hostile too: a cell may claim any
 * column, and a row any number.
 */
final class Workbook {
  private static final String BOOK = "xl/workbook.xml";
  private static final String RELATIONS = "xl/_rels/workbook.xml.rels";
  private static final String TEXTS = "xl/sharedStrings.xml";

  private Workbook() {}

  static List<Sheet> sheets(String place, byte[] archive) {
    WorkbookParts parts = WorkbookParts.unpack(place, archive);
    if (parts.get(BOOK) == null || parts.get(RELATIONS) == null) {
      throw SheetFaults.fatal(
          place, 0, "an archive that is no workbook", "XLSX or CSV", "save it again as .xlsx");
    }
    try {
      Map<String, String> targets = targets(parts.get(RELATIONS));
      byte[] shared = parts.get(TEXTS);
      List<String> texts = shared == null ? List.of() : SharedTexts.read(place, shared);
      List<Sheet> sheets = new ArrayList<>();
      for (Map.Entry<String, String> named : names(place, parts.get(BOOK)).entrySet()) {
        byte[] part = parts.get(targets.getOrDefault(named.getKey(), ""));
        if (part != null) {
          String at = place + ", sheet " + SheetFaults.quoted(named.getValue());
          List<SheetRow> rows = WorkbookSheet.rows(at, part, texts);
          sheets.add(new Sheet(at, named.getValue(), false, rows));
        }
      }
      return sheets;
    } catch (XMLStreamException broken) {
      throw SheetFaults.fatal(
          place,
          0,
          "a workbook whose parts cannot be read",
          "XLSX or CSV",
          "save it again, or save it as CSV UTF-8");
    }
  }

  /** Relation of each visible sheet to its name, in the order of the workbook. */
  private static Map<String, String> names(String place, byte[] part) throws XMLStreamException {
    Map<String, String> names = new LinkedHashMap<>();
    XMLStreamReader xml = SafeXml.open(part);
    while (xml.hasNext()) {
      if (SafeXml.starts(xml, "sheet") && visible(xml.getAttributeValue(null, "state"))) {
        String relation = SafeXml.attribute(xml, "id");
        String name = xml.getAttributeValue(null, "name");
        names.put(relation == null ? "" : relation, name == null ? "" : name);
      }
      if (names.size() > SheetLimits.SHEETS) {
        throw SheetFaults.fatal(
            place,
            0,
            "more than " + SheetLimits.SHEETS + " sheets",
            "",
            "copy the tables that are meant into a new workbook");
      }
    }
    return names;
  }

  private static boolean visible(String state) {
    return state == null || state.equals("visible");
  }

  private static Map<String, String> targets(byte[] part) throws XMLStreamException {
    Map<String, String> targets = new HashMap<>();
    XMLStreamReader xml = SafeXml.open(part);
    while (xml.hasNext()) {
      if (SafeXml.starts(xml, "Relationship")) {
        String id = xml.getAttributeValue(null, "Id");
        String target = xml.getAttributeValue(null, "Target");
        if (id != null && target != null) {
          targets.put(id, target.startsWith("/") ? target.substring(1) : "xl/" + target);
        }
      }
    }
    return targets;
  }
}
