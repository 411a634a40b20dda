package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static yett.rules.Rules.done;
import static yett.rules.Rules.example;
import static yett.rules.Rules.read;
import static yett.rules.Rules.said;
import static yett.rules.Rules.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.rules.Conclusion.Contradiction;
import yett.rules.Rules.Example;

class ContradictionRulesTest {
  /** The two answers in question are the last two facts, events 3 and 8. */
  static Stream<Example> examples() {
    return Stream.of(
        example(
            "a dark operator shows no fault",
            said(3, "display-lit", "dark"),
            said(8, "fault-shown", "position")),
        example(
            "a dark operator shows no mains",
            said(3, "mains-lamp", "shown"),
            said(8, "display-lit", "dark")),
        example(
            "a mains lamp needs mains",
            said(3, "mains-lamp", "shown"),
            read(8, "mains-at-terminals", "0.4 V")),
        example(
            "mains does not pass a tripped breaker",
            said(3, "breaker-position", "tripped"),
            read(8, "mains-at-terminals", "229 V")),
        example(
            "a tripped breaker lights no mains lamp",
            said(3, "breaker-position", "tripped"),
            said(8, "mains-lamp", "shown")),
        example(
            "without batteries nothing is lit without mains",
            site("batteries", "none"),
            said(3, "display-lit", "steady"),
            read(8, "mains-at-terminals", "3 V")),
        example(
            "a gate does not run on empty batteries",
            read(3, "battery-rest-voltage", "0 V"),
            said(8, "runs-on-batteries", "runs")),
        example(
            "a gate does not run as usual on collapsing batteries",
            said(3, "runs-on-batteries", "runs"),
            read(8, "battery-running-voltage", "14 V")),
        example(
            "a load does not raise the battery voltage",
            read(3, "battery-running-voltage", "26.1 V"),
            read(8, "battery-rest-voltage", "24.9 V")),
        example(
            "the fall is part of the dip",
            read(1, "battery-rest-voltage", "25.6 V"),
            read(3, "battery-running-voltage", "24.9 V"),
            read(8, "battery-fall", "3 V")),
        example(
            "no block has more than a full one",
            read(3, "battery-rest-voltage", "25.6 V"),
            read(8, "battery-block-difference", "12.8 V")),
        example(
            "a setting that matches is not far from the mains",
            site("supply-volts", "208"),
            said(3, "supply-setting", "matches"),
            read(8, "selector-margin", "32 V")),
        example(
            "a setting that is quite wrong is far from the mains",
            said(3, "supply-setting", "wrong"),
            read(8, "selector-margin", "2 V")),
        example(
            "a released leaf is not driven",
            said(3, "release-state", "released"),
            said(8, "what-turns", "runs")),
        example(
            "a released leaf does not run",
            said(3, "response", "runs"),
            said(8, "release-state", "released")),
        example(
            "a parted chain moves no leaf",
            said(3, "chain-looks", "parted"),
            said(8, "what-turns", "runs")),
        example(
            "a gate with a parted chain does not run",
            said(3, "chain-looks", "parted"),
            said(8, "response", "runs")),
        example(
            "a straight chain does not hang",
            said(3, "chain-looks", "straight"),
            read(8, "chain-sag", "160 mm")),
        example(
            "a chain that hangs deep is not tight",
            said(3, "chain-looks", "hangs"),
            read(8, "chain-sag", "20 mm")),
        example(
            "hang and movement of a chain go together",
            read(3, "chain-sag", "70 mm"),
            read(8, "chain-hand-lift", "20 mm")),
        example(
            "to start a leaf takes no less than to keep it rolling",
            read(3, "push-force", "200 N"),
            read(8, "breakaway-force", "90 N")),
        example(
            "a motor draws more with the leaf than without",
            read(3, "motor-alone-current", "6 A"),
            read(8, "running-current", "3 A")),
        example(
            "a gate that creeps is not in time",
            said(3, "speed-seen", "much-slower"),
            read(8, "travel-time", "24 s")),
        example(
            "a marker that is gone is not found",
            said(3, "marker-look", "gone"),
            said(8, "finds-reference", "finds-it")),
        example(
            "a marker that is gone is not measured",
            said(3, "marker-look", "gone"),
            read(8, "marker-gap", "6 mm")),
        example(
            "ends that are right are not far off",
            said(3, "limit-shift", "right"),
            read(8, "limit-error-closed", "800 mm")),
        example(
            "shifted limits are wrong at both ends",
            said(3, "limit-shift", "shifted"),
            read(8, "limit-error-open", "3 mm")),
        example(
            "what obeys its own buttons has a motor that turns",
            said(3, "direct-command", "runs"),
            said(8, "what-turns", "motor-still")),
        example(
            "what no command moves fails some command",
            said(3, "which-commands", "none-fails"),
            said(8, "response", "nothing")),
        example(
            "a beam does not see through things",
            said(3, "beam-path", "something-in-it"),
            said(8, "beam-light", "sees")),
        example(
            "a blocked beam does not see half covered",
            said(3, "beam-light", "blocked"),
            said(8, "beam-half-covered", "sees")));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void two_answers_that_cannot_both_be_right_are_named_in_their_order(Example example) {
    assertThat(contradictions(example.facts()))
        .filteredOn(c -> c.reason().rule().equals(example.rule()))
        .singleElement()
        .satisfies(c -> assertThat(c.first()).isEqualTo(3))
        .satisfies(c -> assertThat(c.second()).isEqualTo(8));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void what_was_taken_back_leaves_nothing_behind(Example example) {
    assertThat(Rules.afterTakingBack(example)).isEqualTo(Rules.judgeAfresh());
    assertThat(Rules.afterTakingBackEverything(example).conclusions()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void the_same_answers_with_a_repair_between_them_are_both_right(Example example) {
    List<Fact> facts = new ArrayList<>(example.facts());
    Fact.Given last = (Fact.Given) facts.remove(facts.size() - 1);
    facts.add(
        new Fact.Given(
            last.check(), last.outcome(), last.value(), last.measured(), last.by(), 8, 1));
    facts.add(done("clean-terminals", 1));
    assertThat(contradictions(facts)).isEmpty();
  }

  @Test
  void a_gate_that_shows_the_first_outcome_of_everything_does_not_contradict_itself() {
    List<Fact> facts = new ArrayList<>();
    Judgement usual = Rules.judge();
    long event = 1;
    for (Check check : Rules.BASE.checks().values()) {
      if (check.kind() == Check.Kind.CHECK && !check.measured()) {
        facts.add(said(event++, check.id(), check.outcomes().get(0).id()));
      } else if (check.measured() && usual.expectation(check.id()).isPresent()) {
        var e = usual.expectation(check.id()).get();
        facts.add(
            new Fact.Given(
                check.id(), "", (e.low() + e.high()) / 2, true, Role.TECHNICIAN, event++, 0));
      }
    }
    assertThat(facts).hasSizeGreaterThan(50);
    assertThat(contradictions(facts)).isEmpty();
  }

  @Test
  void a_hang_and_a_movement_that_belong_together_agree() {
    // 70 mm of hang is 162 mm of movement: 4/sqrt(3), geometry of the parabola
    for (String movement : Set.of("120 mm", "162 mm", "210 mm")) {
      assertThat(
              contradictions(
                  List.of(read(3, "chain-sag", "70 mm"), read(8, "chain-hand-lift", movement))))
          .isEmpty();
    }
  }

  @Test
  void two_hundred_and_eight_on_a_tap_for_two_hundred_and_thirty_is_no_quarrel() {
    assertThat(
            contradictions(
                List.of(
                    site("supply-volts", "208"),
                    said(3, "supply-setting", "next-to-it"),
                    read(8, "selector-margin", "22 V"))))
        .isEmpty();
  }

  private static Set<Contradiction> contradictions(List<Fact> facts) {
    Set<Contradiction> all = new TreeSet<>((a, b) -> a.toString().compareTo(b.toString()));
    all.addAll(Rules.judge(facts).contradictions());
    return all;
  }
}
