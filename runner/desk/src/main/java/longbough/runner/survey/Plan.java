package longbough.runner.survey;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.written.Scenario;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.Level;
import longbough.runner.yaml.Mistakes;
import longbough.runner.yaml.YamlBlocks;
import longbough.runner.yaml.YamlSource;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/**
 * What a scenario needs besides its tree: climate, crew, length, regimes, and the site where the
 * sheet is silent. Taken as it stands from another scenario, or a plain one that comes along.
 *
 * @param blocks text of each block by its key
 * @param site words and numbers of the site by key
 */
public record Plan(Map<String, String> blocks, Map<String, String> site) {
  private static final String CLIMATE = "climate";
  private static final List<String> COPIED =
      List.of(CLIMATE, "crew", "years", "members", "seed", "regimes");
  private static final String PLAIN = "longbough/runner/survey/plain-plan.yaml";

  /** Leaving alone, dead limbs only, and light thinning; no climate. */
  public static Plan plain() {
    try (InputStream in = Plan.class.getClassLoader().getResourceAsStream(PLAIN)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return new Plan(YamlBlocks.of(YamlSource.parse(text, new Mistakes(PLAIN))), Map.of());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Everything but the tree of another scenario. */
  public static Plan like(Path file) {
    Scenario scenario = ScenarioReader.read(file);
    Map<String, String> all = YamlBlocks.of(YamlSource.read(file, new Mistakes(file.toString())));
    if (all.isEmpty()) {
      throw new InputException(
          List.of(
              new Problem(
                  file.toString(),
                  0,
                  0,
                  "",
                  "a scenario written between braces",
                  "one key a line at the outermost level",
                  "write it as the examples are written")));
    }
    Map<String, String> blocks = new LinkedHashMap<>();
    for (String key : COPIED) {
      if (all.containsKey(key)) {
        blocks.put(key, all.get(key));
      }
    }
    Map<String, String> site = new LinkedHashMap<>();
    put(site, "openness", scenario.site().openness());
    put(site, "soil_water_mm", scenario.site().soilWaterMm());
    put(site, "wind_exposure", scenario.site().windExposure());
    put(site, "growth_factor", scenario.site().growthFactor());
    return new Plan(blocks, site);
  }

  private static void put(Map<String, String> site, String key, Given<Level> given) {
    if (given.present()) {
      Level level = given.value();
      site.put(key, level.word().isEmpty() ? Double.toString(level.value()) : level.word());
    }
  }

  /** The same in another climate. */
  public Plan in(String climate) {
    Map<String, String> changed = new LinkedHashMap<>(blocks);
    changed.put(CLIMATE, CLIMATE + ": " + climate + "\n");
    return new Plan(changed, site);
  }

  /** Whether it says the climate. */
  public boolean hasClimate() {
    return blocks.containsKey(CLIMATE);
  }

  /**
   * The scenario of a tree under this plan, not yet read.
   *
   * @throws InputException where neither sheet nor plan gives a climate
   */
  public ScenarioText scenario(SurveyedTree tree) {
    if (!hasClimate() && tree.value("scenario", CLIMATE) == null) {
      String known = String.join(", ", ScenarioReader.keys().row("scenario", CLIMATE).words());
      throw new InputException(
          List.of(
              tree.origin()
                  .problem(
                      "no climate", known, "add a column 'climate', or give --climate or --like")));
    }
    String file = tree.origin().place().replaceAll("^.*[/\\\\]", "");
    String from = file.replaceAll("\\p{Cntrl}", " ") + ", line " + tree.origin().line();
    return ScenarioText.of(tree, this, "From " + from + ", by longbough import.");
  }
}
