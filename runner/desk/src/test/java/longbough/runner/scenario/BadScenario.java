package longbough.runner.scenario;

/**
 * A good scenario with one thing changed for the worse.
 *
 * @param what a short name
 * @param from text of {@link #GOOD} that is replaced
 * @param to what replaces it
 * @param line where the mistake must be pointed at
 * @param says text that the message must hold
 * @param schema whether the schema can see it too
 */
record BadScenario(String what, String from, String to, int line, String says, boolean schema) {

  static final String GOOD =
      """
      title: A tree for the tests
      tree:
        species: tilia-cordata
        trunk_diameter_cm: 48
        height_m: 17
        crown_base_m: 2.5
        crown_spread_m: 11
        condition: good
        cavities: [{height_m: 1, length_m: 2, sound_wall_cm: 9, opening_cm: 5}]
        old_wounds: [{height_m: 3, diameter_cm: 20, still_open_cm: 4}]
        root_plate_lost: 0.1
        limbs: [{height_m: 4, diameter_cm: 12}, {height_m: 2, diameter_cm: 9, dead: true}]
      site: {openness: street, soil_water_mm: 120, wind_exposure: open, growth_factor: 1}
      climate: maritime_temperate
      crew: {price_per_hour: 60, currency: EUR, discount_rate: 0.02, skill: careful}
      years: 30
      members: 200
      seed: 1
      regimes:
        - name: leave alone
          visits: []
        - name: work
          visits:
            - year: 1
              season: winter
              cuts: {collar: 0.9, flush: 0.05, stub: 0.05}
              operations:
                - thin: {share: 0.2, where: evenly, by: removal}
                - raise: {to_height_m: 4}
                - open_window: {from_height_m: 4, to_height_m: 8, from_bearing_deg: 10, to_bearing_deg: 90, share: 0.5}
            - every_years: 3
              from_year: 4
              until_year: 28
              operations:
                - reduce: {height_share: 0.1}
            - when: {measure: sprout_leaf_share, above: 0.1}
              gap_years: 2
              operations:
                - strip_sprouts: {share: 1}
      """;

  String text() {
    if (!GOOD.contains(from)) {
      throw new AssertionError("'" + from + "' is not in the good scenario");
    }
    return GOOD.replace(from, to);
  }

  /** A mistake that schema and reader both see. */
  static BadScenario of(String what, String from, String to, int line, String says) {
    return new BadScenario(what, from, to, line, says, true);
  }

  /** A mistake between values, or of YAML itself, that only the reader sees. */
  static BadScenario deep(String what, String from, String to, int line, String says) {
    return new BadScenario(what, from, to, line, says, false);
  }

  @Override
  public String toString() {
    return what;
  }
}
