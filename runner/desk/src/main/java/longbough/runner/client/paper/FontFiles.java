package longbough.runner.client.paper;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import longbough.runner.type.Fonts;

/**
 * Our fonts as files of their own while a PDF is written: the painter of pictures takes them from
 * nowhere else, and would set words in whatever the machine has.
 */
final class FontFiles implements AutoCloseable {
  private final Path folder;

  FontFiles() throws IOException {
    folder = Files.createTempDirectory("longbough-type");
    try {
      copy(Fonts.REGULAR_FILE);
      copy(Fonts.SEMIBOLD_FILE);
    } catch (IOException e) {
      close();
      throw e;
    }
  }

  File regular() {
    return folder.resolve(Fonts.REGULAR_FILE).toFile();
  }

  File semibold() {
    return folder.resolve(Fonts.SEMIBOLD_FILE).toFile();
  }

  @Override
  public void close() throws IOException {
    Files.deleteIfExists(folder.resolve(Fonts.REGULAR_FILE));
    Files.deleteIfExists(folder.resolve(Fonts.SEMIBOLD_FILE));
    Files.deleteIfExists(folder);
  }

  private void copy(String file) throws IOException {
    try (InputStream in = Fonts.class.getResourceAsStream(file)) {
      Files.copy(in, folder.resolve(file));
    }
  }
}
