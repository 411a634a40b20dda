package yett.plan;

import java.util.List;

/**
 * The numbers that the search works on: hypotheses with their causes, checks with the chance of
 * each outcome under each hypothesis, and repairs with the chance that they remove each cause.
 *
 * @param hypotheses causes of each hypothesis
 * @param causes number of causes
 * @param workshop the set-ups
 * @param retest set-ups in which the gate is tried after a repair
 * @param retestCost minutes of the retest itself
 * @param handOver minutes that handing over costs, without the repair
 * @param callBack minutes that a return visit costs, without the repair
 * @param due for each cause, minutes of the repair that is still due if it is left to somebody else
 *     or to another day; 0 if no repair is known
 * @param cured whether the gate already runs and only hidden causes are looked for
 */
record Scene(
    int[][] hypotheses,
    int causes,
    List<Look> checks,
    List<Job> repairs,
    Workshop workshop,
    int retest,
    double retestCost,
    double handOver,
    double callBack,
    double[] due,
    boolean cured) {

  /**
   * A check.
   *
   * @param cost minutes and penalty for hazards, without changes of set-up
   * @param chances by outcome, then by hypothesis
   * @param place number of the place where it is made with others, or -1
   * @param along by how much it costs less when another look at the place was made first
   */
  record Look(String id, double cost, int needs, double[][] chances, int place, double along) {
    /** A check that is made alone. */
    Look(String id, double cost, int needs, double[][] chances) {
      this(id, cost, needs, chances, -1, 0);
    }
  }

  /**
   * A repair.
   *
   * @param cost minutes, parts and penalty for hazards, without changes of set-up and without the
   *     retest
   * @param removes for each cause, the chance that it is removed if present
   * @param least least chance of removing something for which the repair is begun
   */
  record Job(String id, double cost, int needs, double[] removes, double least) {
    /** A repair that may be begun with any chance of success. */
    Job(String id, double cost, int needs, double[] removes) {
      this(id, cost, needs, removes, 0);
    }
  }

  /** Cost of leaving a hypothesis as it is, including the repairs that are then due. */
  double leaving(int hypothesis) {
    int[] causes = hypotheses[hypothesis];
    double later = 0;
    for (int c : causes) {
      later += due[c];
    }
    if (cured) {
      return causes.length == 0 ? 0 : callBack + later;
    }
    return handOver + later;
  }

  /** Cost of making a look alone, with a given combination of set-ups in force. */
  double asking(Look look, int state) {
    return workshop.change(state, look.needs()) + look.cost();
  }

  /** Cost of doing a repair and trying the gate, with a given combination of set-ups in force. */
  double trying(int repair, int state) {
    Job job = repairs.get(repair);
    int ready = workshop.after(state, job.needs());
    return workshop.change(state, job.needs())
        + job.cost()
        + workshop.change(ready, retest)
        + retestCost;
  }

  /** The set-ups in force after a repair and a retest. */
  int afterTrying(int repair, int state) {
    return workshop.after(workshop.after(state, repairs.get(repair).needs()), retest);
  }
}
