package longbough.shared.trait;

import java.util.List;
import java.util.Map;

/**
 * A species of the library together with where its rows come from.
 *
 * @param traits the species as the model uses it
 * @param group the functional group its file names, e.g. {@code broadleaf-diffuse-porous}
 * @param synonyms other scientific names and ids under which it is found
 * @param origins for each number or class the data file stem it was read from: the species' id or a
 *     group's
 */
public record SpeciesEntry(
    SpeciesTraits traits, String group, List<String> synonyms, Map<String, String> origins) {

  /** Whether the row comes from the species' own file rather than from its group. */
  public boolean own(String name) {
    return traits.id().equals(origins.get(name));
  }
}
