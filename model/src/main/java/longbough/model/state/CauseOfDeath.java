package longbough.model.state;

/** What killed a tree. */
public enum CauseOfDeath {
  NONE("alive"),
  STARVED("starved"),
  DROUGHT("drought"),
  INSECTS("insects"),
  DIEBACK("decay and dieback from wounds"),
  DECLINE("decline over years"),
  BACKGROUND("other causes"),
  STEM_FAILURE("stem failure"),
  UPROOTED("uprooted");

  private final String label;

  CauseOfDeath(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }
}
