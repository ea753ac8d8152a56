package longbough.runner.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import longbough.runner.gentler.Advice;
import longbough.runner.gentler.Outcome;
import longbough.runner.gentler.Plan;
import longbough.runner.scenario.WishWords;

/**
 * {@code plans.csv}: one row a plan, the tree left alone and the first idea first. {@code
 * plan-wishes.csv}: one row for each plan and wish.
 */
public final class PlanFile {
  /** Name of the file of plans. */
  public static final String FILE = "plans.csv";

  /** Name of the file of wishes. */
  public static final String WISHES = "plan-wishes.csv";

  private static final List<String> COLUMNS =
      List.of(
          "plan",
          "role",
          "schedule",
          "fulfilled_fraction",
          "met_fraction",
          "harm",
          "leaf_lost_fraction",
          "further_deaths_fraction",
          "strength_lost_fraction",
          "largest_dose_fraction",
          "visits",
          "crew_hours",
          "cost_discounted",
          "published_limits_passed",
          "futures");

  private static final List<String> WISH_COLUMNS =
      List.of("plan", "wish", "wanted", "now", "fulfilled_fraction");

  private PlanFile() {}

  /**
   * Writes both files.
   *
   * @param schedules what each plan does, in the order of {@link Advice#all}
   */
  public static void write(Advice advice, List<String> schedules, Path folder) throws IOException {
    List<Plan> plans = advice.all();
    try (TidyFile file = new TidyFile(folder.resolve(FILE), COLUMNS)) {
      for (int i = 0; i < plans.size(); i++) {
        Plan plan = plans.get(i);
        Outcome outcome = plan.outcome();
        file.add(plan.regime().name())
            .add(plan.role())
            .add(schedules.get(i))
            .add(outcome.fulfilled())
            .add(outcome.met())
            .add(outcome.harm())
            .add(outcome.leafLost())
            .add(outcome.deaths())
            .add(outcome.strengthLost())
            .add(outcome.largestDose())
            .add(outcome.visits())
            .add(outcome.hours())
            .add(outcome.cost())
            .add(outcome.limits())
            .add(advice.input().members())
            .endRow();
      }
    }
    try (TidyFile file = new TidyFile(folder.resolve(WISHES), WISH_COLUMNS)) {
      for (Plan plan : plans) {
        for (int wish = 0; wish < advice.wishes().asked().size(); wish++) {
          file.add(plan.regime().name())
              .add(advice.wishes().asked().get(wish).word())
              .add(WishWords.of(advice.wishes().asked().get(wish)))
              .add(advice.now().get(wish))
              .add(plan.outcome().byWish().get(wish))
              .endRow();
        }
      }
    }
  }
}
