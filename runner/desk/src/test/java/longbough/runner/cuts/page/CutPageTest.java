package longbough.runner.cuts.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import longbough.model.pruning.Placement;
import longbough.runner.cuts.CutFace;
import longbough.runner.cuts.CutTable;
import longbough.runner.cuts.CutTrial;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.validate.lab.TrunkBench;
import org.junit.jupiter.api.Test;

/** What is drawn of closing faces is what the model has: shapes by placement, and to scale. */
class CutPageTest {
  private static final String HORNBEAM = "carpinus-betulus";
  private static final CutTable TABLE = CutTable.of(List.of(HORNBEAM), 0.4, 0.003, 20);

  /** A collar cut's face stays a circle; a flush cut's gets narrow; a stub's waits. */
  @Test
  void shapesOfClosing() {
    for (CutFace face : faces(Placement.COLLAR)) {
      assertThat(face.openWidthM()).isEqualTo(face.openHeightM(), within(1e-12));
    }
    double slim = Double.MAX_VALUE;
    for (CutFace face : faces(Placement.FLUSH)) {
      if (!face.closed()) {
        assertThat(face.openWidthM() / face.openHeightM()).isLessThan(slim);
        slim = face.openWidthM() / face.openHeightM();
      }
    }
    assertThat(slim).isLessThan(0.5);
    for (CutFace face : faces(Placement.STUB)) {
      if (face.stubM() > 0) {
        assertThat(face.openWidthM()).isGreaterThanOrEqualTo(face.branchM());
      }
    }
    assertThat(faces(Placement.STUB).get(2).stubM()).isPositive();
  }

  /** Every ellipse of an open face has the area of the model's open face, at the scale drawn. */
  @Test
  void openFacesAreDrawnToScaleWithTheModelsArea() {
    TrunkBench bench = TrunkBench.of(HORNBEAM, 0.4, 14);
    int w = bench.cut(Placement.FLUSH, 0.12);
    bench.years(5, 0.003);
    List<CutTrial> trials = trials();
    double scale = ClosingPicture.scale(trials);
    double asked = bench.wounds.openAreaM2(w) * scale * scale;
    Scene scene = ClosingPicture.draw("x", trials);
    List<Double> areas = new ArrayList<>();
    ellipses(scene.shapes()).forEach(e -> areas.add(Math.PI * e.radiusX() * e.radiusY()));
    assertThat(areas).anyMatch(area -> Math.abs(area / asked - 1) < 1e-9);
    assertThat(scene.description()).contains("Collar cut: year 0", "closed in year");
  }

  @Test
  void thePageHasChartPictureAndTableOfEverySpecies() {
    String page = CutPage.of(TABLE, "test");
    assertThat(page).contains("years to close", "how the cut of a 12 cm branch closes", "<table");
    assertThat(page.split("<svg", -1)).hasSize(1 + 2);
    assertThat(page.split("<tr", -1)).hasSize(1 + 1 + 12);
    assertThat(page).contains("Closed is not sound").doesNotContain("NaN");
  }

  private static List<CutTrial> trials() {
    return TABLE.trials().stream().filter(trial -> trial.diameterM() == 0.12).toList();
  }

  private static List<CutFace> faces(Placement placement) {
    return trials().stream()
        .filter(trial -> trial.placement() == placement)
        .findFirst()
        .orElseThrow()
        .faces();
  }

  private static List<Shape.Ellipse> ellipses(List<Shape> shapes) {
    List<Shape.Ellipse> found = new ArrayList<>();
    for (Shape shape : shapes) {
      if (shape instanceof Shape.Group group) {
        found.addAll(ellipses(group.shapes()));
      } else if (shape instanceof Shape.Ellipse ellipse) {
        found.add(ellipse);
      }
    }
    return found;
  }
}
