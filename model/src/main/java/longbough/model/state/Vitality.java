package longbough.model.state;

/** Whether the tree lives, and what is remembered about its recent years. */
public final class Vitality {
  /** False from the year of death on. */
  public boolean alive = true;

  /** What the tree died of; none while it lives. */
  public CauseOfDeath cause = CauseOfDeath.NONE;

  /** Simulation year of death, or {@link Integer#MAX_VALUE}. */
  public int deathYear = Integer.MAX_VALUE;

  /** Condition as rated at the start, 0 (dying) to 1 (excellent). */
  public double startCondition = 1;

  /** Yearly probability that the stem breaks. */
  public double stemFailureProbability;

  /** Yearly probability that a limb or a sprout breaks at its union. */
  public double limbFailureProbability;

  /** Yearly probability that the roots give way. */
  public double uprootingProbability;

  /** Yearly probability that any of the three happens. */
  public double failureProbability;

  /** Station with the least strength against its load. */
  public int worstStation;

  /** Share of the section that is decayed where decay has cost most strength, 0 to 1. */
  public double worstDecayAreaFraction;

  /** Share of the section modulus lost there, 0 to 1. */
  public double worstStrengthLoss;

  /** Least sound wood between pith and surface there over the radius; 1 where sound. */
  public double worstWallRatio = 1;

  /** Maintenance that could not be met this year, kg C. */
  public double unmetMaintenanceKgC;

  /** This year's share of foliage eaten. */
  public double defoliation;

  /** This year's share of its leaves that it put out a second time. */
  public double refoliation;

  /** This year's share of an evergreen's shoots that died bare. */
  public double shootsLost;

  /** Lasting damage: share of the crown that roots and sapwood can no longer carry, 0 to 1. */
  public double decline;

  /** Strength of what goes on making the tree ill (root rot, canker, borers, soil), 0 to 1. */
  public double ailment;

  public void copyFrom(Vitality other) {
    alive = other.alive;
    cause = other.cause;
    deathYear = other.deathYear;
    startCondition = other.startCondition;
    stemFailureProbability = other.stemFailureProbability;
    limbFailureProbability = other.limbFailureProbability;
    uprootingProbability = other.uprootingProbability;
    failureProbability = other.failureProbability;
    worstStation = other.worstStation;
    worstDecayAreaFraction = other.worstDecayAreaFraction;
    worstStrengthLoss = other.worstStrengthLoss;
    worstWallRatio = other.worstWallRatio;
    unmetMaintenanceKgC = other.unmetMaintenanceKgC;
    defoliation = other.defoliation;
    refoliation = other.refoliation;
    shootsLost = other.shootsLost;
    decline = other.decline;
    ailment = other.ailment;
  }
}
