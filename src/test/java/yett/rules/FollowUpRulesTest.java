package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static yett.rules.Rules.complained;
import static yett.rules.Rules.done;
import static yett.rules.Rules.example;
import static yett.rules.Rules.happened;
import static yett.rules.Rules.read;
import static yett.rules.Rules.said;
import static yett.rules.Rules.site;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import yett.knowledge.Role;
import yett.rules.Conclusion.FollowUp;
import yett.rules.Conclusion.Remark;
import yett.rules.Rules.Example;

class FollowUpRulesTest extends ShownByExamples {
  private static final Fact TECHNICIAN = new Fact.Person(Role.TECHNICIAN);

  static Stream<Example> examples() {
    return Stream.of(entailed(), worthSaying(), saidBefore(), beforeRun()).flatMap(e -> e);
  }

  /** What something that happened makes necessary before the gate is run. */
  static Stream<Example> beforeRun() {
    return Stream.of(
        example("what a vehicle struck is looked at first", TECHNICIAN, happened("vehicle-struck")),
        example(
            "a stop that a vehicle has shifted is set before the catch",
            TECHNICIAN,
            happened("vehicle-struck"),
            said(7, "end-stop-look", "shifted"),
            read(8, "post-plumb", "25 mm")),
        example(
            "what cannot be told after a blow is found by looking over the whole gate",
            TECHNICIAN,
            happened("vehicle-struck"),
            new Fact.Untold("track-look", 1)));
  }

  @Test
  void what_a_vehicle_struck_is_looked_at_until_the_whole_gate_was_looked_over() {
    Fact struck = happened("vehicle-struck");
    assertThat(Rules.judge(TECHNICIAN, struck).followUps())
        .extracting(FollowUp::card)
        .containsExactlyInAnyOrder("chain-looks", "end-stop-look", "pad-and-bolts", "track-look");
    assertThat(Rules.judge(TECHNICIAN, struck, said(1, "track-look", "clean")).followUps())
        .extracting(FollowUp::card)
        .doesNotContain("track-look");
    assertThat(
            Rules.judge(TECHNICIAN, struck, said(1, 0, Role.CALLER, "chain-looks", "ordinary"))
                .followUps())
        .extracting(FollowUp::card)
        .contains("chain-looks");
    assertThat(Rules.judge(new Fact.Person(Role.CALLER), struck).followUps()).isEmpty();
    assertThat(
            Rules.judge(TECHNICIAN, struck, done("look-over-after-blow", 1)).followUps().stream()
                .filter(f -> f.repair().equals("vehicle-struck")))
        .isEmpty();
  }

  /** What is not asked in other words. */
  static Stream<Example> saidBefore() {
    return Stream.of(
        example(
            "batteries that run the gate alone have a whole main fuse",
            new Fact.ComplaintsTaken(),
            said(1, "runs-on-batteries", "runs")),
        example("an alarm that was reported is not asked about", complained("alarm-sounds")),
        example("a gate that was reset is not reset once more to see", done("reset-lockout", 1)),
        example(
            "a detector is not reset again after work on its loop", done("mend-loop-splice", 1)),
        example(
            "a loop that is broken or leaks has its splice remade before its detector is replaced",
            read(1, "loop-insulation", "0.2 Mohm")),
        example(
            "what keeps the batteries from being charged comes before new or charged ones",
            read(1, "charging-voltage", "24.1 V")),
        example(
            "a low charge with no current behind it comes before new batteries",
            read(1, "charging-voltage", "26.2 V"),
            read(2, "charging-current", "0.1 A")),
        example(
            "an eye that gets no supply has its supply put right before the pair is replaced",
            read(1, "beam-supply", "3.1 V")),
        example(
            "batteries that have just been charged are not charged again",
            done("charge-batteries", 1),
            read(2, 1, Role.TECHNICIAN, "charging-voltage", "27.4 V")),
        example(
            "a gate that was seen to run to both ends is not asked whether it runs",
            new Fact.ComplaintsTaken(),
            said(1, "response", "runs"),
            said(2, "stops-where", "at-its-ends")),
        example(
            "a gate that was just seen to fail is not run to see whether it works as usual",
            said(1, "response", "nothing")),
        example(
            "a gate that was just run as usual or not is not run once more to see what it does",
            new Fact.Person(Role.CALLER),
            said(1, "as-usual-again", "not-as-usual")),
        example(
            "a caller who said that one transmitter fails is not asked which kind fails",
            new Fact.Person(Role.CALLER),
            said(1, "which-commands", "one-transmitter")));
  }

  static Stream<Example> entailed() {
    return Stream.of(
        example("a chain that was moved has moved its marker", done("tighten-chain", 1)),
        example("a chain that hung low or came off is measured for wear", done("refit-chain", 1)),
        example(
            "a chain that was taken up too far is let out again",
            done("tighten-chain", 1),
            read(2, 1, Role.TECHNICIAN, "chain-sag", "20 mm")),
        example(
            "a chain that still hangs too low is taken up further",
            done("tighten-chain", 1),
            read(2, 1, Role.TECHNICIAN, "chain-sag", "160 mm")),
        example(
            "a chain that ran crooked has worn the teeth",
            said(1, "chain-side-wear", "cut-in"),
            done("align-chain", 1)),
        example("a gate that went dark finds its marker again", done("replace-batteries", 1)),
        example(
            "a gate without a marker is looked at where it stops",
            site("marker", "none"),
            done("engage-release", 1)),
        example(
            "a gate on limit switches is looked at where it stops",
            site("limits-by", "switches"),
            done("tighten-chain", 1)),
        example("batteries that had to do without mains are read", done("restore-mains", 1)),
        example(
            "batteries that were charged wrongly are compared",
            read(1, "charging-voltage", "31.5 V"),
            done("replace-charger", 1)),
        example(
            "new batteries are not left to what spoiled the old",
            read(1, "charging-voltage", "31.5 V"),
            done("replace-batteries", 1)),
        example(
            "a surge seldom stops at the charger",
            happened("thunderstorm"),
            done("replace-charger", 1)),
        example(
            "force that was raised against friction is lowered again",
            said(1, "force-setting", "coarser"),
            done("replace-motor", 1)));
  }

  static Stream<Example> worthSaying() {
    return Stream.of(
        example("a selector that was set without a reading", done("correct-supply-setting", 1)),
        example("how much chain to take up", read(1, "chain-sag", "150 mm")),
        example("how far the chain has grown", read(1, "chain-length", "310.1 mm")),
        example("an idler that was freed is replaced soon", done("free-idler", 1)),
        example("a length that fits another chain", read(1, "chain-length", "381 mm")),
        example("what share of its weight a leaf takes to push", read(1, "push-force", "200 N")),
        example("a leaf on a slope is held", site("grade", "1.5 %")),
        example("force above what people may meet", read(1, "obstruction-force", "520 N")),
        example("old batteries go in pairs", site("battery-age", "6")),
        example("blocks that differ go in pairs", read(1, "battery-block-difference", "0.5 V")),
        example(
            "a rest voltage with the last charge still in it",
            read(1, "battery-rest-voltage", "26.8 V")),
        example(
            "batteries are weaker in the cold",
            site("usual-temperature", "-4 C"),
            read(1, "battery-running-voltage", "22 V")),
        example("charging that boils", read(1, "charging-voltage", "33 V")),
        example(
            "a supply that is low because of its tap",
            said(1, "supply-setting", "next-to-it"),
            read(2, "dc-supply-voltage", "27 V")),
        example("which feeder would do", said(1, "feeder-judged", "too-small")),
        example("a device for 12 V", read(1, "receiver-supply", "12.4 V")),
        example(
            "what the lead to an eye loses",
            read(1, "beam-supply", "3.1 V"),
            read(2, "accessory-voltage", "24.6 V")),
        example("edges wired together", read(1, "edge-resistance", "4.1 kohm")),
        example(
            "a reading over the telephone",
            TECHNICIAN,
            read(1, 0, Role.CALLER, "travel-time", "40 s")),
        example(
            "a complaint of danger that was not confirmed",
            complained("moves-alone"),
            said(1, "danger-movement", "neither")),
        example(
            "a leaf said to be off its track that stands upright",
            complained("off-its-track"),
            said(1, "danger-leaf", "upright")),
        example(
            "no scene of an accident is asked for where nobody was hurt",
            new Fact.Person(Role.TECHNICIAN)));
  }

  @ParameterizedTest
  @MethodSource("entailed")
  void what_a_repair_entails_is_a_card_that_its_own_card_does_not_name(Example example) {
    assertThat(of(example))
        .isNotEmpty()
        .allSatisfy(
            f -> {
              assertThat(Rules.BASE.repairs()).containsKey(f.repair());
              assertThat(
                      Rules.BASE.repairs().containsKey(f.card())
                          || Rules.BASE.checks().containsKey(f.card()))
                  .as(f.card())
                  .isTrue();
              assertThat(Rules.BASE.repairs().get(f.repair()).entails()).doesNotContain(f.card());
            });
  }

  @ParameterizedTest
  @MethodSource("entailed")
  void what_was_done_afterwards_is_no_longer_owed(Example example) {
    assertThat(of(example)).isNotEmpty();
    for (FollowUp owed : of(example)) {
      Fact deed =
          Rules.BASE.repairs().containsKey(owed.card())
              ? done(owed.card(), 2)
              : new Fact.Given(owed.card(), "", 1, true, Role.TECHNICIAN, 9, 1);
      if (deed instanceof Fact.Given && !Rules.BASE.checks().get(owed.card()).measured()) {
        deed = said(9, 1, Role.TECHNICIAN, owed.card(), first(owed.card()));
      }
      List<Fact> facts = Stream.concat(example.facts().stream(), Stream.of(deed)).toList();
      assertThat(Rules.judge(facts).followUps()).doesNotContain(owed);
    }
  }

  @Test
  void the_usual_gate_owes_nothing_and_is_not_remarked_upon() {
    assertThat(Rules.judge(TECHNICIAN).followUps()).isEmpty();
    assertThat(Rules.judge(TECHNICIAN).remarks()).isEmpty();
  }

  @Test
  void a_gate_without_a_marker_owes_none_of_its_checks() {
    assertThat(owed(site("marker", "none"), done("tighten-chain", 1)))
        .doesNotContain("marker-distance");
    assertThat(owed(site("marker", "none"), done("clean-terminals", 1)))
        .contains("limit-error-closed")
        .doesNotContain("finds-reference");
  }

  @Test
  void a_gate_on_limit_switches_is_taught_nothing_and_looked_at_at_both_ends() {
    assertThat(owed(site("limits-by", "switches"), done("tighten-chain", 1)))
        .contains("limit-error-closed", "limit-error-open")
        .doesNotContain("teach-limits");
    assertThat(owed(site("limits-by", "switches"), done("clear-track", 1)))
        .doesNotContain("limit-error-closed", "limit-error-open");
    assertThat(owed(site("limits-by", "counted"), done("tighten-chain", 1)))
        .contains("teach-limits")
        .doesNotContain("limit-error-open");
  }

  /** Remarks in full; the numbers beside them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // 8 (0.150² - 0.0675²)/(3 x 5.2) m = 9.2 mm (parabola, statics textbook); two pitches of
        // 1/2 in
        "chain-sag | 150 mm | To bring the hang from 150 mm to 68 mm, take up about 9 mm of chain;"
            + " two pitches are 25 mm.",
        // 12.21 in over 24 pitches of 1/2 in is 1.75 % (chain handbook arithmetic)
        "chain-length | 12.21 in | The chain has grown by 1.8 %. Order a new one.",
        // 24 pitches of a No. 50 chain on a site that has No. 40 on record
        "chain-length | 381 mm | Twenty-four pitches of 381 mm are not those of the chain that is on"
            + " record. Count the pins again, and look at the number on its plates.",
        // 200 N of 350 kg x 9.80665 m/s2
        "push-force | 200 N | 200 N is 5.8 % of the weight of the leaf.",
        // two 8.2 kohm edges in series by mistake
        "edge-resistance | 16.4 kohm | This is what two sound edges read together. Lift one of them"
            + " and read again."
      })
  void a_remark_carries_the_numbers_of_this_gate(String check, String reading, String remark) {
    assertThat(Rules.judge(read(1, check, reading)).remarks())
        .extracting(Remark::text)
        .contains(remark);
  }

  @Test
  void what_was_set_by_a_label_is_left_to_be_read() {
    assertThat(Rules.judge(done("correct-supply-setting", 1)).remarks())
        .filteredOn(Remark::due)
        .singleElement()
        .extracting(Remark::text)
        .asString()
        .contains("electrician");
    assertThat(
            Rules.judge(read(1, "mains-at-terminals", "209 V"), done("correct-supply-setting", 1))
                .remarks())
        .filteredOn(Remark::due)
        .isEmpty();
  }

  @Test
  void a_wrong_tap_is_told_with_what_it_gives() {
    // ideal transformer: 208 V on a 240 V tap gives 0.8667, 120 V on 240 V a half
    assertThat(
            Rules.judge(
                    said(1, "supply-setting", "next-to-it"), read(2, "dc-supply-voltage", "27 V"))
                .remarks())
        .extracting(Remark::text)
        .containsExactly(
            "The tap explains it: 208 V on a 240 V tap gives 25.1 V to 29.5 V, 120 V on 240 V gives"
                + " 14.5 V to 17 V. Set it before the supply is blamed.");
  }

  @Test
  void a_feeder_that_is_too_small_is_told_the_size_that_would_do() {
    // 2.82 A over 200 m, 3 % of 120 V: at most 3.2 ohm/km; 8 AWG 2.55 at 75 degC, 10 AWG 4.07
    assertThat(
            Rules.judge(
                    site("supply-volts", "120"),
                    site("feeder-size", "awg-14"),
                    site("feeder-length", "200 m"),
                    said(1, "feeder-judged", "too-small"))
                .remarks())
        .extracting(Remark::text)
        .containsExactly(
            "By 2.8 A over 200 m the feeder wants at least 8 AWG. If it has that, look for a bad"
                + " joint or another load.");
  }

  @ParameterizedTest
  @CsvSource({"27.4 V, true", "24.8 V, false"})
  void batteries_are_charged_again_only_if_the_charge_is_not_kept_up(String reading, boolean kept) {
    assertThat(
            Rules.judge(
                    done("charge-batteries", 1),
                    read(2, 1, Role.TECHNICIAN, "charging-voltage", reading),
                    done("replace-charger", 2))
                .unavailable()
                .contains("charge-batteries"))
        .isEqualTo(kept);
  }

  @Test
  void only_the_last_reading_is_remarked_upon() {
    assertThat(
            Rules.judge(
                    read(1, "chain-sag", "150 mm"),
                    done("tighten-chain", 1),
                    read(5, 1, Role.TECHNICIAN, "chain-sag", "70 mm"))
                .remarks())
        .isEmpty();
  }

  private static String first(String check) {
    return Rules.BASE.checks().get(check).outcomes().get(0).id();
  }

  private static List<FollowUp> of(Example example) {
    return Rules.judge(example.facts()).followUps().stream()
        .filter(f -> f.reason().rule().equals(example.rule()))
        .toList();
  }

  private static Set<String> owed(Fact... facts) {
    return Rules.judge(facts).followUps().stream().map(FollowUp::card).collect(Collectors.toSet());
  }
}
