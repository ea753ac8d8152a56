package longbough.runner.scenario.written;

import java.util.List;
import java.util.Optional;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.Level;

/** The tree as an arborist measured it. */
public record WrittenTree(
    Given<String> species,
    Given<Double> trunkDiameterCm,
    Given<Double> heightM,
    Given<Double> crownBaseM,
    WrittenSpread spread,
    Given<Double> leaderGrowthCm,
    Given<Level> condition,
    Given<Level> dieback,
    List<WrittenCavity> cavities,
    List<WrittenWound> oldWounds,
    List<WrittenTopping> topped,
    Optional<WrittenPruning> lastPruned,
    Given<Double> rootPlateLost,
    List<WrittenLimb> limbs,
    Given<String> notes) {}
