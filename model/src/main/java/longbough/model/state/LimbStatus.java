package longbough.model.state;

/** What has become of a first-order limb. */
public enum LimbStatus {
  /** No limb in this place of the arrays; may be taken by a new one. */
  EMPTY,
  ALIVE,
  /** Dead and still attached: deadwood. */
  DEAD,
  /** Cut back to a stub that still stands out from the trunk (dead, or alive with sprouts). */
  STUB;

  private static final LimbStatus[] ALL = values();

  public static LimbStatus of(byte code) {
    return ALL[code];
  }

  public byte code() {
    return (byte) ordinal();
  }
}
