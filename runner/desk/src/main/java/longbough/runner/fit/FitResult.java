package longbough.runner.fit;

import java.util.List;
import java.util.Map;
import longbough.runner.validate.experiment.Check;
import longbough.runner.validate.experiment.Finding;

/**
 * What came of a fit.
 *
 * @param plan what was asked
 * @param checks all checks by id, in the order of their files
 * @param influences what each parameter stirs, the strongest first
 * @param fitted the parameters that were set, the most gainful first; empty where only screened
 * @param takenBack names of those that were tried and put back, since they earned too little
 * @param before what all experiments found with the values of the files
 * @param after what they found with the new ones, all played afresh
 * @param tried points that the search tried
 * @param settled whether the search ended before its budget
 * @param surprises checks that came out otherwise when played afresh than while searching
 * @param seconds how long each experiment took, by its name
 */
public record FitResult(
    FitPlan plan,
    Map<String, Check> checks,
    List<Influence> influences,
    List<Fitted> fitted,
    List<String> takenBack,
    Map<String, Finding> before,
    Map<String, Finding> after,
    int tried,
    boolean settled,
    List<String> surprises,
    Map<String, Double> seconds) {}
