package longbough.runner.update;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import longbough.model.Detail;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.pruning.Regime;

/** Plays the tree under the regime that was followed, and reads it as a visitor would. */
final class TreeForeteller implements Foreteller {
  private final SimulationInput input;
  private final Regime followed;
  private final List<Measured> figures;
  private final FatePlayer player;

  TreeForeteller(
      SimulationInput input, Regime followed, List<Measured> figures, FatePlayer player) {
    this.input = input;
    this.followed = followed;
    this.figures = figures;
    this.player = player;
  }

  /** The figures at the start, as measured then. */
  static double[] start(SimulationInput input, List<Measured> figures) {
    double cmPerM = 100;
    return figures.stream()
        .mapToDouble(
            figure ->
                switch (figure.quantity()) {
                  case TRUNK_DIAMETER -> cmPerM * input.tree().dbhM();
                  case HEIGHT -> input.tree().heightM();
                  default -> 0;
                })
        .toArray();
  }

  @Override
  public List<Foretold> foretell(List<Lineage> lineages, int untilYear)
      throws InterruptedException {
    SimulationInput played =
        input.playing(List.of(followed), untilYear, input.members(), input.seed());
    Set<Integer> years = new HashSet<>();
    figures.stream().map(Measured::year).filter(year -> year <= untilYear).forEach(years::add);
    Detail detail = new Detail(false, years);
    return player.play(played, followed, lineages, detail, this::read);
  }

  private Foretold read(History history) {
    double[] values = new double[figures.size()];
    for (int i = 0; i < values.length; i++) {
      Measured figure = figures.get(i);
      int year = figure.year();
      boolean there = year <= history.years() && history.deathYear() > year;
      values[i] =
          there ? figure.quantity().read(history, history.snapshots().get(year), year) : Double.NaN;
    }
    return new Foretold(values, history.deathYear());
  }
}
