package longbough.runner.scenario;

import static longbough.runner.scenario.BadScenario.deep;
import static longbough.runner.scenario.BadScenario.of;

import java.util.List;
import java.util.stream.Stream;

/** The mistakes that people make, and those that only an enemy makes. */
final class BadScenarios {

  private BadScenarios() {}

  static List<BadScenario> all() {
    return Stream.of(tree(), place(), regimes(), wishes(), yaml()).flatMap(List::stream).toList();
  }

  private static List<BadScenario> wishes() {
    String roof = "from_height_m: 2, to_height_m: 6, distance_m: 3";
    return List.of(
        wish("no wish", "{asked: []}", "found a list of 0; allowed: a list of 1 to 6", true),
        wish(
            "two wishes in one item",
            "{asked: [{height_limit: {below_m: 9}, light: {bearing_deg: 1,"
                + " distance_m: 5, height_m: 3, share: 0.5}}]}",
            "one wish in each item",
            false),
        wish("an unknown wish", "{asked: [{shade: {share: 1}}]}", "unknown wish 'shade'", true),
        wish(
            "one bearing",
            "{asked: [{headroom: {height_m: 4, from_bearing_deg: 10}}]}",
            "found one bearing only",
            false),
        wish(
            "roof without bearings",
            "{asked: [{off_the_roof: {" + roof + "}}]}",
            "from_bearing_deg: found nothing",
            true),
        wish(
            "roof upside down",
            "{asked: [{off_the_roof: {from_bearing_deg: 1, to_bearing_deg: 9,"
                + " from_height_m: 6, to_height_m: 2, distance_m: 3}}]}",
            "swap the two heights",
            false),
        wish(
            "an idea that is no regime",
            "{first_idea: fell it, asked: [{height_limit: {below_m:" + " 9}}]}",
            "no regime named 'fell it'",
            false),
        wish(
            "kept before it is there",
            "{by_year: 8, until_year: 5, asked: [{height_limit: {below_m:" + " 9}}]}",
            "until_year at or after by_year",
            false),
        of(
            "cut back without a measure",
            "raise: {to_height_m: 4}",
            "cut_back: {from_height_m: 2, to_height_m: 5}",
            29,
            "found neither; allowed: either to_reach_m or share"),
        deep(
            "cut back with one bearing",
            "raise: {to_height_m: 4}",
            "cut_back: {from_height_m: 2, to_height_m: 5, share: 0.2, to_bearing_deg: 7}",
            29,
            "found one bearing only"));
  }

  private static BadScenario wish(String what, String wishes, String says, boolean schema) {
    String to = "wishes: " + wishes + "\nregimes:";
    return schema ? of(what, "regimes:", to, 19, says) : deep(what, "regimes:", to, 19, says);
  }

  private static List<BadScenario> tree() {
    return List.of(
        deep("unknown species", "tilia-cordata", "tilia-cordatta", 3, "nearest: tilia-cordata"),
        of(
            "missing diameter",
            "  trunk_diameter_cm: 48\n",
            "",
            3,
            "tree.trunk_diameter_cm: found nothing"),
        of("missing height", "  height_m: 17\n", "", 3, "tree.height_m: found nothing"),
        of(
            "missing tree",
            BadScenario.GOOD.substring(
                BadScenario.GOOD.indexOf("tree:"), BadScenario.GOOD.indexOf("site:")),
            "",
            1,
            "add 'tree:'"),
        of("empty value", "height_m: 17", "height_m:", 5, "found nothing"),
        of(
            "negative",
            "height_m: 17",
            "height_m: -17",
            5,
            "found -17; allowed: a number from 2 to 80"),
        of(
            "five metre trunk",
            "cm: 48",
            "cm: 500",
            4,
            "found 500; allowed: a number from 3 to 400"),
        of("not a number", "height_m: 17", "height_m: .nan", 5, "found .nan"),
        of("NaN as a word", "height_m: 17", "height_m: NaN", 5, "found 'NaN'"),
        of("infinite", "height_m: 17", "height_m: .inf", 5, "found .inf"),
        of("beyond every number", "height_m: 17", "height_m: 1e999", 5, "found 1e999"),
        of("quoted number", "height_m: 17", "height_m: \"17\"", 5, "remove the quotes"),
        of("decimal comma", "crown_base_m: 2.5", "crown_base_m: 2,5", 6, "write a decimal point"),
        of("text for a number", "height_m: 17", "height_m: tall", 5, "found 'tall'"),
        of("list for a number", "height_m: 17", "height_m: [17]", 5, "found a list of 1"),
        deep(
            "crown base above height",
            "crown_base_m: 2.5",
            "crown_base_m: 20",
            6,
            "20 m on a tree of 17 m"),
        deep("absurdly slender", "cm: 48", "cm: 5", 5, "17 m on a trunk of 5 cm"),
        deep(
            "absurdly stout",
            "cm: 48\n  height_m: 17",
            "cm: 380\n  height_m: 9",
            5,
            "9 m on a trunk of 380 cm"),
        deep(
            "absurdly wide",
            "crown_spread_m: 11",
            "crown_spread_m: {north: 30, east: 30, south: 30, west: 30}",
            7,
            "a crown 60 m wide"),
        deep(
            "no reach",
            "crown_spread_m: 11",
            "crown_spread_m: {north: 0, east: 0, south: 0, west: 0}",
            7,
            "no reach"),
        of(
            "three directions",
            "crown_spread_m: 11",
            "crown_spread_m: {north: 5, east: 5, south: 5}",
            7,
            "tree.crown_spread_m.west"),
        of(
            "leader that shrinks",
            "condition: good",
            "leader_growth_cm: -5",
            8,
            "tree.leader_growth_cm: found -5; allowed: a number from 1 to 300"),
        of("leader in millimetres", "condition: good", "leader_growth_cm: 450", 8, "1 to 300"),
        of("leader of no growth", "condition: good", "leader_growth_cm: 0", 8, "found 0"),
        of("leader as a word", "condition: good", "leader_growth_cm: fast", 8, "found 'fast'"),
        of("leader not a number", "condition: good", "leader_growth_cm: .nan", 8, "found .nan"),
        of(
            "leader in metres",
            "condition: good",
            "leader_growth_m: 0.3",
            8,
            "did you mean 'leader_growth_cm'?"),
        of("unknown dieback", "condition: good", "dieback: some", 8, "found 'some'"),
        of("half a topping", "condition: good", "topped: [{height_m: 9}]", 8, "years_ago"),
        deep(
            "topped in the air",
            "condition: good",
            "topped: [{height_m: 19, years_ago: 3}]",
            8,
            "the topping cut at 19 m"),
        deep(
            "topping wider than the trunk",
            "condition: good",
            "topped: [{height_m: 9, years_ago: 3, cut_diameter_cm: 60}]",
            8,
            "60 cm on a trunk of 48 cm"),
        of(
            "pruned all",
            "condition: good",
            "last_pruned: {years_ago: 1, foliage_removed: 1}",
            8,
            "foliage_removed"),
        of("unknown key", "crown_base_m", "crown_bottom_m", 6, "did you mean 'crown_base_m'?"),
        of("unknown condition", "good", "goood", 8, "did you mean 'good'?"),
        of("condition above one", "condition: good", "condition: 1.2", 8, "found 1.2"),
        deep(
            "thick wall",
            "sound_wall_cm: 9",
            "sound_wall_cm: 30",
            9,
            "up to half the trunk's diameter"),
        deep("wide opening", "opening_cm: 5", "opening_cm: 60", 9, "60 cm on a trunk of 48 cm"),
        deep("cavity in the air", "{height_m: 1,", "{height_m: 21,", 9, "the cavity at 21 m"),
        deep("wide wound", "diameter_cm: 20", "diameter_cm: 60", 10, "60 cm on a trunk of 48 cm"),
        deep(
            "open beyond the cut",
            "still_open_cm: 4",
            "still_open_cm: 24",
            10,
            "24 cm of a cut of 20 cm"),
        of(
            "all roots lost",
            "lost: 0.1",
            "lost: 1",
            11,
            "found 1; allowed: a number from 0 to 0.9"),
        deep(
            "limb below the crown",
            "[{height_m: 4,",
            "[{height_m: 1.5,",
            12,
            "below the crown base"),
        deep(
            "limb thicker than trunk",
            "diameter_cm: 12",
            "diameter_cm: 60",
            12,
            "60 cm on a trunk"),
        of("flag as word", "dead: true", "dead: perhaps", 12, "allowed: true or false"));
  }

  private static List<BadScenario> place() {
    String months =
        "climate: {latitude_deg: 47, temperature_c: [1,2,3,4,5,6,7,8,9,10,11,12], rain_mm: [1,2,3,4,5,6,7,8,9,10,11,12], "
            + "radiation_mj_m2_day: [3,5,8,12,16,19,18,14,10,7,4,3], gust_10_year_m_s: 30, gust_50_year_m_s: 38}";
    return List.of(
        of(
            "unknown climate",
            "maritime_temperate",
            "maritime",
            14,
            "did you mean 'maritime_temperate'?"),
        of("no climate", "climate: maritime_temperate\n", "", 1, "add 'climate:'"),
        of(
            "eleven months",
            "climate: maritime_temperate",
            months.replace(",12], rain", "], rain"),
            14,
            "found a list of 11; allowed: a list of 12"),
        of(
            "hot month",
            "climate: maritime_temperate",
            months.replace("5,6,7,8,9,10,11,12], rain", "5,60,7,8,9,10,11,12], rain"),
            14,
            "climate.temperature_c[6]: found 60"),
        deep(
            "gusts swapped",
            "climate: maritime_temperate",
            months.replace("50_year_m_s: 38", "50_year_m_s: 28"),
            14,
            "above the ten-year gust of 30 m/s"),
        deep(
            "south in the north",
            "climate: maritime_temperate",
            months.replace("47", "-47"),
            14,
            "the sign of the latitude"),
        of(
            "no latitude",
            "climate: maritime_temperate",
            months.replace("latitude_deg: 47, ", ""),
            14,
            "climate.latitude_deg: found nothing"),
        of("openness above one", "openness: street", "openness: 3", 13, "found 3"),
        of(
            "unknown soil",
            "soil_water_mm: 120",
            "soil_water_mm: soggy",
            13,
            "one of shallow, ordinary, deep"),
        of("free crew", "price_per_hour: 60", "price_per_hour: -1", 15, "found -1"),
        of("unknown skill", "skill: careful", "skill: carefull", 15, "did you mean 'careful'?"),
        of(
            "no years",
            "years: 30\nmembers",
            "years: 0\nmembers",
            16,
            "found 0; allowed: a whole number from 1 to 200"),
        of("half a year", "years: 30\nmembers", "years: 30.5\nmembers", 16, "found 30.5"),
        of("endless", "members: 200", "members: 1e9", 17, "found 1e9"),
        of("negative seed", "seed: 1", "seed: -1", 18, "found -1"),
        deep("title with controls", "A tree for the tests", "\"A \\e[2J tree\"", 1, "title"),
        of("huge title", "A tree for the tests", "x".repeat(300), 1, "text of 1 to 120 characters"),
        of("title as number", "A tree for the tests", "2024", 1, "put the text between quotes"));
  }

  private static List<BadScenario> regimes() {
    return List.of(
        of("unknown operation", "- thin:", "- thinn:", 28, "unknown operation 'thinn'"),
        of("unknown operation, hint", "- thin:", "- thinn:", 28, "did you mean 'thin'?"),
        of(
            "dose above one",
            "thin: {share: 0.2",
            "thin: {share: 1.2",
            28,
            "found 1.2; allowed: a number from 0 to 1"),
        of("no dose", "thin: {share: 0.2, ", "thin: {", 28, "thin.share: found nothing"),
        of("unknown place", "where: evenly", "where: top", 28, "one of evenly, inner, tips"),
        of(
            "operation without values",
            "thin: {share: 0.2, where: evenly, by: removal}",
            "thin:",
            28,
            "found nothing; allowed: a block of keys"),
        of(
            "operation as a word",
            "- raise: {to_height_m: 4}",
            "- raise",
            29,
            "found 'raise'; allowed: a block of keys"),
        of(
            "two in one item",
            "- raise: {to_height_m: 4}",
            "- {raise: {to_height_m: 4}, shear: {depth_share: 0.1}}",
            29,
            "operations raise and shear in one item"),
        of(
            "raise to both",
            "raise: {to_height_m: 4}",
            "raise: {to_height_m: 4, to_live_crown_ratio: 0.6}",
            29,
            "found both"),
        of("raise to neither", "raise: {to_height_m: 4}", "raise: {}", 29, "found neither"),
        of("empty item", "- raise: {to_height_m: 4}", "- {}", 29, "an empty item"),
        deep(
            "window upside down",
            "from_height_m: 4, to_height_m: 8",
            "from_height_m: 8, to_height_m: 4",
            30,
            "swap the two heights"),
        of("bearing beyond north", "to_bearing_deg: 90", "to_bearing_deg: 361", 30, "found 361"),
        of(
            "reduce by nothing",
            "reduce: {height_share: 0.1}",
            "reduce: {to: stubs}",
            35,
            "height_share, spread_share or both"),
        of(
            "year before the start",
            "- year: 1",
            "- year: 0",
            24,
            "found 0; allowed: a whole number from 1"),
        of("calendar year", "- year: 1", "- year: 2029", 24, "1 being the first"),
        deep("year after the end", "- year: 1", "- year: 31", 24, "year 31, after the last of 30"),
        deep("until after the end", "until_year: 28", "until_year: 38", 33, "after the last of 30"),
        deep("until before from", "until_year: 28", "until_year: 2", 33, "from_year (4) or later"),
        of(
            "two kinds of time",
            "- year: 1",
            "- year: 1\n        every_years: 2",
            24,
            "more than one kind of time"),
        of("no time", "- year: 1\n        season: winter", "- season: winter", 24, "no time"),
        of("gap without a measure", "from_year: 4", "gap_years: 4", 32, "only together with when"),
        of(
            "unknown measure",
            "sprout_leaf_share",
            "sprout_share",
            36,
            "did you mean 'sprout_leaf_share'?"),
        of("no threshold", ", above: 0.1", "", 36, "no threshold"),
        of(
            "two thresholds",
            ", above: 0.1",
            ", above: 0.1, below: 0.4",
            36,
            "both above and below"),
        of("threshold above one", "above: 0.1", "above: 10", 36, "found 10; allowed: 0 to 1"),
        of("unknown season", "season: winter", "season: wintr", 25, "did you mean 'winter'?"),
        deep("cuts that fall short", "collar: 0.9", "collar: 0.5", 26, "shares that sum to 0.6"),
        of("cuts above one", "collar: 0.9", "collar: 1.9", 26, "found 1.9"),
        of(
            "no cuts",
            "cuts: {collar: 0.9, flush: 0.05, stub: 0.05}",
            "cuts: {}",
            26,
            "an empty block"),
        of(
            "nothing to do",
            "      operations:\n          - reduce: {height_share: 0.1}",
            "      operations: []",
            34,
            "found a list of 0"),
        deep("duplicate name", "name: work", "name: Leave Alone", 22, "again (first on line 20)"),
        of("nameless", "- name: work\n    visits", "- visits", 22, "name: found nothing"),
        of("no visits", "    visits: []\n", "", 20, "visits: found nothing"),
        of(
            "no regimes",
            BadScenario.GOOD.substring(BadScenario.GOOD.indexOf("regimes:")),
            "regimes: []\n",
            19,
            "found a list of 0; allowed: a list of 1 to 12"));
  }

  private static List<BadScenario> yaml() {
    return List.of(
        deep(
            "duplicate key",
            "  height_m: 17",
            "  height_m: 17\n  height_m: 18",
            6,
            "this key a second time"),
        deep("alias", "crown_base_m: 2.5", "crown_base_m: *low", 6, "an alias (*)"),
        deep("anchor", "crown_base_m: 2.5", "crown_base_m: &low 2.5", 6, "an anchor (&)"),
        deep(
            "merge key",
            "site: {openness: street",
            "site: {<<: {openness: street}",
            13,
            "merge key"),
        deep("tag", "crown_base_m: 2.5", "crown_base_m: !!float 2.5", 6, "a tag (!)"),
        deep(
            "java tag",
            "A tree for the tests",
            "!!javax.script.ScriptEngineManager [x]",
            1,
            "a tag (!)"),
        deep("second document", "members: 200", "---\nmembers: 200", 17, "a second document"),
        deep("tab", "  height_m: 17", "\theight_m: 17", 5, "text that YAML cannot read"),
        deep("open bracket", "skill: careful}", "skill: careful", 0, "text that YAML cannot read"),
        deep(
            "deep nesting",
            "A tree for the tests",
            "[".repeat(300) + "]".repeat(300),
            1,
            "nested more than 40 deep"),
        deep("long line", "A tree for the tests", "x".repeat(3000), 1, "a line of 3007 characters"),
        deep(
            "control character",
            "A tree for the tests",
            "A \u0007 tree",
            0,
            "text that YAML cannot read"),
        of(
            "list as key",
            "site: {openness",
            "site: {[a, b]: 1, openness",
            13,
            "a block or list as a key"),
        deep(
            "a list",
            BadScenario.GOOD,
            "- a\n- b\n",
            1,
            "found a list of 2; allowed: a block of keys"),
        deep("nothing", BadScenario.GOOD, "", 0, "an empty file"),
        deep("a word", BadScenario.GOOD, "lime\n", 1, "found 'lime'"));
  }
}
