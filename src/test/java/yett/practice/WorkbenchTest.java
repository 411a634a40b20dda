package yett.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yett.interview.course.Expertise;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Card;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.replay.CaseFile;
import yett.replay.SmallRuleBase;

class WorkbenchTest {
  private static final Expertise EXPERTISE = SmallRuleBase.expertise();
  private static final RuleBase BASE = SmallRuleBase.base();
  private static final String SLACK =
      """
      case: chandlers-chain
      story: The chain at Chandler's gate slaps since the frost.
      person: technician
      complaints: [noisy-chain]
      answers: {chain-sag: 190 mm}
      truth: [chain-slack]
      """;

  private final List<PracticeEntry> kept = new ArrayList<>();

  private Workbench bench(Exercise exercise, List<PracticeEntry> before) {
    return new Workbench(EXPERTISE, exercise, before, kept::add);
  }

  private static Exercise exercise(String text) {
    CaseFile file = CaseFile.read("quay.case.yaml", text, BASE);
    assertThat(file.problems()).isEmpty();
    return new Exercises(EXPERTISE).of(file.cases().get(0), 5).orElseThrow();
  }

  private static Check check(String id) {
    return BASE.checks().get(id);
  }

  @Test
  void a_repair_on_suspicion_is_counted_and_still_is_when_the_exercise_goes_on() {
    try (Workbench bench = bench(exercise(SLACK), List.of())) {
      bench.lookForDangers();
      bench.repair(BASE.repairs().get("charge-batteries"));
      assertThat(bench.guesses()).containsExactly("charge-batteries");
    }
    try (Workbench again = bench(exercise(SLACK), List.copyOf(kept))) {
      assertThat(again.guesses()).containsExactly("charge-batteries");
    }
  }

  @Test
  void what_would_be_dangerous_is_refused_with_its_caution_and_counted() {
    try (Workbench bench = bench(exercise(SLACK), List.of())) {
      Refusal blind = bench.refused(check("chain-sag")).orElseThrow();
      assertThat(blind.why()).contains("First look for dangers");
      bench.lookForDangers();
      Refusal live = bench.refused(check("chain-sag")).orElseThrow();
      assertThat(live.slip()).isTrue();
      assertThat(live.cautions()).isNotEmpty();
      assertThat(live.enter()).extracting(SetUp::id).containsExactly("locked-off");
      assertThat(bench.slips()).hasSize(2);
      assertThat(bench.refused(check("noise-kind"))).isEmpty();
      assertThat(bench.moment().state().answers())
          .extracting(a -> a.check())
          .containsExactly("danger-person");
      Refusal reserved = bench.refused(check("mains-at-terminals")).orElseThrow();
      assertThat(reserved.why()).contains("for an electrician");
      assertThat(bench.finishRefused().orElseThrow().slip()).isTrue();
      assertThat(bench.slips()).hasSize(4);
    }
  }

  @Test
  void a_safe_state_of_the_work_lets_the_check_be_made_and_time_runs() {
    try (Workbench bench = bench(exercise(SLACK), List.of())) {
      bench.lookForDangers();
      double before = bench.minutes();
      SetUp lockedOff = BASE.setUps().get("locked-off");
      assertThat(bench.refused(lockedOff)).isEmpty();
      bench.enter(lockedOff);
      assertThat(bench.refused(check("chain-sag"))).isEmpty();
      assertThat(bench.ask(check("chain-sag"))).isEqualTo(new Answer.Read("190 mm", 190));
      assertThat(bench.minutes() - before)
          .isCloseTo(lockedOff.enterMinutes() + check("chain-sag").minutes(), within(1e-9));
      double again = ((Answer.Read) bench.ask(check("chain-sag"))).value();
      assertThat(again).isCloseTo(190, within(20.0)).isNotEqualTo(190);
      Refusal trying = bench.tryRefused().orElseThrow();
      assertThat(trying.leave()).contains(lockedOff);
      assertThat(bench.slips()).as("after the safe work").hasSize(1);
    }
  }

  /** Whoever does what the hints say needs what the plan needs, on gates of all kinds. */
  @Test
  void following_the_hints_takes_as_long_as_the_plan() {
    int putRight = 0;
    for (long seed = 1; seed <= 12; seed++) {
      Exercise exercise =
          new Exercises(EXPERTISE)
              .drawn(Optional.empty(), Optional.empty(), Role.ELECTRICIAN, seed);
      try (Workbench bench = bench(exercise, List.of())) {
        follow(bench);
        PracticeScore score = PracticeScore.of(EXPERTISE, bench);
        assertThat(bench.slips()).isEmpty();
        assertThat(bench.departures()).isEmpty();
        assertThat(score.minutes())
            .as("seed " + seed + " " + exercise.truth())
            .isCloseTo(score.planMinutes(), within(0.051));
        assertThat(score.cost()).isCloseTo(score.planCost(), within(0.1));
        putRight += score.putRight() ? 1 : 0;
      }
    }
    assertThat(putRight).isGreaterThan(6);
  }

  private static void follow(Workbench bench) {
    for (int i = 0; i < 200 && !bench.over(); i++) {
      Step step = bench.moment().step();
      if (step instanceof Step.AskDangers) {
        bench.lookForDangers();
      } else if (step instanceof Step.MakeSafe s) {
        bench.madeSafe(s);
      } else if (step instanceof Step.Enter s) {
        assertThat(bench.refused(s.setUp())).isEmpty();
        bench.enter(s.setUp());
        intend(bench, s.purpose().card());
      } else if (step instanceof Step.Leave s) {
        bench.leave(s.setUp());
        intend(bench, s.purpose().card());
      } else if (step instanceof Step.Ask s) {
        assertThat(bench.refused(s.check())).isEmpty();
        bench.ask(s.check());
      } else if (step instanceof Step.LookRound s) {
        for (Step.Ask look : s.looks()) {
          assertThat(bench.refused(look.check())).isEmpty();
          bench.ask(look.check());
        }
      } else if (step instanceof Step.Mend s) {
        assertThat(bench.refused(s.repair())).isEmpty();
        bench.repair(s.repair());
      } else if (step instanceof Step.Retest) {
        assertThat(bench.tryRefused()).isEmpty();
        bench.tryOut();
      } else if (step instanceof Step.HandOver s) {
        bench.close(s.ending());
      } else {
        assertThat(step).isInstanceOf(Step.CloseRepaired.class);
        assertThat(bench.finishRefused()).isEmpty();
        bench.finish();
      }
    }
  }

  /** Nothing was repaired, because there was nothing to repair. */
  @Test
  void a_sound_gate_ends_as_one_with_nothing_wrong() {
    String sound =
        """
        case: nothing-wrong-at-the-smokehouse
        story: They say the smokehouse gate stays open; nobody told them of the timer.
        person: technician
        complaints: [stays-open]
        truth: [nothing-wrong]
        """;
    try (Workbench bench = bench(exercise(sound), List.of())) {
      bench.lookForDangers();
      bench.repair(BASE.repairs().get("explain-use"));
      follow(bench);
      assertThat(bench.moment().state().closed()).contains(Ending.NOTHING_FOUND);
      assertThat(PracticeScore.of(EXPERTISE, bench).putRight()).isTrue();
    }
  }

  /** Does at once what the work was set up for, as far as it is ready. */
  private static void intend(Workbench bench, String card) {
    Check check = BASE.checks().get(card);
    Repair repair = BASE.repairs().get(card);
    Set<String> inForce = bench.moment().state().work().setUps();
    if (check != null && inForce.containsAll(check.needs())) {
      bench.ask(check);
    } else if (repair != null && inForce.containsAll(repair.needs())) {
      bench.repair(repair);
    }
  }

  /** A trainee who types just what the hint names must not run into a safety error by it. */
  @Test
  void a_hint_names_the_set_ups_that_its_step_needs_first() {
    int needed = 0;
    int finished = 0;
    for (long seed = 1; seed <= 6; seed++) {
      Exercise exercise =
          new Exercises(EXPERTISE)
              .drawn(Optional.of("chain"), Optional.empty(), Role.ELECTRICIAN, seed);
      try (Workbench bench = bench(exercise, List.of())) {
        bench.lookForDangers();
        for (int i = 0; i < 60; i++) {
          Workbench.Hint hint = bench.hint();
          hint.leave().forEach(bench::leave);
          for (SetUp setUp : hint.enter()) {
            assertThat(bench.refused(setUp)).isEmpty();
            bench.enter(setUp);
            needed++;
          }
          Check check = BASE.checks().get(hint.card());
          Repair repair = BASE.repairs().get(hint.card());
          if (check != null) {
            assertThat(bench.refused(check)).isEmpty();
            bench.ask(check);
          } else if (repair != null) {
            assertThat(bench.refused(repair)).isEmpty();
            bench.repair(repair);
          } else if (hint.card().equals(BestStep.RETEST)) {
            bench.tryOut();
          } else {
            if (hint.card().equals(BestStep.FINISH)) {
              assertThat(bench.finishRefused()).isEmpty();
              finished++;
            }
            break;
          }
        }
        assertThat(bench.slips()).isEmpty();
      }
    }
    assertThat(finished).isPositive();
    assertThat(needed).isPositive();
  }

  @Test
  void an_exercise_that_was_left_goes_on_where_it_was() {
    Exercise exercise = exercise(SLACK);
    List<PracticeEntry> first;
    double minutes;
    Answer next;
    try (Workbench bench = bench(exercise, List.of())) {
      bench.refused(check("chain-sag"));
      bench.lookForDangers();
      bench.enter(BASE.setUps().get("cover-off"));
      bench.ask(check("battery-rest-voltage"));
      bench.hint();
      minutes = bench.minutes();
      first = List.copyOf(kept);
      next = bench.ask(check("battery-rest-voltage"));
    }
    try (Workbench bench = bench(exercise, first)) {
      assertThat(bench.minutes()).isEqualTo(minutes);
      assertThat(bench.slips()).hasSize(1);
      assertThat(bench.hints()).isEqualTo(1);
      assertThat(bench.moment().state().work().setUps()).containsExactly("cover-off");
      assertThat(bench.ask(check("battery-rest-voltage"))).isEqualTo(next);
    }
  }

  @Test
  void a_departure_names_the_better_step_and_what_it_would_have_saved() {
    try (Workbench bench = bench(exercise(SLACK), List.of())) {
      bench.lookForDangers();
      Repair blindly = BASE.repairs().get("explain-use");
      assertThat(bench.refused(blindly)).isEmpty();
      bench.repair(blindly);
      assertThat(bench.departures())
          .singleElement()
          .satisfies(
              d -> {
                assertThat(d.chose()).isEqualTo(blindly.name());
                assertThat(d.best()).isNotBlank().isNotEqualTo(d.chose());
                assertThat(d.reason()).isNotBlank();
              });
    }
  }

  @Test
  void a_gate_that_is_put_right_but_not_proved_does_not_go_back_into_service() {
    try (Workbench bench = bench(exercise(SLACK), List.of())) {
      bench.lookForDangers();
      bench.enter(BASE.setUps().get("locked-off"));
      bench.repair(BASE.repairs().get("tighten-chain"));
      assertThat(bench.remaining()).isEmpty();
      bench.leave(BASE.setUps().get("locked-off"));
      if (BASE.setUps().containsKey(SetUp.GATE_RUNNING)) {
        bench.enter(BASE.setUps().get(SetUp.GATE_RUNNING));
      }
      assertThat(bench.finishRefused().orElseThrow().why()).contains("Nobody has seen");
      assertThat(bench.tryRefused()).isEmpty();
      assertThat(bench.tryOut().cured()).isTrue();
      assertThat(bench.finishRefused().orElseThrow().why()).contains("not proved");
      assertThat(bench.slips()).hasSize(2);
    }
  }

  /** Whatever somebody thinks of: what is done is done in the state of the work that it needs. */
  @Test
  void nothing_is_done_by_anybody_in_a_state_of_the_work_that_does_not_fit() {
    Random random = new Random(3);
    List<Card> all = new ArrayList<>();
    BASE.ordinaryChecks().filter(c -> !c.danger()).forEach(all::add);
    all.addAll(BASE.repairs().values());
    all.addAll(BASE.setUps().values());
    all.addAll(BASE.proofs());
    Set<Class<?>> done = new HashSet<>();
    for (int round = 0; round < 20; round++) {
      Exercise exercise =
          new Exercises(EXPERTISE)
              .drawn(Optional.empty(), Optional.empty(), Role.TECHNICIAN, round);
      kept.clear();
      try (Workbench bench = bench(exercise, List.of())) {
        if (random.nextInt(4) > 0) {
          bench.lookForDangers();
        }
        for (int i = 0; i < 25; i++) {
          attempt(bench, all.get(random.nextInt(all.size())), random);
        }
      }
      inOrder(kept);
      kept.stream()
          .map(PracticeEntry::event)
          .filter(e -> e != null)
          .forEach(e -> done.add(e.getClass()));
    }
    assertThat(done).contains(Event.SetUpEntered.class, Event.Repaired.class, Event.Answered.class);
  }

  private static void attempt(Workbench bench, Card card, Random random) {
    if (card instanceof Check check && bench.refused(check).isEmpty()) {
      bench.ask(check);
    } else if (card instanceof Repair repair && bench.refused(repair).isEmpty()) {
      bench.repair(repair);
    } else if (card instanceof SetUp setUp && !setUp.isCondition()) {
      if (bench.moment().state().work().setUps().contains(setUp.id())) {
        bench.leave(setUp);
      } else if (bench.refused(setUp).isEmpty()) {
        bench.enter(setUp);
      }
    } else if (random.nextInt(5) == 0 && bench.tryRefused().isEmpty()) {
      bench.tryOut();
    }
  }

  /** Reads what was kept in its own way, from the cards alone. */
  private static void inOrder(List<PracticeEntry> kept) {
    Set<String> inForce = new HashSet<>();
    boolean looked = false;
    for (PracticeEntry entry : kept) {
      Event event = entry.event();
      if (event instanceof Event.SetUpEntered e) {
        assertThat(looked).as("looked for dangers before " + e).isTrue();
        SetUp card = BASE.setUps().get(e.setUp());
        assertThat(inForce).doesNotContainAnyElementsOf(card.excludes());
        inForce.add(e.setUp());
      } else if (event instanceof Event.SetUpLeft e) {
        inForce.remove(e.setUp());
      } else if (event instanceof Event.Repaired e) {
        assertThat(inForce).containsAll(BASE.repairs().get(e.repair()).needs());
        assertThat(Role.TECHNICIAN.may(BASE.repairs().get(e.repair()).who())).isTrue();
      } else if (event instanceof Event.Answered e) {
        looked |= BASE.checks().get(e.check()).danger();
        assertThat(inForce).containsAll(BASE.checks().get(e.check()).needs());
        assertThat(Role.TECHNICIAN.may(BASE.checks().get(e.check()).who())).isTrue();
      }
    }
  }
}
