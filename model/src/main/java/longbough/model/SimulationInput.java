package longbough.model;

import java.util.List;
import longbough.model.parameter.Climate;
import longbough.model.parameter.DryYears;
import longbough.model.parameter.Site;
import longbough.model.pruning.Regime;
import longbough.model.tree.MeasuredTree;
import longbough.shared.source.ParameterTable;
import longbough.shared.trait.SpeciesTraits;

/**
 * Everything a run needs, every default filled in and visible. Immutable.
 *
 * @param title one line for the report
 * @param species the species
 * @param parameters general rows with the species' rows
 * @param tree the tree as measured, complete
 * @param site the place
 * @param climate the long-term climate
 * @param dryYears which growing seasons are dry
 * @param regimes at least one; the first is the reference of every difference
 * @param years simulated years, 1 to 200
 * @param members futures, 1 or more
 * @param seed of every random stream
 * @param crew price and currency
 * @param filledIn every default that was filled in, as sentences for the report
 */
public record SimulationInput(
    String title,
    SpeciesTraits species,
    ParameterTable parameters,
    MeasuredTree tree,
    Site site,
    Climate climate,
    DryYears dryYears,
    List<Regime> regimes,
    int years,
    int members,
    long seed,
    Crew crew,
    List<String> filledIn) {

  /** An input whose dry years come by chance. */
  public SimulationInput(
      String title,
      SpeciesTraits species,
      ParameterTable parameters,
      MeasuredTree tree,
      Site site,
      Climate climate,
      List<Regime> regimes,
      int years,
      int members,
      long seed,
      Crew crew,
      List<String> filledIn) {
    this(
        title,
        species,
        parameters,
        tree,
        site,
        climate,
        DryYears.BY_CHANCE,
        regimes,
        years,
        members,
        seed,
        crew,
        filledIn);
  }

  /** The same with other regimes, years, futures and seed. */
  public SimulationInput playing(
      List<Regime> otherRegimes, int otherYears, int otherMembers, long otherSeed) {
    return new SimulationInput(
        title,
        species,
        parameters,
        tree,
        site,
        climate,
        dryYears,
        otherRegimes,
        otherYears,
        otherMembers,
        otherSeed,
        crew,
        filledIn);
  }

  /** The same with other dry years. */
  public SimulationInput with(DryYears other) {
    return new SimulationInput(
        title,
        species,
        parameters,
        tree,
        site,
        climate,
        other,
        regimes,
        years,
        members,
        seed,
        crew,
        filledIn);
  }

  /** The same with other parameters. */
  public SimulationInput with(ParameterTable other) {
    return new SimulationInput(
        title, species, other, tree, site, climate, dryYears, regimes, years, members, seed, crew,
        filledIn);
  }

  /** Price of a crew hour, currency, and the yearly rate at which later costs are discounted. */
  public record Crew(double pricePerHour, String currency, double discountRate) {}
}
