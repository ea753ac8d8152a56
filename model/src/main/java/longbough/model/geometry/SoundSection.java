package longbough.model.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A round section with any union of round holes and open sectors, off centre where they are: area
 * and section modulus about the weakest axis by converged quadrature. The plain and slow reference
 * beside {@link SectionModulus}, for what is shown or checked, not for the yearly loop.
 *
 * <pre>
 * A = ∫∫ r dr dθ,  S = ∫∫ r² (cos θ, sin θ) dr dθ,  I = ∫∫ r³ (cos², sin², sin cos) dr dθ
 * W(u) = I(u) / c(u),   W = least over all directions u
 * </pre>
 *
 * over the sound wood, I moved to its centroid (parallel axis), c the distance from the centroid's
 * axis to the farthest sound wood (m). Radial integrals are exact over the spans between the holes
 * that a ray meets; those over the angle are Gauss-Legendre pieces between the angles at which a
 * hole or an opening begins or ends, stretched there where the edge is tangent to the ray, and
 * halved until nothing changes by more than 1e-11. Lengths m. Elementary mechanics, no source
 * needed.
 */
public final class SoundSection {
  private static final double CONVERGED = 1e-11;
  private static final int MOST_HALVINGS = 10;
  private static final int DIRECTIONS = 1440;
  private static final int GOLDEN_STEPS = 60;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /** Nodes and weights of the eight-point Gauss-Legendre rule on -1 to 1 (positive half). */
  private static final double[] NODES = {
    0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363
  };

  private static final double[] WEIGHTS = {
    0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763
  };

  /** A round hole: place of its middle from the pith and radius, m. */
  public record Hole(double x, double y, double radius) {}

  /**
   * A sector without wood from a radius (m) to the surface.
   *
   * @param middle angle of its middle, rad
   * @param halfAngle half its width, rad, below π
   */
  public record Opening(double middle, double halfAngle, double from) {}

  private final double radius;
  private final List<Hole> holes;
  private final List<Opening> openings;
  private final double[] breaks;
  private final double[] moments;

  public SoundSection(double radius, List<Hole> holes, List<Opening> openings) {
    this.radius = radius;
    this.holes = List.copyOf(holes);
    this.openings = List.copyOf(openings);
    this.breaks = breaks();
    this.moments = converged();
  }

  public double areaLoss() {
    return 1 - moments[0] / (Math.PI * radius * radius);
  }

  /** Share of the section modulus lost in the weakest direction. */
  public double modulusLoss() {
    return 1 - modulusM3() / (Math.PI / 4 * radius * radius * radius);
  }

  /** Least section modulus over all directions, m3. */
  public double modulusM3() {
    if (!(moments[0] > 0)) {
      return 0;
    }
    double[][] edge = edge();
    int least = 0;
    double[] at = new double[DIRECTIONS];
    for (int k = 0; k < DIRECTIONS; k++) {
      at[k] = modulus(Math.PI * 2 * k / DIRECTIONS, edge);
      least = at[k] < at[least] ? k : least;
    }
    return refined(
        2 * Math.PI * (least - 1) / DIRECTIONS, 2 * Math.PI * (least + 1) / DIRECTIONS, edge);
  }

  private double refined(double low, double high, double[][] edge) {
    double a = low;
    double b = high;
    double best = modulus((a + b) / 2, edge);
    for (int step = 0; step < GOLDEN_STEPS; step++) {
      double c = b - GOLDEN * (b - a);
      double d = a + GOLDEN * (b - a);
      double atC = modulus(c, edge);
      double atD = modulus(d, edge);
      best = Math.min(best, Math.min(atC, atD));
      if (atC < atD) {
        b = d;
      } else {
        a = c;
      }
    }
    return best;
  }

  private double modulus(double direction, double[][] edge) {
    double cos = Math.cos(direction);
    double sin = Math.sin(direction);
    double shift = (moments[1] * cos + moments[2] * sin) / moments[0];
    double second =
        moments[3] * cos * cos
            + moments[4] * sin * sin
            + 2 * moments[5] * sin * cos
            - moments[0] * shift * shift;
    double ahead = -radius;
    for (double[] point : edge) {
      ahead = Math.max(ahead, point[0] * cos + point[1] * sin);
    }
    if (soundAtSurface(direction)) {
      ahead = radius;
    }
    return second / Math.max(1e-12, ahead - shift);
  }

  // Outermost sound wood round the section, with the edges of every opening.
  private double[][] edge() {
    List<double[]> points = new ArrayList<>();
    for (int k = 0; k < DIRECTIONS; k++) {
      addEdge(points, 2 * Math.PI * k / DIRECTIONS);
    }
    for (double angle : breaks) {
      addEdge(points, angle);
      points.add(
          new double[] {outermost(angle) * Math.cos(angle), outermost(angle) * Math.sin(angle)});
    }
    for (Opening opening : openings) {
      for (int side = -1; side <= 1; side += 2) {
        double angle = opening.middle() + side * opening.halfAngle() * (1 + 1e-12);
        addEdge(points, angle);
      }
    }
    return points.toArray(new double[0][]);
  }

  private void addEdge(List<double[]> points, double angle) {
    double out = outermost(angle);
    points.add(new double[] {out * Math.cos(angle), out * Math.sin(angle)});
  }

  private boolean soundAtSurface(double angle) {
    return outermost(angle) >= radius;
  }

  private double outermost(double angle) {
    double out = radius;
    double[][] spans = spans(angle);
    for (int i = spans.length - 1; i >= 0; i--) {
      if (spans[i][1] >= out) {
        out = spans[i][0];
      }
    }
    return out;
  }

  private double[] converged() {
    double[] before = integrated(1);
    for (int halving = 1; halving <= MOST_HALVINGS; halving++) {
      double[] now = integrated(1 << halving);
      boolean same = true;
      double scale = 1;
      for (int i = 0; i < now.length; i++) {
        scale = i == 0 ? radius * radius : i < 3 ? Math.pow(radius, 3) : Math.pow(radius, 4);
        same &= Math.abs(now[i] - before[i]) <= CONVERGED * scale;
      }
      if (same) {
        return now;
      }
      before = now;
    }
    return before;
  }

  private double[] integrated(int parts) {
    double[] sum = new double[6];
    for (int i = 0; i < breaks.length; i++) {
      double from = breaks[i];
      double to = i + 1 < breaks.length ? breaks[i + 1] : breaks[0] + 2 * Math.PI;
      // θ = middle - half cos φ takes the root away from edges that are tangent to the ray.
      for (int part = 0; part < parts; part++) {
        double low = Math.PI * part / parts;
        double high = Math.PI * (part + 1) / parts;
        for (int node = -NODES.length; node < NODES.length; node++) {
          int k = node < 0 ? -node - 1 : node;
          double phi = (low + high) / 2 + (high - low) / 2 * (node < 0 ? -NODES[k] : NODES[k]);
          double theta = (from + to) / 2 - (to - from) / 2 * Math.cos(phi);
          double weight = WEIGHTS[k] * (high - low) / 2 * (to - from) / 2 * Math.sin(phi);
          add(sum, theta, weight);
        }
      }
    }
    return sum;
  }

  private void add(double[] sum, double theta, double weight) {
    double area = radius * radius;
    double first = area * radius;
    double second = area * area;
    for (double[] span : spans(theta)) {
      double a = span[0];
      double b = Math.min(radius, span[1]);
      area -= b * b - a * a;
      first -= b * b * b - a * a * a;
      second -= b * b * b * b - a * a * a * a;
    }
    double cos = Math.cos(theta);
    double sin = Math.sin(theta);
    sum[0] += weight * area / 2;
    sum[1] += weight * first / 3 * cos;
    sum[2] += weight * first / 3 * sin;
    sum[3] += weight * second / 4 * cos * cos;
    sum[4] += weight * second / 4 * sin * sin;
    sum[5] += weight * second / 4 * sin * cos;
  }

  /** What a ray from the pith meets without wood, from inside out, joined where it overlaps. */
  private double[][] spans(double theta) {
    List<double[]> met = new ArrayList<>();
    for (Hole hole : holes) {
      double along = hole.x() * Math.cos(theta) + hole.y() * Math.sin(theta);
      double across = hole.x() * Math.sin(theta) - hole.y() * Math.cos(theta);
      double root = hole.radius() * hole.radius() - across * across;
      if (root > 0 && along + Math.sqrt(root) > 0) {
        met.add(new double[] {Math.max(0, along - Math.sqrt(root)), along + Math.sqrt(root)});
      }
    }
    for (Opening opening : openings) {
      if (Math.abs(Math.IEEEremainder(theta - opening.middle(), 2 * Math.PI))
          < opening.halfAngle()) {
        met.add(new double[] {opening.from(), radius});
      }
    }
    met.removeIf(span -> span[0] >= radius);
    met.sort((a, b) -> Double.compare(a[0], b[0]));
    List<double[]> joined = new ArrayList<>();
    for (double[] span : met) {
      double[] last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last != null && span[0] <= last[1]) {
        last[1] = Math.max(last[1], span[1]);
      } else {
        joined.add(span.clone());
      }
    }
    return joined.toArray(new double[0][]);
  }

  private double[] breaks() {
    List<Double> angles = new ArrayList<>(List.of(0.0));
    for (Hole hole : holes) {
      double away = Math.hypot(hole.x(), hole.y());
      double bearing = Math.atan2(hole.y(), hole.x());
      angles.add(bearing);
      if (away > hole.radius()) {
        double half = Math.asin(hole.radius() / away);
        angles.add(bearing - half);
        angles.add(bearing + half);
      }
    }
    for (Opening opening : openings) {
      angles.add(opening.middle() - opening.halfAngle());
      angles.add(opening.middle() + opening.halfAngle());
    }
    return angles.stream()
        .mapToDouble(a -> a - 2 * Math.PI * Math.floor(a / (2 * Math.PI)))
        .sorted()
        .distinct()
        .toArray();
  }
}
