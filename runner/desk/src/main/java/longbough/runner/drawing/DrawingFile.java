package longbough.runner.drawing;

import java.nio.file.Path;
import longbough.runner.drawing.scene.Scene;

/**
 * One drawing as written.
 *
 * @param regime whose tree it shows
 * @param kind {@code side-view}, {@code trunk} or {@code cross-section}
 * @param scene what is drawn, with title and description in words
 * @param svg the SVG file
 * @param png the PNG file of the same scene
 */
public record DrawingFile(String regime, String kind, Scene scene, Path svg, Path png) {}
