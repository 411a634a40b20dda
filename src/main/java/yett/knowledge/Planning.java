package yett.knowledge;

import java.util.Map;

/**
 * The costs and limits that the plan uses.
 *
 * @param minute money that a minute of the person present costs
 * @param question minutes that asking anything takes in addition to doing it: reading, typing
 * @param needless penalty (minutes) for a repair of something sound: what it may disturb, what has
 *     to be proved again, and the customer's trust
 * @param suspicion least chance that a repair removes a cause for which it is proposed
 * @param patience number of checks without a change of any suspicion after which the person is
 *     asked whether to go on; 0 for no limit
 * @param handOver minutes that handing the case to the next level costs
 * @param visit minutes that a technician's visit costs, compared with asking a caller more
 * @param callBack minutes that a return visit costs
 * @param hazards penalty (minutes) for each exposure to a hazard
 */
public record Planning(
    String id,
    double minute,
    double question,
    double needless,
    double suspicion,
    int patience,
    double handOver,
    double visit,
    double callBack,
    Map<String, Double> hazards)
    implements Card {

  /** With a visit at the cost of a hand-over, and without a penalty for needless repairs. */
  public Planning(
      String id,
      double minute,
      double question,
      double handOver,
      double callBack,
      Map<String, Double> hazards) {
    this(id, minute, question, 0, 0, 0, handOver, handOver, callBack, hazards);
  }
}
