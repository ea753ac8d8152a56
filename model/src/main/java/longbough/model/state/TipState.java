package longbough.model.state;

/** What has been done to the end of a limb. */
public enum TipState {
  INTACT,
  /** Shortened to a lateral large enough to take over. */
  REDUCED,
  /** Cut without regard to a lateral: apical control is lost. */
  HEADED;

  private static final TipState[] ALL = values();

  public static TipState of(byte code) {
    return ALL[code];
  }

  public byte code() {
    return (byte) ordinal();
  }
}
