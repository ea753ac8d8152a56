package longbough.runner.update;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;

/** The words by which a file names its figures, with their units, limits and meaning. */
public final class FigureWords {
  static final String CLASS_WORD = "dieback_class";
  private static final String FOLDER = "longbough/runner/update/";

  private FigureWords() {}

  /**
   * One word.
   *
   * @param word with its unit
   * @param quantity what it measures
   * @param factor from its unit to the quantity's
   * @param low least value, in its own unit
   * @param high greatest value, in its own unit
   * @param meaning in a few words
   */
  public record Word(
      String word, Quantity quantity, double factor, double low, double high, String meaning) {}

  /** Every word, in the order of the data file. */
  public static Map<String, Word> all() {
    Map<String, Word> words = new LinkedHashMap<>();
    List<String> header = List.of("word", "quantity", "factor", "low", "high", "meaning");
    for (DataRow row : DataFile.rows(FOLDER + "figures.csv", header)) {
      Quantity quantity = Quantity.valueOf(row.text("quantity").toUpperCase(Locale.ROOT));
      words.put(
          row.text("word"),
          new Word(
              row.text("word"),
              quantity,
              row.number("factor"),
              row.number("low"),
              row.number("high"),
              row.text("meaning")));
    }
    return words;
  }

  /** From and to of a class of dieback, per cent of the crown. */
  static double[] dieback(int number) {
    List<String> header = List.of("class", "from_percent", "to_percent");
    DataRow row = DataFile.rows(FOLDER + "dieback-classes.csv", header).get(number);
    return new double[] {row.number("from_percent"), row.number("to_percent")};
  }
}
