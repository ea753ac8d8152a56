package longbough.runner.drawing.scene;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a scene as SVG and PNG of one name. */
public final class SceneFiles {

  private SceneFiles() {}

  public static void write(Scene scene, Path folder, String stem) throws IOException {
    Files.writeString(
        folder.resolve(stem + ".svg"), SvgWriter.write(scene), StandardCharsets.UTF_8);
    Files.write(folder.resolve(stem + ".png"), PngWriter.write(scene));
  }
}
