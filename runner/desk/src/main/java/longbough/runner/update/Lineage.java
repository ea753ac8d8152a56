package longbough.runner.update;

import java.util.Arrays;
import java.util.Map;
import longbough.model.random.Fate;
import longbough.model.random.RandomStream;

/**
 * A future that may be put together from several: each year and each sampled parameter has its
 * chance from a number of its own.
 */
final class Lineage implements Fate {
  private final Map<String, Integer> places;
  private final int[] ofParameter;
  private final int[] ofYear;

  private Lineage(Map<String, Integer> places, int[] ofParameter, int[] ofYear) {
    this.places = places;
    this.ofParameter = ofParameter;
    this.ofYear = ofYear;
  }

  /**
   * A plain future.
   *
   * @param places a place for the name of each parameter that futures draw
   * @param years how many years there may be
   */
  static Lineage plain(Map<String, Integer> places, int years, int member) {
    int[] ofParameter = new int[places.size()];
    int[] ofYear = new int[years + 1];
    Arrays.fill(ofParameter, member);
    Arrays.fill(ofYear, member);
    return new Lineage(places, ofParameter, ofYear);
  }

  /** The same up to a year, and from then on the years of another future. */
  Lineage turning(int fromYear, int member) {
    int[] years = ofYear.clone();
    Arrays.fill(years, Math.min(fromYear, years.length), years.length, member);
    return new Lineage(places, ofParameter, years);
  }

  /**
   * The same with each parameter, and each year up to one, drawn anew with a chance. Drawn anew
   * from where all draws come from, so that this step by itself leaves their law as it is.
   */
  Lineage stirred(RandomStream random, double chance, int untilYear, int member) {
    int[] parameters = ofParameter.clone();
    int[] years = ofYear.clone();
    for (int place = 0; place < parameters.length; place++) {
      parameters[place] = random.chance(chance) ? member : parameters[place];
    }
    for (int year = 1; year <= untilYear; year++) {
      years[year] = random.chance(chance) ? member : years[year];
    }
    return new Lineage(places, parameters, years);
  }

  @Override
  public int year(int year) {
    return ofYear[year];
  }

  @Override
  public int parameter(String name) {
    return ofParameter[places.get(name)];
  }
}
