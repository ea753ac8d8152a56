package longbough.shared.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import longbough.shared.problem.InputException;
import org.junit.jupiter.api.Test;

class DataFileTest {

  private static final String HEADER = "name,value,unit,low,high,sampled,basis,source,note\n";

  private static List<Sourced> read(String rows) {
    return ParameterReader.read(DataFile.parse("some.csv", HEADER + rows, ParameterReader.HEADER));
  }

  @Test
  void readsARow() {
    assertThat(read("light.k,0.5,1,0.4,0.6,yes,published,monsi1953,\"table 1, row 2\"\n").get(0))
        .returns("light.k", Sourced::name)
        .returns(0.5, Sourced::value)
        .returns(true, Sourced::sampled)
        .returns(Basis.PUBLISHED, Sourced::basis)
        .returns("table 1, row 2", Sourced::note);
  }

  @Test
  void namesFileAndLineOfEveryMistake() {
    assertThatThrownBy(
            () ->
                read(
                    """
        light.k,half,1,0.4,0.6,yes,from memory,,
        light.m,0.5,1,0.6,0.7,yes,from memory,,
        light.n,0.5,1,0.4,0.6,perhaps,from memory,,
        light.o,0.5,1,0.4,0.6,no,hearsay,,
        light.p,0.5,1,0.4,0.6,no,published,,
        light.q,0.5,1,0.4,0.6,no,assumption,,
        light.c,0.5,1,0.4,0.6,no,calibrated,,
        light.r,NaN,1,0.4,0.6,no,from memory,,
        light.s,0.5,,0.4,0.6,no,from memory,,
        light.t,0.5,1,0.4,0.6,no,from memory,,
        light.t,0.5,1,0.4,0.6,no,from memory,,
        """))
        .isInstanceOfSatisfying(
            InputException.class,
            e -> {
              assertThat(e.problems())
                  .extracting(p -> p.line())
                  .containsExactly(2, 3, 4, 5, 6, 7, 8, 9, 10, 12);
              assertThat(e.problems())
                  .extracting(p -> p.field())
                  .containsExactly(
                      "value", "value", "sampled", "basis", "source", "note", "note", "value",
                      "unit", "name");
              assertThat(e).hasMessageContaining("some.csv, line 2");
            });
  }

  @Test
  void refusesAnotherHeaderAShortRowAnOpenQuoteAndAnEmptyFile() {
    List<String> header = ParameterReader.HEADER;
    assertThatThrownBy(() -> DataFile.parse("a.csv", "name,value\n", header))
        .hasMessageContaining("a.csv, line 1: found header");
    assertThatThrownBy(() -> DataFile.parse("a.csv", HEADER + "x,1\n", header))
        .hasMessageContaining("a.csv, line 2: found 2 fields");
    assertThatThrownBy(() -> DataFile.parse("a.csv", HEADER + "\"x", header))
        .hasMessageContaining("check the quotes");
    assertThatThrownBy(() -> DataFile.parse("a.csv", "", header))
        .hasMessageContaining("an empty file");
    assertThatThrownBy(() -> DataFile.rows("longbough/none.csv", header))
        .hasMessageContaining("no such file");
  }
}
