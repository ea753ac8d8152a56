package longbough.runner.survey;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import longbough.runner.sheet.Sheet;

/** What a sheet holds: by its name, or else by the columns that only one kind of sheet has. */
final class SheetKind {
  private static final List<String> WORDS = List.of("limb", "wound", "decay", "tree");
  private static final List<String> KINDS = List.of("limbs", "wounds", "decay", "trees");

  private SheetKind() {}

  /** One of {@link Columns#SHEETS}, or empty. */
  static String of(Sheet sheet) {
    String name = sheet.name().toLowerCase(Locale.ROOT);
    for (int i = 0; i < WORDS.size(); i++) {
      if (name.contains(WORDS.get(i))) {
        return KINDS.get(i);
      }
    }
    Set<String> headings =
        sheet.rows().get(0).cells().stream()
            .map(Headings::plain)
            .map(heading -> heading.replaceFirst("_(m|ft|cm|in)$", ""))
            .collect(Collectors.toSet());
    if (headings.contains("species")) {
      return "trees";
    }
    if (headings.contains("sound_wall")) {
      return "decay";
    }
    if (headings.contains("still_open") || headings.contains("age_years")) {
      return "wounds";
    }
    return headings.contains("diameter") && headings.contains("height") ? "limbs" : "";
  }
}
