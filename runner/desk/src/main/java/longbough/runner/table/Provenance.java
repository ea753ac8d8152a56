package longbough.runner.table;

import java.util.List;

/**
 * What is needed to get the same result again.
 *
 * @param version version of Longbough
 * @param scenario name of the scenario file without its folder
 * @param scenarioHash SHA-256 of the scenario file
 * @param parameterHash SHA-256 of all parameters
 * @param warnings published limits that were passed, and anything else the reader should know
 */
public record Provenance(
    String version,
    String scenario,
    String scenarioHash,
    String parameterHash,
    List<String> warnings) {}
