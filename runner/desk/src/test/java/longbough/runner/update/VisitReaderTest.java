package longbough.runner.update;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VisitReaderTest {
  @TempDir private Path place;

  private MeasuredVisit read(String text) throws IOException {
    return VisitReader.read(Files.writeString(place.resolve("visit.csv"), text), 30);
  }

  private List<String> mistakes(String text) {
    InputException refused = catchThrowableOfType(InputException.class, () -> read(text));
    assertThat(refused).as(text).isNotNull();
    return refused.problems().stream().map(Problem::message).toList();
  }

  @Test
  void readsMetricAndUsUnitsIntoOne() throws IOException {
    MeasuredVisit visit =
        read(
            """
            # a remark
            year,what,value,error
            6,trunk_girth_in,64,0.5
            3,trunk_diameter_cm,50.5,
            6,height_ft,59,
            5,ring_width_in,0.2,
            6,dieback,moderate,
            """);
    assertThat(visit.figures()).extracting(Measured::year).containsExactly(3, 5, 6, 6, 6);
    Measured girth = visit.figures().get(2);
    assertThat(girth.value()).isCloseTo(64 * 2.54 / Math.PI, within(1e-9));
    assertThat(girth.error()).isCloseTo(0.5 * 2.54 / Math.PI, within(1e-9));
    assertThat(visit.figures().get(1).value()).isCloseTo(5.08, within(1e-12));
    assertThat(visit.figures().get(3).value()).isCloseTo(59 * 0.3048, within(1e-12));
    assertThat(visit.figures().get(4).value()).isEqualTo(27.5);
    assertThat(visit.figures().get(4).classWidth()).isEqualTo(20);
    assertThat(visit.figures().get(0).error()).isNaN();
    assertThat(visit.lastAliveYear()).as("what is measured lives").isEqualTo(6);
    assertThat(visit.dead()).isFalse();
    assertThat(visit.years()).containsExactly(3, 5, 6);
    assertThat(visit.until(5)).isEqualTo(2);
  }

  @Test
  void aTreeFoundDeadLivedBefore() throws IOException {
    MeasuredVisit visit = read("year,what,value\n3,height_m,18\n7,alive,no\n");
    assertThat(visit.dead()).isTrue();
    assertThat(visit.lastYear()).isEqualTo(7);
    assertThat(visit.fits(5, 7)).isTrue();
    assertThat(visit.fits(3, 7)).as("dead when its height was measured").isFalse();
    assertThat(visit.fits(8, 7)).as("still alive").isFalse();
    assertThat(visit.fits(Integer.MAX_VALUE, 3)).as("so far").isTrue();
  }

  @Test
  void tellsEveryMistakeWithItsPlace() {
    List<String> found =
        mistakes(
            """
            year,what,value,error
            2026,trunk_diameter_cm,50.5,
            3,trunk_diametre_cm,50.5,
            4,height_m,tall,
            5,height_m,350,
            6,alive,perhaps,
            6,sprouts,12,-1
            6,dieback,heavy,
            6,height_m,18
            """);
    String all = String.join("\n", found);
    assertThat(found).hasSize(8);
    assertThat(all)
        .contains("line 2, column 1: year: found '2026'; allowed: whole years", "1 to 30")
        .contains("line 3, column 2: what: found 'trunk_diametre_cm'", "nearest: trunk_diameter_cm")
        .contains("line 4, column 3: value: found 'tall'; allowed: a number from 0.5 to 100")
        .contains("line 5, column 3: value: found '350'")
        .contains("line 6, column 3: value: found 'perhaps'; allowed: yes or no")
        .contains("line 7, column 4: error: found '-1'")
        .contains("line 8, column 3: value: found 'heavy'; allowed: none, slight, moderate, severe")
        .contains("line 9", "found 3 cells; allowed: 4 cells", "mend:");
  }

  @Test
  void refusesWhatContradictsItself() {
    assertThat(mistakes("year,what,value\n3,height_m,18\n3,height_ft,59\n"))
        .singleElement()
        .asString()
        .contains("line 3", "height of year 3 again", "lines 2 and 3");
    assertThat(mistakes("year,what,value\n3,alive,no\n4,ring_width_mm,2\n"))
        .singleElement()
        .asString()
        .contains("ring_width_mm in year 4", "dead in year 3");
    assertThat(mistakes("year,what,value\n3,alive,no\n3,alive,yes\n")).isNotEmpty();
  }

  @Test
  void refusesWhatIsNoVisit() throws IOException {
    assertThat(mistakes("")).singleElement().asString().contains("an empty file");
    assertThat(mistakes("year,what,value\n")).singleElement().asString().contains("no figure");
    assertThat(mistakes("year;what;value\n3;height_m;18\n"))
        .singleElement()
        .asString()
        .contains("found year;what;value", "year,what,value,error");
    assertThat(mistakes("year,what,value\n3,height_m,\"18\n")).isNotEmpty();
    assertThat(mistakes("year,what,value\n" + "3,height_m,18\n".repeat(600)))
        .singleElement()
        .asString()
        .contains("up to 500 rows");
    Path bytes = Files.write(place.resolve("bytes.csv"), new byte[] {'y', (byte) 0xff});
    assertThatThrownBy(() -> VisitReader.read(bytes, 30)).hasMessageContaining("not UTF-8");
    assertThatThrownBy(() -> VisitReader.read(place, 30)).hasMessageContaining("a folder");
    assertThatThrownBy(() -> VisitReader.read(place.resolve("none.csv"), 30))
        .hasMessageContaining("no such file");
  }

  @Test
  void everyWordIsUnderstood() throws IOException {
    for (FigureWords.Word word : FigureWords.all().values()) {
      String value =
          switch (word.word()) {
            case "alive" -> "yes";
            case FigureWords.IN_WORDS -> "slight";
            default -> plain(word.high());
          };
      MeasuredVisit visit = read("year,what,value\n4," + word.word() + "," + value + "\n");
      assertThat(visit.lastAliveYear()).as(word.word()).isEqualTo(4);
    }
    assertThat(FigureWords.all().values().stream().map(FigureWords.Word::quantity))
        .as("every quantity has a word")
        .contains(Quantity.values());
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  @Property(tries = 500, seed = "81")
  void anyTextIsReadOrRefusedInWords(@ForAll String text) throws IOException {
    Path file = Files.createTempFile("visit", ".csv");
    try {
      Files.write(file, ("year,what,value\n3,height_m," + text).getBytes(StandardCharsets.UTF_8));
      VisitReader.read(file, 30);
    } catch (InputException refused) {
      assertThat(refused.problems().stream().map(Problem::found).collect(Collectors.toList()))
          .allMatch(found -> !found.isBlank());
    } finally {
      Files.delete(file);
    }
  }
}
