package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static yett.rules.Rules.complained;
import static yett.rules.Rules.done;
import static yett.rules.Rules.example;
import static yett.rules.Rules.happened;
import static yett.rules.Rules.read;
import static yett.rules.Rules.said;
import static yett.rules.Rules.site;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.rules.Conclusion.StopNow;
import yett.rules.Conclusion.Unavailable;
import yett.rules.Rules.Example;

class StopRulesTest extends ShownByExamples {
  private static final Fact CALLER = new Fact.Person(Role.CALLER);
  private static final Fact TECHNICIAN = new Fact.Person(Role.TECHNICIAN);

  static Stream<Example> examples() {
    return Stream.of(
        example("somebody is hurt or caught", said(1, "danger-person", "hurt-or-trapped")),
        example("the leaf is off its track", said(1, "danger-leaf", "off-or-leaning")),
        example("it smells of burning", said(1, "danger-burning", "burning")),
        example("wires are bare", said(1, "danger-conductors", "bare-wires")),
        example("water is in the operator", said(1, "danger-conductors", "water")),
        example("a battery is swollen or leaks", said(1, "danger-battery", "swollen-or-leaking")),
        example("the gate moved by itself", said(1, "danger-movement", "moved-by-itself")),
        example("the gate closed on somebody", said(1, "danger-movement", "closed-on")),
        example("the gate or its fence gives a shock", said(1, "danger-shock", "shock")),
        example("there is a fire on the site", said(1, "danger-fire", "fire")),
        example("somebody is shut in and needs help", said(1, "danger-shut-in", "needs-help")),
        example("somebody or a vehicle is shut in", said(1, "danger-shut-in", "no-help")),
        example("somebody rides on the gate", said(1, "danger-riding", "riding")),
        example("the gate has been taken out of use", said(1, "danger-tagged-off", "taken-out")),
        example(
            "the scene of an accident is kept",
            said(1, "danger-person", "hurt-or-trapped"),
            said(2, "danger-person", "nobody")),
        example("the scene of an accident is not released", said(1, "danger-scene", "kept")),
        example("it was seen to push on", said(1, "pushes-seen", "pushes-on")),
        example("the leaf leans so far that it may fall", read(1, "leaf-plumb", "55 mm")),
        example(
            "the track has let go of a leaf that leans",
            said(1, "track-look", "bent"),
            read(2, "leaf-plumb", "20 mm")),
        example("a leaf that leans is not released", read(1, "leaf-plumb", "20 mm")),
        example("a leaf without a sound stop is not released", said(1, "end-stop-look", "shifted")),
        example(
            "a leaf that nothing stops at one end is not run", said(1, "end-stop-look", "missing")),
        example("a protection device is bypassed", said(1, "bypass-look", "bypassed")),
        example("metalwork is found live", read(1, "frame-voltage", "118 V")),
        example(
            "a leaf far off its limits is not taught without a sound stop",
            said(1, "end-stop-look", "shifted"),
            read(2, "limit-error-closed", "900 mm")),
        example(
            "a leaf too heavy for the slope is not released",
            site("leaf-mass", "1000 kg"),
            site("grade", "4 %")),
        example("a leaf without its chain is not run", said(1, "chain-looks", "parted")),
        example("a gate whose chain lies deep is not run", said(1, "chain-looks", "hangs")),
        example("a child makes no repair", new Fact.Person(Role.CALLER, true)),
        example("a child looks from away only", new Fact.Person(Role.CALLER, true)),
        example("a child runs no gate", new Fact.Person(Role.CALLER, true)),
        example(
            "a caller does not run a gate whose chain may be off",
            new Fact.Person(Role.CALLER),
            complained("chain-hangs")),
        example(
            "a chain that a caller reported is looked at before the gate is run",
            new Fact.Person(Role.TECHNICIAN),
            complained("chain-hangs"),
            said(1, 0, Role.CALLER, "danger-person", "nobody")),
        example(
            "a gate that a vehicle has struck is looked over before it is run",
            happened("vehicle-struck")),
        example(
            "a caller does not switch on again what has gone off before",
            CALLER,
            said(1, "trips-again", "once")),
        example(
            "a caller does not run a gate whose switch goes off again",
            CALLER,
            complained("trips-its-breaker")),
        example("the emergency services are called once", CALLER, said(1, "danger-fire", "fire")),
        example(
            "nobody is asked to switch a circuit on where it is wet",
            new Fact.Person(Role.CALLER),
            happened("heavy-rain")),
        example(
            "a gate of which a danger is not known is not run", new Fact.Untold("danger-leaf", 1)),
        example(
            "batteries with a dead cell are not charged",
            read(1, "battery-block-difference", "2.1 V")),
        example(
            "batteries that are boiled are not charged on", read(1, "charging-voltage", "34 V")),
        example(
            "frozen batteries are not charged",
            site("usual-temperature", "-12 C"),
            read(1, "battery-rest-voltage", "22 V")),
        example(
            "a lithium pack is not charged in frost",
            site("batteries", "lithium"),
            site("usual-temperature", "-2 C")),
        example(
            "an operator on a tap that is quite wrong is not powered or run",
            said(1, "supply-setting", "wrong")),
        example(
            "nothing else is tried on a tap that is quite wrong",
            said(1, "supply-setting", "wrong")),
        example(
            "between neighbouring values a selector is set by a reading of the mains",
            TECHNICIAN,
            said(1, "supply-setting", "next-to-it")),
        example(
            "power does not come back where something keeps it off",
            said(1, "supply-setting", "wrong")),
        example(
            "a leaf that may fall is moved by nobody's hand",
            said(1, "danger-leaf", "off-or-leaning")),
        example(
            "a leaf that has caught somebody is moved to free them only",
            said(1, "danger-person", "hurt-or-trapped")),
        example(
            "a leaf at the scene of an accident is moved by nobody but those who help",
            said(1, "danger-person", "hurt-or-trapped"),
            said(2, "danger-person", "nobody")),
        example(
            "a gate that a stop button did not stop is not run",
            said(1, "stop-button-works", "fail")),
        example(
            "a caller does not touch a gate that may be live, burns or leaks acid",
            CALLER,
            said(1, "danger-shock", "shock")),
        example(
            "a caller keeps out of reach of a gate that moves by itself",
            CALLER,
            said(1, "danger-movement", "moved-by-itself")),
        example(
            "a gate that moved by itself is not run while something still calls",
            said(1, "danger-movement", "moved-by-itself"),
            said(2, "detector-lamp", "comes-and-goes")),
        example("nobody stays at a fire for the gate's sake", said(1, "danger-fire", "fire")),
        example(
            "nobody looks on with a caller whose gate is to be left alone",
            CALLER,
            said(1, "danger-burning", "burning")),
        example(
            "nothing is run on a supply that gives far too much",
            read(1, "dc-supply-voltage", "62 V")),
        example(
            "a caller does not move a gate that may push on or move alone",
            CALLER,
            complained("pushes-on")));
  }

  @Test
  void the_usual_gate_raises_no_stop_and_forbids_nothing() {
    assertThat(Rules.judge(TECHNICIAN).stops()).isEmpty();
    assertThat(forbidden(TECHNICIAN)).isEmpty();
  }

  /** What the comments in danger.yaml promise. */
  @ParameterizedTest
  @CsvSource({
    "danger-person,     hurt-or-trapped,    person-trapped",
    "danger-leaf,       off-or-leaning,     leaf-off-track",
    "danger-burning,    burning,            burning",
    "danger-conductors, bare-wires,         exposed-conductors",
    "danger-conductors, water,              water-in-live-parts",
    "danger-battery,    swollen-or-leaking, battery-damaged",
    "danger-movement,   moved-by-itself,    moves-uncommanded",
    "danger-movement,   closed-on,          closes-on-people",
    "danger-shock,      shock,              live-frame",
    "danger-fire,       fire,               fire-on-site",
    "danger-shut-in,    needs-help,         shut-in-and-needs-help",
    "danger-shut-in,    no-help,            shut-in",
    "danger-riding,     riding,             rides-on-gate",
    "danger-scene,      kept,               scene-kept",
    "danger-tagged-off, taken-out,          taken-out-of-use",
    "pushes-seen,       pushes-on,          closes-on-people",
  })
  void an_outcome_raises_its_stop(String check, String outcome, String stop) {
    assertThat(Rules.judge(said(1, 0, Role.CALLER, check, outcome)).stops())
        .extracting(StopNow::stop)
        .containsExactly(stop);
  }

  @Test
  void every_danger_question_stops_at_each_outcome_but_its_first_and_every_stop_is_a_card() {
    List<String> quiet = new ArrayList<>();
    for (Check check : Rules.BASE.checks().values()) {
      for (int i = 0; check.danger() && i < check.outcomes().size(); i++) {
        String outcome = check.outcomes().get(i).id();
        List<StopNow> stops = Rules.judge(said(1, check.id(), outcome)).stops();
        assertThat(stops).hasSize(i == 0 ? 0 : 1);
        stops.forEach(s -> assertThat(Rules.BASE.stops()).containsKey(s.stop()));
        quiet.add(outcome);
      }
    }
    assertThat(quiet).hasSizeGreaterThanOrEqualTo(23);
  }

  /** Who may say that a danger is over, and after what. */
  @ParameterizedTest
  @CsvSource({
    // danger, its word, what is said after so many repairs by whom; whether it stands
    "danger-person,  hurt-or-trapped, nobody,   0, CALLER,      scene-kept",
    "danger-fire,    fire,            none,     0, CALLER,      fire-on-site",
    "danger-fire,    fire,            none,     1, TRAINEE,     fire-on-site",
    "danger-fire,    fire,            none,     0, TECHNICIAN,  ",
    "danger-shock,   shock,           none,     1, TECHNICIAN,  live-frame",
    "danger-shock,   shock,           none,     0, ELECTRICIAN, live-frame",
    "danger-shock,   shock,           none,     1, ELECTRICIAN, ",
    "danger-shut-in, needs-help,      nobody,   0, CALLER,      ",
    "danger-shut-in, needs-help,      no-help,  0, CALLER,      shut-in",
    "danger-shut-in, no-help,         nobody,   0, CALLER,      ",
    "danger-riding,  riding,          nobody,   0, CALLER,      ",
  })
  void a_danger_is_over_when_whoever_may_say_so_does(
      String check, String so, String now, int epoch, Role by, String stands) {
    assertThat(
            Rules.judge(said(3, 0, Role.CALLER, check, so), said(7, epoch, by, check, now)).stops())
        .extracting(StopNow::stop)
        .isEqualTo(stands == null ? List.of() : List.of(stands));
  }

  /** Who may end a reported danger by saying that there is none, with nothing mended since. */
  private static final Map<String, Set<Role>> WHOSE_NO =
      Map.ofEntries(
          Map.entry("danger-person", Set.<Role>of()), // the scene is kept
          Map.entry("danger-scene", Set.of(Role.TECHNICIAN, Role.ELECTRICIAN)),
          Map.entry("danger-shut-in", Set.of(Role.values())),
          Map.entry("danger-riding", Set.of(Role.values())),
          Map.entry("danger-tagged-off", Set.of(Role.TECHNICIAN, Role.ELECTRICIAN)),
          Map.entry("danger-shock", Set.<Role>of()),
          Map.entry("danger-fire", Set.of(Role.TECHNICIAN, Role.ELECTRICIAN)),
          Map.entry("danger-leaf", Set.of(Role.TECHNICIAN, Role.ELECTRICIAN)),
          Map.entry("danger-burning", Set.of(Role.TECHNICIAN, Role.ELECTRICIAN)),
          Map.entry("danger-conductors", Set.of(Role.TECHNICIAN, Role.ELECTRICIAN)),
          Map.entry("danger-battery", Set.of(Role.TECHNICIAN, Role.ELECTRICIAN)),
          Map.entry("danger-movement", Set.of(Role.TECHNICIAN, Role.ELECTRICIAN)));

  @Test
  void it_is_decided_for_every_danger_whose_no_ends_it() {
    Set<String> dangers = new HashSet<>();
    for (Check check : Rules.BASE.checks().values()) {
      String none = check.outcomes().isEmpty() ? "" : check.outcomes().get(0).id();
      for (int i = 1; check.danger() && i < check.outcomes().size(); i++) {
        dangers.add(check.id());
        String so = check.outcomes().get(i).id();
        for (Role role : Role.values()) {
          boolean ends = WHOSE_NO.get(check.id()).contains(role);
          assertThat(
                  Rules.judge(
                          said(3, 0, Role.CALLER, check.id(), so),
                          said(7, 0, role, check.id(), none))
                      .stops())
              .as(check.id() + " " + so + ", and a " + role.word() + " says " + none)
              .hasSize(ends ? 0 : 1);
        }
      }
    }
    assertThat(dangers).isEqualTo(WHOSE_NO.keySet());
  }

  /** On the telephone it takes more than a word, and one run that looks well, to go on. */
  @Test
  void after_a_callers_no_nothing_that_moves_or_powers_the_gate_is_open_to_them() {
    for (String danger : List.of("danger-burning burning", "danger-movement moved-by-itself")) {
      String[] so = danger.split(" ");
      String none = Rules.BASE.checks().get(so[0]).outcomes().get(0).id();
      Fact reported = said(3, 0, Role.CALLER, so[0], so[1]);
      Fact no = said(7, 0, Role.CALLER, so[0], none);
      assertThat(Rules.judge(CALLER, reported, no).unavailable())
          .contains("response", "as-usual-again");
      assertThat(Rules.judge(reported, no, said(9, 0, Role.CALLER, "usual-run", "pass")).stops())
          .hasSize(1);
    }
    assertThat(
            Rules.judge(
                    CALLER,
                    said(3, 0, Role.CALLER, "danger-burning", "burning"),
                    said(7, 0, Role.CALLER, "danger-burning", "none"))
                .unavailable())
        .contains("switch-on-once");
  }

  @Test
  void one_danger_of_a_question_does_not_end_the_other() {
    assertThat(
            Rules.judge(
                    said(3, "danger-conductors", "bare-wires"),
                    said(7, "danger-conductors", "water"))
                .stops())
        .extracting(StopNow::stop)
        .containsExactlyInAnyOrder("exposed-conductors", "water-in-live-parts");
  }

  @Test
  void a_danger_reported_again_stops_once_by_its_latest_report() {
    assertThat(
            Rules.judge(said(3, "danger-burning", "burning"), said(7, "danger-burning", "burning"))
                .stops())
        .extracting(StopNow::event)
        .containsExactly(7L);
  }

  @Test
  void the_scene_of_an_accident_is_released_by_somebody_at_the_gate() {
    Fact hurt = said(3, 0, Role.CALLER, "danger-person", "hurt-or-trapped");
    Fact freed = said(7, 0, Role.TECHNICIAN, "danger-person", "nobody");
    for (Role by : Role.values()) {
      assertThat(Rules.judge(hurt, freed, said(9, 0, by, "danger-scene", "released")).stops())
          .hasSize(by.may(Role.TECHNICIAN) ? 0 : 1);
    }
  }

  @Test
  void a_gate_that_runs_as_usual_shuts_nobody_in() {
    assertThat(
            Rules.judge(said(3, "danger-shut-in", "no-help"), said(9, "usual-run", "pass")).stops())
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"moves-alone", "pushes-on"})
  void a_complaint_alone_raises_no_stop(String complaint) {
    assertThat(Rules.judge(complained(complaint), said(1, "danger-movement", "neither")).stops())
        .isEmpty();
  }

  @Test
  void a_caller_is_not_asked_to_move_a_gate_that_may_push_on_but_a_technician_is() {
    assertThat(forbidden(CALLER, complained("pushes-on")))
        .contains("response", "as-usual-again", "explain-use", "renew-transmitter-battery")
        .doesNotContain("display-lit");
    assertThat(forbidden(TECHNICIAN, complained("pushes-on"))).isEmpty();
  }

  private static boolean releases(List<String> needs) {
    return needs.contains("leaf-released") || needs.contains("drive-free");
  }

  @Test
  void every_card_that_releases_the_leaf_is_closed_while_it_leans() {
    Set<String> releasing =
        Stream.concat(
                Rules.BASE.checks().values().stream()
                    .filter(c -> releases(c.needs()))
                    .map(Check::id),
                Rules.BASE.repairs().values().stream()
                    .filter(r -> releases(r.needs()))
                    .map(Repair::id))
            .collect(Collectors.toSet());
    assertThat(releasing).contains("push-force", "free-leaf", "manual-release-works");
    assertThat(forbidden(TECHNICIAN, read(1, "leaf-plumb", "20 mm")))
        .containsExactlyInAnyOrderElementsOf(releasing);
  }

  @Test
  void a_leaf_that_was_brought_upright_may_be_released() {
    assertThat(
            forbidden(
                TECHNICIAN,
                read(1, "leaf-plumb", "20 mm"),
                read(4, 1, Role.TECHNICIAN, "leaf-plumb", "2 mm")))
        .isEmpty();
  }

  @Test
  void a_stop_that_is_missing_is_not_made_good_by_setting_the_other_one() {
    Fact missing = said(1, "end-stop-look", "missing");
    assertThat(forbidden(TECHNICIAN, missing, done("reset-end-stop", 1)))
        .contains("push-force", "travel-time");
    assertThat(forbidden(TECHNICIAN, missing, done("fit-end-stop", 1))).isEmpty();
  }

  @Test
  void a_bypassed_protection_stops_the_work_until_it_is_looked_at_again() {
    Fact bypassed = said(1, "bypass-look", "bypassed");
    assertThat(Rules.judge(bypassed, done("restore-protection", 1)).stops())
        .extracting(s -> s.stop())
        .containsExactly("protection-bypassed");
    Fact again = said(4, 1, Role.TECHNICIAN, "bypass-look", "own-devices");
    assertThat(Rules.judge(bypassed, again).stops()).isEmpty();
  }

  @Test
  void live_metal_is_measured_again_after_it_was_mended() {
    Fact live = read(1, "frame-voltage", "118 V");
    assertThat(Rules.judge(read(1, "frame-voltage", "3 V")).stops()).isEmpty();
    assertThat(Rules.judge(live).stops()).hasSize(1);
    assertThat(Rules.judge(live, done("clear-live-frame", 1)).stops()).isEmpty();
    Fact still = read(5, 1, Role.ELECTRICIAN, "frame-voltage", "60 V");
    assertThat(Rules.judge(live, done("clear-live-frame", 1), still).stops()).hasSize(1);
  }

  @Test
  void the_repair_that_ends_a_state_opens_what_it_forbade() {
    Fact shifted = said(1, "end-stop-look", "shifted");
    assertThat(forbidden(TECHNICIAN, shifted)).contains("push-force", "free-leaf");
    assertThat(forbidden(TECHNICIAN, shifted, done("reset-end-stop", 1))).isEmpty();

    Fact parted = said(1, "chain-looks", "parted");
    assertThat(forbidden(TECHNICIAN, parted)).contains("what-turns", "travel-time");
    assertThat(forbidden(TECHNICIAN, parted, done("refit-chain", 1))).isEmpty();

    Fact wrong = said(1, "supply-setting", "wrong");
    assertThat(forbidden(TECHNICIAN, wrong))
        .contains("dc-supply-voltage", "charging-voltage")
        .doesNotContain("mains-at-terminals", "correct-supply-setting");
    assertThat(forbidden(TECHNICIAN, wrong, done("correct-supply-setting", 1))).isEmpty();
  }

  /** Neither to try it nor to prove it, whoever is there; proofs at which it stands stay open. */
  @Test
  void a_gate_on_a_wrong_tap_or_a_burnt_board_is_not_run_until_that_is_put_right() {
    Fact wrong = said(1, "supply-setting", "wrong");
    Fact burnt = said(1, "scorch-look", "burnt");
    for (Fact found : List.of(wrong, burnt)) {
      for (Role role : Role.values()) {
        assertThat(Rules.judge(new Fact.Person(role), found).forbidden())
            .contains("gate-running", "able-to-run");
      }
      assertThat(forbidden(TECHNICIAN, found))
          .contains("ten-runs", "travel-time", "reversal-closing", "usual-run", "teach-limits")
          .doesNotContain("manual-release-works", "warning-signs-present");
    }
    assertThat(forbidden(TECHNICIAN, burnt)).contains("charging-current");
    assertThat(Rules.judge(TECHNICIAN, wrong).forbidden()).contains("powered", "motor-unplugged");
    assertThat(Rules.judge(TECHNICIAN, burnt).forbidden())
        .contains("powered")
        .doesNotContain("motor-unplugged");
    for (String mended : List.of("replace-controller", "replace-surged-parts", "replace-charger")) {
      assertThat(forbidden(TECHNICIAN, burnt, done(mended, 1))).isEmpty();
    }
    assertThat(forbidden(TECHNICIAN, burnt, done("clean-terminals", 1))).isNotEmpty();
    assertThat(forbidden(TECHNICIAN, burnt, said(2, "scorch-look", "clean"))).isEmpty();
  }

  /** 208 V or 240 V: a label may be wrong, and half of 240 V would at least show at once. */
  @Test
  void between_neighbouring_values_a_technician_waits_for_a_reading_of_the_mains() {
    Fact next = said(1, "supply-setting", "next-to-it");
    assertThat(forbidden(TECHNICIAN, next)).containsExactly("correct-supply-setting");
    assertThat(forbidden(TECHNICIAN, next, read(2, "mains-at-terminals", "0 V")))
        .containsExactly("correct-supply-setting");
    assertThat(forbidden(TECHNICIAN, next, read(2, "mains-at-terminals", "209 V"))).isEmpty();
    assertThat(forbidden(TECHNICIAN, next, read(2, "selector-margin", "31 V"))).isEmpty();
    assertThat(forbidden(new Fact.Person(Role.ELECTRICIAN), next)).isEmpty();
  }

  /** What one danger has switched off, the card of another does not switch on. */
  @Test
  void power_comes_back_after_a_danger_only_where_nothing_keeps_it_off() {
    Fact moves = said(1, "danger-movement", "moved-by-itself");
    assertThat(Rules.judge(TECHNICIAN, moves).withheld()).doesNotContain("power");
    for (Fact other :
        List.of(said(2, "danger-burning", "burning"), said(2, "supply-setting", "wrong"))) {
      assertThat(Rules.judge(TECHNICIAN, moves, other).withheld()).contains("power");
    }
  }

  @Test
  void a_repair_is_never_closed_by_the_state_that_it_ends() {
    assertThat(forbidden(TECHNICIAN, said(1, "end-stop-look", "shifted")))
        .doesNotContain("reset-end-stop");
    assertThat(forbidden(TECHNICIAN, said(1, "chain-looks", "parted")))
        .doesNotContain("refit-chain", "replace-chain");
    assertThat(forbidden(TECHNICIAN, read(1, "battery-block-difference", "2.1 V")))
        .contains("charge-batteries")
        .doesNotContain("replace-batteries");
    assertThat(forbidden(TECHNICIAN, read(1, "charging-voltage", "34 V")))
        .doesNotContain("replace-charger", "correct-supply-setting");
  }

  @Test
  void a_chain_that_a_caller_calls_parted_is_still_looked_at_on_site() {
    assertThat(forbidden(TECHNICIAN, said(1, 0, Role.CALLER, "chain-looks", "parted"))).isEmpty();
  }

  @Test
  void a_slope_that_one_person_can_hold_forbids_nothing() {
    // 350 kg on 4 %: 3432 N x (0.04 - 0.01) = 103 N
    assertThat(forbidden(TECHNICIAN, site("grade", "4 %"))).isEmpty();
  }

  /** Cards closed by the rules on stops, not for lack of qualification or equipment. */
  private static Set<String> forbidden(Fact... facts) {
    Set<String> own = new HashSet<>(Rules.of("stops"));
    own.remove("who stands at the gate switches a circuit on with the proofs for it");
    own.remove("who stands at the gate wipes the eyes with the proofs for it");
    own.remove("who stands at the gate clears the track with the proofs for it");
    own.remove("a caller pushes out of the track only what was seen to lie there");
    own.addAll(
        Set.of(
            "nothing is asked that needs a forbidden state",
            "nothing is repaired in a forbidden state"));
    return Rules.judge(facts).unavailabilities().stream()
        .filter(u -> own.contains(u.reason().rule()))
        .map(Unavailable::card)
        .collect(Collectors.toSet());
  }
}
