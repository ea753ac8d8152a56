package longbough.runner.batch.page;

import java.util.ArrayList;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.model.state.CauseOfDeath;
import longbough.runner.batch.Batch;
import longbough.runner.batch.Measure;
import longbough.runner.batch.Outlook;
import longbough.runner.batch.TreeOutlook;

/** The words of a batch that terminal and page share. */
final class BatchWords {
  private static final double PERCENT = 100;

  private BatchWords() {}

  static long percent(double share) {
    return Math.round(PERCENT * share);
  }

  /** Share alive with its band, in per cent. */
  static String alive(Outlook outlook) {
    return "%d (%d to %d)"
        .formatted(
            percent(outlook.alive()), percent(outlook.aliveLow()), percent(outlook.aliveHigh()));
  }

  /** What speaks against the tree, or that nothing does. */
  static String reasons(TreeOutlook tree) {
    Outlook alone = tree.alone();
    List<String> reasons = new ArrayList<>();
    for (Measure measure : Measure.values()) {
      if (measure.passed(alone)) {
        reasons.add(reason(measure, alone));
      }
    }
    return reasons.isEmpty() ? "inside all four lines" : String.join("; ", reasons);
  }

  private static String reason(Measure measure, Outlook alone) {
    long value = percent(measure.value(alone));
    return switch (measure) {
      case DYING ->
          "dies in "
              + value
              + " of 100 futures"
              + (alone.cause() == CauseOfDeath.NONE ? "" : ", mostly: " + alone.cause().label());
      case RESERVE -> "its reserve falls to " + value + " %";
      case STRENGTH -> "its trunk has lost " + value + " % of its strength";
      case LEAF -> value + " % of a full crown is missing";
    };
  }

  /** Under which regime it fares best, where that is not leaving it alone. */
  static String best(TreeOutlook tree) {
    Outlook best = tree.best();
    return best.equals(tree.alone())
        ? tree.outlooks().size() == 1 ? "" : "no regime does better"
        : best.regime() + " (alive " + percent(best.alive()) + " %)";
  }

  static String size(TreeOutlook tree) {
    SimulationInput input = tree.tree().input();
    return "%.0f cm, %.1f m".formatted(PERCENT * input.tree().dbhM(), input.tree().heightM());
  }

  /** Years and futures where all trees have the same, or that they differ. */
  static String played(Batch batch) {
    List<SimulationInput> inputs =
        batch.ranked().stream().map(tree -> tree.tree().input()).toList();
    long years = inputs.stream().mapToInt(SimulationInput::years).distinct().count();
    long futures = inputs.stream().mapToInt(SimulationInput::members).distinct().count();
    String span =
        years == 1 ? inputs.get(0).years() + " years" : "the years each scenario asks for";
    String many =
        futures == 1 ? inputs.get(0).members() + " futures" : "the futures each scenario asks for";
    return span + ", " + many;
  }

  /** The outcome in a sentence. */
  static String outcome(Batch batch) {
    int trees = batch.ranked().size();
    long trouble = batch.inTrouble();
    String left = batch.notPlayed().isEmpty() ? "" : ", " + batch.notPlayed().size() + " left out";
    return trees
        + (trees == 1 ? " tree" : " trees")
        + " played through "
        + played(batch)
        + left
        + ". Left alone, "
        + (trouble == 0 ? "none is" : trouble == 1 ? "one is" : trouble + " are")
        + " beyond at least one of four lines.";
  }

  /** How the list is to be read. */
  static List<String> reading() {
    List<String> reading = new ArrayList<>();
    reading.add(
        "Ranked by trouble: the sum over four measures of how far the tree, if nobody touches it, is on"
            + " the way to a line (0 nothing at all, 1 at the line, 2 twice as far). The lines are our"
            + " choice.");
    for (Measure measure : Measure.values()) {
      reading.add(
          capital(what(measure)) + " Line: " + line(measure) + ". " + measure.reason() + ".");
    }
    reading.add(
        "Means over the futures; all but death are taken while the tree lives. In brackets the 95 %"
            + " band of the share alive for that number of futures; it tells the chance of the draw, not"
            + " how wrong the model may be. Trees close together in the list are not told apart.");
    reading.add(
        "Fares best: the regime of that tree's own scenario with the least sum; leaving it alone, unless"
            + " another brings the sum down by a tenth of a line or more.");
    return reading;
  }

  private static String what(Measure measure) {
    return switch (measure) {
      case DYING -> "dies: share of futures in which the tree is dead at the end.";
      case RESERVE ->
          "lowest reserve: stored carbohydrate of the worst autumn, share of its ceiling.";
      case STRENGTH ->
          "trunk strength lost: where and when decay has taken most of the bending strength, today"
              + " included.";
      case LEAF ->
          "leaf missing: leaf area of the last year it lives, short of what it would carry today with a"
              + " full crown; below 0 where it has grown.";
    };
  }

  /** The line as a person reads it. */
  private static String line(Measure measure) {
    if (measure == Measure.DYING) {
      return "above %.1f %% a year".formatted(PERCENT * measure.line(1));
    }
    String percent = "%.0f %%".formatted(Math.floor(PERCENT * measure.line(1)));
    return (measure == Measure.RESERVE ? "below " : "above ") + percent;
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
