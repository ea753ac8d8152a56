package longbough.runner.gentler.search;

import java.util.ArrayList;
import java.util.List;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import longbough.model.state.TreeState;
import longbough.runner.wish.Wishes;
import longbough.runner.wish.Yardstick;

/**
 * Makes a plan out of numbers from 0 to 1. For each wish a way and a strength; for the whole the
 * number of visits, the years between them, the season, how often the crew comes back to keep what
 * was reached, and what it does about sprouts. Cuts always lie at the collar: the model knows no
 * price of careful work, so that nothing else would ever be chosen.
 */
public final class Design {
  private static final CutMix COLLAR = new CutMix(1, 0, 0);
  private static final int COMMON = 5;
  private static final double MOST_STRENGTH = 1.5;
  private static final double STRENGTH_STEP = 0.05;
  private static final int MOST_VISITS = 4;
  private static final int MOST_GAP = 4;
  private static final int[] UPKEEP_YEARS = {0, 8, 6, 5, 4, 3, 2};
  private static final int KEEP_ONE_OF = 3;

  private enum SproutCare {
    NONE,
    SELECT,
    STRIP
  }

  private final Wishes wishes;
  private final List<List<Tool>> tools = new ArrayList<>();

  /** Designs for the wishes of one tree. */
  public Design(Wishes wishes, List<Yardstick> yardsticks, TreeState tree) {
    this.wishes = wishes;
    yardsticks.forEach(yardstick -> tools.add(Tools.of(yardstick, tree)));
  }

  /** How many numbers make a plan. */
  public int numbers() {
    return COMMON + 2 * tools.size();
  }

  /** Where a search begins: everything as asked, in two visits, kept up every four years. */
  public double[] start() {
    double[] numbers = new double[numbers()];
    numbers[0] = 0.3;
    numbers[1] = 0.3;
    numbers[2] = 0.1;
    numbers[3] = 0.6;
    numbers[4] = 0.1;
    for (int wish = 0; wish < tools.size(); wish++) {
      numbers[COMMON + 2 * wish] = 0.1;
      numbers[COMMON + 2 * wish + 1] = 1 / MOST_STRENGTH;
    }
    return numbers;
  }

  /** The plan of some numbers. */
  public Regime plan(double[] numbers) {
    int visits = 1 + whole(numbers[0], MOST_VISITS);
    int gap = 1 + whole(numbers[1], MOST_GAP);
    Season season = Season.values()[whole(numbers[2], Season.values().length)];
    int upkeep = UPKEEP_YEARS[whole(numbers[3], UPKEEP_YEARS.length)];
    SproutCare care = SproutCare.values()[whole(numbers[4], SproutCare.values().length)];
    List<Visit> plan = new ArrayList<>();
    int year = 1;
    for (int visit = 1; visit <= visits; visit++) {
      year = 1 + (visit - 1) * gap;
      List<Operation> operations = operations(numbers, visit, visits);
      if (!operations.isEmpty()) {
        plan.add(new Visit(new Timing.Once(year), season, operations, COLLAR));
      }
    }
    int next = year + upkeep;
    if (upkeep > 0 && next <= wishes.untilYear()) {
      List<Operation> operations = new ArrayList<>(operations(numbers, visits, visits));
      sprouts(care, operations);
      if (!operations.isEmpty()) {
        Timing timing = new Timing.Every(next, upkeep, wishes.untilYear());
        plan.add(new Visit(timing, season, operations, COLLAR));
      }
    }
    return new Regime("plan", "", plan);
  }

  /** What somebody would do who wants everything at once and looks at nothing else. */
  public Regime allAtOnce(CutMix cuts) {
    List<Operation> operations = new ArrayList<>();
    tools.forEach(ways -> operations.add(ways.get(ways.size() - 1).making().at(MOST_STRENGTH)));
    Visit visit = new Visit(new Timing.Once(1), Season.WINTER, operations, cuts);
    return new Regime("everything at once", "", List.of(visit));
  }

  private List<Operation> operations(double[] numbers, int visit, int visits) {
    List<Operation> operations = new ArrayList<>();
    for (int wish = 0; wish < tools.size(); wish++) {
      List<Tool> ways = tools.get(wish);
      Tool tool = ways.get(whole(numbers[COMMON + 2 * wish], ways.size()));
      double strength =
          Math.rint(numbers[COMMON + 2 * wish + 1] * MOST_STRENGTH / STRENGTH_STEP) * STRENGTH_STEP;
      double part = part(tool, strength, visit, visits);
      if (part > 0) {
        operations.add(tool.making().at(part));
      }
    }
    return operations;
  }

  /** A line moves on from visit to visit; of what is there each visit takes the same share. */
  private static double part(Tool tool, double strength, int visit, int visits) {
    if (tool.line()) {
      return strength * visit / visits;
    }
    double whole = Math.min(1, strength);
    return whole >= 1 && visits == 1 ? 1 : 1 - StrictMath.pow(1 - whole, 1.0 / visits);
  }

  private static void sprouts(SproutCare care, List<Operation> operations) {
    if (care == SproutCare.SELECT) {
      operations.add(new Operation.SelectSprouts(KEEP_ONE_OF));
    } else if (care == SproutCare.STRIP) {
      operations.add(new Operation.StripSprouts(1, CutKind.REMOVAL));
    }
  }

  private static int whole(double number, int choices) {
    return Math.max(0, Math.min(choices - 1, (int) (number * choices)));
  }
}
