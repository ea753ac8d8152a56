package longbough.runner.record;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.scenario.ScenarioSummary;
import longbough.runner.survey.Answer;
import longbough.runner.survey.Plan;
import longbough.runner.survey.ScenarioText;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/** Asks until the tree is complete and the summary is agreed to. */
public final class Recording {
  private static final int MOST_REPLIES = 2_000;
  private static final int MOST_REFUSALS = 30;
  private static final List<String> YES = List.of("", "y", "yes");
  private static final String BACK = "<";

  private final Replies in;
  private final PrintWriter out;
  private final Plan plan;
  private final String name;
  private final boolean echo;
  private final List<String> replies = new ArrayList<>();
  private int refused;

  private Recording(Reader in, PrintWriter out, Plan plan, String name, boolean echo) {
    this.in = new Replies(in);
    this.out = out;
    this.plan = plan;
    this.name = name;
    this.echo = echo;
  }

  /**
   * Asks for one tree.
   *
   * @param name name of the tree where none is given
   * @param echo whether to repeat each answer, for answers that come from a file
   * @return the scenario, or nothing where the person gave up
   * @throws InputException where the input ended before the tree was complete
   */
  public static Optional<String> ask(
      Reader in, PrintWriter out, Plan plan, String name, boolean echo) throws IOException {
    return new Recording(in, out, plan, name, echo).run();
  }

  private Optional<String> run() throws IOException {
    say("One tree, question by question. Enter takes what stands in brackets, '<' goes back,");
    say("'?' explains, 'quit' ends without writing.");
    say("");
    while (true) {
      Interview interview = interview();
      Question question = interview.pending();
      if (question == null) {
        Optional<String> decided = agreed(interview);
        if (decided != null) {
          return decided;
        }
        replies.remove(replies.size() - 1);
        continue;
      }
      String reply = read(question.prompt());
      if (reply.equalsIgnoreCase("quit")) {
        return gaveUp();
      } else if (reply.equals(BACK)) {
        back();
      } else if (reply.equals("?")) {
        say("  " + question.help());
      } else {
        take(question, reply);
      }
    }
  }

  private Interview interview() {
    return Interview.of(replies, name, plan.hasClimate());
  }

  private void back() {
    if (replies.isEmpty()) {
      say("  This is the first question.");
    } else {
      replies.remove(replies.size() - 1);
    }
  }

  private void take(Question question, String reply) {
    Answer wrong = question.refusal(reply);
    if (wrong != null) {
      refuse(wrong.found(), wrong.allowed(), wrong.mend());
      return;
    }
    replies.add(reply);
    List<Problem> problems = problems(interview());
    if (!problems.isEmpty()) {
      replies.remove(replies.size() - 1);
      problems.forEach(p -> refuse(p.field() + ": " + p.found(), p.allowed(), p.mend()));
      say("  '<' goes back to the question before.");
      return;
    }
    refused = 0;
    if (replies.size() > MOST_REPLIES) {
      throw ended("more than " + MOST_REPLIES + " answers");
    }
  }

  private void refuse(String found, String allowed, String mend) {
    String more = mend.isEmpty() ? "" : ". " + mend;
    say("  Found " + found + (allowed.isEmpty() ? "" : "; allowed: " + allowed) + more);
    refused++;
    if (refused >= MOST_REFUSALS) {
      throw ended(MOST_REFUSALS + " answers in a row that cannot be used");
    }
  }

  /** What doesn't hold together in the tree as far as it is known. */
  private List<Problem> problems(Interview interview) {
    if (!interview.checkable()) {
      return List.of();
    }
    try {
      scenario(interview).read(name);
      return List.of();
    } catch (InputException refusal) {
      return refusal.problems().stream().filter(problem -> !problem.field().isEmpty()).toList();
    }
  }

  private ScenarioText scenario(Interview interview) {
    boolean placed = interview.tree().value("scenario", "climate") != null || plan.hasClimate();
    // Any climate will do as long as nobody has been asked for it.
    Plan whole = placed ? plan : plan.in("maritime_temperate");
    return ScenarioText.of(interview.tree(), whole, "Answered to longbough record.");
  }

  /** The summary and the last question: the scenario, nothing, or null to go back. */
  private Optional<String> agreed(Interview interview) throws IOException {
    ScenarioText scenario = scenario(interview);
    say("");
    for (String line :
        ScenarioSummary.lines(ScenarioResolver.resolve(scenario.read(name + ".yaml")))) {
      if (line.startsWith("regimes")) {
        break;
      }
      say(line);
    }
    while (true) {
      String reply = read("Write it? yes, no, or < to go back [yes]: ").toLowerCase(Locale.ROOT);
      if (YES.contains(reply)) {
        return Optional.of(scenario.yaml());
      } else if (reply.equals("no") || reply.equals("n") || reply.equals("quit")) {
        return gaveUp();
      } else if (reply.equals(BACK)) {
        return null;
      }
      refuse("'" + reply + "'", "yes, no, <", "");
    }
  }

  private Optional<String> gaveUp() {
    say("Nothing was written.");
    return Optional.empty();
  }

  private String read(String prompt) throws IOException {
    out.print(prompt);
    out.flush();
    String reply = in.next();
    if (reply == null) {
      say("");
      throw ended("the end of the input before the tree was complete");
    }
    if (echo) {
      say(reply);
    }
    return reply;
  }

  private static InputException ended(String found) {
    return new InputException(
        List.of(
            new Problem(
                "",
                0,
                0,
                "",
                found,
                "an answer to each question",
                "nothing was written; start again")));
  }

  private void say(String line) {
    out.println(line);
  }
}
