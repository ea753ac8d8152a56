package longbough.runner.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

  private DrawingPictures() {}

  /** Side views come first, so that they are the last to be left out of a heavy report. */
  static List<Picture> write(Comparison comparison, Path folder) throws IOException {
    List<RegimeYears> regimes = new ArrayList<>();
    for (RegimeResult result : comparison.regimes()) {
      List<YearState> years = new ArrayList<>();
      result
          .medianFuture()
          .snapshots()
          .forEach((year, state) -> years.add(new YearState(year, state)));
      if (!years.isEmpty()) {
        regimes.add(new RegimeYears(result.name(), years));
      }
    }
    if (regimes.isEmpty()) {
      return List.of();
    }
    SpeciesLook look = SpeciesLook.of(comparison.input().species());
    List<DrawingFile> files = Drawings.writeAll(folder, regimes, look);
    List<Picture> pictures = new ArrayList<>();
    for (String kind : List.of(Drawings.SIDE_VIEW, Drawings.TRUNK, Drawings.CROSS_SECTION)) {
      for (DrawingFile file : files) {
        if (file.kind().equals(kind)) {
          pictures.add(picture(file));
        }
      }
    }
    return pictures;
  }

  private static Picture picture(DrawingFile file) throws IOException {
    return new Picture(
        file.scene().title(), Files.readString(file.svg()), file.scene().description());
  }
}
