package longbough.model;

import java.util.List;
import longbough.model.SimulationInput.Crew;
import longbough.model.parameter.Climate;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.Site;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.pruning.Regime;
import longbough.model.tree.MeasuredTree;
import longbough.model.tree.MeasuredTree.KnownCavity;
import longbough.model.tree.MeasuredTree.OldWound;
import longbough.shared.quantity.Range;
import longbough.shared.source.ParameterLibrary;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/**
 * Inputs for tests that play trees: three climates, mean trees of any species, and an ordinary
 * site.
 */
public final class PlayedTrees {
  /** An ordinary open site. */
  public static final Site OPEN = new Site(0.9, 150, 0.8, 1);

  /**
   * Seattle: typical meteorological year of the US Department of Energy; rain and gusts made up.
   */
  public static final Climate MARITIME =
      new Climate(
          "maritime",
          47.5,
          new double[] {4.5, 5.8, 8.3, 10.9, 13.0, 15.6, 17.7, 18.8, 15.1, 11.4, 8.1, 5.4},
          new double[] {140, 100, 95, 65, 45, 40, 20, 25, 45, 85, 150, 160},
          new double[] {3.7, 6.5, 10.2, 15.6, 19.7, 21.3, 22.4, 18.2, 13.2, 8.2, 4.2, 3.2},
          29,
          34,
          "test");

  /** Chicago: the same source; rain and gusts made up. */
  public static final Climate CONTINENTAL =
      new Climate(
          "continental",
          41.8,
          new double[] {-4.7, -2.5, 3.8, 10.0, 15.3, 21.1, 24.1, 21.8, 18.1, 11.0, 4.7, -3.7},
          new double[] {50, 45, 65, 90, 95, 100, 95, 100, 85, 80, 75, 60},
          new double[] {6.4, 9.0, 12.4, 15.8, 21.5, 22.7, 22.2, 18.6, 15.1, 10.6, 6.5, 5.4},
          32,
          37,
          "test");

  /** The maritime climate with its months turned round for the southern half of the earth. */
  public static final Climate SOUTHERN =
      new Climate(
          "southern",
          -47.5,
          halfTurned(MARITIME.temperatureC()),
          halfTurned(MARITIME.rainMm()),
          halfTurned(MARITIME.radiationMjM2Day()),
          29,
          34,
          "test");

  private PlayedTrees() {}

  public static ParameterTable table(String species) {
    return ParameterLibrary.general().with(SpeciesLibrary.load().get(species).numbers());
  }

  /** The same table with one parameter set, if need be outside its plausible range. */
  public static ParameterTable with(ParameterTable table, String name, double value) {
    Sourced row = table.get(name);
    Range wide = new Range(Math.min(value, row.range().low()), Math.max(value, row.range().high()));
    Sourced set =
        new Sourced(
            name, value, row.unit(), wide, false, row.basis(), row.citation(), "set for a test");
    return table.with(ParameterTable.of(List.of(set)));
  }

  public static ModelParameters parameters(String species) {
    return ModelParameters.of(SpeciesLibrary.load().get(species), table(species));
  }

  /** A tree of the mean size of its species at a trunk diameter. */
  public static MeasuredTree tree(SpeciesParameters s, double dbhM, double condition) {
    return MeasuredTree.openGrown(s, dbhM, condition);
  }

  /**
   * The same tree with a cavity, a closed column, old wounds, a lopsided crown and part of its
   * roots lost.
   */
  public static MeasuredTree worn(MeasuredTree tree) {
    double[] spread = tree.spreadM().clone();
    spread[1] *= 1.3;
    spread[2] *= 0.6;
    double dbh = tree.dbhM();
    return new MeasuredTree(
        dbh,
        tree.heightM(),
        tree.crownBaseM(),
        spread,
        tree.condition(),
        List.of(
            new KnownCavity(1.5, 1, 0.25 * dbh, 120, 0),
            new KnownCavity(0.8, 0.6, 0.3 * dbh, 300, 0.2 * dbh)),
        List.of(
            new OldWound(2, 0.2 * dbh, 5, 45, 0.1 * dbh),
            new OldWound(1.2, 0.3 * dbh, Double.NaN, 200, Double.NaN)),
        0.3,
        tree.limbs());
  }

  public static SimulationInput input(
      String species,
      double dbhM,
      double condition,
      Climate climate,
      List<Regime> regimes,
      int years,
      int members) {
    SpeciesTraits traits = SpeciesLibrary.load().get(species);
    MeasuredTree tree = tree(parameters(species).species(), dbhM, condition);
    return input(traits, tree, climate, regimes, years, members);
  }

  public static SimulationInput input(
      SpeciesTraits traits,
      MeasuredTree tree,
      Climate climate,
      List<Regime> regimes,
      int years,
      int members) {
    return new SimulationInput(
        "test",
        traits,
        table(traits.id()),
        tree,
        OPEN,
        climate,
        regimes,
        years,
        members,
        20260101,
        new Crew(80, "EUR", 0.03),
        List.of());
  }

  private static double[] halfTurned(double[] months) {
    double[] turned = new double[12];
    for (int month = 0; month < 12; month++) {
      turned[month] = months[(month + 6) % 12];
    }
    return turned;
  }
}
