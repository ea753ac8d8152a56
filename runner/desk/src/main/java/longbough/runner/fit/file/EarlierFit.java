package longbough.runner.fit.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longbough.runner.fit.FreeParameter;
import longbough.runner.fit.Space;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;

/** The values of an earlier fit's {@code fitted.csv}, from which a search goes on. */
public final class EarlierFit {
  private EarlierFit() {}

  /**
   * The point at which the earlier fit ended; parameters that it doesn't name are where they are.
   */
  public static double[] point(Path file, Space space, String option) throws IOException {
    if (!Files.isRegularFile(file)) {
      throw new InputException(
          List.of(
              new Problem(
                  file.toString(),
                  0,
                  0,
                  option,
                  "no such file",
                  "the " + ResultFiles.FITTED + " of an earlier fit",
                  "name another file with " + option)));
    }
    String text = Files.readString(file, StandardCharsets.UTF_8);
    Map<String, DataRow> rows = new HashMap<>();
    for (DataRow row : DataFile.parse(file.toString(), text, ResultFiles.FITTED_HEADER)) {
      rows.put(row.text("name"), row);
    }
    double[] point = space.start();
    for (int axis = 0; axis < point.length; axis++) {
      FreeParameter parameter = space.axes().get(axis);
      DataRow row = rows.remove(parameter.name());
      if (row != null) {
        point[axis] = parameter.share(value(row, parameter));
      }
    }
    for (DataRow row : rows.values()) {
      throw row.wrong(
          "name",
          "'" + row.text("name") + "', which this fit doesn't set",
          "parameters of this fit",
          "name it with --parameters too, or remove the row");
    }
    return point;
  }

  private static double value(DataRow row, FreeParameter parameter) {
    double value = row.number("after");
    if (!parameter.row().range().contains(value)) {
      throw row.wrong(
          "after",
          row.text("after"),
          parameter.row().range().low() + " to " + parameter.row().range().high(),
          "mend the value or remove the row");
    }
    return value;
  }
}
