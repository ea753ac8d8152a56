package longbough.runner.update;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longbough.runner.yaml.Nearest;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/**
 * Reads the figures of later visits: a CSV file with the columns year, what, value and perhaps
 * error. Every mistake is told, all of them together.
 */
public final class VisitReader {
  private static final List<String> HEADER = List.of("year", "what", "value", "error");
  private static final int LEAST_COLUMNS = 3;
  private static final int NEAREST = 3;

  private final Path file;
  private final int years;
  private final Map<String, FigureWords.Word> words = FigureWords.all();
  private final List<Problem> problems = new ArrayList<>();
  private final List<Measured> figures = new ArrayList<>();

  private VisitReader(Path file, int years) {
    this.file = file;
    this.years = years;
  }

  /**
   * Reads a file.
   *
   * @param years years that are played; a visit lies within them
   */
  public static MeasuredVisit read(Path file, int years) {
    VisitText text = VisitText.read(file);
    return new VisitReader(file, years).visit(text);
  }

  private MeasuredVisit visit(VisitText text) {
    if (text.rows().isEmpty() || !header(text.rows().get(0))) {
      String found =
          text.rows().isEmpty() ? "an empty file" : String.join(",", text.rows().get(0).cells());
      int line = text.rows().isEmpty() ? 0 : text.rows().get(0).line();
      add(line, 0, "", found, "first row year,what,value or year,what,value,error", "add it");
      throw new InputException(problems);
    }
    int columns = text.rows().get(0).cells().size();
    text.rows().stream().skip(1).forEach(row -> row(row, columns));
    if (text.rows().size() == 1) {
      add(0, 0, "", "no figure", "at least one row under the first", "add what was measured");
    }
    twice();
    int dead = deadBy();
    int alive = aliveIn(dead);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    List<Measured> rest =
        figures.stream().filter(figure -> figure.quantity() != Quantity.ALIVE).toList();
    String name = file.getFileName().toString();
    return new MeasuredVisit(name, text.sha256(), rest, alive, dead);
  }

  private static boolean header(VisitText.Row row) {
    int columns = row.cells().size();
    return columns >= LEAST_COLUMNS
        && columns <= HEADER.size()
        && row.cells().equals(HEADER.subList(0, columns));
  }

  private void row(VisitText.Row row, int columns) {
    int line = row.line();
    if (row.cells().size() != columns) {
      String found = row.cells().size() + (row.cells().size() == 1 ? " cell" : " cells");
      String mend = "write numbers with a decimal point and commas between cells only";
      add(line, 0, "", found, columns + " cells", mend);
      return;
    }
    int year = year(line, row.cells().get(0));
    String what = row.cells().get(1);
    FigureWords.Word word = words.get(what);
    if (word == null) {
      String nearest = String.join(", ", Nearest.of(what, List.copyOf(words.keySet()), NEAREST));
      String mend = "'longbough update --help' lists all of them";
      add(line, 2, "what", quoted(what), "a figure with its unit; nearest: " + nearest, mend);
      return;
    }
    String error = columns > LEAST_COLUMNS ? row.cells().get(LEAST_COLUMNS) : "";
    Measured figure = figure(line, year, word, row.cells().get(2), error);
    if (year > 0 && figure != null) {
      figures.add(figure);
    }
  }

  private int year(int line, String text) {
    Double year = number(text);
    if (year == null || year != Math.rint(year) || year < 1 || year > years) {
      String allowed = "whole years since the scenario's start, 1 to " + years;
      add(line, 1, "year", quoted(text), allowed, "count from the year of the scenario, not A.D.");
      return 0;
    }
    return (int) (double) year;
  }

  private Measured figure(
      int line, int year, FigureWords.Word word, String text, String errorText) {
    if (word.quantity() == Quantity.ALIVE) {
      return alive(line, year, word, text, errorText);
    }
    if (word.word().equals(FigureWords.IN_WORDS)) {
      return dieback(line, year, word, text, errorText);
    }
    Double value = number(text);
    if (value == null || value < word.low() || value > word.high()) {
      String allowed = "a number from " + plain(word.low()) + " to " + plain(word.high());
      add(line, 3, "value", quoted(text), allowed, "check figure and unit: " + word.word());
      return null;
    }
    double error = error(line, word, errorText);
    return new Measured(
        line,
        year,
        word.quantity(),
        word.factor() * value,
        word.factor() * error,
        0,
        word.word(),
        text);
  }

  private Measured dieback(
      int line, int year, FigureWords.Word word, String text, String errorText) {
    Map<String, double[]> words = FigureWords.dieback();
    double[] ends = words.get(text);
    if (ends == null) {
      String mend = "choose a word, or give a number as dieback_percent";
      add(line, 3, "value", quoted(text), String.join(", ", words.keySet()), mend);
      return null;
    }
    double error = error(line, word, errorText);
    double middle = (ends[0] + ends[1]) / 2;
    return new Measured(
        line, year, word.quantity(), middle, error, ends[1] - ends[0], word.word(), text);
  }

  private Measured alive(int line, int year, FigureWords.Word word, String text, String errorText) {
    if (!text.equals("yes") && !text.equals("no")) {
      add(line, 3, "value", quoted(text), "yes or no", "write yes or no");
      return null;
    }
    if (!errorText.isEmpty()) {
      add(line, 4, "error", quoted(errorText), "nothing for alive", "leave it empty");
      return null;
    }
    double value = text.equals("yes") ? 1 : 0;
    return new Measured(line, year, word.quantity(), value, Double.NaN, 0, word.word(), text);
  }

  private double error(int line, FigureWords.Word word, String text) {
    if (text.isEmpty()) {
      return Double.NaN;
    }
    Double error = number(text);
    if (error == null || error <= 0 || error > word.high()) {
      String allowed = "a number above 0, in the unit of the figure, or nothing";
      add(line, 4, "error", quoted(text), allowed, "leave it empty for the usual error");
      return Double.NaN;
    }
    return error;
  }

  /** A figure of a year stands once: two readings of one thing are not two pieces of news. */
  private void twice() {
    Map<Quantity, Map<Integer, Integer>> seen = new EnumMap<>(Quantity.class);
    for (Measured figure : figures) {
      Integer earlier =
          seen.computeIfAbsent(figure.quantity(), q -> new java.util.HashMap<>())
              .putIfAbsent(figure.year(), figure.line());
      if (earlier != null) {
        String found = figure.quantity().label() + " of year " + figure.year() + " again";
        String mend = "keep one of lines " + earlier + " and " + figure.line() + ", or their mean";
        add(figure.line(), 2, "what", found, "each figure of a year once", mend);
      }
    }
  }

  private int deadBy() {
    return figures.stream()
        .filter(figure -> figure.quantity() == Quantity.ALIVE && figure.value() == 0)
        .mapToInt(Measured::year)
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  /** A tree on which something was measured lived, unless it is said to be dead. */
  private int aliveIn(int dead) {
    int last = 0;
    for (Measured figure : figures) {
      boolean says = figure.quantity() == Quantity.ALIVE && figure.value() == 0;
      if (!says && figure.year() >= dead) {
        String found = figure.word() + " in year " + figure.year();
        String mend = "take the row out, or mend 'alive' of year " + dead;
        add(figure.line(), 2, "what", found, "nothing of a tree dead in year " + dead, mend);
      } else if (!says) {
        last = Math.max(last, figure.year());
      }
    }
    return last;
  }

  private static Double number(String text) {
    if (!text.matches("[+-]?[0-9]{1,9}(\\.[0-9]{1,9})?")) {
      return null;
    }
    return Double.valueOf(text);
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  private static String quoted(String text) {
    return text.isEmpty() ? "nothing" : "'" + text + "'";
  }

  private void add(int line, int column, String field, String found, String allowed, String mend) {
    problems.add(new Problem(file.toString(), line, column, field, found, allowed, mend));
  }
}
