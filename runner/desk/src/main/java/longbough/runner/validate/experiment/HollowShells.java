package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.geometry.HollowFailure;
import longbough.model.geometry.ResidualStrength;
import longbough.model.geometry.ResidualStrength.FailureMode;
import longbough.model.parameter.StrengthParameters;
import longbough.runner.validate.lab.Lab;

/**
 * S08 and S15: what gives way first in a hollow trunk, by the mechanics of a thin shell, and what
 * decayed wood still bears.
 */
public final class HollowShells implements Experiment {
  @Override
  public List<String> checks() {
    return List.of("S08", "S15");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    StrengthParameters p =
        Lab.of("tilia-cordata", 0.4, Lab.MARITIME, 1, 1).meanParameters().strength();
    HollowFailure shell =
        new HollowFailure(p.stiffnessOverRupture(), p.acrossStiffness(), p.acrossStrength());
    double cracking = shell.from(FailureMode.CRACKING);
    double bending = shell.from(FailureMode.BENDING);
    double brown = ResidualStrength.decayedWood(0.07, p.brownRotSteepness());
    double white = ResidualStrength.decayedWood(0.20, p.whiteRotSteepness());
    Check s15 = checks.get("S15");
    return List.of(
        new Judged(
                checks.get("S08"),
                "Mechanics of a bent shell with stiffness and strength of green wood in general; the"
                    + " source's are those of a cypress, and it says that the limits vary.")
            .claim(
                f("buckling below %.2f, cracking to %.2f, bending above", cracking, bending),
                cracking > 0 && cracking < bending && bending < 1),
        new Judged(s15, "The law and its steepness are the source's own, taken over.")
            .claim(
                f("brown rot %.2f, white rot %.2f", brown, white),
                "0.47 to 0.53 each; exponential",
                s15.holds(brown) && s15.holds(white),
                p.brownRotSteepness() > p.whiteRotSteepness()));
  }
}
