package yett.practice;

import java.time.Instant;

/**
 * How an exercise went: one line of what is kept over sessions.
 *
 * @param putRight whether nothing was wrong with the gate any more, and it was proved
 * @param minutes of the cards for what was done
 * @param cost money: these minutes and the parts
 * @param planMinutes what the plan needed on the same gate, knowing no more
 * @param planCost the same in money
 */
public record Result(
    Instant at,
    String exercise,
    long seed,
    String area,
    String level,
    boolean putRight,
    String ended,
    double minutes,
    double cost,
    double planMinutes,
    double planCost,
    int slips,
    int hints) {

  /** Minutes for each minute of the plan. */
  public double ratio() {
    return minutes / Math.max(1, planMinutes);
  }
}
