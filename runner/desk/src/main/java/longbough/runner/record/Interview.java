package longbough.runner.record;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.runner.scenario.TypicalSize;
import longbough.runner.survey.Answer;
import longbough.runner.survey.Origin;
import longbough.runner.survey.SurveyedTree;
import longbough.runner.survey.SurveyedTree.Value;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/**
 * The course of the questions. It is run again from the first question whenever a reply was added
 * or taken back, up to the first question without a reply: so that a reply taken back leaves no
 * trace, and one that opens further questions does so wherever one comes from.
 */
final class Interview {
  private static final Stop STOP = new Stop();
  private static final int LONGEST_TITLE = 120;

  private final List<String> replies;
  private final String defaultName;
  private final boolean climateKnown;
  private Questions ask = new Questions(false);
  private int next;
  private Question pending;
  private SurveyedTree tree;

  private Interview(List<String> replies, String defaultName, boolean climateKnown) {
    this.replies = replies;
    this.defaultName = defaultName;
    this.climateKnown = climateKnown;
  }

  /**
   * Runs up to the first question without a reply.
   *
   * @param defaultName name of the tree where none is given
   * @param climateKnown whether the climate comes from elsewhere
   */
  static Interview of(List<String> replies, String defaultName, boolean climateKnown) {
    Interview interview = new Interview(replies, defaultName, climateKnown);
    try {
      interview.run();
    } catch (Stop stopped) {
      return interview;
    }
    return interview;
  }

  /** The question that has no reply yet; null where all have. */
  Question pending() {
    return pending;
  }

  /** The tree as far as it is known; null before its name is. */
  SurveyedTree tree() {
    return tree;
  }

  /** Whether enough is known for what hangs together to be checked. */
  boolean checkable() {
    return tree != null && tree.value("tree", "height_m") != null;
  }

  private void run() {
    ask = new Questions(Questions.us(reply(Questions.units())));
    String name = reply(Questions.name(defaultName));
    tree = new SurveyedTree(name.isEmpty() ? defaultName : name, origin("the tree"));
    sizes();
    state();
    while (decay()) {}
    while (wound()) {}
    while (limb()) {}
    place();
    String note = reply(new Question("Notes for the report", "none", false, "text", this::note));
    if (!note.isEmpty()) {
      tree.note(note);
    }
  }

  private Answer note(String text) {
    return new Answer(Answer.quoted(text), "", "", "");
  }

  private void sizes() {
    Question species = Questions.species();
    Map<String, Value> sizes = tree.only("tree");
    String named = reply(species);
    sizes.put("species", new Value(Answer.quoted(named), origin("species")));
    String title = tree.name() + ", " + named;
    if (title.length() <= LONGEST_TITLE) {
      tree.only("scenario").put("title", new Value(Answer.quoted(title), origin("title")));
    }
    Question trunk = ask.trunk();
    String yaml = trunk.reading().apply(reply(trunk)).yaml();
    sizes.put("trunk_diameter_cm", new Value(yaml, origin("trunk")));
    SpeciesTraits traits = SpeciesLibrary.load().find(named).orElseThrow();
    TypicalSize typical = TypicalSize.of(traits, Double.parseDouble(yaml));
    String middling = ", middling for this trunk";
    Question height =
        ask.about("Height", "tree", "height_m", ask.shown(typical.heightM()) + middling, false);
    String high = reply(height);
    if (high.isEmpty()) {
      tree.note("height not measured: that of a middling tree with this trunk taken");
      sizes.put("height_m", new Value("" + typical.heightM(), origin("height")));
    } else {
      sizes.put("height_m", new Value(height.reading().apply(high).yaml(), origin("height")));
    }
    double heightM = Double.parseDouble(sizes.get("height_m").yaml());
    double base = heightM * typical.crownBaseM() / typical.heightM();
    optional(
        sizes,
        "Lowest living limb",
        "tree",
        "crown_base_m",
        ask.shown(base) + ", three tenths of the height");
    String spread = ask.shown(typical.crownSpreadM()) + middling;
    optional(sizes, "Diameter of the crown", "tree", "crown_spread_m", spread);
    String pace = "as is usual for size, condition and light";
    optional(sizes, "Leading shoot's growth in a year", "tree", "leader_growth_cm", pace);
  }

  private void state() {
    Map<String, Value> state = tree.only("tree");
    optional(state, "Condition", "tree", "condition", "good");
    optional(state, "Dieback", "tree", "dieback", "none");
    optional(state, "Root plate lost, %", "tree", "root_plate_lost", "0");
    Map<String, Value> topping = new LinkedHashMap<>();
    if (optional(topping, "Topped at a height of", "topping", "height_m", "never")) {
      needed(topping, "  years ago", "topping", "years_ago");
      tree.add("topping").putAll(topping);
      optional(
          tree.items("topping").get(0), "  largest cut", "topping", "cut_diameter_cm", "by taper");
    }
    Map<String, Value> pruned = new LinkedHashMap<>();
    if (optional(pruned, "Last pruned, years ago", "pruned", "years_ago", "not of late")) {
      needed(pruned, "  foliage taken, %", "pruned", "foliage_removed");
      tree.add("pruned").putAll(pruned);
    }
  }

  private boolean decay() {
    String more = tree.items("cavity").isEmpty() ? "none" : "no more";
    Map<String, Value> decay = new LinkedHashMap<>();
    if (!optional(decay, "Decay or cavity found at a height of", "cavity", "height_m", more)) {
      return false;
    }
    needed(decay, "  least sound wall", "cavity", "sound_wall_cm");
    Map<String, Value> item = tree.add("cavity");
    item.putAll(decay);
    optional(item, "  extent along the trunk", "cavity", "length_m", ask.shown(1));
    optional(item, "  compass bearing", "cavity", "bearing_deg", "0");
    optional(item, "  width of the opening", "cavity", "opening_cm", "closed");
    return true;
  }

  private boolean wound() {
    String more = tree.items("wound").isEmpty() ? "none" : "no more";
    Map<String, Value> wound = new LinkedHashMap<>();
    if (!optional(wound, "Old wound of the trunk at a height of", "wound", "height_m", more)) {
      return false;
    }
    needed(wound, "  diameter of the cut", "wound", "diameter_cm");
    Map<String, Value> item = tree.add("wound");
    item.putAll(wound);
    optional(item, "  years ago", "wound", "age_years", "10");
    optional(item, "  compass bearing", "wound", "bearing_deg", "0");
    optional(item, "  width still open", "wound", "still_open_cm", "closed");
    return true;
  }

  private boolean limb() {
    String more =
        tree.items("limb").isEmpty() ? "no inventory, limbs are reconstructed" : "no more";
    Map<String, Value> limb = new LinkedHashMap<>();
    if (!optional(limb, "Limb that leaves the trunk at a height of", "limb", "height_m", more)) {
      return false;
    }
    needed(limb, "  diameter at its base", "limb", "diameter_cm");
    String dead = "  dead";
    optional(limb, dead, "limb", "dead", "no");
    Map<String, Value> item = tree.add("limb");
    item.putAll(limb);
    optional(item, "  length", "limb", "length_m", "reconstructed");
    optional(item, "  compass bearing", "limb", "bearing_deg", "reconstructed");
    return true;
  }

  private void place() {
    Map<String, Value> site = tree.only("site");
    String plan = climateKnown ? "as in the plan, or ordinary" : "";
    optional(site, "Open sky at the sides", "site", "openness", or(plan, "street"));
    optional(site, "Water that the soil holds", "site", "soil_water_mm", or(plan, "ordinary"));
    optional(site, "Wind", "site", "wind_exposure", or(plan, "built_up"));
    optional(site, "Quality of the soil", "site", "growth_factor", or(plan, "ordinary"));
    Map<String, Value> scenario = tree.only("scenario");
    if (climateKnown) {
      optional(scenario, "Climate", "scenario", "climate", "as in the plan");
    } else {
      needed(scenario, "Climate", "scenario", "climate");
    }
  }

  private static String or(String plan, String word) {
    return plan.isEmpty() ? word : plan;
  }

  private void needed(Map<String, Value> item, String words, String section, String key) {
    keep(item, ask.about(words, section, key, "", true), key);
  }

  /** Asks what may be left out; whether it was answered. */
  private boolean optional(
      Map<String, Value> item, String words, String section, String key, String fallback) {
    return keep(item, ask.about(words, section, key, fallback, false), key);
  }

  private boolean keep(Map<String, Value> item, Question question, String key) {
    String reply = reply(question);
    if (reply.isEmpty()) {
      return false;
    }
    Answer answer = question.reading().apply(reply);
    item.put(key, new Value(answer.yaml(), origin(question.words().strip())));
    return true;
  }

  private String reply(Question question) {
    if (next == replies.size()) {
      pending = question;
      throw STOP;
    }
    return replies.get(next++);
  }

  private static Origin origin(String words) {
    return new Origin("", 0, 1, words);
  }

  /** Ends the course at the first question without a reply; carries nothing. */
  private static final class Stop extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private Stop() {
      super("no reply yet", null, false, false);
    }
  }
}
