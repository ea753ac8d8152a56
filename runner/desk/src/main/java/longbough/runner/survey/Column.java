package longbough.runner.survey;

import longbough.runner.scenario.ScenarioReader;
import longbough.runner.yaml.KeyRow;

/**
 * One column that a sheet may have.
 *
 * @param sheet which sheet: trees, limbs, decay, wounds
 * @param name its heading without unit
 * @param kind what may stand in it
 * @param section block of the scenario to which it goes
 * @param key key there, empty where it doesn't go into the scenario
 * @param required whether every row needs it
 * @param meaning a clause that says what it is
 */
public record Column(
    String sheet,
    String name,
    Kind kind,
    String section,
    String key,
    boolean required,
    String meaning) {

  /** Blocks of what is noted and not used. */
  static final String NOTED = "noted";

  /** The heading with its unit. */
  public String heading(Unit unit) {
    return unit == Unit.NONE ? name : name + "_" + unit.word();
  }

  /** The limits and words that the scenario's key has. */
  public KeyRow row() {
    return ScenarioReader.keys().row(section, key);
  }

  boolean inScenario() {
    return !key.isEmpty() && !section.equals(NOTED);
  }
}
