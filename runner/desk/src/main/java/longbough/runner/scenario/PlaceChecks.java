package longbough.runner.scenario;

import java.util.List;
import longbough.runner.scenario.written.WrittenClimate;
import longbough.runner.scenario.written.WrittenMonths;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.Mistakes;
import longbough.runner.yaml.Plain;

/** Numbers of an own climate that cannot be true together. */
final class PlaceChecks {

  private PlaceChecks() {}

  static void check(WrittenClimate climate, Mistakes mistakes) {
    climate
        .own()
        .ifPresent(
            own -> {
              gusts(own, mistakes);
              midsummer(own, mistakes);
            });
  }

  private static void gusts(WrittenMonths own, Mistakes mistakes) {
    Given<Double> rare = own.gustFiftyYearMs();
    double usual = own.gustTenYearMs().or(Double.NaN);
    if (rare.or(Double.NaN) <= usual) {
      mistakes.add(
          rare.place(),
          rare.field(),
          Plain.number(rare.value()) + " m/s",
          "above the ten-year gust of " + Plain.number(usual) + " m/s",
          "check both");
    }
  }

  /** Radiation must be higher in the local summer half-year, or the months are shifted. */
  private static void midsummer(WrittenMonths own, Mistakes mistakes) {
    Given<List<Double>> radiation = own.radiationMjM2Day();
    if (!radiation.present() || !own.latitudeDeg().present()) {
      return;
    }
    double northernSummer = 0;
    double northernWinter = 0;
    for (int month = 1; month <= radiation.value().size(); month++) {
      double value = radiation.value().get(month - 1);
      if (month >= 4 && month <= 9) {
        northernSummer += value;
      } else {
        northernWinter += value;
      }
    }
    double latitude = own.latitudeDeg().value();
    if (latitude * (northernSummer - northernWinter) < 0) {
      mistakes.add(
          radiation.place(),
          radiation.field(),
          "most radiation in the winter half of latitude " + Plain.number(latitude),
          "twelve months, January to December",
          "check the order of the months and the sign of the latitude");
    }
  }
}
