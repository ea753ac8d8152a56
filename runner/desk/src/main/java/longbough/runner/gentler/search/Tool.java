package longbough.runner.gentler.search;

import longbough.model.pruning.Operation;

/**
 * One way to work towards a wish.
 *
 * @param word short name
 * @param line whether it cuts to a line, which stays where it is, rather than taking a share of
 *     what is there
 * @param making the operation for a strength: 0 nothing, 1 just as asked or everything, more:
 *     beyond
 */
record Tool(String word, boolean line, Making making) {

  interface Making {
    Operation at(double strength);
  }
}
