package longbough.runner.species;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import longbough.runner.cli.LongboughCommand;
import longbough.shared.trait.SpeciesLibrary;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class SpeciesCommandTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    CommandLine line = LongboughCommand.commandLine(args);
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    return line.execute(args);
  }

  @Test
  void listsEverySpeciesOnce() {
    assertThat(run("species")).isZero();
    List<String> lines = out.toString().lines().toList();
    for (String id : SpeciesLibrary.load().ids()) {
      assertThat(lines).as(id).filteredOn(line -> line.strip().startsWith(id + " ")).hasSize(1);
    }
    assertThat(out.toString())
        .contains("Broadleaf, deciduous, ring porous wood")
        .contains("profusely");
    assertThat(lines).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(110));
  }

  @Test
  void showsEveryNumberOfOneSpeciesWithBasisAndSource() {
    assertThat(run("species", "Littleleaf linden")).isZero();
    String sheet = out.toString();
    assertThat(sheet)
        .contains("Tilia cordata (Malvaceae)")
        .contains("compartmentalization: strong")
        .containsPattern("leaf life: 1 year .*published \\[wright2004\\], group")
        .containsPattern("woundwood vigour: 0\\.4 .*\\[tavankar2017\\], drawn")
        .contains("[urbantrees2016] McPherson");
    SpeciesLibrary.load()
        .get("tilia-cordata")
        .numbers()
        .rows()
        .forEach(row -> assertThat(sheet).contains("  " + TraitLabel.of(row) + ": "));
  }

  @Test
  void namesReadWithoutTheirUnit() {
    assertThat(SpeciesLibrary.load().get("salix").numbers().rows())
        .extracting(TraitLabel::of)
        .contains(
            "crown diameter max",
            "leaf mass per area",
            "photosynthetic capacity",
            "leaf out temperature",
            "modulus of rupture",
            "deadwood retention",
            "insertion angle",
            "bud bank per limb")
        .doesNotHaveDuplicates();
  }

  @Test
  void everySheetFitsAHundredColumns() {
    for (String id : SpeciesLibrary.load().ids()) {
      assertThat(new SpeciesSheet(SpeciesLibrary.load().entry(id)).lines())
          .allSatisfy(line -> assertThat(line).as(id).hasSizeLessThanOrEqualTo(Wrap.COLUMNS))
          .doesNotContain("Other");
    }
  }

  @Test
  void anUnknownSpeciesIsRefusedWithTheNearestNames() {
    assertThat(run("species", "tilia-cordat")).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString())
        .contains("found 'tilia-cordat'")
        .contains("nearest: tilia-cordata")
        .contains("mend: 'longbough species' lists all of them");
  }
}
