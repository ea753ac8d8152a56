package longbough.runner.validate;

import java.util.List;
import longbough.runner.validate.experiment.BranchLossAndShedding;
import longbough.runner.validate.experiment.CarbonUse;
import longbough.runner.validate.experiment.ClearedCherry;
import longbough.runner.validate.experiment.ClearedConiferTrunk;
import longbough.runner.validate.experiment.ClosedCanopy;
import longbough.runner.validate.experiment.ClosedForms;
import longbough.runner.validate.experiment.ClosureInTime;
import longbough.runner.validate.experiment.ConditionSurvey;
import longbough.runner.validate.experiment.ConiferDoseSweep;
import longbough.runner.validate.experiment.CrewMinutes;
import longbough.runner.validate.experiment.CrownLoss;
import longbough.runner.validate.experiment.CutLimits;
import longbough.runner.validate.experiment.CutToBareWood;
import longbough.runner.validate.experiment.DeadBranchCore;
import longbough.runner.validate.experiment.DeathRates;
import longbough.runner.validate.experiment.DecayBySizeAndSpecies;
import longbough.runner.validate.experiment.DecayColumns;
import longbough.runner.validate.experiment.DecayedSections;
import longbough.runner.validate.experiment.DeclineBeforeDeath;
import longbough.runner.validate.experiment.DoseLimits;
import longbough.runner.validate.experiment.DroughtResponse;
import longbough.runner.validate.experiment.Experiment;
import longbough.runner.validate.experiment.ForksInStorms;
import longbough.runner.validate.experiment.HeadedStreetTrees;
import longbough.runner.validate.experiment.HollowShells;
import longbough.runner.validate.experiment.InsectYears;
import longbough.runner.validate.experiment.LeafTraits;
import longbough.runner.validate.experiment.LeafWoodRoot;
import longbough.runner.validate.experiment.LeavesLeft;
import longbough.runner.validate.experiment.LoneCrown;
import longbough.runner.validate.experiment.NeedleLife;
import longbough.runner.validate.experiment.OneDefoliation;
import longbough.runner.validate.experiment.OpenGrownSize;
import longbough.runner.validate.experiment.PrunedCrownsInWind;
import longbough.runner.validate.experiment.RadicallyCutPlane;
import longbough.runner.validate.experiment.RaisedCherry;
import longbough.runner.validate.experiment.RaisedEvergreen;
import longbough.runner.validate.experiment.RaisedStandConifer;
import longbough.runner.validate.experiment.ReducedAsh;
import longbough.runner.validate.experiment.RepeatedDefoliation;
import longbough.runner.validate.experiment.ReserveSeasons;
import longbough.runner.validate.experiment.Respiration;
import longbough.runner.validate.experiment.Rings;
import longbough.runner.validate.experiment.SproutingByDose;
import longbough.runner.validate.experiment.StemwoodPerLeaf;
import longbough.runner.validate.experiment.ToppingAgainstReduction;
import longbough.runner.validate.experiment.TrunkGrowth;
import longbough.runner.validate.experiment.WindAndUnions;
import longbough.runner.validate.experiment.WoundClosing;

/**
 * The one list of experiments. Adding a check means adding its row and, where needed, a class here.
 */
public final class Experiments {
  private static final List<Experiment> ALL =
      List.of(
          new ClosedForms(),
          new LeafTraits(),
          new NeedleLife(),
          new ClosedCanopy(),
          new LoneCrown(),
          new Respiration(),
          new DroughtResponse(),
          new OneDefoliation(),
          new RepeatedDefoliation(),
          new DeclineBeforeDeath(),
          new StemwoodPerLeaf(),
          new CarbonUse(),
          new DoseLimits(),
          new CutLimits(),
          new DecayedSections(),
          new RaisedCherry(),
          new RaisedStandConifer(),
          new ConiferDoseSweep(),
          new RaisedEvergreen(),
          new LeavesLeft(),
          new ClearedCherry(),
          new SproutingByDose(),
          new ReducedAsh(),
          new HeadedStreetTrees(),
          new CutToBareWood(),
          new ClearedConiferTrunk(),
          new RadicallyCutPlane(),
          new OpenGrownSize(),
          new TrunkGrowth(),
          new LeafWoodRoot(),
          new ReserveSeasons(),
          new DeathRates(),
          new ConditionSurvey(),
          new Rings(),
          new ToppingAgainstReduction(),
          new CrownLoss(),
          new InsectYears(),
          new PrunedCrownsInWind(),
          new CrewMinutes(),
          new BranchLossAndShedding(),
          new DecayColumns(),
          new WoundClosing(),
          new ClosureInTime(),
          new DeadBranchCore(),
          new DecayBySizeAndSpecies(),
          new HollowShells(),
          new ForksInStorms(),
          new WindAndUnions());

  private Experiments() {}

  public static List<Experiment> all() {
    return ALL;
  }
}
