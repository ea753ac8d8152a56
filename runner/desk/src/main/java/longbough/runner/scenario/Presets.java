package longbough.runner.scenario;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longbough.model.pruning.CutMix;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;
import longbough.shared.source.ParameterReader;
import longbough.shared.source.ParameterTable;

/**
 * What the words of a scenario stand for, what is taken where nothing is said, and what is absurd.
 */
final class Presets {

  private static final String FOLDER = "longbough/runner/scenario/";
  private static final Map<String, Double> WORDS = words();
  private static final Map<String, CutMix> SKILLS = skills();
  private static final ParameterTable DEFAULTS = parameters("defaults.csv");
  private static final ParameterTable CHECKS = parameters("checks.csv");

  private Presets() {}

  /** The number that a word stands for at a key. */
  static double word(String key, String word) {
    return WORDS.get(key + "." + word);
  }

  /** How a crew of that skill places its cuts. */
  static CutMix cuts(String skill) {
    return SKILLS.get(skill);
  }

  static double fallback(String name) {
    return DEFAULTS.value(name);
  }

  static double check(String name) {
    return CHECKS.value("check." + name);
  }

  private static ParameterTable parameters(String file) {
    return ParameterTable.of(
        ParameterReader.read(DataFile.rows(FOLDER + file, ParameterReader.HEADER)));
  }

  private static Map<String, Double> words() {
    Map<String, Double> words = new HashMap<>();
    List<String> header = List.of("key", "word", "value", "basis", "note");
    for (DataRow row : DataFile.rows(FOLDER + "words.csv", header)) {
      words.put(row.text("key") + "." + row.text("word"), row.number("value"));
    }
    return Map.copyOf(words);
  }

  private static Map<String, CutMix> skills() {
    Map<String, CutMix> skills = new HashMap<>();
    List<String> header = List.of("skill", "collar", "flush", "stub", "basis", "note");
    for (DataRow row : DataFile.rows(FOLDER + "crew-skill.csv", header)) {
      skills.put(
          row.text("skill"),
          new CutMix(row.number("collar"), row.number("flush"), row.number("stub")));
    }
    return Map.copyOf(skills);
  }
}
