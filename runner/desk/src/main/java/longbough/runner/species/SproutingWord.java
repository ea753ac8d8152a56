package longbough.runner.species;

/** How readily a species sprouts from old wood, in one word. */
final class SproutingWord {

  private SproutingWord() {}

  static String of(double readiness) {
    if (readiness < 0.1) {
      return "hardly";
    }
    if (readiness < 0.4) {
      return "little";
    }
    if (readiness < 0.6) {
      return "some";
    }
    return readiness < 0.8 ? "freely" : "profusely";
  }
}
