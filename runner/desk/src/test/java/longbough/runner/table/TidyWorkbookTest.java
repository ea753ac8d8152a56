package longbough.runner.table;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import longbough.model.pruning.Regime;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.InventedHistories;
import longbough.runner.compare.Summary;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TidyWorkbookTest {
  @TempDir Path place;

  @Test
  void everySheetHoldsWhatItsFileHolds() throws IOException {
    Comparison comparison = InventedHistories.comparison(4, 6);
    Summary summary = Summary.of(comparison);
    TidyFiles.write(comparison, summary, place);
    TidyFiles.workbook(comparison, summary, place);
    try (InputStream in = Files.newInputStream(place.resolve(TidyFiles.WORKBOOK));
        ReadableWorkbook workbook = new ReadableWorkbook(in)) {
      List<Sheet> sheets = workbook.getSheets().toList();
      assertThat(sheets)
          .extracting(Sheet::getName)
          .containsExactly("summary", "survival", "visits", "wounds", "years");
      for (Sheet sheet : sheets) {
        same(sheet, place.resolve(sheet.getName() + ".csv"));
      }
    }
  }

  @Test
  void sameTablesGiveTheSameBytes() throws Exception {
    Comparison comparison = InventedHistories.comparison(3, 4);
    TidyFiles.workbook(comparison, Summary.of(comparison), place);
    byte[] first = Files.readAllBytes(place.resolve(TidyFiles.WORKBOOK));
    Thread.sleep(5);
    TidyFiles.workbook(comparison, Summary.of(comparison), place);
    assertThat(Files.readAllBytes(place.resolve(TidyFiles.WORKBOOK))).isEqualTo(first);
  }

  @Test
  void noTextIsTakenForAFormulaAndNoNumberIsMadeUp() throws IOException {
    String evil = "=HYPERLINK(\"http://x\")";
    List<Regime> regimes =
        List.of(new Regime(evil, "", List.of()), new Regime("@sum", "", List.of()));
    Comparison comparison = InventedHistories.comparison(2, 3, regimes);
    TidyFiles.workbook(comparison, Summary.of(comparison), place);
    for (Row row : rows(Files.readAllBytes(place.resolve(TidyFiles.WORKBOOK)), 0)) {
      for (Cell cell : row) {
        if (cell != null) {
          assertThat(cell.getType()).isIn(CellType.STRING, CellType.NUMBER);
          assertThat(cell.getRawValue()).isNotIn("NaN", "Infinity", "-Infinity", "#NUM!");
        }
      }
      String regime = row.getCellText(0);
      assertThat(regime).isIn("regime", "'" + evil, "'@sum");
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "test", "1.0");
        TidySheet sheet = new TidySheet(workbook, "a", List.of("x", "y", "z", "w"))) {
      sheet.add(Double.NaN).add(Double.POSITIVE_INFINITY).add(0.1 + 0.2).add("").endRow();
    }
    Row row = rows(out.toByteArray(), 0).get(1);
    assertThat(row.getCellText(0)).isEmpty();
    assertThat(row.getCellText(1)).isEmpty();
    assertThat(row.getCellAsNumber(2).orElseThrow().doubleValue()).isEqualTo(0.1 + 0.2);
    assertThat(row.getOptionalCell(3)).isEmpty();
  }

  @Test
  void whatDoesNotFitASheetGoesOnInAnother() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "test", "1.0");
        TidySheet sheet = new TidySheet(workbook, "years", List.of("x"), 3)) {
      for (int i = 1; i <= 5; i++) {
        sheet.add(i).endRow();
      }
    }
    assertThat(rows(out.toByteArray(), 0)).hasSize(3);
    assertThat(rows(out.toByteArray(), 1)).hasSize(3);
    assertThat(rows(out.toByteArray(), 2)).hasSize(2);
    assertThat(rows(out.toByteArray(), 2).get(1).getCellText(0)).isEqualTo("5");
  }

  private static List<Row> rows(byte[] bytes, int index) throws IOException {
    try (ReadableWorkbook workbook = new ReadableWorkbook(new ByteArrayInputStream(bytes))) {
      return workbook.getSheet(index).orElseThrow().read();
    }
  }

  private static void same(Sheet sheet, Path csv) throws IOException {
    List<List<String>> expected = new ArrayList<>();
    try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(csv)) {
      reader.forEach(record -> expected.add(record.getFields()));
    }
    List<Row> rows = sheet.read();
    assertThat(rows).as(sheet.getName()).hasSameSizeAs(expected);
    for (int i = 0; i < rows.size(); i++) {
      for (int column = 0; column < expected.get(i).size(); column++) {
        String text = rows.get(i).getOptionalCell(column).map(Cell::getRawValue).orElse("");
        assertThat(text).as("%s row %d", sheet.getName(), i).isEqualTo(expected.get(i).get(column));
      }
    }
  }
}
