package longbough.runner.scenario;

import longbough.runner.scenario.written.WrittenWish;
import longbough.runner.scenario.written.WrittenWishes;
import longbough.runner.wish.Sector;
import longbough.runner.wish.Wish;
import longbough.runner.wish.Wishes;

/** Wishes in the runner's own units, with what was left out filled in. */
final class WishResolver {

  private WishResolver() {}

  static Wishes resolve(WrittenWishes wishes, Notes notes) {
    return new Wishes(
        wishes.firstIdea().or(""),
        (int) notes.whole(wishes.byYear(), "Year of the wishes", "wishes.by_year", ""),
        (int) notes.whole(wishes.untilYear(), "Last year of the wishes", "wishes.until_year", ""),
        wishes.asked().stream().map(WishResolver::wish).toList());
  }

  private static Wish wish(WrittenWish of) {
    return switch (of.word()) {
      case "headroom" ->
          new Wish.Headroom(value(of, "height_m"), of.number("distance_m").or(0.0), sector(of));
      case "off_the_roof" ->
          new Wish.OffTheRoof(
              sector(of),
              value(of, "from_height_m"),
              value(of, "to_height_m"),
              value(of, "distance_m"));
      case "view" ->
          new Wish.View(
              sector(of), value(of, "from_height_m"), value(of, "to_height_m"), value(of, "share"));
      case "light" ->
          new Wish.Light(
              value(of, "bearing_deg"),
              value(of, "distance_m"),
              value(of, "height_m"),
              value(of, "share"));
      case "height_limit" -> new Wish.HeightLimit(value(of, "below_m"));
      case "limb_weight" ->
          new Wish.LimbWeight(value(of, "height_m"), value(of, "bearing_deg"), value(of, "share"));
      default -> throw new IllegalArgumentException("no wish '" + of.word() + "'");
    };
  }

  private static Sector sector(WrittenWish of) {
    double from = of.number("from_bearing_deg").or(Sector.ALL_ROUND.fromDeg());
    return new Sector(from, of.number("to_bearing_deg").or(Sector.ALL_ROUND.toDeg()));
  }

  private static double value(WrittenWish of, String key) {
    return of.number(key).value();
  }
}
