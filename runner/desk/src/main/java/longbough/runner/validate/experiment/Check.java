package longbough.runner.validate.experiment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * One published result to be met, as in the check files.
 *
 * @param id short name, e.g. {@code P01a}
 * @param process part of the model concerned
 * @param subject tree concerned
 * @param treatment what is done to it
 * @param quantity what is measured
 * @param published the source's own figure, as words
 * @param low lower end of the acceptance band, NaN where there is none or where it has several
 * @param high upper end of the acceptance band, NaN where there is none or where it has several
 * @param lowText its lower end as written, e.g. {@code 18 / 32}
 * @param highText its upper end as written
 * @param unit unit of the quantity
 * @param direction the weaker claim that must hold even where the band is missed
 * @param basis how the figure is known
 * @param source the full source
 */
public record Check(
    String id,
    String process,
    String subject,
    String treatment,
    String quantity,
    String published,
    double low,
    double high,
    String lowText,
    String highText,
    String unit,
    String direction,
    String basis,
    String source) {

  private static final String SEVERAL = "[/;]";

  /** A check with one value. */
  public Check(
      String id,
      String process,
      String subject,
      String treatment,
      String quantity,
      String published,
      double low,
      double high,
      String unit,
      String direction,
      String basis,
      String source) {
    this(
        id,
        process,
        subject,
        treatment,
        quantity,
        published,
        low,
        high,
        Double.toString(low),
        Double.toString(high),
        unit,
        direction,
        basis,
        source);
  }

  /** Whether a value lies in the band; an end that is not given does not bind. */
  public boolean holds(double value) {
    return !Double.isNaN(value)
        && (Double.isNaN(low) || value >= low)
        && (Double.isNaN(high) || value <= high);
  }

  /** Whether each of several values lies in its own band, in the order of the cells. */
  public boolean holdsEach(double... values) {
    double[] least = numbers(lowText);
    double[] most = numbers(highText);
    boolean held = least.length == values.length && most.length == values.length;
    for (int i = 0; held && i < values.length; i++) {
      held = values[i] >= least[i] && values[i] <= most[i];
    }
    return held;
  }

  /**
   * Values with the band that each is asked to meet: each its own where the cells hold as many,
   * else all the same one; none where the check has no band.
   */
  public List<Reading> readings(double... values) {
    double[] least = ends(lowText);
    double[] most = ends(highText);
    boolean each = least.length == values.length && most.length == values.length;
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      double from = each ? least[i] : low;
      double to = each ? most[i] : high;
      if (!Double.isNaN(from) || !Double.isNaN(to)) {
        readings.add(new Reading(values[i], from, to));
      }
    }
    return readings;
  }

  private static double[] ends(String cell) {
    return cell.matches("[-0-9./; ]+") ? numbers(cell) : new double[0];
  }

  /** The band as words, e.g. {@code 18 to 55 / 32 to 98 cm}. */
  public String band() {
    String[] least = lowText.split(SEVERAL);
    String[] most = highText.split(SEVERAL);
    if (least.length != most.length) {
      return withUnit(lowText + " to " + highText);
    }
    List<String> bands = new ArrayList<>();
    for (int i = 0; i < least.length; i++) {
      bands.add(least[i].strip() + " to " + most[i].strip());
    }
    return withUnit(String.join(" / ", bands));
  }

  /** Values with their unit: each its own where the unit's cell holds as many, else one for all. */
  public String withUnit(String values) {
    String[] each = values.split(SEVERAL);
    String[] units = unit.split(" / ");
    if (each.length < 2 || units.length != each.length) {
      return values + " " + unit;
    }
    return IntStream.range(0, each.length)
        .mapToObj(i -> each[i].strip() + " " + units[i])
        .collect(Collectors.joining(" / "));
  }

  /** The numbers of a cell that holds several, e.g. {@code 0.12 / 0.49}. */
  public static double[] numbers(String cell) {
    return Arrays.stream(cell.split(SEVERAL))
        .map(String::strip)
        .mapToDouble(Double::parseDouble)
        .toArray();
  }
}
