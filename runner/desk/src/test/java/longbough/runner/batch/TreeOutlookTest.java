package longbough.runner.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import longbough.model.state.CauseOfDeath;
import longbough.shared.source.ParameterLibrary;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class TreeOutlookTest {
  private static final Offset<Double> CLOSE = Offset.offset(1e-12);

  @Test
  void aWeightIsOneAtTheLine() {
    double dying = 1 - Math.pow(1 - 0.014, 20);
    assertThat(Measure.DYING.line(20)).isCloseTo(dying, CLOSE);
    Outlook at = outlook("at", 1 - dying, 0.465, 0.33, 0.25);
    for (Measure measure : Measure.values()) {
      assertThat(measure.weight(at)).as(measure.word()).isCloseTo(1, CLOSE);
    }
    assertThat(TreeOutlook.trouble(at)).isCloseTo(4, CLOSE);
    Outlook well = outlook("well", 1, 1, 0, -0.4);
    assertThat(TreeOutlook.trouble(well)).isZero();
    assertThat(TreeOutlook.passed(well)).isZero();
    assertThat(TreeOutlook.passed(outlook("far", 0, 0, 1, 1))).isEqualTo(4);
  }

  @Test
  void theLineOfTheReserveIsHalfOfTheNormalOne() {
    double half =
        ParameterLibrary.general().value("survival.safe_reserve")
            * ParameterLibrary.general().value("survival.normal_reserve");
    assertThat(Measure.RESERVE.line(1)).isCloseTo(half, CLOSE);
  }

  @Test
  void mostTroubleComesFirstAndEqualsByName() {
    TreeOutlook well = tree("a", outlook("alone", 0.95, 0.9, 0, 0));
    TreeOutlook same = tree("b", outlook("alone", 0.95, 0.9, 0, 0));
    TreeOutlook hollow = tree("c", outlook("alone", 0.95, 0.9, 0.8, 0));
    TreeOutlook dying = tree("d", outlook("alone", 0.01, 0.5, 0, 0));
    List<TreeOutlook> all = new ArrayList<>(List.of(same, hollow, well, dying));
    all.sort(TreeOutlook.MOST_TROUBLE);
    assertThat(all).containsExactly(dying, hollow, well, same);
    assertThat(new Batch(all, List.of()).inTrouble()).isEqualTo(2);
  }

  @Test
  void aRegimeIsNamedOnlyWhereItDoesClearlyBetter() {
    Outlook alone = outlook("alone", 0.8, 0.8, 0.2, 0);
    Outlook hardly = outlook("hardly", 0.8, 0.8, 0.19, 0);
    Outlook better = outlook("better", 0.9, 0.8, 0.1, 0);
    Outlook worse = outlook("worse", 0.3, 0.8, 0.3, 0);
    assertThat(tree("x", alone, hardly, worse).best()).isEqualTo(alone);
    assertThat(tree("x", alone, hardly, better, worse).best()).isEqualTo(better);
  }

  private static TreeOutlook tree(String name, Outlook... outlooks) {
    return new TreeOutlook(new BatchTree(name, name, null), List.of(outlooks));
  }

  private static Outlook outlook(
      String regime, double alive, double reserve, double strengthLoss, double leafMissing) {
    return new Outlook(
        regime, 20, alive, alive, alive, CauseOfDeath.NONE, reserve, strengthLoss, leafMissing, 0);
  }
}
