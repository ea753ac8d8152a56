package longbough.runner.fit.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.runner.fit.Fitted;
import longbough.runner.fit.FreeParameter;
import longbough.runner.table.OutputFile;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;
import longbough.shared.source.ParameterReader;

/** The parameter files of a checkout, into which fitted values are written. */
public final class ParameterFiles {
  private static final String FOLDER = "shared/src/main/resources/longbough/parameters";

  private final Map<String, ParameterFile> byGroup;
  private final Map<String, OutputFile> places;

  private ParameterFiles(Map<String, ParameterFile> byGroup, Map<String, OutputFile> places) {
    this.byGroup = byGroup;
    this.places = places;
  }

  /**
   * Checks that the rows can be written, before any work is done for them; changes nothing.
   *
   * @param checkout the folder that holds Longbough's sources
   * @param option the option that named it, for messages
   */
  public static ParameterFiles prepare(Path checkout, List<FreeParameter> parameters, String option)
      throws IOException {
    Path folder = checkout.resolve(FOLDER);
    if (!Files.isDirectory(folder)) {
      throw new InputException(
          List.of(
              new Problem(
                  checkout.toString(),
                  0,
                  0,
                  option,
                  "a folder without " + FOLDER,
                  "a checkout of Longbough",
                  "run it in the checkout, or name the checkout with " + option + "=FOLDER")));
    }
    Map<String, ParameterFile> files = new LinkedHashMap<>();
    Map<String, OutputFile> places = new LinkedHashMap<>();
    for (FreeParameter parameter : parameters) {
      String group = group(parameter);
      if (!files.containsKey(group)) {
        Path path = folder.resolve(group + ".csv");
        if (!Files.isRegularFile(path)) {
          throw new InputException(
              List.of(
                  new Problem(
                      path.toString(),
                      0,
                      0,
                      option,
                      "no such file",
                      "the file of " + parameter.name(),
                      "build again, then fit again")));
        }
        files.put(group, ParameterFile.read(path));
        places.put(group, OutputFile.prepare(path, option));
      }
      files.get(group).row(parameter);
    }
    return new ParameterFiles(files, places);
  }

  /** Writes the new rows; every other byte of the files stays. Returns the files changed. */
  public List<Path> write(List<Fitted> all, String date) throws IOException {
    Map<String, ParameterFile> changed = new LinkedHashMap<>();
    for (Fitted fitted : all) {
      ParameterFile file = byGroup.get(group(fitted.parameter()));
      DataRow row = file.row(fitted.parameter());
      file.replace(row, RowText.line(RowText.fields(fitted, row.fields(), date)));
      changed.put(group(fitted.parameter()), file);
    }
    // Nothing is written before everything is known to be sound.
    for (ParameterFile file : changed.values()) {
      ParameterReader.read(
          DataFile.parse(file.path().toString(), file.text(), ParameterReader.HEADER));
      if (file.changedSince()) {
        throw new InputException(
            List.of(
                new Problem(
                    file.path().toString(),
                    0,
                    0,
                    "",
                    "a file that changed while the fit was running",
                    "the file as it was at the start",
                    "take the rows from the result's parameter-rows.csv, or fit again")));
      }
    }
    List<Path> paths = new ArrayList<>();
    for (Map.Entry<String, ParameterFile> file : changed.entrySet()) {
      places.get(file.getKey()).write(file.getValue().text());
      paths.add(file.getValue().path());
    }
    return paths;
  }

  private static String group(FreeParameter parameter) {
    return parameter.name().substring(0, parameter.name().indexOf('.'));
  }
}
