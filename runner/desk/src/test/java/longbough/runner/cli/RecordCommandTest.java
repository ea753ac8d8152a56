package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import longbough.model.SimulationInput;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.scenario.TypicalSize;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordCommandTest {
  private static final Offset<Double> CLOSE = Offset.offset(1e-4);

  /** Enter at every question from the height to the quality of the soil. */
  private static final String ALL_DEFAULTS = "\n".repeat(16);

  @TempDir private Path folder;
  private final Told told = new Told();

  @Test
  void speciesTrunkAndClimateAreEnough() throws IOException {
    String answers = "\n\nEnglish oak\n48\n" + ALL_DEFAULTS + "maritime_temperate\n\n\n";
    assertThat(run(answers)).as(told.out() + told.err()).isEqualTo(ExitCode.OK);
    SimulationInput oak = input();
    TypicalSize typical = TypicalSize.of(oak.species(), 48);
    assertThat(oak.title()).isEqualTo("tree, English oak");
    assertThat(oak.tree().dbhM()).isCloseTo(0.48, CLOSE);
    assertThat(oak.tree().heightM()).isEqualTo(typical.heightM());
    assertThat(oak.tree().spreadM()[0]).isEqualTo(typical.crownSpreadM());
    assertThat(oak.filledIn()).anyMatch(line -> line.contains("height not measured"));
    assertThat(told.out())
        .contains(
            "Height, m [" + typical.heightM() + " m, middling", "Open sky at the sides [street]")
        .contains("English oak (Quercus robur), trunk 48 cm", "Written:");
    Told check = new Told();
    assertThat(check.run(new Subcommand("check", "", CheckCommand::new), file().toString()))
        .isEqualTo(ExitCode.OK);
  }

  @Test
  void usUnitsGirthAndEverythingThatCanBeSaid() throws IOException {
    String answers =
        """
        ft
        No. 7
        tilia cordata
        g 60
        47'
        2 m
        30
        1 ft
        14
        fair
        slight
        5
        26
        12
        9
        3
        20 %
        3.5
        4
        1
        270
        0

        10
        3
        8

        1

        8
        5,5
        no
        9
        120
        20
        3
        yes



        between buildings
        deep


        mediterranean
        bats "in" June: #1
        yes
        """;
    assertThat(run(answers)).as(told.out() + told.err()).isEqualTo(ExitCode.OK);
    assertThat(told.out()).contains("Lowest living limb, ft");
    SimulationInput lime = input();
    assertThat(lime.tree().dbhM()).isCloseTo(60 * 0.0254 / Math.PI, CLOSE);
    assertThat(lime.tree().heightM()).isCloseTo(47 * 0.3048, CLOSE);
    assertThat(lime.tree().crownBaseM()).isEqualTo(2);
    assertThat(lime.filledIn())
        .anyMatch(line -> line.contains("shoot not used: the tree was topped"));
    assertThat(lime.tree().cavities().get(0).soundWallM()).isCloseTo(4 * 0.0254, CLOSE);
    assertThat(lime.tree().oldWounds()).hasSize(2);
    assertThat(lime.tree().oldWounds().get(0).openWidthM()).isCloseTo(0.0254, CLOSE);
    assertThat(lime.tree().oldWounds().get(1).cutDiameterM()).isCloseTo(9 * 0.0254, CLOSE);
    assertThat(lime.tree().limbs()).hasSize(2);
    assertThat(lime.tree().limbs().get(0).baseDiameterM()).isCloseTo(5.5 * 0.0254, CLOSE);
    assertThat(lime.tree().limbs().get(1).dead()).isTrue();
    assertThat(lime.tree().rootPlateLost()).isEqualTo(0.05);
    assertThat(lime.site().openness()).isEqualTo(0.45);
    assertThat(lime.filledIn()).anyMatch(line -> line.endsWith("bats \"in\" June: #1"));
  }

  @Test
  void everyAnswerIsCheckedAsItIsGivenAndOneCanGoBack() throws IOException {
    String answers =
        "<\nyards\nm\n<\nm\n\nlime of the valley\n<\nfirst\nSilver birch\n\n4000\nthirty\n30\n?\n300\n79\n13\n14\n4\n"
            + ALL_DEFAULTS.substring(2)
            + "rainy\n\nmaritime_temperate\nwrong\n<\nright\nperhaps\n<\nlast\ny\n";
    assertThat(run(answers)).as(told.out() + told.err()).isEqualTo(ExitCode.OK);
    assertThat(told.out())
        .contains("This is the first question", "Found 'yards'", "nearest:", "This one is needed.")
        .contains("Found 4000; allowed: 3 to 400 cm", "Found 'thirty'", "2 to 80 m")
        .contains("Found 300; allowed: 2 to 80 m", "Found height: 79", "Found 'rainy'")
        .contains("crown_base_m is the height of the lowest living limb", "Found 'perhaps'");
    SimulationInput birch = input();
    assertThat(birch.title()).isEqualTo("first, Silver birch");
    assertThat(birch.tree().heightM()).isEqualTo(13);
    assertThat(birch.tree().crownBaseM()).isEqualTo(4);
    assertThat(birch.filledIn())
        .anyMatch(line -> line.endsWith(": last"))
        .noneMatch(line -> line.contains("wrong") || line.contains("right"));
  }

  @Test
  void inputThatEndsOrNeverFitsWritesNothing() throws IOException {
    String whole = "\n\nEnglish oak\n48\n" + ALL_DEFAULTS + "maritime_temperate\n\n";
    for (int end = 0; end <= whole.length(); end += 3) {
      assertThat(run(whole.substring(0, end))).isEqualTo(ExitCode.BAD_INPUT);
      assertThat(Told.names(folder)).isEmpty();
    }
    assertThat(told.err()).contains("the end of the input before the tree was complete");
    assertThat(run("y\n".repeat(1_000_000))).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("30 answers in a row");
    assertThat(run("x".repeat(5_000_000))).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run("\n\nEnglish oak\n48\nquit\n")).isEqualTo(ExitCode.OK);
    assertThat(run(whole + "no\n")).isEqualTo(ExitCode.OK);
    assertThat(told.out()).contains("Nothing was written.");
    String limbs = "\n\nEnglish oak\n48\n" + "\n".repeat(11) + "9\n9\n\n\n\n".repeat(60);
    assertThat(run(limbs)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.out()).contains("a list of 49");
    assertThat(Told.names(folder)).isEmpty();
  }

  @Test
  void aFileThatIsThereStaysAndAPlanSparesTheClimate() throws IOException {
    Path plan = Files.writeString(folder.resolve("plan.yaml"), Told.SCENARIO);
    Files.writeString(file(), "mine");
    String answers = "\n\nEnglish oak\n48\n" + ALL_DEFAULTS + "\n\n\n";
    assertThat(run(answers, "--like", plan.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(told.err()).contains("a file that is there already", "--replace");
    assertThat(told.out()).isEmpty();
    assertThat(file()).hasContent("mine");
    assertThat(run(answers, "--like", plan.toString(), "--replace"))
        .as(told.out() + told.err())
        .isEqualTo(ExitCode.OK);
    assertThat(input().regimes()).hasSize(2);
    assertThat(input().members()).isEqualTo(20);
  }

  private Path file() {
    return folder.resolve("tree.yaml");
  }

  private SimulationInput input() {
    return ScenarioResolver.resolve(ScenarioReader.read(file()));
  }

  private int run(String answers, String... options) {
    InputStream in = new ByteArrayInputStream(answers.getBytes(StandardCharsets.UTF_8));
    String[] args = new String[options.length + 1];
    System.arraycopy(options, 0, args, 1, options.length);
    args[0] = file().toString();
    return told.run(new Subcommand("record", "", () -> new RecordCommand(in)), args);
  }
}
