package longbough.runner.cuts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longbough.model.pruning.Placement;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/** Every placement and size of cut on some species, as a table for the terminal and as CSV. */
public final class CutTable {
  /** Branches that are cut, m. */
  public static final List<Double> DIAMETERS_M = List.of(0.03, 0.06, 0.12, 0.20);

  /** From the cut that harms least to the one that harms most. */
  public static final List<Placement> PLACEMENTS =
      List.of(Placement.COLLAR, Placement.STUB, Placement.FLUSH);

  private final double trunkM;
  private final double ringM;
  private final int years;
  private final List<CutTrial> trials = new ArrayList<>();

  private CutTable(double trunkM, double ringM, int years) {
    this.trunkM = trunkM;
    this.ringM = ringM;
    this.years = years;
  }

  /** Plays all cuts on each of the species. */
  public static CutTable of(List<String> species, double trunkM, double ringM, int years) {
    CutTable table = new CutTable(trunkM, ringM, years);
    for (String id : species) {
      for (double diameter : DIAMETERS_M) {
        for (Placement placement : PLACEMENTS) {
          table.trials.add(CutTrial.play(id, placement, diameter, trunkM, ringM, years));
        }
      }
    }
    return table;
  }

  public List<CutTrial> trials() {
    return List.copyOf(trials);
  }

  /** What is cut, in a sentence. */
  public String setting() {
    return f(
        "One branch taken off a trunk of %.0f cm whose radius grows %.1f mm a year, %d years on.",
        100 * trunkM, 1000 * ringM, years);
  }

  /** The table as printed. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(setting());
    lines.add(
        "Column: discoloured or decayed wood above and below the cut, and how deep it lies in the");
    lines.add("wood that stood then. Section, strength: share lost where the trunk is worst.");
    lines.add(
        "Invented trunk without crown, mean numbers of the species; see 'longbough species'.");
    String before = "";
    for (CutTrial trial : trials) {
      if (!trial.species().equals(before)) {
        before = trial.species();
        lines.add("");
        SpeciesTraits traits = SpeciesLibrary.load().get(before);
        lines.add(
            traits.commonName()
                + ", "
                + traits.compartmentClass().name().toLowerCase(Locale.ROOT)
                + " at walling off decay");
        lines.add("  branch  cut     closed after  column up  down     depth  section  strength");
      }
      lines.add(line(trial));
    }
    return lines;
  }

  private static String line(CutTrial trial) {
    String closed =
        Double.isNaN(trial.closedYears()) ? "still open" : f("%.0f years", trial.closedYears());
    return f(
        "  %3.0f cm  %-6s  %12s  %7.2f m  %5.2f m  %4.1f cm  %5.1f %%   %5.1f %%",
        100 * trial.diameterM(),
        word(trial.placement()),
        closed,
        trial.columnUpM(),
        trial.columnDownM(),
        100 * trial.depthM(),
        100 * trial.sectionShare(),
        100 * trial.strengthLoss());
  }

  /** The same as CSV, one row a cut; an empty cell where the wound is still open. */
  public String csv() {
    StringBuilder text = new StringBuilder();
    text.append(
            "species,placement,branch_diameter_cm,trunk_diameter_cm,ring_mm,years,closed_years,")
        .append("column_up_m,column_down_m,column_depth_cm,bound_radius_cm,section_share,")
        .append("strength_loss_fraction\n");
    for (CutTrial t : trials) {
      String closed = Double.isNaN(t.closedYears()) ? "" : f("%.0f", t.closedYears());
      text.append(
          f(
              "%s,%s,%.0f,%.1f,%.2f,%d,%s,%.3f,%.3f,%.2f,%.2f,%.4f,%.4f%n",
              t.species(),
              word(t.placement()),
              100 * t.diameterM(),
              100 * trunkM,
              1000 * ringM,
              t.years(),
              closed,
              t.columnUpM(),
              t.columnDownM(),
              100 * t.depthM(),
              100 * t.boundM(),
              t.sectionShare(),
              t.strengthLoss()));
    }
    return text.toString().replace("\r\n", "\n");
  }

  private static String word(Placement placement) {
    return placement.name().toLowerCase(Locale.ROOT);
  }

  private static String f(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
