package longbough.runner.drawing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.YearState;
import longbough.runner.drawing.scene.PngWriter;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.SvgWriter;

/** Writes every drawing of every regime as SVG and PNG. */
public final class Drawings {
  public static final String SIDE_VIEW = "side-view";
  public static final String TRUNK = "trunk";
  public static final String CROSS_SECTION = "cross-section";

  private static final String OVERVIEW = "all-regimes";
  private static final int LONGEST_STEM = 60;

  private Drawings() {}

  /** Writes three drawings a regime into a folder, which it makes; a file is whole or absent. */
  public static List<DrawingFile> writeAll(Path dir, List<RegimeYears> regimes, SpeciesLook look)
      throws IOException {
    Files.createDirectories(dir);
    List<DrawingFile> written = new ArrayList<>();
    Set<String> stems = new HashSet<>(Set.of(OVERVIEW));
    for (RegimeYears regime : regimes) {
      String stem = stem(regime.regime(), stems);
      String name = regime.regime();
      Scene side = TreeDrawing.elevation(name, regime.years(), look);
      Scene trunk = TreeDrawing.trunkSection(name, regime.years(), look);
      Scene cross = TreeDrawing.crossSections(name, regime.years(), look);
      written.add(write(dir, stem, name, SIDE_VIEW, side));
      written.add(write(dir, stem, name, TRUNK, trunk));
      written.add(write(dir, stem, name, CROSS_SECTION, cross));
    }
    return written;
  }

  /** Writes one side view of a tree as it comes out under each regime; its headings name them. */
  public static DrawingFile writeOverview(
      Path dir, String title, List<YearState> outcomes, SpeciesLook look) throws IOException {
    Files.createDirectories(dir);
    return write(dir, OVERVIEW, title, SIDE_VIEW, TreeDrawing.elevation(title, outcomes, look));
  }

  private static DrawingFile write(Path dir, String stem, String regime, String kind, Scene scene)
      throws IOException {
    Path svg = dir.resolve(stem + "-" + kind + ".svg");
    Path png = dir.resolve(stem + "-" + kind + ".png");
    put(svg, SvgWriter.write(scene).getBytes(StandardCharsets.UTF_8));
    put(png, PngWriter.write(scene));
    return new DrawingFile(regime, kind, scene, svg, png);
  }

  private static void put(Path file, byte[] bytes) throws IOException {
    Path half = file.resolveSibling(file.getFileName() + ".part");
    try {
      Files.write(half, bytes);
      Files.move(half, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(half);
    }
  }

  /** A regime's name as a safe and unique start of a file name. */
  private static String stem(String regime, Set<String> taken) {
    String plain = regime.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    plain = plain.replaceAll("^-|-$", "");
    plain = plain.isEmpty() ? "regime" : plain.substring(0, Math.min(LONGEST_STEM, plain.length()));
    String stem = plain;
    for (int number = 2; !taken.add(stem); number++) {
      stem = plain + "-" + number;
    }
    return stem;
  }
}
