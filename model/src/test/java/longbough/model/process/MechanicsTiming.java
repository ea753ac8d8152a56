package longbough.model.process;

import java.lang.management.ManagementFactory;
import longbough.model.pruning.Placement;
import longbough.model.state.TreeState;

/** Prints what a tree-year of the mechanical processes costs; run by hand, asserts nothing. */
final class MechanicsTiming {
  private static final int TREE_YEARS = 100_000;

  private MechanicsTiming() {}

  public static void main(String[] args) {
    Process[] all = {
      new WoundClosure(),
      new Compartmentalization(),
      new TrunkSections(),
      new TrunkStrength(),
      new WindLoading(),
      new TrunkResistance(),
      new LimbResistance(),
      new FailureProbability(),
      new WindFailure()
    };
    for (int round = 0; round < 2; round++) {
      time(all, 0);
      time(all, 12);
      time(all, 60);
    }
  }

  private static void time(Process[] all, int cuts) {
    YearContext context = TestTrunks.of(TestTrunks.WEAK);
    TestTrunks.limbs(context.state);
    for (int i = 0; i < cuts; i++) {
      int w =
          TestTrunks.cut(
              context, i % 3 == 0 ? Placement.FLUSH : Placement.COLLAR, 0.03 + 0.08 * i / cuts);
      context.state.wounds.heightM[w] = 1 + 9.0 * i / cuts;
      context.state.wounds.azimuthRad[w] = i;
      context.state.wounds.parentRadiusM[w] =
          context.state.trunk.radiusAtM(context.state.wounds.heightM[w]);
    }
    TreeState start = new TreeState();
    start.copyFrom(context.state);
    long[] nanos = new long[all.length];
    int decayed = 0;
    long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    for (int year = 0; year < TREE_YEARS; year++) {
      if (year % 30 == 0) {
        context.state.copyFrom(start);
      }
      TestTrunks.ring(context.state, 0.003);
      for (int i = 0; i < all.length; i++) {
        long before = year % 16 == 0 ? System.nanoTime() : 0;
        all[i].run(context);
        nanos[i] += year % 16 == 0 ? System.nanoTime() - before : 0;
      }
      context.state.year++;
      decayed += stations(context.state);
    }
    System.out.printf("%d wounds, %.1f decayed stations:", cuts, decayed / (double) TREE_YEARS);
    double sum =
        (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) / 1e3 / TREE_YEARS;
    for (int i = 0; i < all.length; i++) {
      double micros = 16 * nanos[i] / 1e3 / TREE_YEARS;
      System.out.printf(" %s %.2f", all[i].name(), micros);
    }
    System.out.printf("; CPU time %.2f us a tree-year%n", sum);
  }

  private static int stations(TreeState state) {
    int count = 0;
    for (int s = 0; s < state.trunk.stations; s++) {
      count += state.sections.decayed[s] ? 1 : 0;
    }
    return count;
  }
}
