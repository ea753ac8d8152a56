package longbough.runner.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import longbough.shared.problem.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetReaderTest {
  @TempDir private Path folder;

  @Test
  void readsCommaSemicolonAndTab() throws IOException {
    for (String separator : List.of(",", ";", "\t")) {
      Sheet sheet = csv("a" + separator + "b\n1" + separator + "\" x  y \"\n");
      assertThat(sheet.rows())
          .containsExactly(
              new SheetRow(1, List.of("a", "b")), new SheetRow(2, List.of("1", "x y")));
      assertThat(sheet.decimalComma()).isEqualTo(!separator.equals(","));
    }
  }

  @Test
  void passesOverMarkSeparatorLineCommentsAndEmptyRowsButKeepsLineNumbers() throws IOException {
    Sheet sheet = csv("\uFEFFsep=;\r\n# said \"so; in;\n\n;;\na;b\n\"# no\";1\n 2;3\n");
    assertThat(sheet.rows())
        .containsExactly(new SheetRow(5, List.of("a", "b")), new SheetRow(7, List.of("2", "3")));
    assertThat(sheet.decimalComma()).isTrue();
  }

  @Test
  void takesSteeringCharactersOut() throws IOException {
    assertThat(csv("a\n\u001b[2Jx\u202Ey\u200B\n").rows().get(1).cells()).containsExactly("[2Jxy");
  }

  @Test
  void refusesWhatIsNoText() {
    byte[] latin = "a,b\n1,\u00e9\n".getBytes(Charset.forName("ISO-8859-1"));
    refused(latin, "line 2", "not UTF-8");
    refused(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11}, "old or locked workbook");
    refused(new byte[4_000_001], "more than 4000000 bytes");
    assertThatThrownBy(() -> SheetReader.read(folder.resolve("none.csv")))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("no such file");
    assertThatThrownBy(() -> SheetReader.read(folder)).hasMessageContaining("no plain file");
  }

  @Test
  void boundsRowsColumnsAndCells() {
    refused("a\n".repeat(20_001), "line 20001", "more than 20000 rows");
    refused("a,".repeat(100) + "b\n", "101 columns");
    refused("a,b\n1,\"open\n" + "2,3\n".repeat(600), "line 2", "never closed");
  }

  @Test
  void readsAWorkbook() throws IOException {
    byte[] bytes =
        new InventedWorkbook()
            .sheet("Trees", List.of(List.of("tree", "n & <m>"), List.of(7, 12.1), List.of()))
            .raw(
                "two",
                "<row><c t=\"s\"><v>1</v></c><c t=\"b\"><v>1</v></c><c><f>A1</f><v>1.1000000000000001</v></c></row>"
                    + "<row r=\"1000000\"><c r=\"C1000000\" t=\"str\"><f>x</f><v>last</v></c></row>")
            .part(
                "xl/sharedStrings.xml",
                "<sst xmlns=\"urn:test\"><si><t>a</t></si><si><r><t>b</t></r><r><t>c</t></r>"
                    + "<rPh><t>hint</t></rPh></si></sst>")
            .bytes();
    List<Sheet> sheets = SheetReader.read(file(bytes));
    assertThat(sheets).extracting(Sheet::name).containsExactly("Trees", "two");
    assertThat(sheets.get(0).place()).endsWith("file, sheet 'Trees'");
    assertThat(sheets.get(0).rows())
        .containsExactly(
            new SheetRow(1, List.of("tree", "n & <m>")), new SheetRow(2, List.of("7", "12.1")));
    assertThat(sheets.get(1).rows())
        .containsExactly(
            new SheetRow(1, List.of("bc", "true", "1.1")),
            new SheetRow(1_000_000, List.of("", "", "last")));
  }

  @Test
  void passesOverHiddenSheets() throws IOException {
    String row = "<row><c><v>1</v></c></row>";
    byte[] bytes =
        new InventedWorkbook()
            .raw("shown", "visible", row)
            .raw("away", "hidden", row)
            .raw("far away", "veryHidden", row)
            .bytes();
    assertThat(SheetReader.read(file(bytes))).extracting(Sheet::name).containsExactly("shown");
  }

  @Test
  void refusesHostileWorkbooks() {
    byte[] zeros = new byte[41_000_000];
    refused(new InventedWorkbook().sheet("a", List.of()).part("x", zeros).bytes(), "unpacks to");
    InventedWorkbook many = new InventedWorkbook();
    for (int i = 0; i < 301; i++) {
      many.part("part" + i, "");
    }
    refused(many.bytes(), "300 parts");
    InventedWorkbook sheets = new InventedWorkbook();
    for (int i = 0; i < 21; i++) {
      sheets.sheet("s" + i, List.of());
    }
    refused(sheets.bytes(), "20 sheets");
    refused(raw("<row r=\"1\"><c r=\"ZZZZZZZ1\"><v>1</v></c></row>"), "beyond column 100");
    refused(raw("<row r=\"1\"><c r=\"\u00dc1\"><v>1</v></c></row>"), "beyond column 100");
    refused(raw("<row r=\"1000000000\"><c><v>1</v></c></row>"), "a row numbered '1000000000'");
    refused(raw("<row><c><v>1</v></c></row>".repeat(20_001)), "more than 20000 rows");
    refused(raw("<row><c t=\"s\"><v>9</v></c></row>"), "a text that isn't there");
    refused(raw("<row><c><f>1+1</f></c></row>"), "line 1", "a formula that was never calculated");
    refused(raw("<row><c>"), "cannot be read");
  }

  @Test
  void anEntityBombUnpacksToNothing() {
    String bomb =
        "<!DOCTYPE w [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]>"
            + "<worksheet><sheetData><row><c t=\"str\"><v>&b;</v></c></row></sheetData></worksheet>";
    byte[] bytes =
        new InventedWorkbook()
            .sheet("trees", List.of())
            .part("xl/worksheets/sheet1.xml", bomb)
            .bytes();
    try {
      assertThat(SheetReader.read(file(bytes)).get(0).rows()).isEmpty();
    } catch (InputException refused) {
      assertThat(refused).hasMessageContaining("cannot be read");
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void refusesBrokenArchives() {
    byte[] bytes = new InventedWorkbook().sheet("trees", List.of(List.of("tree"))).bytes();
    for (int end : new int[] {2, 30, 60, bytes.length / 2}) {
      assertThatThrownBy(() -> SheetReader.read(file(java.util.Arrays.copyOf(bytes, end))))
          .isInstanceOf(InputException.class);
    }
  }

  private static byte[] raw(String rows) {
    return new InventedWorkbook().raw("trees", rows).bytes();
  }

  private void refused(String text, String... says) {
    refused(text.getBytes(StandardCharsets.UTF_8), says);
  }

  private void refused(byte[] bytes, String... says) {
    assertThatThrownBy(() -> SheetReader.read(file(bytes)))
        .isInstanceOf(InputException.class)
        .message()
        .contains(says);
  }

  private Sheet csv(String text) throws IOException {
    return SheetReader.read(file(text.getBytes(StandardCharsets.UTF_8))).get(0);
  }

  private Path file(byte[] bytes) throws IOException {
    return Files.write(folder.resolve("file"), bytes);
  }
}
