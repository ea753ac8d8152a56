package longbough.runner.client.page;

import java.util.List;
import java.util.Optional;
import longbough.model.SimulationInput;
import longbough.runner.assumption.Assumptions;
import longbough.runner.chart.LineChart;
import longbough.runner.client.file.Client;
import longbough.runner.client.words.Amounts;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.RegimeResult;
import longbough.runner.compare.Summary;
import longbough.runner.report.Picture;
import longbough.runner.table.Provenance;

/**
 * All that the client report is made from.
 *
 * @param client who asked, who answers, and the words
 * @param summary figures of every plan, with the comparison they come from
 * @param leaning which parameters the verdict leans on, where that was tried
 * @param strips drawings of the first few plans over the years
 * @param charts in the order in which they are shown; the last are those of survival and cost
 * @param provenance what is needed to get the same again
 * @param paper whether it is for sheets of paper, where room is short
 */
public record ClientInput(
    Client client,
    Summary summary,
    Optional<Assumptions> leaning,
    List<Picture> strips,
    List<LineChart> charts,
    Provenance provenance,
    boolean paper) {

  public ClientInput {
    strips = List.copyOf(strips);
    charts = List.copyOf(charts);
  }

  /** The same for sheets of paper. */
  ClientInput onPaper() {
    return new ClientInput(client, summary, leaning, strips, charts, provenance, true);
  }

  String say(String key, Object... parts) {
    return client.words().say(key, parts);
  }

  Amounts amounts() {
    return new Amounts(client.words(), asked().crew().currency());
  }

  Comparison comparison() {
    return summary.comparison();
  }

  SimulationInput asked() {
    return comparison().input();
  }

  List<RegimeResult> plans() {
    return comparison().regimes();
  }

  String title() {
    return client.title().isEmpty() ? asked().title() : client.title();
  }

  /** A plan's name as it stands in sentences. */
  String name(int plan) {
    return amounts().quoted(plans().get(plan).name());
  }
}
