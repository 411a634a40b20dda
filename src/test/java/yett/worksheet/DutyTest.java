package yett.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import yett.calculation.DutyCycle;

class DutyTest {

  @Test
  void cycles_against_the_nameplate() {
    // IEC 60034-1, S3 25 %: a quarter of the time running, so 30 s of run take 90 s of rest: 30 an
    // hour.
    Worked.out("duty-cycles", "per-hour=60", "run-time=30 s", "rated=60", "rated-share=25 %")
        .gives("share", 50)
        .gives("allowed", 30)
        .gives("used", 200)
        .gives("rest", 90)
        .means("worked harder than the nameplate allows");
    Worked.out("duty-cycles", "per-hour=8", "run-time=30 s", "class=class-1")
        .gives("used", 80)
        .means("within what is usual for its class");
    assertThatThrownBy(() -> Worked.out("duty-cycles", "per-hour=200", "run-time=30 s"))
        .hasMessageContaining("do not fit into an hour");
  }

  // Cold curve of IEC 60255-149, t = τ ln(i²/(i² - 1)): 0.2877 τ at twice, 0.1178 τ at three times.
  @Test
  void the_thermal_curve() {
    assertThat(DutyCycle.timeToLimit(10, 5, 1)).isCloseTo(0.2877, within(5e-5));
    assertThat(DutyCycle.timeToLimit(15, 5, 1)).isCloseTo(0.1178, within(5e-5));
    assertThat(DutyCycle.timeToLimit(5, 5, 1)).isInfinite();
  }

  @Test
  void heat_of_a_motor() {
    // Worked by hand: 5 A for 29 s and 15 A for two halves of a second every 120 s heat like 2.814
    // A;
    // 49.48 % of the heat of 4 A, so 60.63 cycles an hour; 5 A nonstop 1.0217 x 20 min.
    Worked.out(
            "duty-heat", "rated-current=4 A", "motor-current=5 A", "run-time=30 s", "per-hour=30")
        .gives("heating", 2.814)
        .gives("heat", 49.48)
        .gives("most", 60.63)
        .gives("nonstop", 20.43)
        .means("it may go on like this", "125 % of its rated current");
    Worked.out(
            "duty-heat", "rated-current=4 A", "motor-current=4 A", "run-time=30 s", "per-hour=115")
        .doesNotTell("nonstop")
        .means("will trip");
    assertThatThrownBy(
            () ->
                Worked.out(
                    "duty-heat",
                    "rated-current=4 A",
                    "motor-current=5 A",
                    "run-time=30 s",
                    "per-hour=130"))
        .hasMessageContaining("do not fit");
  }
}
