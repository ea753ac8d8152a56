package longbough.runner.verdict;

/** What an operation did to the tree, in the trade's words. */
public final class OperationWords {

  private OperationWords() {}

  /** The word of a scenario file as a past participle, e.g. {@code thin} as "thinned". */
  public static String done(String word) {
    return switch (word) {
      case "remove_deadwood" -> "deadwood removed";
      case "thin" -> "thinned";
      case "raise" -> "raised";
      case "open_window" -> "window opened";
      case "reduce" -> "reduced";
      case "cut_back" -> "cut back";
      case "top" -> "topped";
      case "shear" -> "sheared";
      case "strip_sprouts" -> "sprouts stripped";
      case "select_sprouts" -> "sprouts selected";
      case "restore_topped" -> "restored after topping";
      default -> word.replace('_', ' ');
    };
  }
}
