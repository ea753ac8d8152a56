package longbough.runner.scenario;

import java.util.Optional;
import longbough.runner.scenario.written.WrittenClimate;
import longbough.runner.scenario.written.WrittenCrew;
import longbough.runner.scenario.written.WrittenMonths;
import longbough.runner.scenario.written.WrittenSite;
import longbough.runner.yaml.Fields;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.Level;

/** The blocks {@code site}, {@code climate} and {@code crew}. */
final class PlaceBinder {

  private PlaceBinder() {}

  static WrittenSite site(Fields site) {
    return new WrittenSite(
        level(site, "openness"),
        level(site, "soil_water_mm"),
        level(site, "wind_exposure"),
        level(site, "growth_factor"));
  }

  private static Given<Level> level(Fields site, String key) {
    return site.level(key, word -> Presets.word(key, word));
  }

  static WrittenClimate climate(Fields root) {
    if (!root.holdsMap("climate")) {
      return new WrittenClimate(root.word("climate"), Optional.empty());
    }
    Optional<WrittenMonths> own = root.map("climate", "climate").map(PlaceBinder::months);
    return new WrittenClimate(Given.absent("climate", root.place("climate")), own);
  }

  private static WrittenMonths months(Fields own) {
    return new WrittenMonths(
        own.text("name"),
        own.text("source"),
        own.number("latitude_deg"),
        own.numbers("temperature_c", "month"),
        own.numbers("rain_mm", "month"),
        own.numbers("radiation_mj_m2_day", "month"),
        own.number("gust_10_year_m_s"),
        own.number("gust_50_year_m_s"));
  }

  static WrittenCrew crew(Fields crew) {
    return new WrittenCrew(
        crew.number("price_per_hour"),
        crew.text("currency"),
        crew.number("discount_rate"),
        crew.word("skill"));
  }
}
