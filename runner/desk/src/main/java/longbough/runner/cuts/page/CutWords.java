package longbough.runner.cuts.page;

import java.util.Locale;
import longbough.model.pruning.Placement;
import longbough.runner.cuts.CutFace;
import longbough.runner.drawing.look.Words;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/** Names and numbers of cuts in words. */
final class CutWords {
  private CutWords() {}

  /** E.g. {@code Collar}. */
  static String placement(Placement placement) {
    String name = placement.name();
    return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
  }

  /** Common name and how well the species walls off decay. */
  static String species(String id) {
    SpeciesTraits traits = SpeciesLibrary.load().get(id);
    String group = traits.compartmentClass().name().toLowerCase(Locale.ROOT);
    String name = traits.commonName();
    return Character.toUpperCase(name.charAt(0))
        + name.substring(1)
        + ", "
        + group
        + " at walling off decay";
  }

  static String centimetres(double lengthM) {
    return Words.whole(100 * lengthM) + " cm";
  }

  /** What is still open, or since when it is closed. */
  static String face(CutFace face, double closedYears) {
    if (face.closed()) {
      return "closed in year " + Words.whole(closedYears);
    }
    String open =
        Words.brief(100 * face.openWidthM()) + " × " + Words.brief(100 * face.openHeightM());
    if (face.stubM() > 0) {
      return "stub, " + CutWords.centimetres(face.branchM()) + " wide";
    }
    return open + " cm open";
  }
}
