package longbough.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.TreeSet;
import longbough.model.process.Process;
import org.junit.jupiter.api.Test;

class ModelSourcesTest {

  @Test
  void theListOfProcessesHoldsEveryOneThatTheCycleRuns() {
    YearlyCycle cycle = new YearlyCycle(PlayedTrees.MARITIME, PlayedTrees.OPEN, context -> false);
    TreeSet<String> listed = new TreeSet<>();
    cycle.processes().forEach(process -> listed.add(process.name()));
    TreeSet<String> run = new TreeSet<>();
    for (Process process : WatchedCycle.watch(cycle, Process::run)) {
      run.add(process.name());
    }
    assertThat(listed).isEqualTo(run).hasSizeGreaterThan(20);
  }
}
