package longbough.shared.trait;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import longbough.shared.source.DataFile;

/** The species that come with the tool; each is read from its data file when first asked for. */
public final class SpeciesLibrary {

  private static final SpeciesLibrary LIBRARY = new SpeciesLibrary();

  private final List<String> ids = DataFile.index(SpeciesReader.FOLDER + "index.txt");
  private final Map<String, SpeciesEntry> read = new ConcurrentHashMap<>();

  private SpeciesLibrary() {}

  /** The library; species are read lazily and kept. */
  public static SpeciesLibrary load() {
    return LIBRARY;
  }

  /** The ids in the order of the index, e.g. {@code tilia-cordata}. */
  public List<String> ids() {
    return ids;
  }

  /** The species with that id, which must be in the library. */
  public SpeciesTraits get(String id) {
    return entry(id).traits();
  }

  /** The species with that id, and where each of its rows comes from. */
  public SpeciesEntry entry(String id) {
    if (!ids.contains(id)) {
      throw new IllegalArgumentException(
          "no species '" + id + "' in the library; nearest: " + String.join(", ", nearest(id, 3)));
    }
    return read.computeIfAbsent(id, SpeciesReader::read);
  }

  /**
   * The species whose id, scientific name, English name or synonym this is; case, hyphens and
   * accents aside.
   */
  public Optional<SpeciesTraits> find(String idOrName) {
    String wanted = plain(idOrName);
    if (wanted.isEmpty()) {
      return Optional.empty();
    }
    return ids.stream()
        .filter(id -> plain(id).equals(wanted))
        .findFirst()
        .or(() -> ids.stream().filter(id -> names(id).contains(wanted)).findFirst())
        .map(this::get);
  }

  /** The ids of the n species with the most similar id, name or synonym, the most similar first. */
  public List<String> nearest(String text, int n) {
    String wanted = plain(text);
    return ids.stream()
        .map(id -> Map.entry(id, distance(wanted, id)))
        .sorted(
            Map.Entry.<String, Integer>comparingByValue()
                .thenComparing(Comparator.comparing(Map.Entry::getKey)))
        .limit(n)
        .map(Map.Entry::getKey)
        .toList();
  }

  private int distance(String wanted, String id) {
    return names(id).stream()
        .mapToInt(name -> Math.min(EditDistance.between(wanted, name), beginning(wanted, name)))
        .min()
        .orElseThrow();
  }

  /**
   * A name cut short is near the whole name: compares with as much of it, and of each of its words,
   * as was typed.
   */
  private static int beginning(String wanted, String name) {
    int least = Integer.MAX_VALUE;
    for (int start = 0;
        start >= 0;
        start = name.indexOf(' ', start) < 0 ? -1 : name.indexOf(' ', start) + 1) {
      String part = name.substring(start, Math.min(name.length(), start + wanted.length()));
      least = Math.min(least, EditDistance.between(wanted, part) + 1);
    }
    return least;
  }

  private List<String> names(String id) {
    SpeciesEntry entry = entry(id);
    List<String> all = new ArrayList<>();
    all.add(plain(id));
    all.add(plain(entry.traits().scientificName()));
    entry.traits().commonNames().forEach(name -> all.add(plain(name)));
    entry.synonyms().forEach(name -> all.add(plain(name)));
    return all;
  }

  /** Lower case letters and single spaces only; the hybrid sign becomes x. */
  static String plain(String text) {
    String bare = Normalizer.normalize(text.replace('×', 'x'), Normalizer.Form.NFD);
    return bare.toLowerCase(Locale.ROOT)
        .replaceAll("\\p{M}", "")
        .replaceAll("[^a-z0-9]+", " ")
        .strip();
  }
}
