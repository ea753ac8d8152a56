package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Operation.Thin;
import longbough.model.pruning.Season;
import longbough.model.pruning.Where;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Raising;

/**
 * P07a, P07b, P07c: how much harder the leaves left work. Read from the state at the year's end,
 * after cuts in autumn, summer, spring and winter: 3, 6, 8 and 11 months later. Simplified: live
 * oak stands in for evergreen broadleaves, Scots pine for pines; the source's foliage loss is
 * played as even thinning.
 */
public final class LeavesLeft implements Experiment {
  private static final String SET_UP =
      " of 15 cm, open-grown, mediterranean, 20 futures; read at the year's end after a cut in";

  @Override
  public List<String> checks() {
    return List.of("P07a", "P07b", "P07c");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab oak = Lab.of("quercus-ilex", 0.15, Lab.MEDITERRANEAN, 1, 20);
    Lab pine = Lab.of("pinus-sylvestris", 0.15, Lab.MEDITERRANEAN, 1, 20);
    return List.of(
        soon(checks.get("P07a"), oak),
        later(checks.get("P07b"), oak),
        of(checks.get("P07c"), pine));
  }

  private static Finding soon(Check check, Lab oak) {
    double least = after(oak, Season.AUTUMN, loss(0.3));
    double most = after(oak, Season.AUTUMN, loss(0.7));
    double half = after(oak, Season.SUMMER, loss(0.7));
    double fading = after(oak, Season.WINTER, loss(0.7));
    return new Finding(
        check.id(),
        String.format(Locale.ROOT, "%.2f to %.2f", least, most),
        check.low() + " to " + check.high(),
        check.holds(least) && check.holds(most),
        most > least && most > half && half > fading && fading >= 1,
        "Holm oak" + SET_UP + " autumn (about 13 weeks) of 30 and 70 % of the foliage.",
        check.readings(least, most));
  }

  private static Finding later(Check check, Lab oak) {
    Operation cut = Raising.crown(oak, 0.5);
    double six = after(oak, Season.SUMMER, cut);
    double eight = after(oak, Season.SPRING, cut);
    double eleven = after(oak, Season.WINTER, cut);
    double mean = (six + eight + eleven) / 3;
    return new Finding(
        check.id(),
        String.format(Locale.ROOT, "%.2f, %.2f, %.2f", six, eight, eleven),
        check.low() + " to " + check.high() + " on average",
        check.holds(mean),
        eleven < six && check.holds(eleven),
        "Holm oak" + SET_UP + " summer, spring and winter (6, 8, 11 months) of half the crown.",
        check.readings(mean));
  }

  private static Finding of(Check check, Lab pine) {
    double soon = after(pine, Season.AUTUMN, loss(0.5));
    double later = after(pine, Season.SUMMER, loss(0.5));
    return new Finding(
        check.id(),
        String.format(Locale.ROOT, "%.2f and %.2f", soon, later),
        check.low() + " to " + check.high(),
        check.holds(soon) && check.holds(later),
        check.holds(soon) && check.holds(later),
        "Scots pine" + SET_UP + " autumn and summer of half the foliage; a rule of the model.",
        check.readings(soon, later));
  }

  private static Operation loss(double share) {
    return new Thin(share, Where.EVENLY, CutKind.REMOVAL);
  }

  private static double after(Lab lab, Season season, Operation cut) {
    return lab.play(Lab.once(1, season, Lab.COLLAR, cut), 1)
        .meanState(1, state -> 1 + state.pools.compensation);
  }
}
