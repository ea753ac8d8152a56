package longbough.runner.dose;

import java.util.ArrayList;
import java.util.List;

/**
 * A place where more is not worse: a larger dose, or drier years, and yet more futures in which the
 * tree lives; or a larger dose and full foliage sooner. Over the same futures this is no sampling
 * error between cells; it is what the model says, told so that nobody smooths it away.
 *
 * @param milder the cell that should not do worse
 * @param harder the cell that does better
 * @param ofYears whether it is the years to full foliage that turn about, not the lives
 */
public record Turnabout(DoseCell milder, DoseCell harder, boolean ofYears) {
  private static final double PERCENT = 100;
  private static final String WIND = ": a thinner crown catches less wind";

  /** Every turnabout between neighbouring cells. */
  public static List<Turnabout> of(DoseTable table) {
    List<Turnabout> found = new ArrayList<>();
    int doses = table.doses().size();
    for (DryCase dry : DryCase.values()) {
      for (int dose = 0; dose < doses; dose++) {
        DoseCell cell = table.cell(dry, dose);
        if (dose + 1 < doses) {
          compare(cell, table.cell(dry, dose + 1), found);
        }
        if (dry.ordinal() + 1 < DryCase.values().length) {
          lives(cell, table.cell(DryCase.values()[dry.ordinal() + 1], dose), found);
        }
      }
    }
    return found;
  }

  /** Whether more trees live only because fewer are blown down. */
  public boolean byWind() {
    return !ofYears && harder.alive() - milder.alive() <= milder.blownDown() - harder.blownDown();
  }

  /** The turnabout in a sentence, with what fewer trees died of. */
  public String sentence() {
    String from = name(milder);
    String to = name(harder);
    if (ofYears) {
      return "%s: full foliage in year %d, %s: in year %d."
          .formatted(from, (int) milder.medianYears(), to, (int) harder.medianYears());
    }
    String deaths = "starved %d and %d, blown down %d and %d, otherwise dead %d and %d";
    return ("%s: alive in %d futures, %s: in %d; " + deaths + (byWind() ? WIND : "") + ".")
        .formatted(
            from,
            milder.alive(),
            to,
            harder.alive(),
            milder.starved(),
            harder.starved(),
            milder.blownDown(),
            harder.blownDown(),
            milder.diedOtherwise(),
            harder.diedOtherwise());
  }

  private static void compare(DoseCell milder, DoseCell harder, List<Turnabout> found) {
    lives(milder, harder, found);
    if (harder.medianYears() < milder.medianYears()) {
      found.add(new Turnabout(milder, harder, true));
    }
  }

  private static void lives(DoseCell milder, DoseCell harder, List<Turnabout> found) {
    if (harder.alive() > milder.alive()) {
      found.add(new Turnabout(milder, harder, false));
    }
  }

  private static String name(DoseCell cell) {
    String dose =
        cell.dose() == 0 ? "left alone" : Math.round(PERCENT * cell.dose()) + " % thinned";
    return dose + ", " + cell.dry().label();
  }
}
