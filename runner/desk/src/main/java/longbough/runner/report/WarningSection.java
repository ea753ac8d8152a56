package longbough.runner.report;

import java.util.List;
import longbough.runner.verdict.LimitWarnings;

/** Where a regime passes a published limit. */
final class WarningSection implements Section {

  @Override
  public void write(Page page, ReportInput input) {
    page.open("section", "aria-labelledby", "limits");
    page.element("h2", "Against published limits", "id", "limits");
    boolean none = true;
    page.open("div", "class", "regimes");
    for (int regime = 0; regime < input.comparison().regimes().size(); regime++) {
      List<String> warnings = LimitWarnings.of(input.comparison().regimes().get(regime));
      if (!warnings.isEmpty()) {
        none = false;
        page.open("div");
        RegimeKey.heading(page, "h3", input.comparison().regimes().get(regime).name(), regime);
        page.open("ul");
        warnings.forEach(warning -> page.element("li", warning));
        page.close().close();
      }
    }
    page.close();
    if (none) {
      page.element("p", "No regime passes a published limit in the median future.");
    } else {
      page.element(
          "p",
          "Limits warn, they never refuse: the regimes were played as they were asked for.",
          "class",
          "note");
    }
    page.close();
  }
}
