package longbough.runner.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Makes workbooks for tests, good and hostile. */
public final class InventedWorkbook {
  private final Map<String, byte[]> parts = new LinkedHashMap<>();
  private final StringBuilder names = new StringBuilder();
  private final StringBuilder relations = new StringBuilder();
  private int sheets;

  /** Adds a sheet with texts inline and numbers as numbers. */
  public InventedWorkbook sheet(String name, List<List<Object>> rows) {
    StringBuilder data = new StringBuilder();
    for (int row = 0; row < rows.size(); row++) {
      data.append("<row r=\"").append(row + 1).append("\">");
      for (int column = 0; column < rows.get(row).size(); column++) {
        Object value = rows.get(row).get(column);
        String at = " r=\"" + (char) ('A' + column) + (row + 1) + "\"";
        if (value instanceof Number) {
          data.append("<c").append(at).append("><v>").append(value).append("</v></c>");
        } else if (!value.toString().isEmpty()) {
          data.append("<c t=\"inlineStr\"").append(at).append("><is><t>");
          data.append(value.toString().replace("&", "&amp;").replace("<", "&lt;"));
          data.append("</t></is></c>");
        }
      }
      data.append("</row>");
    }
    return raw(name, data.toString());
  }

  /** Adds a sheet with these rows as XML. */
  public InventedWorkbook raw(String name, String rows) {
    return raw(name, "", rows);
  }

  /** Adds a sheet that is said to be visible or hidden. */
  public InventedWorkbook raw(String name, String state, String rows) {
    sheets++;
    String shown = state.isEmpty() ? "" : " state=\"" + state + "\"";
    names.append(
        "<sheet name=\"%s\" sheetId=\"%d\"%s r:id=\"r%d\"/>"
            .formatted(name, sheets, shown, sheets));
    relations.append(
        "<Relationship Id=\"r%d\" Target=\"worksheets/sheet%d.xml\"/>".formatted(sheets, sheets));
    return part(
        "xl/worksheets/sheet" + sheets + ".xml",
        "<worksheet xmlns=\"urn:test\"><sheetData>" + rows + "</sheetData></worksheet>");
  }

  public InventedWorkbook part(String name, String text) {
    return part(name, text.getBytes(StandardCharsets.UTF_8));
  }

  public InventedWorkbook part(String name, byte[] bytes) {
    parts.put(name, bytes);
    return this;
  }

  public byte[] bytes() {
    part(
        "xl/workbook.xml",
        "<workbook xmlns=\"urn:test\" xmlns:r=\"urn:r\"><sheets>" + names + "</sheets></workbook>");
    part(
        "xl/_rels/workbook.xml.rels",
        "<Relationships xmlns=\"urn:rels\">" + relations + "</Relationships>");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
