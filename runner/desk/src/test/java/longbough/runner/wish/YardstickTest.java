package longbough.runner.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;

/** Readings of a tree with two limbs whose answer can be worked out by hand. */
class YardstickTest {
  private static final double EXTINCTION = 0.5;
  private static final double ROUNDING = 1e-6;
  private static final Sector NORTH = new Sector(340, 20);
  private static final Sector EAST = new Sector(70, 110);

  @Test
  void headroomIsReadWhereThePathBegins() {
    TreeState tree = tree();
    // The northern limb leaves at 3 m and rises 4 m over its reach of 4 m.
    Yardstick atTrunk = yardstick(new Wish.Headroom(5, 0, NORTH), tree);
    assertThat(atTrunk.measured()).isCloseTo(3, within(ROUNDING));
    Yardstick away = yardstick(new Wish.Headroom(5, 1, NORTH), tree);
    assertThat(away.measured()).isCloseTo(4, within(ROUNDING));
    assertThat(yardstick(new Wish.Headroom(5, 4.5, NORTH), tree).fulfilled(tree)).isEqualTo(1);
  }

  @Test
  void whatIsHalfWayCountsHalf() {
    TreeState tree = tree();
    Yardstick yardstick = yardstick(new Wish.Headroom(5, 0, NORTH), tree);
    assertThat(yardstick.fulfilled(tree)).isZero();
    tree.limbs.heightM[0] = 4;
    assertThat(yardstick.fulfilled(tree)).isCloseTo(0.5, within(ROUNDING));
    tree.limbs.heightM[0] = 6;
    assertThat(yardstick.fulfilled(tree)).isEqualTo(1);
  }

  @Test
  void aRoofIsReadWithinItsHeightsOnly() {
    TreeState tree = tree();
    assertThat(yardstick(new Wish.OffTheRoof(NORTH, 0, 20, 2), tree).measured())
        .isCloseTo(4, within(ROUNDING));
    assertThat(yardstick(new Wish.OffTheRoof(NORTH, 0, 5, 2), tree).measured())
        .isCloseTo(2, within(ROUNDING));
    assertThat(yardstick(new Wish.OffTheRoof(NORTH, 8, 20, 2), tree).measured()).isZero();
    assertThat(yardstick(new Wish.OffTheRoof(EAST, 0, 20, 2), tree).measured())
        .isCloseTo(3, within(ROUNDING));
  }

  @Test
  void aViewWithoutLeavesIsOpenAndOneWithLeavesFollowsTheLaw() {
    TreeState tree = tree();
    Wish view = new Wish.View(new Sector(359, 1), 4.8, 5, 0.9);
    Yardstick yardstick = yardstick(view, tree);
    // All rays pass within 0.6 m of the middle zone at 2.4 m out and 5.4 m up.
    assertThat(yardstick.measured()).isBetween(0.01, 0.6);
    double some = yardstick.reading(tree);
    for (int zone = 0; zone < 2 * Limbs.ZONES; zone++) {
      tree.limbs.budFullness[zone] = 0.5;
    }
    assertThat(yardstick.reading(tree)).isGreaterThan(some);
    java.util.Arrays.fill(tree.limbs.budFullness, 0);
    assertThat(yardstick.reading(tree)).isEqualTo(1);
    Wish aside = new Wish.View(new Sector(340, 20), 9.5, 10, 0.9);
    assertThat(yardstick(aside, tree()).measured()).as("nothing grows there").isEqualTo(1);
  }

  @Test
  void lightComesFromTheTreesSide() {
    TreeState tree = tree();
    double behind = yardstick(new Wish.Light(180, 6, 2, 0.9), tree).measured();
    double before = yardstick(new Wish.Light(0, 6, 2, 0.9), tree).measured();
    assertThat(before).as("the northern limb stands before this window").isLessThan(behind);
    assertThat(behind).isLessThan(1);
  }

  @Test
  void theNearestLimbIsMeantAndItsWeightCounts() {
    TreeState tree = tree();
    Yardstick yardstick = yardstick(new Wish.LimbWeight(5.5, 85, 0.4), tree);
    assertThat(yardstick.limb()).isEqualTo(1);
    tree.limbs.woodKgC[1] *= 0.8;
    assertThat(yardstick.reading(tree)).isCloseTo(0.2, within(ROUNDING));
    assertThat(yardstick.fulfilled(tree)).isCloseTo(0.5, within(ROUNDING));
    tree.limbs.birthYear[1] = 3;
    assertThat(yardstick.fulfilled(tree)).as("another limb has taken the place").isEqualTo(1);
  }

  @Test
  void heightCountsDownward() {
    TreeState tree = tree();
    Yardstick yardstick = yardstick(new Wish.HeightLimit(8), tree);
    assertThat(yardstick.fulfilled(tree)).isZero();
    tree.trunk.heightM = 9;
    assertThat(yardstick.fulfilled(tree)).isCloseTo(0.5, within(ROUNDING));
  }

  private static Yardstick yardstick(Wish wish, TreeState tree) {
    return new Yardstick(wish, tree, EXTINCTION);
  }

  /** Ten metres high; a limb to the north from 3 m, rising 45 degrees; one level to the east. */
  private static TreeState tree() {
    TreeState tree = new TreeState();
    tree.trunk.heightM = 10;
    tree.trunk.leaderIntact = true;
    tree.limbs.count = 2;
    limb(tree, 0, 3, 0, 45, 4 * Math.sqrt(2));
    limb(tree, 1, 5, 90, 90, 3);
    return tree;
  }

  private static void limb(
      TreeState tree, int limb, double heightM, double bearing, double angle, double lengthM) {
    Limbs limbs = tree.limbs;
    limbs.status[limb] = LimbStatus.ALIVE.code();
    limbs.heightM[limb] = heightM;
    limbs.azimuthRad[limb] = Math.toRadians(bearing);
    limbs.insertionRad[limb] = Math.toRadians(angle);
    limbs.lengthM[limb] = lengthM;
    limbs.woodKgC[limb] = 10;
    for (int zone = limb * Limbs.ZONES; zone < (limb + 1) * Limbs.ZONES; zone++) {
      limbs.fullLeafAreaM2[zone] = 8;
      limbs.budFullness[zone] = 1;
    }
  }
}
