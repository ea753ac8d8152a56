package longbough.runner.drawing.look;

import longbough.model.state.CauseOfDeath;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.state.Wounds;

/** A tree's state in a sentence, and the counts that the drawings write beside it. */
public final class StateWords {
  private StateWords() {}

  /** E.g. "Year 15: alive, 14.2 m tall, …". */
  public static String sentence(YearState drawn) {
    TreeState state = drawn.state();
    StringBuilder words = new StringBuilder(drawn.heading()).append(": ");
    words.append(state.vitality.alive ? "alive" : fate(state) + " (" + cause(state) + ")");
    words.append(", ").append(Words.oneDecimal(state.heightM())).append(" m tall, trunk ");
    words.append(Words.whole(100 * state.trunk.dbhM())).append(" cm thick, ");
    words.append(limbs(state, LimbStatus.ALIVE)).append(" live limbs");
    clause(words, limbs(state, LimbStatus.DEAD), " dead limbs still attached");
    clause(words, limbs(state, LimbStatus.STUB), " stubs");
    if (state.vitality.alive) {
      words.append(", ").append(Words.brief(state.leafAreaM2())).append(" m² of leaf");
      words.append(" of which ").append(Words.brief(state.sprouts.leafAreaM2()));
      words.append(" m² on sprouts");
    }
    clause(words, openWounds(state), " open wounds");
    return words.append('.').toString();
  }

  /** Whether the tree fell, so that it stands no more. */
  public static boolean fallen(TreeState state) {
    CauseOfDeath cause = state.vitality.cause;
    boolean fell = cause == CauseOfDeath.UPROOTED || cause == CauseOfDeath.STEM_FAILURE;
    return !state.vitality.alive && fell;
  }

  /** E.g. "died in year 22". */
  public static String fate(TreeState state) {
    int year = state.vitality.deathYear;
    String when = year == Integer.MAX_VALUE ? "" : " in year " + year;
    return (fallen(state) ? "fell" : "died") + when;
  }

  /** What killed a dead tree. */
  public static String cause(TreeState state) {
    return state.vitality.cause.label();
  }

  /** Number of limbs of one status. */
  public static int limbs(TreeState state, LimbStatus status) {
    Limbs limbs = state.limbs;
    int count = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      count += limbs.status[limb] == status.code() ? 1 : 0;
    }
    return count;
  }

  /** Number of cuts and cavities not yet closed. */
  public static int openWounds(TreeState state) {
    Wounds wounds = state.wounds;
    int count = 0;
    for (int wound = 0; wound < wounds.count; wound++) {
      count += wounds.open(wound) ? wounds.cuts[wound] : 0;
    }
    return count;
  }

  private static void clause(StringBuilder words, int count, String what) {
    if (count > 0) {
      words.append(", ").append(count).append(what);
    }
  }
}
