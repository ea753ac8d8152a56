package longbough.runner.update;

import java.util.List;

/** What plays the futures of the regime that was followed, and reads them as a visitor would. */
interface Foreteller {

  /** What each future shows up to and with a year. */
  List<Foretold> foretell(List<Lineage> lineages, int untilYear) throws InterruptedException;
}
