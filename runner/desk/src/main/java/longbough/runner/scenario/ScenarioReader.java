package longbough.runner.scenario;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import longbough.runner.scenario.written.Scenario;
import longbough.runner.yaml.Fields;
import longbough.runner.yaml.KeyTable;
import longbough.runner.yaml.Mistakes;
import longbough.runner.yaml.YamlSource;

/**
 * Reads a scenario file. START HERE for the way in: text within limits, events, nodes, records,
 * checks between values; a scenario that comes out can be resolved without further mistakes.
 */
public final class ScenarioReader {

  private ScenarioReader() {}

  /** The table of every key that a scenario may hold. */
  public static KeyTable keys() {
    return Holder.KEYS;
  }

  /** The scenario in a file, or an {@code InputException} with every mistake found in it. */
  public static Scenario read(Path file) {
    Mistakes mistakes = new Mistakes(file.toString());
    return bind(YamlSource.read(file, mistakes), mistakes);
  }

  /** The scenario in a text; the name is used in messages only. */
  public static Scenario parse(String name, String text) {
    Mistakes mistakes = new Mistakes(name);
    return bind(YamlSource.parse(text, mistakes), mistakes);
  }

  private static Scenario bind(YamlSource source, Mistakes mistakes) {
    Fields root = Fields.of(source, "scenario", keys(), mistakes);
    Scenario scenario =
        new Scenario(
            mistakes.file(),
            sha256(source.text()),
            root.text("title"),
            root.text("about"),
            TreeBinder.bind(root.map("tree", "tree").orElse(root.none("tree", "tree"))),
            PlaceBinder.site(root.map("site", "site").orElse(root.none("site", "site"))),
            PlaceBinder.climate(root),
            PlaceBinder.crew(root.map("crew", "crew").orElse(root.none("crew", "crew"))),
            root.whole("years"),
            root.whole("members"),
            root.whole("seed"),
            root.maps("regimes", "regime").stream().map(RegimeBinder::bind).toList(),
            root.map("wishes", "wishes").map(WishBinder::bind));
    TreeChecks.check(scenario.tree(), mistakes);
    PlaceChecks.check(scenario.climate(), mistakes);
    RegimeChecks.check(scenario, mistakes);
    WishChecks.check(scenario, mistakes);
    mistakes.throwIfAny();
    return scenario;
  }

  private static String sha256(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private static final class Holder {
    private static final KeyTable KEYS = KeyTable.read("longbough/runner/scenario/keys.csv");
  }
}
