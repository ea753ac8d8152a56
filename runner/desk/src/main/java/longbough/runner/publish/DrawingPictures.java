package longbough.runner.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longbough.model.state.TreeState;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.RegimeResult;
import longbough.runner.drawing.DrawingFile;
import longbough.runner.drawing.Drawings;
import longbough.runner.drawing.RegimeYears;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.YearState;
import longbough.runner.report.Picture;

/** Draws the tree of the median future under each regime and hands the drawings to the report. */
final class DrawingPictures {
  /** Trees beside the one as measured that still have room on a page. */
  private static final int MOST_OUTCOMES = 5;

  /** Trunks in the report; all are drawn in the folder. */
  private static final int MOST_TRUNKS = 2;

  /** A trunk that never loses this share of its strength is not in the report. */
  private static final double WORTH_SHOWING = 0.01;

  private DrawingPictures() {}

  /** The tree as measured and as it comes out under the first few regimes. */
  static Optional<Picture> overview(Comparison comparison, Path folder) throws IOException {
    List<YearState> outcomes = new ArrayList<>();
    int last = comparison.years();
    for (RegimeResult result : comparison.regimes()) {
      Map<Integer, TreeState> states = result.medianFuture().snapshots();
      if (outcomes.isEmpty() && states.containsKey(0)) {
        outcomes.add(new YearState(0, states.get(0)));
      }
      if (outcomes.size() <= MOST_OUTCOMES && states.containsKey(last)) {
        outcomes.add(new YearState(last, states.get(last), result.name()));
      }
    }
    if (outcomes.isEmpty()) {
      return Optional.empty();
    }
    String title = "The tree now, and in year " + last + " under each regime";
    if (comparison.regimes().size() > MOST_OUTCOMES) {
      title =
          "The tree now, and in year " + last + " under the first " + MOST_OUTCOMES + " regimes";
    }
    SpeciesLook look = SpeciesLook.of(comparison.input().species());
    return Optional.of(picture(Drawings.writeOverview(folder, title, outcomes, look)));
  }

  /** Side views come first, so that they are the last to be left out of a heavy report. */
  static List<Picture> write(Comparison comparison, Path folder) throws IOException {
    List<RegimeYears> regimes = new ArrayList<>();
    Map<String, Double> losses = new LinkedHashMap<>();
    for (RegimeResult result : comparison.regimes()) {
      List<YearState> years = new ArrayList<>();
      result
          .medianFuture()
          .snapshots()
          .forEach((year, state) -> years.add(new YearState(year, state)));
      if (!years.isEmpty()) {
        regimes.add(new RegimeYears(result.name(), years));
      }
      losses.put(result.name(), years.stream().mapToDouble(DrawingPictures::loss).max().orElse(0));
    }
    if (regimes.isEmpty()) {
      return List.of();
    }
    SpeciesLook look = SpeciesLook.of(comparison.input().species());
    List<DrawingFile> files = Drawings.writeAll(folder, regimes, look);
    List<String> weakest = weakest(losses);
    List<Picture> pictures = new ArrayList<>();
    for (DrawingFile file : files) {
      if (file.kind().equals(Drawings.SIDE_VIEW)) {
        pictures.add(picture(file));
      }
    }
    for (DrawingFile file : files) {
      if (!file.kind().equals(Drawings.SIDE_VIEW) && weakest.contains(file.regime())) {
        pictures.add(picture(file));
      }
    }
    return pictures;
  }

  private static double loss(YearState year) {
    return year.state().vitality.worstStrengthLoss;
  }

  /** The few regimes whose trunks tell most. */
  private static List<String> weakest(Map<String, Double> losses) {
    return losses.entrySet().stream()
        .filter(entry -> entry.getValue() >= WORTH_SHOWING)
        .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
        .limit(MOST_TRUNKS)
        .map(Map.Entry::getKey)
        .toList();
  }

  private static Picture picture(DrawingFile file) throws IOException {
    return new Picture(
        file.scene().title(), Files.readString(file.svg()), file.scene().description());
  }
}
