package longbough.runner.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BriefReferenceTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Lanner R.M. 1985. On height. Forest Ecology 13:143-148 | Lanner R.M. 1985",
        "Morgan J., Cannell M.G.R. 1994. Shape of stems. Tree Physiology 14:49 | Morgan J., Cannell M.G.R. 1994",
        "Hoch G., Richter A., Korner C. 2003. Plant 26:1067 | Hoch G. et al. 2003",
        "Jansons Ā. et al. 2015. Silva Fennica 49(1) | Jansons Ā. et al. 2015",
        "Annals of Botany 2015, PMC4648455: survival of deciduous trees | Annals of Botany 2015",
        "Drag tests of broadleaf crowns in leaf and leafless | Drag tests of broadleaf crowns in leaf and leafless",
      })
  void keepsAuthorsAndYear(String whole, String brief) {
    assertThat(BriefReference.of(whole)).isEqualTo(brief);
  }
}
