package longbough.runner.update;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;

/** The words by which a file names its figures, with their units, limits and meaning. */
public final class FigureWords {
  static final String IN_WORDS = "dieback";
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

  /**
   * From and to in per cent of each word for dieback: the words of scenario files, each reaching
   * half-way to its neighbours.
   */
  static Map<String, double[]> dieback() {
    List<String> header = List.of("word", "from_percent", "to_percent");
    Map<String, double[]> words = new LinkedHashMap<>();
    for (DataRow row : DataFile.rows(FOLDER + "dieback-words.csv", header)) {
      words.put(
          row.text("word"), new double[] {row.number("from_percent"), row.number("to_percent")});
    }
    return words;
  }
}
