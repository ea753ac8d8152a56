package longbough.model.random;

/**
 * Which futures a tree's chance is taken from. A plain future takes all of it from one number; a
 * future put together takes the weather of each year, and each parameter, from a number of its own.
 * Draws are independent from year to year and from parameter to parameter, so that a future put
 * together is as likely as a plain one.
 */
public interface Fate {

  /** Number of the future whose chance the year has, in simulation years from 1. */
  int year(int year);

  /** Number of the future whose draw of a parameter is taken. */
  int parameter(String name);

  /** All of it from one future. */
  static Fate of(int member) {
    return new Whole(member);
  }

  /** A plain future. */
  record Whole(int member) implements Fate {

    @Override
    public int year(int year) {
      return member;
    }

    @Override
    public int parameter(String name) {
      return member;
    }
  }
}
