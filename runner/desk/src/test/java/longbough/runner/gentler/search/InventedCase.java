package longbough.runner.gentler.search;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.wish.Sector;
import longbough.runner.wish.Wish;
import longbough.runner.wish.Wishes;

/** Ten invented clients, each at one of the invented trees. */
record InventedCase(String scenario, Wishes wishes) {
  private static final Sector SOUTH = new Sector(120, 240);
  private static final Sector WEST = new Sector(210, 330);
  private static final Sector EAST = new Sector(45, 135);

  static List<InventedCase> all() {
    return List.of(
        of("canal-side-lime", new Wish.Headroom(4.5, 1.5, SOUTH)),
        of("schoolyard-hornbeam", new Wish.HeightLimit(8)),
        of("cemetery-beech", new Wish.OffTheRoof(WEST, 4, 14, 4)),
        of("car-park-plane", new Wish.Light(180, 8, 4, 0.5)),
        of("hillside-spruce", new Wish.View(SOUTH, 4, 9, 0.7)),
        of("courtyard-birch", new Wish.OffTheRoof(EAST, 3, 9, 2), new Wish.HeightLimit(11)),
        of("village-green-chestnut", new Wish.LimbWeight(4, 90, 0.3)),
        of("park-pine", new Wish.View(EAST, 6, 10, 0.6), new Wish.Headroom(3.5, 0, WEST)),
        of("park-lime", new Wish.Light(270, 7, 5, 0.45), new Wish.OffTheRoof(WEST, 3, 12, 3.5)),
        of("mill-pond-oak", new Wish.Headroom(5, 2, EAST), new Wish.View(EAST, 5, 9, 0.5)));
  }

  private static InventedCase of(String scenario, Wish... asked) {
    return new InventedCase(scenario, new Wishes("", 3, 10, List.of(asked)));
  }

  SimulationInput input(int futures) {
    SimulationInput read =
        ScenarioResolver.resolve(ScenarioReader.read(folder().resolve(scenario + ".yaml")));
    return read.playing(List.of(), wishes.untilYear() + 5, futures, read.seed());
  }

  private static Path folder() {
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      if (Files.isRegularFile(at.resolve("scenarios/park-lime.yaml"))) {
        return at.resolve("scenarios");
      }
    }
    throw new AssertionError("no folder 'scenarios' upward from here");
  }
}
