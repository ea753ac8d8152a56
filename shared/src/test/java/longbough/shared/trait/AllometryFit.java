package longbough.shared.trait;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;

/**
 * Ordinary least squares of ln y = a + b ln x over the trees of a selection; residual standard
 * deviation with n - 2 degrees of freedom. Trees thinner than 5 cm and younger than 3 years are
 * left out: they are nursery stock.
 */
record AllometryFit(int n, double intercept, double slope, double residualSd) {

  private static final double THINNEST_CM = 5;
  private static final double YOUNGEST_YEARS = 3;

  static AllometryFit of(AllometrySelection selection, List<NamedCsvRecord> trees) {
    boolean age = selection.quantity().equals("dbh_age");
    String x = age ? "age_yr" : "dbh_cm";
    String y =
        switch (selection.quantity()) {
          case "height" -> "height_m";
          case "crown_diameter" -> "crown_diameter_m";
          case "leaf_area" -> "leaf_area_m2";
          case "dbh_age" -> "dbh_cm";
          default -> throw new IllegalArgumentException(selection.quantity());
        };
    List<double[]> points = new ArrayList<>();
    for (NamedCsvRecord tree : trees) {
      double across = number(tree, x);
      double up = number(tree, y);
      if (selection.takes(tree) && across >= (age ? YOUNGEST_YEARS : THINNEST_CM) && up > 0) {
        points.add(new double[] {Math.log(across), Math.log(up)});
      }
    }
    return through(points);
  }

  private static AllometryFit through(List<double[]> points) {
    int n = points.size();
    double meanX = points.stream().mapToDouble(p -> p[0]).sum() / n;
    double meanY = points.stream().mapToDouble(p -> p[1]).sum() / n;
    double xx = points.stream().mapToDouble(p -> (p[0] - meanX) * (p[0] - meanX)).sum();
    double xy = points.stream().mapToDouble(p -> (p[0] - meanX) * (p[1] - meanY)).sum();
    double slope = xy / xx;
    double intercept = meanY - slope * meanX;
    double left =
        points.stream().mapToDouble(p -> p[1] - intercept - slope * p[0]).map(d -> d * d).sum();
    return new AllometryFit(n, intercept, slope, Math.sqrt(left / (n - 2)));
  }

  private static double number(NamedCsvRecord tree, String column) {
    String text = tree.getField(column);
    return text.isBlank() ? Double.NaN : Double.parseDouble(text);
  }
}
