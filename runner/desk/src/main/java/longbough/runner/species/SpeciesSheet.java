package longbough.runner.species;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import longbough.shared.source.Bibliography;
import longbough.shared.source.Citation;
import longbough.shared.source.Sourced;
import longbough.shared.trait.SpeciesEntry;
import longbough.shared.trait.SpeciesTraits;

/** Everything the library knows about one species, wrapped for a terminal of 100 columns. */
public final class SpeciesSheet {

  private static final int NOTE_INDENT = 6;

  private final SpeciesEntry entry;
  private final SpeciesTraits tree;
  private final List<String> lines = new ArrayList<>();
  private final Set<String> cited = new TreeSet<>();

  public SpeciesSheet(SpeciesEntry entry) {
    this.entry = entry;
    this.tree = entry.traits();
  }

  /** The lines to print. */
  public List<String> lines() {
    head();
    for (TraitSection section : TraitSection.values()) {
      List<Sourced> rows =
          tree.numbers().rows().stream()
              .filter(row -> TraitSection.of(TraitLabel.bare(row)) == section)
              .toList();
      if (!rows.isEmpty()) {
        lines.add("");
        lines.add(section.title());
        rows(rows);
      }
    }
    sources();
    return List.copyOf(lines);
  }

  private void head() {
    lines.add(tree.commonName() + "  " + tree.scientificName() + " (" + tree.family() + ")");
    lines.add("id " + tree.id());
    also(
        "also called ",
        tree.commonNames()
            .subList(Math.min(1, tree.commonNames().size()), tree.commonNames().size()));
    also("found under ", entry.synonyms());
    lines.addAll(
        Wrap.text(
            tree.leafType().word()
                + ", "
                + tree.leafHabit().word()
                + ", "
                + tree.woodAnatomy().word()
                + " wood; compartmentalization: "
                + tree.compartmentClass().word()
                + "; sprouts: "
                + SproutingWord.of(tree.value("sprout_readiness")),
            0));
    tree.classSources().forEach(line -> lines.addAll(Wrap.text(line, 2)));
    lines.add("");
    lines.addAll(
        Wrap.text(
            "Each row: value, unit, plausible range, basis, source. 'group' marks a value of the group "
                + entry.group()
                + " or a wider one; 'drawn' marks a value that each future draws within its range.",
            0));
  }

  private void also(String lead, List<String> names) {
    if (!names.isEmpty()) {
      lines.addAll(Wrap.text(lead + String.join(", ", names), 0));
    }
  }

  private void rows(List<Sourced> rows) {
    String above = "";
    for (Sourced row : rows) {
      lines.addAll(Wrap.text(figures(row), 2));
      // The rows of one fit share a note: it is shown once.
      if (!row.note().isEmpty() && !row.note().equals(above)) {
        lines.addAll(Wrap.text(row.note(), NOTE_INDENT));
      }
      above = row.note();
    }
  }

  private String figures(Sourced row) {
    StringBuilder line =
        new StringBuilder(TraitLabel.of(row))
            .append(": ")
            .append(number(row.value()))
            .append(TraitLabel.unit(row))
            .append(" (")
            .append(number(row.range().low()))
            .append(" to ")
            .append(number(row.range().high()))
            .append("), ")
            .append(row.basis().label());
    if (!row.citation().isEmpty()) {
      cited.add(row.citation());
      line.append(" [").append(row.citation()).append(']');
    }
    line.append(entry.own(row.name()) ? "" : ", group").append(row.sampled() ? ", drawn" : "");
    return line.toString();
  }

  private void sources() {
    lines.add("");
    lines.add("Sources");
    // The classes may cite works that no number does.
    for (Citation work : Bibliography.load().all()) {
      if (tree.classSources().stream().anyMatch(line -> line.contains("[" + work.key() + "]"))) {
        cited.add(work.key());
      }
    }
    for (String key : cited) {
      Citation work = Bibliography.load().citation(key);
      lines.addAll(Wrap.text("[" + key + "] " + work.text(), 2));
      if (!work.note().isEmpty()) {
        lines.addAll(Wrap.text(work.note(), NOTE_INDENT));
      }
    }
  }

  private static String number(double value) {
    BigDecimal exact = new BigDecimal(value, new MathContext(4)).stripTrailingZeros();
    return exact.signum() == 0 ? "0" : exact.toPlainString();
  }
}
