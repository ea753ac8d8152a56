package longbough.model.odd;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import longbough.shared.source.Bibliography;
import longbough.shared.source.ParameterLibrary;
import longbough.shared.source.Sourced;
import longbough.shared.trait.SpeciesLibrary;

/** The tables of numbers: general parameters, what differs by species, and the sources. */
final class ParameterTables {

  private ParameterTables() {}

  static String general() {
    StringBuilder out = new StringBuilder();
    String group = "";
    for (Sourced row : ParameterLibrary.general().rows()) {
      String own = row.name().substring(0, row.name().indexOf('.'));
      if (!own.equals(group)) {
        group = own;
        out.append("\n### ").append(group).append("\n\n");
        out.append("| name | value | unit | range | drawn | basis | source | note |\n");
        out.append("|---|---|---|---|---|---|---|---|\n");
      }
      cells(
          out,
          code(row.name().substring(own.length() + 1)),
          number(row.value()),
          row.unit(),
          range(row.range().low(), row.range().high()),
          row.sampled() ? "yes" : "",
          row.basis().label(),
          row.citation(),
          row.note());
    }
    return out.toString().strip();
  }

  static String species() {
    Map<String, List<Sourced>> byName = new LinkedHashMap<>();
    SpeciesLibrary library = SpeciesLibrary.load();
    for (String id : library.ids()) {
      for (Sourced row : library.get(id).numbers().rows()) {
        byName.computeIfAbsent(row.name(), name -> new ArrayList<>()).add(row);
      }
    }
    StringBuilder out = new StringBuilder();
    out.append(library.ids().size()).append(" species.\n\n");
    out.append("| name | unit | least and most over the species | basis |\n|---|---|---|---|\n");
    byName.forEach((name, rows) -> species(out, name, rows));
    return out.toString().strip();
  }

  private static void species(StringBuilder out, String name, List<Sourced> rows) {
    TreeSet<String> bases = new TreeSet<>();
    rows.forEach(row -> bases.add(row.basis().label()));
    cells(
        out,
        code(name.replaceFirst("^species\\.", "")),
        rows.get(0).unit(),
        range(
            rows.stream().mapToDouble(Sourced::value).min().orElseThrow(),
            rows.stream().mapToDouble(Sourced::value).max().orElseThrow()),
        String.join(", ", bases));
  }

  static String sources(TreeSet<String> ofProcesses) {
    TreeSet<String> keys = new TreeSet<>(ofProcesses);
    ParameterLibrary.general().rows().stream()
        .map(Sourced::citation)
        .filter(key -> !key.isEmpty())
        .forEach(keys::add);
    StringBuilder out = new StringBuilder();
    Bibliography all = Bibliography.load();
    for (String key : keys) {
      out.append("* ").append(code(key)).append(": ");
      out.append(all.has(key) ? escaped(all.citation(key).text()) : "not in the bibliography");
      out.append('\n');
    }
    return out.toString().strip();
  }

  static void cells(StringBuilder out, String... cells) {
    for (String cell : cells) {
      out.append("| ").append(cell.startsWith("`") ? cell : escaped(cell)).append(' ');
    }
    out.append("|\n");
  }

  private static String escaped(String text) {
    return text.replaceAll("([*_|<])", "\\\\$1");
  }

  private static String code(String text) {
    return "`" + text + "`";
  }

  private static String range(double low, double high) {
    return number(low) + " to " + number(high);
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
