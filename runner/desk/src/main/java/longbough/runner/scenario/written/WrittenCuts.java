package longbough.runner.scenario.written;

import longbough.runner.yaml.Given;
import longbough.runner.yaml.Place;

/** How cuts are placed: a word for the crew's skill, or shares of the three placements. */
public record WrittenCuts(
    String path,
    Place place,
    Given<String> skill,
    Given<Double> collar,
    Given<Double> flush,
    Given<Double> stub) {

  /** Whether any share was given. */
  public boolean shares() {
    return collar.present() || flush.present() || stub.present();
  }

  public double sum() {
    return collar.or(0.0) + flush.or(0.0) + stub.or(0.0);
  }
}
