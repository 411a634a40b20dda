package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static yett.rules.Rules.site;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import yett.calculation.ForceZone;
import yett.knowledge.Check;
import yett.rules.Conclusion.Expectation;
import yett.worksheet.Worked;

/**
 * An interview and a calculation say the same of the same reading: for every check that a
 * calculation judges as well, readings from far below the limits to far above.
 */
class SameLimitsTest {
  /**
   * A check and the calculation of the same thing.
   *
   * @param check the card
   * @param site where it is made
   * @param from the least reading tried, in the canonical unit
   * @param to the greatest one
   * @param calculated what the calculation says of a reading
   * @param fine whether those words call it ordinary
   */
  record Pair(
      String check,
      List<Fact> site,
      double from,
      double to,
      DoubleFunction<String> calculated,
      Predicate<String> fine) {
    @Override
    public String toString() {
      return check + " " + site;
    }
  }

  static Stream<Pair> pairs() {
    return Stream.of(
        sag("40", 5.2, "sag", "chain-sag"),
        sag("40", 1.5, "sag", "chain-sag"),
        sag("60", 12, "sag", "chain-sag"),
        sag("08b", 5.2, "movement", "chain-hand-lift"),
        sag("35", 1.2, "movement", "chain-hand-lift"),
        new Pair(
            "chain-length",
            List.of(site("chain-size", "50")),
            375,
            400,
            mm -> says("chain-elongation", "chain=50", "pitches=24", reading("measured", mm, "mm")),
            text -> !text.contains("worn out")),
        offset("sprocket-offset", 5.2),
        offset("idler-offset", 0.5),
        push("track", 0),
        push("track", 2),
        push("cantilever", 1),
        new Pair(
            "travel-time",
            List.of(site("opening", "6 m"), site("leaf-speed", "0.3 m/s")),
            15,
            40,
            s -> says("travel-time", "opening=6 m", "speed=0.3 m/s", reading("measured", s, "s")),
            text -> text.contains("runs as it should")),
        charging(15),
        charging(40),
        charging(-10),
        atRest("agm"),
        atRest("flooded"),
        new Pair(
            "battery-fall",
            List.of(site("leaf-mass", "2000 kg"), site("leaf-speed", "0.5 m/s")),
            0.2,
            8,
            fall ->
                says(
                    "battery-resistance",
                    "voltage=25.4 V",
                    reading("loaded-voltage", 25.4 - fall, "V"),
                    reading("loaded-current", heavyCurrent(), "A"),
                    "battery-temperature=15 degC"),
            text -> !text.contains("More than sound")),
        new Pair(
            "selector-margin",
            List.of(site("supply-volts", "240")),
            1,
            80,
            apart -> says("supply-setting", "mains=240 V", reading("setting", 240 + apart, "V")),
            text -> text.contains("The setting fits the mains")),
        new Pair(
            "selector-margin",
            List.of(site("supply-volts", "120")),
            1,
            35,
            apart -> says("supply-setting", "mains=120 V", reading("setting", 120 - apart, "V")),
            text -> text.contains("The setting fits the mains")),
        new Pair(
            "dc-supply-voltage",
            List.of(site("supply-volts", "240")),
            20,
            45,
            // The secondary whose peak behind a bridge is that: (V + 1.4)/sqrt(2).
            dc ->
                says(
                    "supply-setting",
                    "mains=240 V",
                    "setting=240 V",
                    reading("secondary", (dc + 1.4) / Math.sqrt(2), "V")),
            text -> text.contains("it can charge")),
        new Pair(
            "edge-resistance",
            List.of(site("edges", "fitted")),
            100,
            14_000,
            // An interview does not know which of the two resistors is fitted.
            ohms -> edge("8.2 kohm", ohms) + edge("10 kohm", ohms),
            text -> text.contains("is right") || text.contains("Still good")),
        new Pair(
            "loop-insulation",
            List.of(),
            1e5,
            5e7,
            ohms -> says("insulation", reading("measured", ohms, "ohm")),
            text -> text.contains("no reason for false calls")),
        new Pair(
            "earth-resistance",
            List.of(),
            2,
            90,
            ohms -> says("earth-reading", reading("measured", ohms, "ohm")),
            text -> text.contains("The figure is met")),
        new Pair(
            "loop-inductance",
            List.of(),
            20,
            620,
            SameLimitsTest::loop,
            text -> text.contains("ought to tune")),
        hour("class-i", "class-1"),
        hour("class-ii", "class-2"),
        hour("class-iii", "class-3"),
        hour("class-iv", "class-4"));
  }

  @ParameterizedTest
  @MethodSource("pairs")
  void interview_and_calculation_judge_alike(Pair pair) {
    Check card = Rules.BASE.checks().get(pair.check());
    Judgement judgement = Rules.judge(pair.site());
    int fine = 0;
    int steps = 149;
    for (int i = 0; i <= steps; i++) {
      double reading = pair.from() + (pair.to() - pair.from()) * (i + 0.137) / (steps + 1);
      boolean asked = isOrdinary(card, judgement, reading);
      String text = pair.calculated().apply(reading);

      assertThat(pair.fine().test(text)).as("%s: %s", reading, text).isEqualTo(asked);
      fine += asked ? 1 : 0;
    }
    assertThat(fine).as("readings that are ordinary").isBetween(2, steps - 1);
  }

  // Bands beyond the first: where an interview says "worn out", "far out" or "leaks".
  @ParameterizedTest
  @CsvSource({
    "sprocket-offset, far-out, 26.1, sprocket-alignment, distance=5.2 m, offset, mm, climbs the teeth",
    "sprocket-offset, out, 25.9, sprocket-alignment, distance=5.2 m, offset, mm, wear its side plates",
    "loop-insulation, leaks, 990000, insulation, state=in-service, measured, ohm, touches earth",
    "loop-insulation, damp, 1010000, insulation, state=in-service, measured, ohm, water is getting in",
  })
  void further_bands_are_the_same_as_well(
      String check,
      String outcome,
      double reading,
      String calculation,
      String other,
      String input,
      String unit,
      String words) {
    Check card = Rules.BASE.checks().get(check);

    assertThat(outcome(card, Rules.judge(), reading)).isEqualTo(outcome);
    assertThat(says(calculation, other, reading(input, reading, unit))).contains(words);
  }

  @Test
  void ranges_that_both_work_out_are_the_same() {
    Judgement usual = Rules.judge(site("leaf-mass", "500 kg"), site("grade", "3 %"));
    Worked leaf = Worked.out("leaf-force", "mass=500 kg", "grade=3 %");
    Expectation push = usual.expectation("push-force").orElseThrow();
    leaf.gives("up-low", push.low(), 1e-6).gives("up-high", push.high(), 1e-6);
    leaf.gives("start", usual.expectation("breakaway-force").orElseThrow().high(), 1e-6);
    Expectation current = usual.expectation("running-current").orElseThrow();
    motor(push.low()).gives("low", current.low(), 1e-6);
    motor(push.high()).gives("high", current.high(), 1e-6);
    Worked.out(
            "feeder-drop",
            "supply=230 V",
            "current=1 A",
            "length=30 m",
            "size=2.5 mm2",
            "wire-temperature=15 degC")
        .gives(
            "resistance", usual.expectation("feeder-loop-resistance").orElseThrow().high(), 1e-6);
  }

  @Test
  void the_peak_in_a_closing_gap_is_the_same() {
    Check card = Rules.BASE.checks().get("obstruction-force");
    double limit = ForceZone.CLOSING_GAP.peakLimit();

    assertThat(outcome(card, Rules.judge(), limit - 1)).isEqualTo("ordinary");
    assertThat(outcome(card, Rules.judge(), limit + 1)).isEqualTo("over");
  }

  @Test
  void the_advised_three_percent_is_the_same() {
    Expectation most =
        Rules.judge(
                site("supply-volts", "120"),
                site("feeder-size", "awg-14"),
                site("feeder-length", "120 m"))
            .expectation("supply-under-load")
            .orElseThrow();
    String starved =
        says("feeder-voltage", "supply=120 V", "motor-current=8 A", "length=166 ft", "size=awg-14");
    String enough =
        says("feeder-voltage", "supply=120 V", "motor-current=8 A", "length=165 ft", "size=awg-14");

    // 2 x 3.4667 A x 0.00314 ohm/ft: 165.36 ft lose 3.6 V, worked by hand.
    assertThat(most.high()).isCloseTo(3.6, within(1e-9));
    assertThat(starved).contains("more than the advised 3 %");
    assertThat(enough).contains("loses little");
  }

  private static Pair sag(String chain, double span, String readAs, String check) {
    return new Pair(
        check,
        List.of(site("chain-size", chain), site("chain-span", span + " m")),
        0.0004 * 1000 * span,
        0.08 * 1000 * span,
        mm ->
            says(
                "chain-sag",
                "chain=" + chain,
                "span=" + span + " m",
                "read-as=" + readAs,
                reading("sag", Math.max(mm, 0.5), "mm")),
        text -> !text.contains("is slack") && !text.contains("is too tight"));
  }

  private static Pair offset(String check, double distance) {
    return new Pair(
        check,
        List.of(site("chain-span", "5.2 m")),
        0,
        40 * Math.max(1, distance) / 5.2,
        mm ->
            says("sprocket-alignment", "distance=" + distance + " m", reading("offset", mm, "mm")),
        text -> text.contains("They are in line"));
  }

  private static Pair push(String support, double grade) {
    return new Pair(
        "push-force",
        List.of(site("support", support), site("leaf-mass", "400 kg"), site("grade", grade + " %")),
        grade * 39.3,
        500,
        newtons ->
            says(
                "scale-reading",
                "mass=400 kg",
                "support=" + support,
                "grade=" + grade + " %",
                reading("force", newtons, "N")),
        text -> !text.contains("The leaf drags"));
  }

  private static Pair charging(int degrees) {
    return new Pair(
        "charging-voltage",
        List.of(site("usual-temperature", degrees + " C")),
        20,
        36,
        volts ->
            says(
                "charge-voltage",
                "battery-temperature=" + degrees + " degC",
                reading("measured", volts, "V")),
        text -> !text.contains("does not charge") && !text.contains("overcharges"));
  }

  private static Pair atRest(String kind) {
    return new Pair(
        "battery-rest-voltage",
        List.of(site("batteries", kind)),
        20,
        31,
        volts ->
            says(
                "battery-charge",
                "across=pair",
                "kind=" + kind,
                "rest=10 min",
                reading("rest-voltage", volts, "V")),
        text -> text.contains("Charged well enough"));
  }

  private static Pair hour(String users, String id) {
    return new Pair(
        "busiest-hour",
        List.of(site("usage-class", users)),
        1,
        100,
        runs -> says("duty-cycles", "class=" + id, "run-time=30 s", reading("per-hour", runs, "")),
        text -> text.contains("within what is usual for its class"));
  }

  private static double heavyCurrent() {
    return Rules.judge(site("leaf-mass", "2000 kg"), site("leaf-speed", "0.5 m/s"))
        .expectation("running-current")
        .orElseThrow()
        .high();
  }

  private static String edge(String resistor, double ohms) {
    return says("edge-resistor", "resistor=" + resistor, reading("measured", ohms, "ohm"));
  }

  /** A loop whose inductance is that, with as long a lead-in as it takes (0.22 uH/ft). */
  private static String loop(double microhenry) {
    String[] shape = {
      "long-side=6 ft", "short-side=6 ft", microhenry < 330 ? "turns=1" : "turns=6"
    };
    double alone =
        Worked.out("loop-inductance", shape).solution().line("loop").value().orElseThrow();
    return says(
        "loop-inductance",
        shape[0],
        shape[1],
        shape[2],
        reading("lead-in", (microhenry - alone) / 0.22, "ft"));
  }

  private static Worked motor(double newtons) {
    return Worked.out("motor-current", reading("force", newtons, "N"), "speed=0.25 m/s");
  }

  private static String reading(String input, double value, String unit) {
    return input + "=" + String.format(Locale.ROOT, "%.12g", value) + " " + unit;
  }

  private static String says(String calculation, String... inputs) {
    return String.join(" ", Worked.out(calculation, inputs).solution().meaning().sentences())
        .replace('\u00a0', ' ');
  }

  /** Whether the first outcome, the ordinary one, is likelier than all others together. */
  private static boolean isOrdinary(Check card, Judgement judgement, double reading) {
    List<Double> weights = weights(card, judgement, reading);
    double all = weights.stream().mapToDouble(Double::doubleValue).sum();
    return weights.get(0) > all / 2;
  }

  private static String outcome(Check card, Judgement judgement, double reading) {
    return Interpretation.likeliest(card, weights(card, judgement, reading));
  }

  private static List<Double> weights(Check card, Judgement judgement, double reading) {
    boolean relative = Interpretation.relative(card);
    Expectation e = relative ? judgement.expectation(card.id()).orElseThrow() : null;
    return relative
        ? Interpretation.ofReading(card, reading, e.low(), e.high())
        : Interpretation.ofReading(card, reading, Double.NaN, Double.NaN);
  }
}
