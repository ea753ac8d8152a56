package longbough.runner.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote beside this class. */
public final class Version implements IVersionProvider {

  /** The bare version, e.g. {@code 0.1.0}. */
  public static String text() {
    try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public String[] getVersion() {
    return new String[] {"longbough " + text()};
  }
}
