package longbough.shared.trait;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import longbough.shared.source.Sourced;
import org.junit.jupiter.api.Test;

/** Runs every fit of the species files again over the open data and compares the coefficients. */
class AllometryFitTest {

  /** The files hold four decimals. */
  private static final double ROUNDING = 0.0001;

  @Test
  void theCommittedCoefficientsAreThoseOfTheData() throws IOException {
    Optional<Path> file = UrbanTrees.file();
    assumeTrue(
        file.isPresent(), "skipped: the folder of open data with urban-trees.csv is not at hand");
    List<NamedCsvRecord> trees = UrbanTrees.read(file.get());
    for (AllometrySelection selection : AllometrySelection.all()) {
      AllometryFit fit = AllometryFit.of(selection, trees);
      String what = selection.id() + " " + selection.quantity();
      assertThat(fit.n()).as(what).isGreaterThanOrEqualTo(25);
      Sourced intercept = row(selection, "_ln_intercept");
      assertThat(intercept.value()).as(what).isCloseTo(fit.intercept(), within(ROUNDING));
      assertThat(row(selection, "_ln_slope").value())
          .as(what)
          .isCloseTo(fit.slope(), within(ROUNDING));
      assertThat(row(selection, "_residual_sd").value())
          .as(what)
          .isCloseTo(fit.residualSd(), within(ROUNDING));
      assertThat(intercept.note()).as(what).contains("n = " + fit.n() + ",");
    }
  }

  @Test
  void everySpeciesIsFittedOrSaysWhyNot() {
    List<AllometrySelection> selections = AllometrySelection.all();
    for (String id : SpeciesLibrary.load().ids()) {
      for (String quantity : List.of("height", "crown_diameter", "leaf_area", "dbh_age")) {
        boolean fitted =
            selections.stream().anyMatch(s -> s.id().equals(id) && s.quantity().equals(quantity));
        Sourced slope =
            SpeciesLibrary.load().get(id).numbers().get("species." + quantity + "_ln_slope");
        assertThat(slope.citation().equals("urbantrees2016"))
            .as(id + " " + quantity)
            .isEqualTo(fitted);
      }
    }
  }

  private static Sourced row(AllometrySelection selection, String part) {
    return SpeciesLibrary.load()
        .get(selection.id())
        .numbers()
        .get("species." + selection.quantity() + part);
  }
}
