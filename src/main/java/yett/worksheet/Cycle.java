package yett.worksheet;

import yett.quantity.Unit;

/** The inputs for the current and time of a cycle of the gate, and for the number of cycles. */
public final class Cycle {
  private Cycle() {}

  public static Input motorCurrent() {
    return Input.reading("motor-current", Unit.AMPERE, "current of the motor while it runs")
        .possible(0.1, 100);
  }

  public static Input runTime() {
    return Input.reading("run-time", Unit.SECOND, "time it runs in opening and closing together")
        .possible(1, 1200);
  }

  public static Input standingCurrent() {
    return Input.reading("standing-current", Unit.AMPERE, "current while the gate stands")
        .possible(0, 10);
  }

  public static Input aDay() {
    return Input.reading("cycles", Unit.ONE, "cycles a day").possible(0, 3000);
  }
}
