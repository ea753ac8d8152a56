package longbough.runner.batch;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import longbough.shared.source.DataFile;
import longbough.shared.source.ParameterReader;
import longbough.shared.source.ParameterTable;

/**
 * What is looked at to see whether a tree is in trouble, each against a line from {@code
 * trouble.csv}. The weight says how far a tree is on the way to that line and beyond: 0 nothing at
 * all, 1 at the line.
 *
 * <pre>
 * w = max(0, value / line),   of the reserve  w = (1 - value) / (1 - line)
 * line of dying over T years  1 - (1 - r)^T,   r the yearly rate in the file
 * </pre>
 */
public enum Measure {
  DYING("dying_a_year", "dies", outlook -> 1 - outlook.alive()),
  RESERVE("reserve", "lowest reserve", Outlook::reserve),
  STRENGTH("strength_loss", "trunk strength lost", Outlook::strengthLoss),
  LEAF("leaf_missing", "leaf missing", Outlook::leafMissing);

  private static final String FILE = "longbough/runner/batch/trouble.csv";

  private final String word;
  private final String label;
  private final ToDoubleFunction<Outlook> value;

  Measure(String word, String label, ToDoubleFunction<Outlook> value) {
    this.word = word;
    this.label = label;
    this.value = value;
  }

  /** A few words for headings. */
  public String label() {
    return label;
  }

  /** Name in files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public double value(Outlook outlook) {
    return value.applyAsDouble(outlook);
  }

  /** The line over a number of years, a share. */
  public double line(int years) {
    double value = Holder.LINES.value("trouble." + word);
    return this == DYING ? 1 - StrictMath.pow(1 - value, years) : value;
  }

  /** Least gain in the sum of weights for which a regime is named. */
  static double worthNaming() {
    return Holder.LINES.value("trouble.worth_naming");
  }

  /** Why the line stands there. */
  public String reason() {
    return Holder.LINES.get("trouble." + word).note();
  }

  public double weight(Outlook outlook) {
    double at = value(outlook);
    double line = line(outlook.years());
    return Math.max(0, this == RESERVE ? (1 - at) / (1 - line) : at / line);
  }

  /** Whether the tree is at the line or beyond. */
  public boolean passed(Outlook outlook) {
    return weight(outlook) >= 1;
  }

  private static final class Holder {
    private static final ParameterTable LINES =
        ParameterTable.of(ParameterReader.read(DataFile.rows(FILE, ParameterReader.HEADER)));
  }
}
