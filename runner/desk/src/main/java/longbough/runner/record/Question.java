package longbough.runner.record;

import java.util.function.Function;
import longbough.runner.survey.Answer;

/**
 * One question.
 *
 * @param words what is asked
 * @param fallback what an empty reply stands for, for the person to see; empty where it stands for
 *     nothing
 * @param needed whether an empty reply is none
 * @param help what may be replied
 * @param reading reads a reply that is not empty
 */
record Question(
    String words, String fallback, boolean needed, String help, Function<String, Answer> reading) {

  /** The line that asks. */
  String prompt() {
    return words + (fallback.isEmpty() ? "" : " [" + fallback + "]") + ": ";
  }

  /** What is wrong with a reply, or null. */
  Answer refusal(String reply) {
    if (reply.isEmpty()) {
      return needed ? new Answer("", "nothing", help, "This one is needed.") : null;
    }
    Answer answer = reading.apply(reply);
    return answer.usable() ? null : answer;
  }
}
