package longbough.shared.trait;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import longbough.shared.problem.InputException;
import longbough.shared.source.Basis;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;
import longbough.shared.source.ParameterReader;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;

/** Reads one species: the rows of its group first, then its own, which replace the group's. */
final class SpeciesReader {

  static final String FOLDER = "longbough/species/";

  /** Rows that say who the species is and where it belongs; every other row is a number. */
  private static final List<String> WORDS =
      List.of(
          "group",
          "scientific_name",
          "common_names",
          "synonyms",
          "family",
          "leaf_type",
          "leaf_habit",
          "wood_anatomy",
          "compartment_class");

  private static final int DEEPEST_GROUP = 4;

  private final String id;
  private final Map<String, DataRow> words = new LinkedHashMap<>();
  private final Map<String, String> origins = new LinkedHashMap<>();
  private ParameterTable numbers = ParameterTable.of(List.of());

  private SpeciesReader(String id) {
    this.id = id;
  }

  static SpeciesEntry read(String id) {
    SpeciesReader reader = new SpeciesReader(id);
    reader.add(FOLDER + id + ".csv", id, 0);
    return reader.entry();
  }

  private void add(String file, String stem, int depth) {
    List<DataRow> wordRows = new ArrayList<>();
    List<DataRow> numberRows = new ArrayList<>();
    for (DataRow row : DataFile.rows(file, ParameterReader.HEADER)) {
      (WORDS.contains(row.text("name")) ? wordRows : numberRows).add(row);
    }
    for (DataRow row : wordRows) {
      if (row.text("name").equals("group")) {
        if (depth == DEEPEST_GROUP) {
          throw row.wrong(
              "group",
              "'" + row.text("value") + "'",
              "a short chain of groups",
              "groups name each other in a ring");
        }
        add(FOLDER + "groups/" + row.text("value") + ".csv", row.text("value"), depth + 1);
      }
    }
    for (DataRow row : wordRows) {
      words.put(row.text("name"), row);
      origins.put(row.text("name"), stem);
    }
    List<Sourced> read = ParameterReader.read(numberRows);
    numbers = numbers.with(ParameterTable.of(read));
    read.forEach(row -> origins.put(row.name(), stem));
  }

  private SpeciesEntry entry() {
    List<String> sources = new ArrayList<>();
    for (String name : List.of("leaf_type", "leaf_habit", "wood_anatomy", "compartment_class")) {
      DataRow row = word(name);
      Basis basis = ParameterReader.basis(row);
      sources.add(
          name.replace('_', ' ')
              + ": "
              + basis.label()
              + (row.blank("source") ? "" : " [" + row.text("source") + "]")
              + (row.blank("note") ? "" : ". " + row.text("note")));
    }
    SpeciesTraits traits =
        new SpeciesTraits(
            id,
            word("scientific_name").text("value"),
            list("common_names"),
            word("family").text("value"),
            enumerated("leaf_type", LeafType::of),
            enumerated("leaf_habit", LeafHabit::of),
            enumerated("wood_anatomy", WoodAnatomy::of),
            enumerated("compartment_class", CompartmentClass::of),
            numbers,
            List.copyOf(sources));
    List<String> synonyms = words.containsKey("synonyms") ? list("synonyms") : List.of();
    return new SpeciesEntry(traits, word("group").text("value"), synonyms, Map.copyOf(origins));
  }

  private DataRow word(String name) {
    DataRow row = words.get(name);
    if (row == null) {
      throw new InputException(
          List.of(
              new longbough.shared.problem.Problem(
                  FOLDER + id + ".csv",
                  0,
                  0,
                  name,
                  "nothing",
                  "one row in the species or its group",
                  "add the row")));
    }
    return row;
  }

  private List<String> list(String name) {
    return Arrays.stream(word(name).text("value").split(";"))
        .map(String::strip)
        .filter(s -> !s.isEmpty())
        .toList();
  }

  private <T> T enumerated(String name, Function<String, T> of) {
    DataRow row = word(name);
    try {
      return of.apply(row.text("value"));
    } catch (IllegalArgumentException e) {
      throw row.wrong(
          name, "'" + row.text("value") + "'", "a word of this class", "see another species file");
    }
  }
}
