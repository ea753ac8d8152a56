package longbough.runner.validate.lab;

import longbough.model.parameter.Climate;
import longbough.model.parameter.DryYears;
import longbough.model.parameter.Site;
import longbough.shared.source.ParameterTable;

/**
 * What the trees of an experiment have in common besides species, size and time.
 *
 * @param climate the long-term climate
 * @param parameters general rows with the species' rows
 * @param site the place
 * @param condition 0 dying to 1 excellent
 * @param dryYears which growing seasons are dry
 * @param form height and crown for the trunk
 */
record Conditions(
    Climate climate,
    ParameterTable parameters,
    Site site,
    double condition,
    DryYears dryYears,
    StandForm form) {

  Conditions with(Climate other) {
    return new Conditions(other, parameters, site, condition, dryYears, form);
  }

  Conditions with(ParameterTable other) {
    return new Conditions(climate, other, site, condition, dryYears, form);
  }

  Conditions with(Site other) {
    return new Conditions(climate, parameters, other, condition, dryYears, form);
  }

  Conditions rated(double other) {
    return new Conditions(climate, parameters, site, other, dryYears, form);
  }

  Conditions with(DryYears other) {
    return new Conditions(climate, parameters, site, condition, other, form);
  }

  Conditions with(StandForm other) {
    return new Conditions(climate, parameters, site, condition, dryYears, other);
  }
}
