package longbough.runner.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import longbough.model.state.CauseOfDeath;
import longbough.model.state.TreeState;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.YearState;
import longbough.runner.drawing.scene.PngWriter;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.SvgWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class TreeDrawingTest {
  private static final int MOST_BYTES = 120_000;

  record Case(String name, List<YearState> years, SpeciesLook look) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Case> trees() {
    TreeState dead = DrawingFixtures.lime(9, 11);
    DrawingFixtures.die(dead, CauseOfDeath.STARVED, 8);
    return Stream.of(
        new Case("healthy", DrawingFixtures.healthyLime(), DrawingFixtures.LIME),
        new Case("topped", DrawingFixtures.toppedLime(), DrawingFixtures.LIME),
        new Case("lion-tailed", DrawingFixtures.lionTailedLime(), DrawingFixtures.LIME),
        new Case("over-thinned", DrawingFixtures.overThinnedSpruce(), DrawingFixtures.SPRUCE),
        new Case("decayed", DrawingFixtures.decayedLime(), DrawingFixtures.LIME),
        new Case("dead", List.of(new YearState(9, dead)), DrawingFixtures.PINE),
        new Case(
            "limbless",
            List.of(new YearState(3, DrawingFixtures.limbless())),
            DrawingFixtures.CYPRESS),
        new Case(
            "empty", List.of(new YearState(0, DrawingFixtures.empty())), DrawingFixtures.LIME));
  }

  static Stream<Scene> scenes() {
    return trees().flatMap(TreeDrawingTest::drawn);
  }

  private static Stream<Scene> drawn(Case tree) {
    return Stream.of(
        TreeDrawing.elevation(tree.name(), tree.years(), tree.look()),
        TreeDrawing.trunkSection(tree.name(), tree.years(), tree.look()),
        TreeDrawing.crossSections(tree.name(), tree.years(), tree.look()));
  }

  @ParameterizedTest
  @MethodSource("trees")
  void theSameTreeGivesTheSameBytes(Case tree) {
    List<Scene> once = drawn(tree).toList();
    List<Scene> again = drawn(tree).toList();
    for (int i = 0; i < once.size(); i++) {
      assertThat(SvgWriter.write(once.get(i))).isEqualTo(SvgWriter.write(again.get(i)));
      assertThat(PngWriter.write(once.get(i))).isEqualTo(PngWriter.write(again.get(i)));
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void theSvgIsWellFormedSmallAndSpeaks(Scene scene) throws Exception {
    String svg = SvgWriter.write(scene);
    assertThat(svg.getBytes(StandardCharsets.UTF_8).length).isLessThan(MOST_BYTES);
    Document document = parse(svg);
    Element root = document.getDocumentElement();
    assertThat(root.getAttribute("role")).isEqualTo("img");
    assertThat(text(root, "title")).isEqualTo(scene.title());
    assertThat(text(root, "desc")).isEqualTo(scene.description()).matches("(?s).*\\d.*");
    assertThat(root.getElementsByTagName("text").getLength()).isPositive();
    assertThat(svg).doesNotContain("NaN").doesNotContain("Infinity");
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void thePngHasTwoPixelsAUnit(Scene scene) throws Exception {
    var image = ImageIO.read(new ByteArrayInputStream(PngWriter.write(scene)));
    assertThat(image.getWidth()).isEqualTo(2 * scene.width());
    assertThat(image.getHeight()).isEqualTo(2 * scene.height());
  }

  @Test
  void everyLabelIsEscaped() throws Exception {
    String hostile = "A & B <script>alert('\"')</script> \u0001 ]]>";
    SpeciesLook look = new SpeciesLook(hostile, DrawingFixtures.LIME.foliage(), false, 0.5);
    List<YearState> years = DrawingFixtures.healthyLime();
    for (Scene scene :
        List.of(
            TreeDrawing.elevation(hostile, years, look),
            TreeDrawing.trunkSection(hostile, years, look),
            TreeDrawing.crossSections(hostile, years, look))) {
      Document document = parse(SvgWriter.write(scene));
      assertThat(document.getElementsByTagName("script").getLength()).isZero();
      assertThat(text(document.getDocumentElement(), "title"))
          .isEqualTo(hostile.replace('\u0001', '?'));
    }
  }

  @Test
  void theDescriptionTellsTheStory() {
    Scene scene =
        TreeDrawing.elevation("x", DrawingFixtures.overThinnedSpruce(), DrawingFixtures.SPRUCE);
    assertThat(scene.description())
        .contains("As measured: alive, 16.0 m tall")
        .contains("Year 15: alive")
        .contains("14 dead limbs still attached")
        .contains("Year 30: died in year 22 (drought)");
  }

  @Test
  void aFallenTreeIsFaintAndSaysSo() {
    TreeState fallen = DrawingFixtures.lime(9, 11);
    DrawingFixtures.die(fallen, CauseOfDeath.UPROOTED, 8);
    List<YearState> years = List.of(new YearState(9, fallen));
    String svg = SvgWriter.write(TreeDrawing.elevation("x", years, DrawingFixtures.LIME));
    assertThat(svg).contains("<g opacity=\"0.30\"", ">fell in year 8<", "faint: no longer stands");
  }

  @Test
  void theBarrierZoneIsDrawnWhereTheSurfaceStood() {
    Scene scene =
        TreeDrawing.crossSections("x", DrawingFixtures.decayedLime(), DrawingFixtures.LIME);
    assertThat(SvgWriter.write(scene)).contains("barrier zone", "wall t/R", "strength lost");
    assertThat(scene.description()).contains("of the section decayed");
    Scene sound =
        TreeDrawing.crossSections("x", DrawingFixtures.healthyLime(), DrawingFixtures.LIME);
    assertThat(SvgWriter.write(sound)).doesNotContain("barrier zone").contains(">sound<");
  }

  @Test
  void lessLeafIsDrawnAsFewerMarks() {
    List<YearState> years = DrawingFixtures.overThinnedSpruce();
    int before = marks(TreeDrawing.elevation("x", years.subList(0, 1), DrawingFixtures.SPRUCE));
    TreeState thinned = years.get(1).state();
    List<YearState> pair = List.of(years.get(0), new YearState(5, thinned));
    int both = marks(TreeDrawing.elevation("x", pair, DrawingFixtures.SPRUCE));
    double share = (both - before) / (double) before;
    double leaf = thinned.leafAreaM2() / years.get(0).state().leafAreaM2();
    assertThat(share).isBetween(leaf - 0.05, leaf + 0.05);
  }

  private static int marks(Scene scene) {
    return new MarkCount().of(scene.shapes());
  }

  private static Document parse(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
  }

  private static String text(Element root, String name) {
    return root.getElementsByTagName(name).item(0).getTextContent();
  }
}
