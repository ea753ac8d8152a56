package longbough.runner.update;

import java.util.ArrayList;
import java.util.List;
import longbough.shared.source.DataFile;
import longbough.shared.source.ParameterReader;
import longbough.shared.source.ParameterTable;

/**
 * How far a reading may lie from what a future foretold, though that future be the true one.
 *
 * <pre>
 * y_i = x_i + d_i e_i + sum_g l_ig z_g,      e, z independent standard normal
 * d_i^2 = a^2 + (r x_i)^2 (+ w^2 / 12 where a word stands for a range of width w)
 * l_ig: start a0;   side s x_i;   model m (x_i - x_0) or m x_i, or M points
 * </pre>
 *
 * y reading and x what the future says; a and r absolute and relative standard error of a reading,
 * its own each time; z one for each g: an error that stays with the tree and is shared by every
 * figure it touches. a0 error of the same measure at the start, s that of one core standing for the
 * trunk, m and M the model's own discrepancy (x_0 the figure at the start, for what can only be
 * wrong in what has changed). Rings and diameter share the model's error of growth. A model that is
 * wrong by a tenth is wrong by a tenth in all years; taken as fresh chance each year it would
 * vanish among many rings, and the forecast would be narrowed far too much. Numbers in {@code
 * errors.csv}; normal law and independence of the groups are assumptions.
 */
final class ErrorModel {
  private static final String FILE = "longbough/runner/update/errors.csv";
  private static final double UNIFORM_VARIANCE = 12;

  private final ParameterTable table;
  private final List<Measured> figures;
  private final double[] start;
  private final List<String> groups = new ArrayList<>();
  private final double discrepancy;

  /**
   * The errors of some figures.
   *
   * @param figures what was measured
   * @param start the same figures at the start
   */
  ErrorModel(List<Measured> figures, double[] start) {
    this(figures, start, 1);
  }

  /**
   * The same with the model's discrepancy made larger or smaller; 0 takes the model for the truth.
   */
  ErrorModel(List<Measured> figures, double[] start, double discrepancy) {
    this.table = parameters();
    this.figures = List.copyOf(figures);
    this.start = start.clone();
    this.discrepancy = discrepancy;
    for (Measured figure : figures) {
      String word = figure.quantity().word();
      for (String group : List.of("start " + word, "side " + word, model(figure))) {
        if (!groups.contains(group)) {
          groups.add(group);
        }
      }
    }
  }

  /** Every number of it. */
  static ParameterTable parameters() {
    return ParameterTable.of(ParameterReader.read(DataFile.rows(FILE, ParameterReader.HEADER)));
  }

  int figures() {
    return figures.size();
  }

  int groups() {
    return groups.size();
  }

  /** Standard error of a reading by itself, where the future says x. */
  double own(int figure, double x) {
    Measured measured = figures.get(figure);
    String word = measured.quantity().word();
    double width = measured.classWidth();
    double rounding = width * width / UNIFORM_VARIANCE;
    if (!Double.isNaN(measured.error())) {
      return Math.sqrt(measured.error() * measured.error() + rounding);
    }
    double relative = number(word + ".reading_share") * x;
    double absolute = number(word + ".reading");
    return Math.sqrt(absolute * absolute + relative * relative + rounding);
  }

  /** How strongly each shared error moves a figure, where the future says x; 0 mostly. */
  double[] shared(int figure, double x) {
    Measured measured = figures.get(figure);
    Quantity quantity = measured.quantity();
    double[] loading = new double[groups.size()];
    loading[groups.indexOf("start " + quantity.word())] += number(quantity.word() + ".start");
    loading[groups.indexOf("side " + quantity.word())] +=
        number(quantity.word() + ".side_share") * x;
    double changed = quantity.sinceStart() ? x - start[figure] : x;
    loading[groups.indexOf(model(measured))] +=
        discrepancy
            * (number(quantity.modelGroup() + ".model_share") * changed
                + number(quantity.modelGroup() + ".model"));
    return loading;
  }

  private static String model(Measured figure) {
    return "model " + figure.quantity().modelGroup();
  }

  /** What has no row has no such error. */
  private double number(String name) {
    return table.has(name) ? table.value(name) : 0;
  }
}
