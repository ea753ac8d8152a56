package longbough.runner.client;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import longbough.model.pruning.Regime;
import longbough.runner.client.file.Client;
import longbough.runner.client.file.ClientReader;
import longbough.runner.client.file.Logo;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClientReaderTest {
  private static final List<String> PLANS = List.of("leave alone", "reduce");

  @TempDir Path place;

  @Test
  void everythingThatAFileSaysIsTaken() throws IOException {
    Files.writeString(place.resolve("de.properties"), "season.winter = Winter\n");
    ImageIO.write(new BufferedImage(40, 20, 1), "png", place.resolve("logo.png").toFile());
    Client client =
        read(
            """
            title: The lime
            date: 26 November
            reference: "114"
            location: Canal walk
            client: {name: An owner, address: [One street, One town]}
            consultant:
              name: A. Example
              qualification: Arborist
              company: Trees
              address: [Lane 3]
              telephone: "+00 1"
              email: a@example.org
              website: example.org
              logo: logo.png
            introduction: You asked.
            found: [a crack, a nest]
            recommended: reduce
            advice: Reduce it.
            closing: Yours.
            language: de
            words: de.properties
            """);
    assertThat(client.client().lines()).containsExactly("One street", "One town");
    assertThat(client.consultant().lines())
        .containsExactly("Arborist", "Trees", "Lane 3", "+00 1", "a@example.org", "example.org");
    assertThat(client.logo().orElseThrow().width()).isEqualTo(40);
    assertThat(client.found()).containsExactly("a crack", "a nest");
    assertThat(client.recommended()).isEqualTo("reduce");
    assertThat(client.words().say("season.winter")).isEqualTo("Winter");
    assertThat(client.language()).isEqualTo("de");
  }

  @Test
  void theShippedExampleFitsItsScenario() {
    Path scenarios = Path.of("../../scenarios");
    List<String> plans =
        ScenarioResolver.resolve(ScenarioReader.read(scenarios.resolve("canal-side-lime.yaml")))
            .regimes()
            .stream()
            .map(Regime::name)
            .toList();
    Client client = ClientReader.read(scenarios.resolve("client/canal-side-lime.yaml"), plans);
    assertThat(client.logo()).isPresent();
    assertThat(client.recommended()).isIn(plans);
  }

  @Test
  void everyMistakeOfAllFilesIsToldAtOnce() throws IOException {
    Files.writeString(place.resolve("de.properties"), "no.such = x\n");
    Files.writeString(place.resolve("logo.png"), "not a picture");
    List<Problem> problems =
        problems(
            """
            titel: x
            recommended: redduce
            language: "<de>"
            client: {name: 3}
            found: [ok, 12]
            consultant: {logo: logo.png}
            words: de.properties
            """);
    assertThat(problems).extracting(Problem::line).containsExactly(1, 2, 3, 4, 5, 0, 1);
    assertThat(problems.get(0).mend()).contains("did you mean 'title'");
    assertThat(problems.get(1).mend()).contains("did you mean 'reduce'");
    assertThat(problems.get(4).field()).isEqualTo("found[2]");
    assertThat(problems).allSatisfy(problem -> assertThat(problem.mend()).isNotBlank());
  }

  @Test
  void aFileThatIsNotThereIsNamed() {
    Problem problem =
        catchThrowableOfType(
                InputException.class, () -> ClientReader.read(place.resolve("none"), PLANS))
            .problems()
            .get(0);
    assertThat(problem.found()).isEqualTo("no such file");
    assertThat(problem.allowed()).doesNotContain("scenario");
  }

  @Test
  void aPictureIsDecodedAndWrittenAnew() throws IOException {
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(1700, 300, BufferedImage.TYPE_INT_RGB), "jpg", jpeg);
    jpeg.writeBytes("<script>alert(1)</script>".getBytes(StandardCharsets.UTF_8));
    Logo logo = logo("logo.jpg", jpeg.toByteArray());
    assertThat(logo.mediaType()).isEqualTo("image/png");
    assertThat(logo.width()).isEqualTo(850);
    assertThat(logo.height()).isEqualTo(150);
    assertThat(new String(logo.bytes(), StandardCharsets.ISO_8859_1)).doesNotContain("script");
    assertThat(ImageIO.read(new ByteArrayInputStream(logo.bytes())).getWidth()).isEqualTo(850);
  }

  @Test
  void ofAnSvgLogoOnlyShapesAreKept() throws IOException {
    Logo logo =
        logo(
            "logo.svg",
            """
            <?xml version="1.0"?>
            <svg xmlns="http://www.w3.org/2000/svg" xmlns:x="urn:x" viewBox="0 0 20 10" onload="a()">
              <metadata><x:secret/></metadata>
              <a href="javascript:b()"><path d="M0 0h1"/></a>
              <g style="fill:#ff0000;fill:url(http://evil);stroke:url(#g)" onclick="c()" x:label="l">
                <path d="M0 0L5 5z" fill="url(//evil)" style="opacity:.5;behavior:url(x)"/>
              </g>
            </svg>
            """
                .getBytes(StandardCharsets.UTF_8));
    assertThat(logo.width()).isEqualTo(600);
    assertThat(logo.height()).isEqualTo(300);
    assertThat(new String(logo.bytes(), StandardCharsets.UTF_8))
        .isEqualTo(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"600\" height=\"300\""
                + " viewBox=\"0 0 20 10\"><g stroke=\"url(#g)\">"
                + "<path d=\"M0 0L5 5z\" opacity=\".5\"></path></g></svg>");
  }

  @Test
  void logosThatCouldDoHarmOrWouldLookWrongAreRefused() throws IOException {
    String head = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">";
    List<String> bad =
        List.of(
            "<!DOCTYPE svg [<!ENTITY e SYSTEM \"file:///etc/passwd\">]>" + head + "&e;</svg>",
            head + "<script>x</script></svg>",
            head + "<style>path{fill:red}</style><path d=\"M0 0h1\"/></svg>",
            head + "<image href=\"http://x\"/></svg>",
            head + "<text>Words</text></svg>",
            head + "</svg>",
            head + "<g>".repeat(60) + "</g>".repeat(60) + "</svg>",
            "<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M0 0h1\"/></svg>",
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 NaN 1\"><path d=\"M0\"/></svg>",
            "<html><body/></html>",
            "<svg",
            "",
            "GIF89a",
            "\u0089PNG damaged",
            " ".repeat(1_000_001));
    for (String text : bad) {
      Files.write(place.resolve("l"), text.getBytes(StandardCharsets.ISO_8859_1));
      List<Problem> problems = problems("consultant: {logo: l}\n");
      assertThat(problems).as(text).hasSize(1);
      assertThat(problems.get(0).mend()).as(text).isNotBlank();
    }
  }

  @Test
  void aPictureOfTooManyPointsIsRefusedBeforeItIsDecoded() throws IOException {
    ByteArrayOutputStream wide = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(6001, 1, BufferedImage.TYPE_BYTE_BINARY), "png", wide);
    Files.write(place.resolve("l"), wide.toByteArray());
    assertThat(problems("consultant: {logo: l}\n").get(0).found()).isEqualTo("6001 x 1 points");
  }

  private Logo logo(String name, byte[] bytes) throws IOException {
    Files.write(place.resolve(name), bytes);
    return read("consultant: {logo: " + name + "}\n").logo().orElseThrow();
  }

  private List<Problem> problems(String text) throws IOException {
    Path file = Files.writeString(place.resolve("client.yaml"), text);
    return catchThrowableOfType(InputException.class, () -> ClientReader.read(file, PLANS))
        .problems();
  }

  private Client read(String text) throws IOException {
    return ClientReader.read(Files.writeString(place.resolve("client.yaml"), text), PLANS);
  }
}
