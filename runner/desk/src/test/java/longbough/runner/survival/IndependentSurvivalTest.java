package longbough.runner.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import longbough.model.state.CauseOfDeath;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/**
 * Survival, errors, bands and causes of death of random lives against the package survival of R
 * (survfit; competing causes as a factor), computed by it while the test runs. Skipped where R or
 * the package is not installed.
 */
class IndependentSurvivalTest {
  private static final CauseOfDeath[] CAUSES = {
    CauseOfDeath.NONE, CauseOfDeath.STARVED, CauseOfDeath.STEM_FAILURE, CauseOfDeath.UPROOTED
  };

  @Test
  void randomLivesAgainstR() throws Exception {
    Assumptions.assumeTrue(
        installed(), "skipped: Rscript with the package 'survival' is not installed here");
    for (int seed = 1; seed <= 5; seed++) {
      compare(seed);
    }
  }

  private static void compare(int seed) throws Exception {
    Random random = new Random(seed);
    double[] times = random.doubles(60, 0, 25).map(Math::ceil).toArray();
    int[] codes = random.ints(60, 0, CAUSES.length).toArray();
    boolean[] died = new boolean[codes.length];
    CauseOfDeath[] causes = new CauseOfDeath[codes.length];
    for (int i = 0; i < codes.length; i++) {
      died[i] = codes[i] > 0;
      causes[i] = CAUSES[codes[i]];
    }
    SurvivalCurve curve = SurvivalCurve.of(times, died);
    DeathsByCause deaths = new DeathsByCause(times, causes);
    String[] rows = r(times, codes).split("\n");
    assertThat(rows.length).isGreaterThan(10);
    for (String row : rows) {
      double[] v = Arrays.stream(row.trim().split(" +")).mapToDouble(Double::parseDouble).toArray();
      SurvivalCurve.Step step = curve.at(v[0]);
      assertThat(step.survival()).isEqualTo(v[1], within(1e-9));
      assertThat(step.standardError()).isEqualTo(v[2], within(1e-9));
      assertThat(step.low()).isEqualTo(v[3], within(1e-9));
      assertThat(step.high()).isEqualTo(v[4], within(1e-9));
      for (int k = 1; k < CAUSES.length; k++) {
        assertThat(deaths.until(v[0]).get(CAUSES[k])).isEqualTo(v[4 + k], within(1e-9));
      }
    }
  }

  private static String r(double[] times, int[] codes) throws Exception {
    String script =
        String.format(
            Locale.ROOT,
            "suppressPackageStartupMessages(library(survival));"
                + "t <- c(%s); k <- c(%s);"
                + "a <- summary(survfit(Surv(t, k > 0) ~ 1, conf.type='log-log'));"
                + "b <- summary(survfit(Surv(t, factor(k, 0:3)) ~ 1), times=a$time);"
                + "keep <- a$surv > 0;"
                + "m <- cbind(a$time, a$surv, a$std.err, a$lower, a$upper, b$pstate[, 2:4])[keep, ];"
                + "write.table(format(m, digits=15, scientific=FALSE), quote=FALSE,"
                + " row.names=FALSE, col.names=FALSE)",
            Arrays.stream(times).mapToObj(Double::toString).collect(Collectors.joining(",")),
            Arrays.stream(codes).mapToObj(Integer::toString).collect(Collectors.joining(",")));
    Process process = new ProcessBuilder("Rscript", "-e", script).start();
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(text).isZero();
    return text;
  }

  private static boolean installed() throws InterruptedException {
    try {
      Process process =
          new ProcessBuilder("Rscript", "-e", "library(survival)")
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (IOException missing) {
      return false;
    }
  }
}
