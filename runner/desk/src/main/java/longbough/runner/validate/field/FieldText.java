package longbough.runner.validate.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What was found beside open measurements, as lines for a terminal. */
public final class FieldText {

  private FieldText() {}

  public static List<String> lines(FieldReport report) {
    List<String> lines = new ArrayList<>();
    lines.add("BESIDE OPEN MEASUREMENTS");
    report.leftOut().forEach(why -> lines.add("  " + why));
    if (report.species().isEmpty()) {
      return lines;
    }
    lines.add(
        "  Grown from 5 cm for 60 years among measured street trees: % of the model's sizes in");
    lines.add("  the 95 % band, and bias (mean of ln of model over expected; -0.69 is half).");
    lines.add("  Last: leaf area found again from the other sizes, R2 of ln.");
    lines.add(
        String.format(
            Locale.ROOT,
            "  %-26s%13s%13s%13s%13s%8s",
            "",
            "height",
            "crown",
            "leaf area",
            "dbh by age",
            "leaf R2"));
    report.species().forEach(trial -> lines.add(line(trial)));
    return lines;
  }

  private static String line(SpeciesTrial trial) {
    StringBuilder line = new StringBuilder("  ");
    line.append(String.format(Locale.ROOT, "%-26s", trial.species().id()));
    for (Relation relation : Relation.values()) {
      line.append(String.format(Locale.ROOT, "%13s", figures(trial.relation(relation))));
    }
    return line.append(String.format(Locale.ROOT, "%8.2f", trial.hidden().r2())).toString();
  }

  private static String figures(Optional<RelationTrial> trial) {
    return trial
        .filter(t -> t.points() > 0)
        .map(
            t ->
                String.format(
                    Locale.ROOT, "%d %% %+.2f", Math.round(100 * t.share95()), t.lnBias()))
        .orElse("-");
  }
}
