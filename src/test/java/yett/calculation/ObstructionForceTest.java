package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.calculation.ObstructionForce.Verdict;

/**
 * Limits of EN 12453 as summaries of a trade federation and a test house give them: 400 N in gaps
 * below 500 mm, 1400 N elsewhere, 150 N within 0.75 s; 25 N after 5 s partly from memory.
 */
class ObstructionForceTest {
  /** Corners, as pairs of time and force, with straight lines of a sample every 4 ms between. */
  private static ForceCurve curve(double... pairs) {
    List<ForceSample> samples = new ArrayList<>();
    for (int i = 0; i < pairs.length; i += 2) {
      if (i > 0) {
        double way = pairs[i] - pairs[i - 2];
        int steps = (int) Math.ceil(way / 0.004);
        for (int step = 1; step < steps; step++) {
          double share = (double) step / steps;
          samples.add(
              new ForceSample(
                  pairs[i - 2] + share * way,
                  pairs[i - 1] + share * (pairs[i + 1] - pairs[i - 1])));
        }
      }
      samples.add(new ForceSample(pairs[i], pairs[i + 1]));
    }
    return new ForceCurve(samples);
  }

  private static ForceCurve worked(double peak, double atThreeQuarters, double atFive) {
    return curve(0, 0, 0.05, peak, 0.74, atThreeQuarters, 4.9, atFive, 5.5, atFive);
  }

  // The worked classification of the limits: peak, force from 0.74 s on, at 5 s, zone, verdict.
  @ParameterizedTest
  @CsvSource({
    "380, 140, 20, CLOSING_GAP, MET",
    "390, 160, 20, CLOSING_GAP, MISSED",
    "900, 140, 20, CLOSING_GAP, MISSED",
    "900, 140, 20, WIDE_GAP, MET",
    "900, 140, 20, FIXED_SURFACES, MET",
    "1410, 140, 20, WIDE_GAP, MISSED",
    "380, 140, 40, CLOSING_GAP, MISSED",
    "400, 149, 25, CLOSING_GAP, MET",
  })
  void a_curve_is_judged_by_its_zone(
      double peak, double later, double last, ForceZone zone, Verdict verdict) {
    ObstructionForce force = new ObstructionForce(worked(peak, later, last), zone);

    assertThat(force.verdict()).isEqualTo(verdict);
    assertThat(force.curve().peak().force()).isEqualTo(peak);
  }

  @Test
  void the_time_above_the_limit_is_read_between_the_samples() {
    // Straight lines: up through 150 N half-way to 300 N, down through 150 N half-way to 0 N.
    ObstructionForce force =
        new ObstructionForce(curve(0, 0, 0.1, 300, 0.5, 300, 0.7, 0, 6, 0), ForceZone.CLOSING_GAP);

    assertThat(force.dynamicPeriod()).isCloseTo(0.55, within(1e-12));
    assertThat(force.contact().orElseThrow()).isCloseTo(0.1 * 25 / 300, within(1e-12));
    assertThat(force.dynamic()).isEqualTo(Verdict.MET);
  }

  @Test
  void a_dip_does_not_break_the_time() {
    ObstructionForce force =
        new ObstructionForce(
            curve(0, 0, 0.1, 300, 0.4, 100, 0.8, 200, 0.9, 0, 6, 0), ForceZone.CLOSING_GAP);

    assertThat(force.dynamicPeriod()).isCloseTo(0.775, within(1e-12));
    assertThat(force.dynamic()).isEqualTo(Verdict.MISSED);
  }

  @Test
  void a_leaf_that_never_presses_hard_has_no_such_time() {
    ObstructionForce force =
        new ObstructionForce(curve(0, 0, 0.1, 120, 2, 0, 6, 0), ForceZone.CLOSING_GAP);

    assertThat(force.dynamicPeriod()).isZero();
    assertThat(force.verdict()).isEqualTo(Verdict.MET);
  }

  @Test
  void a_record_that_ends_early_leaves_it_open() {
    ObstructionForce early =
        new ObstructionForce(curve(0, 0, 0.1, 300, 0.4, 100), ForceZone.CLOSING_GAP);
    ObstructionForce late =
        new ObstructionForce(curve(0, 0, 0.1, 300, 0.4, 0, 4, 0), ForceZone.CLOSING_GAP);

    assertThat(early.dynamic()).isEqualTo(Verdict.OPEN);
    assertThat(early.verdict()).isEqualTo(Verdict.OPEN);
    assertThat(late.dynamic()).isEqualTo(Verdict.MET);
    assertThat(late.release()).isEqualTo(Verdict.OPEN);
    assertThat(late.afterRelease()).isEmpty();
    // What is missed already stays missed.
    assertThat(new ObstructionForce(curve(0, 0, 0.1, 500, 0.4, 0), ForceZone.CLOSING_GAP).verdict())
        .isEqualTo(Verdict.MISSED);
  }

  @Test
  void a_slow_record_hides_a_peak() {
    // EN 12453 (text of 2001): 200 samples in a second.
    List<ForceSample> slow = new ArrayList<>();
    List<ForceSample> quick = new ArrayList<>();
    for (int i = 0; i <= 1200; i++) {
      double force = i > 5 && i < 20 ? 100 : 0;
      quick.add(new ForceSample(i / 200.0, force));
      slow.add(new ForceSample(i / 100.0, force));
    }

    assertThat(new ObstructionForce(new ForceCurve(slow), ForceZone.CLOSING_GAP).verdict())
        .isEqualTo(Verdict.OPEN);
    assertThat(new ObstructionForce(new ForceCurve(quick), ForceZone.CLOSING_GAP).verdict())
        .isEqualTo(Verdict.MET);
  }

  // A blow of 700 N, 0.22 s of which the record leaves out: 400 N are allowed.
  @Test
  void a_peak_that_falls_into_a_gap_of_the_record_is_not_passed() {
    List<ForceSample> samples =
        curve(0, 0, 0.2, 0, 0.25, 700, 0.6, 120, 1, 0, 6, 0).samples().stream()
            .filter(s -> s.time() < 0.21 || s.time() > 0.43)
            .toList();
    ObstructionForce force = new ObstructionForce(new ForceCurve(samples), ForceZone.CLOSING_GAP);

    assertThat(force.curve().rate()).isGreaterThan(ObstructionForce.LEAST_RATE);
    assertThat(force.curve().largestGap()).isBetween(0.22, 0.23);
    assertThat(force.curve().peak().force()).isLessThan(402);
    assertThat(force.sampling()).isEqualTo(Verdict.OPEN);
  }

  // 420 N on a meter that shows -30 N at rest are recorded as 390 N.
  @ParameterizedTest
  @CsvSource({"-30, OPEN", "-6, OPEN", "-4, MET", "0, MET", "4, MET"})
  void a_meter_that_shows_a_pull_at_rest_proves_nothing(double baseline, Verdict verdict) {
    ForceCurve zeroed = curve(0, 0, 0.2, 0, 0.25, 390 - baseline, 0.6, 100, 1, 0, 6, 0);
    ForceCurve shifted =
        new ForceCurve(
            zeroed.samples().stream()
                .map(s -> new ForceSample(s.time(), s.force() + baseline))
                .toList());

    assertThat(new ObstructionForce(shifted, ForceZone.CLOSING_GAP).verdict()).isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource({"300, OPEN", "20, OPEN", "6, OPEN", "4, MET"})
  void a_record_that_begins_inside_the_blow_proves_nothing(double first, Verdict verdict) {
    ForceCurve curve = curve(0, first, 0.05, 390, 0.6, 100, 1, 0, 6, 0);

    assertThat(new ObstructionForce(curve, ForceZone.CLOSING_GAP).verdict()).isEqualTo(verdict);
  }

  @Test
  void a_record_without_contact_proves_nothing() {
    ObstructionForce force = new ObstructionForce(curve(0, 0, 3, 20, 8, 0), ForceZone.CLOSING_GAP);

    assertThat(force.contact()).isEmpty();
    assertThat(force.verdict()).isEqualTo(Verdict.OPEN);
  }

  @Test
  void the_five_seconds_count_from_the_contact() {
    // Contact at 10 s; at 15 s still 30 N, although the record began long before.
    ObstructionForce force =
        new ObstructionForce(
            curve(0, 0, 10, 25, 10.1, 300, 10.5, 30, 15.2, 30, 15.3, 0, 16, 0),
            ForceZone.CLOSING_GAP);

    assertThat(force.afterRelease().orElseThrow()).isCloseTo(30, within(1e-9));
    assertThat(force.release()).isEqualTo(Verdict.MISSED);
  }

  @Test
  void a_second_push_after_five_seconds_is_seen() {
    ObstructionForce force =
        new ObstructionForce(
            curve(0, 0, 0.1, 300, 0.5, 0, 5.5, 0, 5.6, 100, 5.7, 0), ForceZone.CLOSING_GAP);

    assertThat(force.release()).isEqualTo(Verdict.MISSED);
  }

  @Test
  void half_a_sine_is_measured_as_mathematics_has_it() {
    // F = 400 sin(π t/0.6) is above 150 N for 0.6 (1 - 2 asin(150/400)/π) s.
    List<ForceSample> samples = new ArrayList<>();
    for (int i = 0; i <= 1200; i++) {
      double t = i / 200.0;
      samples.add(new ForceSample(t, t < 0.6 ? 400 * Math.sin(Math.PI * t / 0.6) : 0));
    }
    ObstructionForce force = new ObstructionForce(new ForceCurve(samples), ForceZone.CLOSING_GAP);

    double expected = 0.6 * (1 - 2 * Math.asin(150.0 / 400) / Math.PI);
    assertThat(force.dynamicPeriod()).isCloseTo(expected, within(2e-4));
    assertThat(force.curve().peak().force()).isCloseTo(400, within(1e-9));
    assertThat(force.curve().peak().time()).isCloseTo(0.3, within(1e-9));
    assertThat(force.curve().rate()).isCloseTo(200, within(1e-9));
  }

  @Test
  void a_curve_runs_forward() {
    assertThatThrownBy(() -> curve(0, 1)).hasMessage("a curve needs two samples, not 1");
    assertThatThrownBy(() -> curve(0, 1, 0, 2)).hasMessageStartingWith("step of the time");
    assertThatThrownBy(() -> new ForceSample(0, Double.NaN))
        .hasMessage("force must be finite, not NaN");
  }
}
