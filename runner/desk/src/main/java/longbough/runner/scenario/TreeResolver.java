package longbough.runner.scenario;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import longbough.model.tree.MeasuredTree;
import longbough.model.tree.MeasuredTree.KnownCavity;
import longbough.model.tree.MeasuredTree.MeasuredLimb;
import longbough.model.tree.MeasuredTree.OldWound;
import longbough.runner.scenario.written.WrittenCavity;
import longbough.runner.scenario.written.WrittenLimb;
import longbough.runner.scenario.written.WrittenSpread;
import longbough.runner.scenario.written.WrittenTree;
import longbough.runner.scenario.written.WrittenWound;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.Plain;
import longbough.shared.trait.SpeciesTraits;

/** The tree in SI units, with what was not measured filled in. */
final class TreeResolver {

  private static final double CM_PER_M = 100;

  private final Notes notes;

  private TreeResolver(Notes notes) {
    this.notes = notes;
  }

  static MeasuredTree resolve(WrittenTree tree, SpeciesTraits species, Notes notes) {
    TreeResolver resolver = new TreeResolver(notes);
    double crownBaseM = resolver.crownBase(tree, species);
    double[] spreadM = resolver.spread(tree, species);
    EarlierHarm earlier = new EarlierHarm(tree, species, notes);
    double condition = earlier.condition();
    if (tree.limbs().isEmpty()) {
      notes.add("No limb inventory: the limbs are reconstructed from the measured crown.");
    }
    if (!tree.rootPlateLost().present()) {
      notes.add("Root plate lost not given: none taken.");
    }
    if (tree.notes().present()) {
      notes.add("Noted on site, not used by the model: " + tree.notes().value());
    }
    double small = Presets.fallback("tree.small_trunk_cm");
    if (tree.trunkDiameterCm().value() < small) {
      notes.add(
          "Trunk under "
              + Plain.number(small)
              + " cm: so small a tree is not carried well yet. It starts with too small a store and"
              + " may lose leaf or die in its first years; compare regimes with care.");
    }
    return new MeasuredTree(
        tree.trunkDiameterCm().value() / CM_PER_M,
        tree.heightM().value(),
        crownBaseM,
        spreadM,
        condition,
        tree.cavities().stream().map(resolver::cavity).toList(),
        Stream.concat(
                tree.oldWounds().stream().map(resolver::wound), earlier.toppingCuts().stream())
            .toList(),
        tree.rootPlateLost().or(0.0),
        tree.limbs().stream().map(resolver::limb).toList(),
        earlier.foliageMissing(),
        resolver.leaderGrowth(tree));
  }

  /** Growth of the leader, m a year; of a topped tree it is that of the shoots which came since. */
  private double leaderGrowth(WrittenTree tree) {
    if (!tree.leaderGrowthCm().present()) {
      notes.add(
          "Growth of the leading shoot not given: that of the species at this size, condition and"
              + " light taken.");
      return Double.NaN;
    }
    if (!tree.topped().isEmpty()) {
      notes.add(
          "Growth of the leading shoot not used: the tree was topped, and shoots that come after a"
              + " topping don't grow at the pace of its crown. Where one has long led again, give"
              + " the topping as an old wound.");
      return Double.NaN;
    }
    return tree.leaderGrowthCm().value() / CM_PER_M;
  }

  private double crownBase(WrittenTree tree, SpeciesTraits species) {
    if (tree.crownBaseM().present()) {
      return tree.crownBaseM().value();
    }
    OptionalDouble lowest =
        tree.limbs().stream()
            .filter(limb -> !limb.dead().or(false))
            .mapToDouble(limb -> limb.heightM().value())
            .min();
    if (lowest.isPresent()) {
      notes.add(
          "Crown base not given: "
              + Plain.number(lowest.getAsDouble())
              + " m taken, the lowest living limb of the inventory.");
      return lowest.getAsDouble();
    }
    double share = Presets.fallback("tree.crown_base_share");
    double crownBaseM = share * tree.heightM().value();
    notes.add(
        "Crown base not given: "
            + Plain.number(crownBaseM)
            + " m taken ("
            + Plain.percent(share)
            + " of the height, open-grown "
            + species.commonName()
            + ").");
    return crownBaseM;
  }

  private double[] spread(WrittenTree tree, SpeciesTraits species) {
    WrittenSpread spread = tree.spread();
    if (spread.byDirection()) {
      return new double[] {
        2 * spread.northM().value(), 2 * spread.eastM().value(),
        2 * spread.southM().value(), 2 * spread.westM().value()
      };
    }
    if (!spread.diameterM().present()) {
      double typical = TypicalSize.of(species, tree.trunkDiameterCm().value()).crownSpreadM();
      notes.add(
          "Crown spread not given: "
              + Plain.number(typical)
              + " m taken, that of a middling open-grown "
              + species.commonName()
              + " with this trunk.");
      return new double[] {typical, typical, typical, typical};
    }
    double diameter = spread.diameterM().value();
    notes.add(
        "Crown spread given as one number: "
            + Plain.number(diameter / 2)
            + " m of reach taken in every direction.");
    return new double[] {diameter, diameter, diameter, diameter};
  }

  private KnownCavity cavity(WrittenCavity cavity) {
    String what = "The cavity at " + Plain.number(cavity.heightM().value()) + " m: ";
    if (!cavity.openingCm().present()) {
      notes.add(what + "opening not given: taken as closed.");
    }
    return new KnownCavity(
        cavity.heightM().value(),
        notes.number(cavity.lengthM(), what + "length along the trunk", "cavity.length_m", "m"),
        cavity.soundWallCm().value() / CM_PER_M,
        notes.number(
            cavity.bearingDeg(), what + "bearing", "cavity.bearing_deg", "degrees (north)"),
        cavity.openingCm().or(0.0) / CM_PER_M);
  }

  private OldWound wound(WrittenWound wound) {
    String what = "The old wound at " + Plain.number(wound.heightM().value()) + " m: ";
    if (!wound.stillOpenCm().present()) {
      notes.add(what + "open width not given: taken as closed.");
    }
    return new OldWound(
        wound.heightM().value(),
        wound.diameterCm().value() / CM_PER_M,
        notes.number(wound.ageYears(), what + "age", "wound.age_years", "years"),
        notes.number(wound.bearingDeg(), what + "bearing", "wound.bearing_deg", "degrees (north)"),
        wound.stillOpenCm().or(0.0) / CM_PER_M);
  }

  /** What an inventory leaves out stays open (NaN): the reconstruction of the crown fills it in. */
  private MeasuredLimb limb(WrittenLimb limb) {
    List<Given<Double>> open = List.of(limb.lengthM(), limb.bearingDeg(), limb.angleDeg());
    if (open.stream().anyMatch(given -> !given.present())) {
      notes.add(
          "Lengths, bearings and angles that the limb inventory leaves out are reconstructed.");
    }
    return new MeasuredLimb(
        limb.heightM().value(),
        limb.diameterCm().value() / CM_PER_M,
        limb.lengthM().or(Double.NaN),
        limb.bearingDeg().or(Double.NaN),
        limb.angleDeg().or(Double.NaN),
        limb.dead().or(false));
  }
}
