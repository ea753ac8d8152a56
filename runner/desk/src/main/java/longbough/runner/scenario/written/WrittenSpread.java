package longbough.runner.scenario.written;

import longbough.runner.yaml.Given;

/** Either one crown diameter, or the reach from the trunk in four directions. */
public record WrittenSpread(
    Given<Double> diameterM,
    Given<Double> northM,
    Given<Double> eastM,
    Given<Double> southM,
    Given<Double> westM) {

  /** Whether all four reaches were given. */
  public boolean byDirection() {
    return northM.present() && eastM.present() && southM.present() && westM.present();
  }

  /**
   * The crown's diameter, the mean of both axes where it was given by direction; NaN if unusable.
   */
  public double meanDiameterM() {
    if (byDirection()) {
      return (northM.value() + eastM.value() + southM.value() + westM.value()) / 2;
    }
    return diameterM.or(Double.NaN);
  }
}
