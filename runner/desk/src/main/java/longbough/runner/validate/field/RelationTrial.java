package longbough.runner.validate.field;

import java.util.List;

/**
 * One relation of one species: the measured cloud, its bands and how the model's trees lie in them.
 * The model's trees are meant to be middling ones, so that all of them should lie in the 95 % band
 * and most in the 50 % band.
 *
 * @param relation what is set against what
 * @param measured the measured trees of which both are known
 * @param fit the band's fit, over those of them that count
 * @param points how many yearly sizes of the model lie within the measured range
 * @param share50 share of these in the band that holds half of the trees; NaN where there are none
 * @param share95 share in the band that holds 95 %
 * @param lnBias mean of ln of the model over what is expected there; 0.1 is 10 % too much
 */
public record RelationTrial(
    Relation relation,
    List<StreetTree> measured,
    LogParabola fit,
    int points,
    double share50,
    double share95,
    double lnBias) {
  public static final double HALF = 0.5;
  public static final double MOST = 0.95;

  /** The trial, or null where too few trees were measured. */
  static RelationTrial of(Relation relation, List<StreetTree> measured, List<StreetTree> model) {
    List<StreetTree> known = measured.stream().filter(relation::known).toList();
    List<StreetTree> counted = known.stream().filter(relation::counts).toList();
    if (counted.size() < StreetTrees.LEAST) {
      return null;
    }
    LogParabola fit =
        LogParabola.through(
            counted.stream().mapToDouble(relation::x).toArray(),
            counted.stream().mapToDouble(relation::y).toArray());
    List<StreetTree> within =
        model.stream()
            .filter(tree -> fit.covers(relation.x(tree)) && relation.y(tree) > 0)
            .toList();
    return new RelationTrial(
        relation,
        known,
        fit,
        within.size(),
        share(within, relation, fit, HALF),
        share(within, relation, fit, MOST),
        within.stream()
            .mapToDouble(t -> Math.log(relation.y(t)) - fit.ln(relation.x(t)))
            .average()
            .orElse(Double.NaN));
  }

  private static double share(
      List<StreetTree> trees, Relation relation, LogParabola fit, double chance) {
    return trees.stream()
        .mapToDouble(t -> fit.holds(relation.x(t), relation.y(t), chance) ? 1 : 0)
        .average()
        .orElse(Double.NaN);
  }
}
