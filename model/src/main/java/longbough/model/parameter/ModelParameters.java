package longbough.model.parameter;

import longbough.shared.source.ParameterTable;
import longbough.shared.trait.SpeciesTraits;

/** Every number the processes read, in calculation form: look-ups happen once, here. */
public record ModelParameters(
    SpeciesParameters species,
    LightParameters light,
    CarbonParameters carbon,
    ReserveParameters reserve,
    AllocationParameters allocation,
    SproutParameters sprout,
    SheddingParameters shedding,
    WoundParameters wound,
    DecayParameters decay,
    StrengthParameters strength,
    DeclineParameters decline,
    SurvivalParameters survival,
    WeatherParameters weather,
    RootParameters root,
    PruningParameters pruning,
    CrewParameters crew,
    LimitParameters limit) {

  /**
   * Parameters for one species from a table that holds the general rows and the species' rows (as
   * written, sampled for one future, or turned by a sweep).
   */
  public static ModelParameters of(SpeciesTraits traits, ParameterTable table) {
    return new ModelParameters(
        SpeciesParameters.of(traits, table),
        LightParameters.of(table),
        CarbonParameters.of(table),
        ReserveParameters.of(table),
        AllocationParameters.of(table),
        SproutParameters.of(table),
        SheddingParameters.of(table),
        WoundParameters.of(table),
        DecayParameters.of(table),
        StrengthParameters.of(table),
        DeclineParameters.of(table),
        SurvivalParameters.of(table),
        WeatherParameters.of(table),
        RootParameters.of(table),
        PruningParameters.of(table),
        CrewParameters.of(table),
        LimitParameters.of(table));
  }
}
