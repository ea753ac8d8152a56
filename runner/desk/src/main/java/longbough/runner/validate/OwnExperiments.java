package longbough.runner.validate;

import java.util.List;
import longbough.runner.validate.experiment.BrokenMaples;
import longbough.runner.validate.experiment.Budworm;
import longbough.runner.validate.experiment.CaterpillarYears;
import longbough.runner.validate.experiment.Experiment;
import longbough.runner.validate.experiment.FineRoots;
import longbough.runner.validate.experiment.LeafAgainstStem;
import longbough.runner.validate.experiment.LooperYear;
import longbough.runner.validate.experiment.MassByPart;
import longbough.runner.validate.experiment.RaisedYoungConifers;
import longbough.runner.validate.experiment.RaisedYoungPine;
import longbough.runner.validate.experiment.ReleasedCrowns;
import longbough.runner.validate.experiment.ReserveAfterLoss;
import longbough.runner.validate.experiment.RingSensitivity;
import longbough.runner.validate.experiment.RingsAndDrought;
import longbough.runner.validate.experiment.SingleCrownShade;
import longbough.runner.validate.experiment.YoungStreetTrees;

/**
 * Experiments for the checks of {@link CheckLibrary#own}: a trial of what the model was never
 * brought to. Their bands were written down before they were played; no fit may see them, and none
 * is listed in {@link Experiments}.
 */
final class OwnExperiments {
  private static final List<Experiment> ALL =
      List.of(
          new ReleasedCrowns(),
          new RaisedYoungPine(),
          new Budworm(),
          new LooperYear(),
          new CaterpillarYears(),
          new ReserveAfterLoss(),
          new RingsAndDrought(),
          new FineRoots(),
          new SingleCrownShade(),
          new MassByPart(),
          new RingSensitivity(),
          new LeafAgainstStem(),
          new BrokenMaples(),
          new YoungStreetTrees(),
          new RaisedYoungConifers());

  private OwnExperiments() {}

  static List<Experiment> all() {
    return ALL;
  }
}
