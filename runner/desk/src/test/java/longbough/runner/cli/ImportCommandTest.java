package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.sheet.InventedWorkbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImportCommandTest {
  private static final Offset<Double> CLOSE = Offset.offset(1e-4);

  @TempDir private Path folder;
  private final Told told = new Told();

  @Test
  void theInventedStreetBecomesTwelveScenarios() throws IOException {
    Path street = street();
    Path out = folder.resolve("street");
    assertThat(
            run(
                street.resolve("trees.csv"),
                street.resolve("limbs.csv"),
                street.resolve("decay.csv"),
                street.resolve("wounds.csv"),
                "--like",
                street.resolve("plan.yaml"),
                "--out",
                out))
        .as(told.err())
        .isEqualTo(ExitCode.OK);
    assertThat(Told.names(out)).hasSize(12).allMatch(name -> name.matches("\\d+\\.yaml"));
    for (String sheet : List.of("trees", "limbs", "decay", "wounds")) {
      assertThat(Files.readAllLines(street.resolve(sheet + ".csv")).get(0))
          .startsWith("# Invented example");
    }
    SimulationInput oak = input(out.resolve("10.yaml"));
    assertThat(oak.species().id()).isEqualTo("quercus-robur");
    assertThat(oak.tree().limbs()).hasSize(13);
    assertThat(oak.tree().limbs().get(4).dead()).isTrue();
    assertThat(oak.site().openness()).isEqualTo(1);
    assertThat(oak.regimes()).hasSize(3);
    assertThat(oak.filledIn()).anyMatch(line -> line.contains("bats seen in June; limb at 3.1 m"));
    SimulationInput chestnut = input(out.resolve("8.yaml"));
    assertThat(chestnut.tree().cavities()).hasSize(2);
    assertThat(chestnut.tree().cavities().get(1).lengthM()).isEqualTo(1);
    assertThat(chestnut.tree().oldWounds()).hasSize(2);
    assertThat(chestnut.filledIn())
        .anyMatch(line -> line.startsWith("Topped at 11 m 18 years ago"))
        .anyMatch(line -> line.contains("decay at 1.1 m: decay to 48 cm"));
    SimulationInput lime = input(out.resolve("3.yaml"));
    assertThat(lime.tree().foliageMissing()).isBetween(0.1, 0.3);
    assertThat(input(out.resolve("5.yaml")).tree().rootPlateLost()).isEqualTo(0.35);
    assertThat(input(out.resolve("12.yaml")).tree().spreadM()[0]).isBetween(4.0, 11.0);
  }

  @Test
  void usUnitsGirthSemicolonsAndDecimalCommasComeOutMetric() throws IOException {
    Path file =
        write(
            "my trees.csv",
            "\uFEFFTree;Species;Trunk girth (in);Height (ft);Reach north (ft);Reach east (ft);Reach"
                + " south (ft);Reach west (ft)\nOak, by \"the\" gate;English oak;62,8;50;20;20;20;20,5\n");
    assertThat(run(file, "--climate", "mediterranean", "--out", folder.resolve("out")))
        .as(told.err())
        .isEqualTo(ExitCode.OK);
    assertThat(Told.names(folder.resolve("out"))).containsExactly("oak-by-the-gate.yaml");
    SimulationInput oak = input(folder.resolve("out/oak-by-the-gate.yaml"));
    assertThat(oak.title()).isEqualTo("Oak, by \"the\" gate, English oak".replace('"', '"'));
    assertThat(oak.tree().dbhM()).isCloseTo(62.8 * 0.0254 / Math.PI, CLOSE);
    assertThat(oak.tree().heightM()).isCloseTo(50 * 0.3048, CLOSE);
    assertThat(oak.tree().spreadM()[3]).isCloseTo(2 * 20.5 * 0.3048, CLOSE);
    assertThat(oak.climate().name()).contains("mediterranean");
    assertThat(oak.regimes().get(0).visits()).isEmpty();
  }

  @Test
  void theLeadingShootComesInCentimetresOrInches() throws IOException {
    String head = "tree,species,trunk_diameter_cm,height_m,leader_growth_";
    Path metric = write("a.csv", head + "cm\n1,tilia-cordata,20,9,35\n2,tilia-cordata,20,9,\n");
    assertThat(run(metric, "--climate", "mediterranean", "--out", folder.resolve("a")))
        .as(told.err())
        .isEqualTo(ExitCode.OK);
    assertThat(input(folder.resolve("a/1.yaml")).tree().leaderGrowthM()).isCloseTo(0.35, CLOSE);
    assertThat(input(folder.resolve("a/2.yaml")).tree().leaderGrowthM()).isNaN();
    Path us = write("b.csv", head + "in\n1,tilia-cordata,20,9,14\n");
    assertThat(run(us, "--climate", "mediterranean", "--out", folder.resolve("b")))
        .isEqualTo(ExitCode.OK);
    assertThat(input(folder.resolve("b/1.yaml")).tree().leaderGrowthM())
        .isCloseTo(14 * 0.0254, CLOSE);
    Path bad = write("c.csv", head + "cm\n1,tilia-cordata,20,9,350\n");
    assertThat(run(bad, "--climate", "mediterranean", "--out", folder.resolve("c")))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err())
        .contains("c.csv, line 2, column 5: leader_growth_cm: found 350; allowed: 1 to 300 cm");
  }

  @Test
  void aWorkbookHoldsAllSheets() throws IOException {
    byte[] bytes =
        new InventedWorkbook()
            .sheet(
                "the trees",
                List.of(
                    List.of("tree", "species", "trunk_diameter_cm", "height_m", "climate"),
                    List.of(7, "tilia-cordata", 40, 14.5, "continental_temperate")))
            .sheet(
                "limbs",
                List.of(List.of("tree", "height_m", "diameter_cm", "dead"), List.of(7, 4, 9, "x")))
            .bytes();
    Path file = Files.write(folder.resolve("all.xlsx"), bytes);
    assertThat(run(file, "--out", folder.resolve("out"))).as(told.err()).isEqualTo(ExitCode.OK);
    SimulationInput lime = input(folder.resolve("out/7.yaml"));
    assertThat(lime.tree().heightM()).isEqualTo(14.5);
    assertThat(lime.tree().limbs()).hasSize(1);
    assertThat(lime.tree().limbs().get(0).dead()).isTrue();
  }

  @Test
  void everyBadCellIsToldAtOnceAndNothingIsWritten() throws IOException {
    Path trees =
        write(
            "trees.csv",
            """
            tree,species,trunk_diameter_cm,height_ft,condition,crown_base_m,colour
            1,tilia-cordata,40,,good,2,red
            2,tilea cordata,40,50,good,2,
            3,tilia-cordata,4000,50,god,2,
            3,tilia-cordata,40,50,good,2,
            4,tilia-cordata,"40,5",50,good,30,
            5,tilia-cordata,40,50,good,2,
            6,tilia-cordata,5,262,good,2,
            """);
    Path limbs =
        write(
            "limbs.csv",
            "tree,height_m,diameter_cm,diameter_cm,length\n5,1,9,,\n8,3,9,,\n5,3,90,,\n");
    Path out = folder.resolve("out");
    assertThat(run(trees, limbs, "--climate", "rainy", "--out", out)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err())
        .contains("trees.csv, line 1, column 7: colour: found an unknown column")
        .contains(
            "trees.csv, line 2, column 4: height_ft: found nothing; allowed: 6.57 to 262.46 ft")
        .contains("trees.csv, line 3, column 2: species: found unknown species 'tilea cordata'")
        .contains(
            "trees.csv, line 4, column 3: trunk_diameter_cm: found 4000; allowed: 3 to 400 cm")
        .contains("trees.csv, line 4, column 5: condition: found 'god'", "did you mean 'good'?")
        .contains("trees.csv, line 5, column 1: tree: found '3' again, as in line 4")
        .contains("trees.csv, line 6, column 3", "found '40,5'", "a decimal point, not a comma")
        .contains("trees.csv, line 8, column 4: height_ft: found 79.858 m on a trunk of 5 cm")
        .contains("limbs.csv, line 1, column 4: diameter_cm: found a second column")
        .contains("limbs.csv, line 1, column 5: length: found a heading without unit")
        .contains(
            "limbs.csv, line 2, column 2: height_m: found a living limb at 1 m, below the crown")
        .contains("limbs.csv, line 3, column 1: tree: found the unknown tree '8'")
        .contains("limbs.csv, line 4, column 3: diameter_cm: found 90 cm on a trunk of 40 cm")
        .contains("--climate: found 'rainy'")
        .doesNotContain("\tat ");
    assertThat(out).doesNotExist();
  }

  @Test
  void whatIsThereAlreadyStaysUnlessAsked() throws IOException {
    Path file =
        write("trees.csv", "tree,species,trunk_diameter_cm,height_m\na,tilia-cordata,40,14\n");
    Path out = Files.createDirectory(folder.resolve("out"));
    Files.writeString(out.resolve("a.yaml"), "mine");
    Files.writeString(out.resolve("b.yaml"), "mine");
    String climate = "maritime_temperate";
    assertThat(run(file, "--climate", climate, "--out", out)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("a.yaml: found a file that is there already", "--replace");
    assertThat(out.resolve("a.yaml")).hasContent("mine");
    assertThat(run(file, "--climate", climate, "--out", out, "--replace")).isEqualTo(ExitCode.OK);
    assertThat(Files.readString(out.resolve("a.yaml"))).contains("species: \"tilia-cordata\"");
    assertThat(Told.names(out)).containsExactly("a.yaml", "b.yaml");
  }

  @Test
  void namesCannotLeaveTheFolderNorTextTheScenario() throws IOException {
    Path file =
        write(
            "trees.csv",
            "tree,species,trunk_diameter_cm,height_m,note\n"
                + "../../x,tilia-cordata,40,14,\"a\"\"b: {c}\nseed: 3 # \\\"\n=1+1,tilia-cordata,40,14,\n");
    assertThat(run(file, "--climate", "maritime_temperate", "--out", folder.resolve("out")))
        .as(told.err())
        .isEqualTo(ExitCode.OK);
    assertThat(Told.names(folder.resolve("out"))).containsExactly("1-1.yaml", "x.yaml");
    SimulationInput x = input(folder.resolve("out/x.yaml"));
    assertThat(x.seed()).isEqualTo(1);
    assertThat(x.filledIn()).anyMatch(line -> line.endsWith("a\"b: {c} seed: 3 # \\"));
  }

  @Test
  void wantsClimateTreesAndFiles() throws IOException {
    Path limbs = write("limbs.csv", "tree,height_m,diameter_cm\n1,3,9\n");
    assertThat(run(limbs)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("the unknown tree '1'");
    Path trees = write("t.csv", "tree,species,trunk_diameter_cm,height_m\n1,tilia-cordata,40,14\n");
    assertThat(run(trees, "--out", folder.resolve("o"))).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("t.csv, line 2: found no climate", "--like");
    assertThat(run(write("x.csv", "a,b\n1,2\n"))).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("neither name nor columns");
    assertThat(run()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("Which FILE?");
  }

  @Test
  void templatesAreSheetsThatImportUnderstands() throws IOException {
    for (String us : List.of("", "--us")) {
      Path at = folder.resolve("t" + us);
      assertThat(us.isEmpty() ? run("--template", at) : run("--template", at, us))
          .isEqualTo(ExitCode.OK);
      String unit = us.isEmpty() ? "14" : "46";
      Path trees = at.resolve("trees.csv");
      long cells =
          Files.readAllLines(trees).get(Files.readAllLines(trees).size() - 1).split(",").length;
      String head = "oak,quercus-robur,16,," + unit;
      Files.writeString(trees, Files.readString(trees) + head + ",".repeat((int) cells - 5) + "\n");
      Path out = folder.resolve("o" + us);
      assertThat(run(trees, at.resolve("limbs.csv"), "--climate", "mediterranean", "--out", out))
          .as(told.err())
          .isEqualTo(ExitCode.OK);
      assertThat(input(out.resolve("oak.yaml")).tree().dbhM())
          .isCloseTo(us.isEmpty() ? 0.16 : 0.4064, CLOSE);
      assertThat(run("--template", at)).isEqualTo(ExitCode.BAD_INPUT);
    }
  }

  private int run(Object... args) {
    String[] text = new String[args.length];
    for (int i = 0; i < args.length; i++) {
      text[i] = args[i].toString();
    }
    return told.run(new Subcommand("import", "", ImportCommand::new), text);
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private static SimulationInput input(Path file) {
    return ScenarioResolver.resolve(ScenarioReader.read(file));
  }

  static Path street() {
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      if (Files.isDirectory(at.resolve("scenarios/street"))) {
        return at.resolve("scenarios/street");
      }
    }
    throw new AssertionError("no folder 'scenarios/street' upward from here");
  }
}
