package longbough.runner.validate;

import longbough.runner.validate.experiment.Finding;

/** How the model stands against one published check. */
public enum Standing {
  PASS("pass"),
  /** The band is missed, the direction holds. */
  MISS("miss"),
  /** Not even the direction holds. */
  WRONG_WAY("wrong way"),
  NOT_TRIED("not tried yet");

  private final String label;

  Standing(String label) {
    this.label = label;
  }

  /**
   * How a finding stands.
   *
   * @param finding null where the check was not tried
   */
  public static Standing of(Finding finding) {
    if (finding == null) {
      return NOT_TRIED;
    }
    if (!finding.rightDirection()) {
      return WRONG_WAY;
    }
    return finding.inBand() ? PASS : MISS;
  }

  public String label() {
    return label;
  }
}
