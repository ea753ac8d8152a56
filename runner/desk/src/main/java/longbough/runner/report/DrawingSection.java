package longbough.runner.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Drawings of the tree. Those that would make the page too heavy are left out and said to be in
 * their folder.
 */
final class DrawingSection implements Section {
  /** Room for drawings, characters: with everything else the page stays under 3 MB. */
  static final int ROOM = 2_400_000;

  @Override
  public void write(Page page, ReportInput input) {
    if (input.drawings().isEmpty()) {
      return;
    }
    List<Picture> shown = shown(input.drawings());
    page.open("section", "aria-labelledby", "drawings");
    page.element("h2", "The tree, drawn", "id", "drawings");
    page.element(
        "p",
        "The median future. Foliage, sprouts, deadwood, stubs and decay are drawn from the state of the"
            + " model; where the limbs were reconstructed they stand for the real ones, not for a survey."
            + " Trunks stand here for the two regimes that cost them most strength; those of all regimes"
            + " are picture files in the folder drawings/.");
    shown.forEach(picture -> picture(page, picture));
    if (shown.size() < input.drawings().size()) {
      page.element("p", "More drawings are in the folder drawings/.", "class", "note");
    }
    page.close();
  }

  private static List<Picture> shown(List<Picture> all) {
    List<Picture> shown = new ArrayList<>();
    int size = 0;
    for (Picture picture : all) {
      size += picture.svg().length();
      if (size <= ROOM) {
        shown.add(picture);
      } else {
        size -= picture.svg().length();
      }
    }
    return shown;
  }

  private static void picture(Page page, Picture picture) {
    // The drawing bears its heading itself, and its description in words for who doesn't see it.
    page.open("figure", "role", "group", "aria-label", picture.title(), "class", "drawing");
    page.markup(picture.element()).close();
  }
}
