package longbough.runner.scenario;

import java.util.List;
import longbough.model.parameter.Climate;
import longbough.model.parameter.Site;
import longbough.runner.scenario.written.WrittenClimate;
import longbough.runner.scenario.written.WrittenMonths;
import longbough.runner.scenario.written.WrittenSite;
import longbough.runner.yaml.Given;

/** Site and climate with their words turned into numbers. */
final class PlaceResolver {

  private PlaceResolver() {}

  static Site site(WrittenSite site, Notes notes) {
    return new Site(
        notes.level(site.openness(), "Openness of the site", "openness", "street", ""),
        notes.level(site.soilWaterMm(), "Soil water", "soil_water_mm", "ordinary", "mm"),
        notes.level(site.windExposure(), "Wind exposure", "wind_exposure", "built_up", ""),
        notes.level(site.growthFactor(), "Soil quality", "growth_factor", "ordinary", ""));
  }

  static Climate climate(WrittenClimate climate, Notes notes) {
    if (climate.own().isPresent()) {
      return own(climate.own().get(), notes);
    }
    Climate preset = ClimateLibrary.get(climate.preset().value());
    notes.add("Climate '" + preset.name() + "': " + preset.source() + ".");
    return preset;
  }

  private static Climate own(WrittenMonths own, Notes notes) {
    if (!own.source().present()) {
      notes.add("Source of the own climate not given.");
    }
    return new Climate(
        own.name().or("own climate"),
        own.latitudeDeg().value(),
        array(own.temperatureC()),
        array(own.rainMm()),
        array(own.radiationMjM2Day()),
        own.gustTenYearMs().value(),
        own.gustFiftyYearMs().value(),
        own.source().or("given in the scenario"));
  }

  private static double[] array(Given<List<Double>> months) {
    return months.value().stream().mapToDouble(Double::doubleValue).toArray();
  }
}
