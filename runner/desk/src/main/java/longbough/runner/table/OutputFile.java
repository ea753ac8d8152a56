package longbough.runner.table;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/**
 * One file of output. It is written beside its place and moved there when it is whole, so that an
 * earlier file stands until then.
 */
public final class OutputFile {
  private final Path wanted;
  private final Path target;
  private final String option;

  private OutputFile(Path wanted, Path target, String option) {
    this.wanted = wanted;
    this.target = target;
    this.option = option;
  }

  /**
   * Checks that the file may and can be written, before any work is done for it; leaves nothing.
   *
   * @param option the option that named it, for the message
   */
  public static OutputFile prepare(Path wanted, String option) {
    Path target = wanted.toAbsolutePath().normalize();
    OutputFile file = new OutputFile(wanted, target, option);
    if (wanted.toString().isBlank()) {
      throw file.refused("nothing", "a file to write to");
    }
    if (Files.isDirectory(target)) {
      throw file.refused("a folder", "a file in it");
    }
    if (Files.exists(target, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(target)) {
      throw file.refused("neither a file nor a new name", "a file, or a name not yet taken");
    }
    if (!Files.isDirectory(target.getParent())) {
      throw file.refused("a place in a folder that doesn't exist", "a file in an existing folder");
    }
    file.probe();
    return file;
  }

  /** Writes the text and moves it to its place. */
  public void write(String text) throws IOException {
    Path part = part();
    try {
      Files.writeString(part, text, StandardCharsets.UTF_8);
      Path place = Files.exists(target) ? target.toRealPath() : target;
      Files.move(part, place, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  public Path path() {
    return wanted;
  }

  private void probe() {
    try {
      if (Files.exists(target) && !Files.isWritable(target)) {
        throw refused("a file that may not be written", "a file you may write");
      }
      Files.delete(Files.createFile(part()));
    } catch (IOException e) {
      throw refused("a place that cannot be written", "a folder in which you may make files");
    }
  }

  /** A new name on the same disk, so that the file can be moved in one step. */
  private Path part() {
    String name = "." + target.getFileName() + "-part-" + ProcessHandle.current().pid() + "-";
    int number = 1;
    while (Files.exists(target.resolveSibling(name + number), LinkOption.NOFOLLOW_LINKS)) {
      number++;
    }
    return target.resolveSibling(name + number);
  }

  private InputException refused(String found, String allowed) {
    return new InputException(
        List.of(
            new Problem(
                wanted.toString(),
                0,
                0,
                option,
                found,
                allowed,
                "name another file with " + option)));
  }
}
