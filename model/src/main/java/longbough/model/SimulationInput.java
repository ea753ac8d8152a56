package longbough.model;

import java.util.List;
import longbough.model.parameter.Climate;
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
    List<Regime> regimes,
    int years,
    int members,
    long seed,
    Crew crew,
    List<String> filledIn) {

  /** Price of a crew hour, currency, and the yearly rate at which later costs are discounted. */
  public record Crew(double pricePerHour, String currency, double discountRate) {}
}
