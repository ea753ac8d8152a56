package longbough.runner.client.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import longbough.model.state.TreeState;
import longbough.runner.client.words.Amounts;
import longbough.runner.client.words.Messages;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.RegimeResult;
import longbough.runner.drawing.elevation.StripDrawing;
import longbough.runner.drawing.elevation.StripDrawing.Tree;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.StateWords;
import longbough.runner.drawing.look.YearState;
import longbough.runner.drawing.scene.Scene;

/** The tree under each of the first few plans, now and after some years, plan by plan. */
public final class PlanStrips {
  private static final int MOST = 5;
  private static final int NEVER = Integer.MAX_VALUE;

  private final Messages words;
  private final Amounts amounts;

  private PlanStrips(Messages words, String currency) {
    this.words = words;
    this.amounts = new Amounts(words, currency);
  }

  /** Years that are drawn: 0, 5, 15 and 30 of 30, and in that proportion of any other number. */
  public static TreeSet<Integer> years(int years) {
    int sixth = (int) Math.max(1, Math.round(years / 6.0));
    int half = (int) Math.max(1, Math.round(years / 2.0));
    return new TreeSet<>(List.of(0, sixth, half, years));
  }

  /** One picture a plan; none where nothing was kept to be drawn. */
  public static List<Scene> of(Comparison comparison, Messages words) {
    PlanStrips strips = new PlanStrips(words, comparison.input().crew().currency());
    List<List<Tree>> trees = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (RegimeResult plan : comparison.regimes().subList(0, most(comparison))) {
      List<Tree> row = new ArrayList<>();
      plan.medianFuture().snapshots().forEach((year, state) -> row.add(strips.tree(year, state)));
      if (!row.isEmpty()) {
        trees.add(row);
        names.add(plan.name());
      }
    }
    if (trees.isEmpty()) {
      return List.of();
    }
    SpeciesLook look = SpeciesLook.of(comparison.input().species());
    StripDrawing drawing = new StripDrawing(trees, look);
    List<Scene> scenes = new ArrayList<>();
    for (int i = 0; i < trees.size(); i++) {
      scenes.add(
          drawing.draw(
              words.say("strip.title", names.get(i)),
              strips.description(look.name(), trees.get(i)),
              trees.get(i)));
    }
    return scenes;
  }

  private static int most(Comparison comparison) {
    return Math.min(MOST, comparison.regimes().size());
  }

  private Tree tree(int year, TreeState state) {
    String heading =
        year == 0 ? words.say("strip.now") : words.say("strip.year", amounts.number(year));
    return new Tree(new YearState(year, state, heading), fact(state));
  }

  private String fact(TreeState state) {
    if (state.vitality.alive) {
      String leaf = words.say("unit.square_metres", amounts.number(Math.rint(state.leafAreaM2())));
      double height = Math.rint(10 * state.heightM()) / 10;
      return words.say("strip.alive", amounts.metres(height), leaf);
    }
    int year = state.vitality.deathYear == NEVER ? 0 : state.vitality.deathYear;
    String key = StateWords.fallen(state) ? "strip.fallen" : "strip.dead";
    return words.say(key, year, amounts.number(year));
  }

  private String description(String species, List<Tree> trees) {
    List<String> all =
        trees.stream()
            .map(tree -> words.say("strip.tree", tree.state().heading(), tree.fact()))
            .toList();
    String separator = words.say("clause.separator") + " ";
    return words.say("strip.words", species, String.join(separator, all));
  }
}
