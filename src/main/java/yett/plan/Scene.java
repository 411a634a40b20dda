package yett.plan;

import java.util.List;

/**
 * Everything the search looks at, as numbers: hypotheses with their causes, checks with the chance
 * of each outcome under each hypothesis, repairs with the chance that they remove each cause.
 *
 * @param hypotheses causes of each hypothesis
 * @param causes how many causes there are
 * @param workshop the set-ups
 * @param retest set-ups in which the gate is tried after a repair
 * @param retestCost minutes of the try itself
 * @param handOver minutes that handing over costs, the repair left aside
 * @param callBack minutes that a return visit costs, the repair left aside
 * @param due by cause, minutes of the repair that is still due when it is left to somebody else or
 *     to another day; 0 where nobody knows a repair
 * @param cured whether the gate already runs and only what may lie behind is looked for
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
   * @param cost minutes and hazard, without changes of set-up
   * @param chances by outcome, then by hypothesis
   * @param place number of the place where it is made along with others, or -1
   * @param along how much less it costs there when another look of the place came first
   */
  record Look(String id, double cost, int needs, double[][] chances, int place, double along) {
    /** One that is made by itself. */
    Look(String id, double cost, int needs, double[][] chances) {
      this(id, cost, needs, chances, -1, 0);
    }
  }

  /**
   * A repair.
   *
   * @param cost minutes, parts and hazard, without changes of set-up and without the retest
   * @param removes by cause, the chance that it is removed if there
   * @param least the least chance of removing something for which it is begun with
   */
  record Job(String id, double cost, int needs, double[] removes, double least) {
    /** One that is done whenever it pays. */
    Job(String id, double cost, int needs, double[] removes) {
      this(id, cost, needs, removes, 0);
    }
  }

  /** Cost of leaving a hypothesis as it is, with the repairs that are then due. */
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

  /** Cost of making a look by itself, from a state of the work. */
  double asking(Look look, int state) {
    return workshop.change(state, look.needs()) + look.cost();
  }

  /** Cost of doing a repair and trying the gate, from a state of the work. */
  double trying(int repair, int state) {
    Job job = repairs.get(repair);
    int ready = workshop.after(state, job.needs());
    return workshop.change(state, job.needs())
        + job.cost()
        + workshop.change(ready, retest)
        + retestCost;
  }

  /** State of the work after a repair and a try of the gate. */
  int afterTrying(int repair, int state) {
    return workshop.after(workshop.after(state, repairs.get(repair).needs()), retest);
  }
}
