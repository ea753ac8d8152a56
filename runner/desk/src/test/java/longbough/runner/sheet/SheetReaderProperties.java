package longbough.runner.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import longbough.shared.problem.InputException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Whatever bytes come, they are read as rows or refused in one message. */
class SheetReaderProperties {
  private static final byte[] CSV =
      "tree,species\n1,\"a, \"\"b\"\"\"\n# c\n2;x\ty\n".getBytes(StandardCharsets.UTF_8);
  private static final byte[] BOOK =
      new InventedWorkbook()
          .sheet("trees", List.of(List.of("tree", "height_m"), List.of("a & b", 12.5)))
          .part("xl/sharedStrings.xml", "<sst><si><t>x</t></si></sst>")
          .bytes();
  private static final String SHEET =
      "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>tree</t></is></c><c r=\"B1\"><v>1e3</v></c></row>";

  @Property(tries = 300, seed = "1")
  void damagedTables(@ForAll @Size(max = 4) List<@IntRange(max = 90) Integer> at, @ForAll byte to) {
    readOrRefused(damaged(CSV, at, to));
  }

  @Property(tries = 500, seed = "2")
  void damagedWorkbooks(
      @ForAll @Size(max = 4) List<@IntRange(max = 1500) Integer> at, @ForAll byte to) {
    readOrRefused(damaged(BOOK, at, to));
  }

  @Property(tries = 500, seed = "3")
  void damagedSheetsInWholeWorkbooks(
      @ForAll @Size(max = 4) List<@IntRange(max = 140) Integer> at, @ForAll byte to) {
    byte[] sheet =
        ("<worksheet><sheetData>" + SHEET + "</sheetData></worksheet>")
            .getBytes(StandardCharsets.UTF_8);
    byte[] book =
        new InventedWorkbook()
            .raw("trees", SHEET)
            .part("xl/worksheets/sheet1.xml", damaged(sheet, at, to))
            .bytes();
    readOrRefused(book);
  }

  @Property(tries = 300, seed = "4")
  void anyBytes(@ForAll byte[] bytes) {
    readOrRefused(bytes);
  }

  private static byte[] damaged(byte[] bytes, List<Integer> at, byte to) {
    byte[] damaged = bytes.clone();
    at.forEach(place -> damaged[place % damaged.length] = to);
    return damaged;
  }

  private static void readOrRefused(byte[] bytes) {
    Path file = null;
    try {
      file = Files.createTempFile("sheet", ".csv");
      Files.write(file, bytes);
      SheetReader.read(file).forEach(sheet -> assertThat(sheet.rows()).doesNotContainNull());
    } catch (InputException refused) {
      assertThat(refused.problems()).hasSize(1);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      if (file != null) {
        file.toFile().delete();
      }
    }
  }
}
