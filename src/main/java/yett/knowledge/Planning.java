package yett.knowledge;

import java.util.Map;

/**
 * What the plan weighs.
 *
 * @param minute money that a minute of the person present costs
 * @param question minutes that asking anything takes, besides doing it: reading, typing
 * @param needless minutes' worth of dislike for a repair of something sound: what it may disturb,
 *     what has to be proved again, and the customer's trust
 * @param suspicion the least chance that a repair removes something for which it is proposed
 * @param patience how many checks may move no suspicion before the person is asked whether to go
 *     on; 0 if they may be any number
 * @param handOver minutes that handing the case to the next level costs
 * @param visit minutes that a technician's visit costs, weighed against asking a caller more
 * @param callBack minutes that a return visit costs
 * @param hazards minutes' worth of dislike for each exposure to a hazard
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

  /** A visit that costs as much as handing over, and no dislike of repairs on suspicion. */
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
