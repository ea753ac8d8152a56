package longbough.runner.validate;

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

  public String label() {
    return label;
  }
}
