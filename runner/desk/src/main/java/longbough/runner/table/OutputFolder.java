package longbough.runner.table;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;

/**
 * The folder of one result. Everything is written beside its place and moved there when it is
 * whole; whatever ends the work before that, an interrupt included, leaves nothing behind and an
 * earlier result untouched.
 */
public final class OutputFolder implements AutoCloseable {
  /** Name of the file with the trees of a batch. */
  public static final String RANKED = "trees.csv";

  /** Name of the file with what a batch left out. */
  public static final String LEFT_OUT = "left-out.csv";

  private static final int REMOVAL_ATTEMPTS = 3;

  private final Path target;
  private final Path part;
  private final List<Path> madeParents;
  private final Thread onExit = new Thread(this::abandon, "remove-unfinished-output");
  private boolean done;

  private OutputFolder(Path target, Path part, List<Path> madeParents) {
    this.target = target;
    this.part = part;
    this.madeParents = madeParents;
    Runtime.getRuntime().addShutdownHook(onExit);
  }

  /** Checks that the folder may and can be written, before any work is done for it. */
  public static OutputFolder prepare(Path wanted) {
    Path target = OutputCheck.usable(wanted);
    List<Path> parents = OutputCheck.missingParents(target);
    return new OutputFolder(target, OutputCheck.partBeside(target, wanted), parents);
  }

  /** Where to write; what stands here becomes the result. */
  public Path folder() {
    return part;
  }

  /** A folder inside, made when needed. */
  public synchronized Path folder(String name) throws IOException {
    if (done) {
      throw new IOException("the output was given up");
    }
    return Files.createDirectories(part.resolve(name));
  }

  /** Moves the finished result to its place; an earlier result of ours gives way. */
  public synchronized Path finish() throws IOException {
    // Asked again, since the work may have taken long and somebody may have put something there.
    OutputCheck.usable(target);
    Path earlier = part.resolveSibling(part.getFileName() + "-earlier");
    boolean replaces = Files.exists(target);
    if (replaces) {
      Files.move(target, earlier);
    }
    try {
      Files.move(part, target);
    } catch (IOException e) {
      if (replaces) {
        Files.move(earlier, target);
      }
      throw e;
    }
    done = true;
    if (replaces) {
      delete(earlier);
    }
    return target;
  }

  /** Gives up what was not finished. */
  @Override
  public void close() {
    abandon();
    try {
      Runtime.getRuntime().removeShutdownHook(onExit);
    } catch (IllegalStateException ending) {
      // The program is ending: the hook runs anyway and finds nothing to do.
    }
  }

  private synchronized void abandon() {
    if (done) {
      return;
    }
    done = true;
    // A writer may still be adding a file while the program is being stopped.
    for (int attempt = 0; attempt < REMOVAL_ATTEMPTS && Files.exists(part); attempt++) {
      try {
        delete(part);
      } catch (IOException tryAgain) {
        continue;
      }
    }
    for (Path parent : madeParents) {
      try {
        Files.deleteIfExists(parent);
      } catch (IOException inUse) {
        return;
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.deleteIfExists(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path at, IOException failure)
              throws IOException {
            Files.deleteIfExists(at);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
