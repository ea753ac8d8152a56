package longbough.runner.survey;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/**
 * Writes text files into a folder, all or none: each is written beside its place under another name
 * first, and moved there when every one is whole. What stands there already stays unless asked.
 */
public final class TreeFiles {
  private static final String YAML = ".yaml";

  private TreeFiles() {}

  /** Name of the scenario file of a tree: letters, digits and hyphens of its name. */
  public static String fileName(SurveyedTree tree) {
    String plain =
        Normalizer.normalize(tree.name(), Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^\\p{L}\\p{N}]+", "-")
            .replaceAll("^-|-$", "");
    return plain + YAML;
  }

  /**
   * Writes the texts by file name.
   *
   * @param replace whether files of these names may give way
   * @param option what to say on the command line so that they do
   */
  public static void write(Path folder, Map<String, String> texts, boolean replace, String option)
      throws IOException {
    check(folder, texts, replace, option);
    Files.createDirectories(folder);
    Map<Path, Path> parts = new LinkedHashMap<>();
    try {
      for (Map.Entry<String, String> file : texts.entrySet()) {
        String beside = "." + file.getKey() + "-part-" + ProcessHandle.current().pid();
        Path part = folder.resolve(beside);
        parts.put(part, folder.resolve(file.getKey()));
        Files.writeString(part, file.getValue(), StandardCharsets.UTF_8);
      }
      for (Map.Entry<Path, Path> move : parts.entrySet()) {
        Files.move(move.getKey(), move.getValue(), StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      for (Path part : parts.keySet()) {
        Files.deleteIfExists(part);
      }
    }
  }

  /** Says what stands in the way of writing these files; leaves everything as it is. */
  public static void check(Path folder, Map<String, String> texts, boolean replace, String option) {
    List<Problem> problems = new ArrayList<>();
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      problems.add(
          new Problem(folder.toString(), 0, 0, "", "a file", "a folder", "name another folder"));
    } else {
      for (String name : texts.keySet()) {
        Path file = folder.resolve(name);
        boolean taken = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
        if (taken && (!replace || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))) {
          problems.add(
              new Problem(
                  file.toString(),
                  0,
                  0,
                  "",
                  "a file that is there already",
                  "a new name",
                  "name another folder, move it away, or add " + option + " to write over it"));
        }
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }
}
