package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static yett.rules.Rules.done;
import static yett.rules.Rules.example;
import static yett.rules.Rules.happened;
import static yett.rules.Rules.read;
import static yett.rules.Rules.said;
import static yett.rules.Rules.site;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.knowledge.Role;
import yett.rules.Conclusion.Contradiction;
import yett.rules.Conclusion.Expectation;
import yett.rules.Conclusion.FollowUp;
import yett.rules.Conclusion.Remark;
import yett.rules.Conclusion.Unavailable;
import yett.rules.Rules.Example;

/** Rules on beams, edges, loops and command devices, on weather and pests. */
class DeviceRulesTest extends ShownByExamples {
  private static final Fact TECHNICIAN = new Fact.Person(Role.TECHNICIAN);

  static Stream<Example> examples() {
    return Stream.of(
            Stream.of(example("what the accessories take together")),
            odds(),
            contradictions(),
            stops(),
            followUps())
        .flatMap(s -> s);
  }

  static Stream<Example> odds() {
    return Stream.of(
        example("two beams go out of line or die more often than one", site("beams", "two")),
        example("two beams can dazzle one another", site("beams", "two")),
        example("a long beam has little to spare", site("opening", "9 m")),
        example("salt settles on lenses and keys", site("climate", "coastal")),
        example("heat breeds insects", site("climate", "hot")),
        example("frost works in the road and drives mice indoors", site("climate", "cold")),
        example(
            "cold empties the battery of an edge",
            site("wireless-edge", "wireless"),
            site("usual-temperature", "-4 C")),
        example(
            "without batteries an outage stops the clock",
            happened("mains-outage"),
            site("timer", "fitted"),
            site("batteries", "none")),
        example(
            "new hours are entered wrongly",
            happened("settings-changed"),
            happened("hours-changed"),
            site("timer", "fitted")),
        example("the public presses what it sees", site("usage-class", "class-ii")),
        example(
            "lightning comes in over a telephone line",
            happened("thunderstorm"),
            site("telephone-entry", "fitted")),
        example(
            "a boarded leaf meets the wind", happened("strong-wind"), site("leaf-face", "boarded")),
        example(
            "many devices on one supply",
            site("beams", "two"),
            site("telephone-entry", "fitted"),
            site("loops", "fitted")));
  }

  /** The two answers in question are events 3 and 8. */
  static Stream<Example> contradictions() {
    return Stream.of(
        example(
            "a receiver without supply does not answer",
            read(3, "receiver-supply", "0.4 V"),
            said(8, "receiver-lamp", "answers")),
        example(
            "a beam without supply does not see",
            read(3, "beam-supply", "0.2 V"),
            said(8, "beam-light", "sees")),
        example(
            "accessories without voltage take no current",
            read(3, "accessory-voltage", "0.6 V"),
            read(8, "accessory-current", "0.35 A")),
        example(
            "a gate whose stop circuit is open does not run",
            read(3, "stop-circuit-resistance", "4 Mohm"),
            said(8, "response", "runs")),
        example(
            "a gate that waits for another does not run",
            site("interlock", "second-gate"),
            said(3, "other-home", "open"),
            said(8, "response", "runs")),
        example(
            "what opens by code does not fail in all ways",
            said(3, "which-commands", "all-fail"),
            said(8, "keypad-answer", "opens")),
        example(
            "what opens by transmitter does not fail in all ways",
            said(3, "which-commands", "all-fail"),
            said(8, "near-by", "everywhere")),
        example(
            "one kind or another fails",
            said(3, "kind-that-fails", "transmitters"),
            said(8, "near-by", "everywhere")),
        example(
            "a detector on an open loop does not see nothing wrong",
            read(3, "loop-resistance", "2 Mohm"),
            said(8, "detector-sees", "every-vehicle")),
        example(
            "a dry cabinet holds no water",
            said(3, "seen-at-the-box", "wet"),
            said(8, "cabinet-look", "dry")),
        example(
            "a pair that is open commands nothing",
            read(3, "wire-resistance", "2 Mohm"),
            said(8, "bridged-at-device", "runs")));
  }

  static Stream<Example> stops() {
    return Stream.of(
        example("nobody reaches into a wet cabinet under power", said(1, "cabinet-look", "water")),
        example(
            "nobody reaches between gnawed wires under power", said(1, "cabinet-look", "gnawed")),
        example(
            "a gate that its stop holds is not bridged past it",
            said(1, "stop-button-look", "pressed-or-broken")));
  }

  static Stream<Example> followUps() {
    return Stream.of(
        example("batteries that stood in water are read", done("dry-operator", 1)),
        example(
            "where wires were gnawed the loop is measured as well", done("mend-chewed-wires", 1)),
        example(
            "where wires were gnawed the stop circuit is measured as well",
            done("mend-chewed-wires", 1)),
        example("a new loop must not see the leaf", done("lay-new-loop", 1)),
        example(
            "a detector that stuck once is asked why",
            happened("heavy-rain"),
            done("reset-detector", 1)),
        example(
            "a fuse that was renewed is asked what it carries", done("renew-accessory-fuse", 1)),
        example("a lock-out is asked what it met", done("reset-lockout", 1)),
        example(
            "how far beside the sender the receiver looks", read(1, "beam-offset-angle", "6 deg")),
        example("who comes near a nest", said(1, "seen-at-the-box", "insects")),
        example(
            "what comes and goes is written down",
            said(1, "as-usual-again", "comes-and-goes"),
            said(2, "when-it-fails", "no-pattern")),
        example(
            "a short range is asked for the transmitter first", read(1, "receiver-range", "4 m")));
  }

  @ParameterizedTest
  @MethodSource("contradictions")
  void the_two_answers_are_named(Example example) {
    assertThat(Rules.judge(example.facts()).conclusions())
        .filteredOn(c -> c.reason().rule().equals(example.rule()))
        .singleElement()
        .isInstanceOfSatisfying(
            Contradiction.class,
            c -> assertThat(List.of(c.first(), c.second())).containsExactly(3L, 8L));
  }

  @Test
  void the_accessories_are_added_up_from_what_is_fitted() {
    // receiver 0.04, keypad 0.08, a beam pair 0.08, detectors 0.12 A: 0.32 A (common practice)
    assertAccessories(0.32 / 3, 0.48);
    // with a telephone of 0.15 A and a second pair of 0.08 A: 0.55 A
    assertAccessories(0.55 / 3, 0.825, site("telephone-entry", "fitted"), site("beams", "two"));
    // next to nothing fitted: a meter reads hundredths
    assertAccessories(
        0,
        0.2,
        site("radio", "none"),
        site("keypad", "none"),
        site("beams", "none"),
        site("loops", "none"));
  }

  private static void assertAccessories(double low, double high, Fact... facts) {
    assertThat(Rules.judge(facts).conclusions())
        .filteredOn(c -> c instanceof Expectation e && e.check().equals("accessory-current"))
        .singleElement()
        .isInstanceOfSatisfying(
            Expectation.class,
            e -> {
              assertThat(e.low()).isCloseTo(low, within(1e-9));
              assertThat(e.high()).isCloseTo(high, within(1e-9));
            });
  }

  @Test
  void a_receiver_that_looks_aside_is_told_in_millimetres() {
    // 5 m x tan 2 deg = 174.6 mm (trigonometric table: tan 2 deg = 0.03492)
    assertThat(conclusions(Remark.class, read(1, "beam-offset-angle", "2 deg")))
        .extracting(Remark::text)
        .anyMatch(t -> t.contains("175 mm"));
  }

  @Test
  void a_wet_cabinet_is_measured_again_once_it_is_dry() {
    Fact water = said(1, "cabinet-look", "water");
    assertThat(forbidden(water)).contains("input-lamps", "direct-command");
    assertThat(forbidden(water)).doesNotContain("terminal-look", "loop-resistance");
    assertThat(forbidden(water, done("keep-water-out", 1))).doesNotContain("input-lamps");
  }

  @Test
  void the_batteries_of_a_gate_without_any_are_not_read() {
    assertThat(conclusions(FollowUp.class, done("dry-operator", 1), site("batteries", "none")))
        .extracting(FollowUp::card)
        .doesNotContain("battery-rest-voltage");
  }

  private static List<String> forbidden(Fact... facts) {
    Fact[] all = Stream.concat(Stream.of(TECHNICIAN), Stream.of(facts)).toArray(Fact[]::new);
    return conclusions(Unavailable.class, all).stream().map(Unavailable::card).toList();
  }

  private static <C extends Conclusion> List<C> conclusions(Class<C> kind, Fact... facts) {
    return Rules.judge(facts).conclusions().stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }
}
