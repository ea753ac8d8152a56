package longbough.runner.scenario.written;

import java.util.List;
import java.util.Optional;
import longbough.runner.yaml.Given;

/**
 * A whole scenario file.
 *
 * @param file its name as the user gave it
 * @param sha256 fingerprint of its text, hexadecimal
 */
public record Scenario(
    String file,
    String sha256,
    Given<String> title,
    Given<String> about,
    WrittenTree tree,
    WrittenSite site,
    WrittenClimate climate,
    WrittenCrew crew,
    Given<Long> years,
    Given<Long> members,
    Given<Long> seed,
    List<WrittenRegime> regimes,
    Optional<WrittenWishes> wishes) {}
