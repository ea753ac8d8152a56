package longbough.runner.survey;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.runner.sheet.Sheet;
import longbough.runner.sheet.SheetFaults;
import longbough.runner.sheet.SheetReader;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/**
 * Trees noted in sheets. START HERE for the way from the field to a scenario: files become sheets,
 * headings become columns, rows become trees and what belongs to them.
 *
 * @param trees in the order of their sheet
 * @param faults mistakes by the tree they spoil; under null those of files and sheets
 */
public record Survey(List<SurveyedTree> trees, Map<SurveyedTree, List<Problem>> faults) {

  /** Reads files; whatever is wrong is gathered rather than thrown. */
  public static Survey read(List<Path> files) {
    SheetFaults whole = new SheetFaults();
    Map<String, List<Sheet>> byKind = new LinkedHashMap<>();
    for (Path file : files) {
      try {
        for (Sheet sheet : SheetReader.read(file)) {
          if (!sheet.rows().isEmpty()) {
            place(sheet, byKind, whole);
          }
        }
      } catch (InputException broken) {
        broken.problems().forEach(whole::add);
      }
    }
    SurveyRows rows = new SurveyRows(whole);
    for (String kind : Columns.SHEETS) {
      byKind.getOrDefault(kind, List.of()).forEach(sheet -> rows.read(sheet, kind));
    }
    if (whole.problems().isEmpty() && rows.trees().isEmpty()) {
      whole.add(
          files.get(0).toString(),
          "no tree",
          "a sheet of trees with one row a tree",
          "give it first; its name holds the word 'trees', or it has a column 'species'");
    }
    Map<SurveyedTree, List<Problem>> faults = rows.faults();
    if (!whole.problems().isEmpty()) {
      faults.put(null, whole.problems());
    }
    return new Survey(rows.trees(), faults);
  }

  private static void place(Sheet sheet, Map<String, List<Sheet>> byKind, SheetFaults whole) {
    String kind = SheetKind.of(sheet);
    if (kind.isEmpty()) {
      whole.add(
          sheet.place(),
          "a sheet of which neither name nor columns say what it holds",
          "a name that holds one of the words trees, limbs, decay, wounds",
          "rename it, or take it out");
      return;
    }
    byKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(sheet);
  }

  /** Every mistake, by file and row. */
  public List<Problem> problems() {
    List<Problem> all = new ArrayList<>();
    faults.values().forEach(all::addAll);
    all.sort(
        Comparator.comparing(Problem::file)
            .thenComparingInt(Problem::line)
            .thenComparingInt(Problem::column));
    SheetFaults bounded = new SheetFaults();
    all.forEach(bounded::add);
    return bounded.problems();
  }

  /** Mistakes of files and sheets, which leave it open what belongs to which tree. */
  public List<Problem> wholeFaults() {
    return faults.getOrDefault(null, List.of());
  }

  /** Mistakes in the rows of one tree. */
  public List<Problem> faultsOf(SurveyedTree tree) {
    return faults.getOrDefault(tree, List.of());
  }
}
