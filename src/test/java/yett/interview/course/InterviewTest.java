package yett.interview.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.belief.Belief;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.search.Adviser;
import yett.interview.step.HandOverReason;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.SetUp;
import yett.plan.Advice;
import yett.plan.Planner;
import yett.testing.Advices;
import yett.testing.Shipped;
import yett.wording.StepWords;

/** The order of things in a case, whatever the plan would choose. */
class InterviewTest {
  /** Chooses the first of some cards that may still be used, until the gate runs. */
  private record Wanting(List<String> cards) implements Adviser {
    @Override
    public Advice advise(Belief belief, Planner.Options options) {
      for (String card : options.cured() ? List.<String>of() : cards) {
        if (options.checks().contains(card)) {
          return Advices.asking(card);
        }
        if (options.repairs().contains(card)) {
          return Advices.repairing(card);
        }
      }
      return Advices.nothing();
    }
  }

  private final List<Entry> entries = new ArrayList<>();
  private Interview interview;
  private Role person = Role.TECHNICIAN;

  @AfterEach
  void close() {
    interview.close();
  }

  @Test
  void dangers_come_before_everything_else() {
    begin(Role.CALLER);
    assertThat(step()).isInstanceOf(Step.AskDangers.class);
    noDangers();
    assertThat(step()).isInstanceOf(Step.AskSite.class);
    say(new Event.SiteTaken());
    assertThat(step()).isInstanceOf(Step.AskComplaints.class);
    say(new Event.Complained(List.of("scrapes")));
    assertThat(step()).isInstanceOf(Step.AskPressing.class);
    say(new Event.Pressed(List.of()));
    assertThat(step()).isInstanceOf(Step.AskHistory.class);
  }

  @Test
  void a_danger_that_cannot_be_told_is_not_taken_for_none() {
    beginWork("chain-looks");
    say(new Event.Corrected(eventOf("danger-leaf"), new Answer.CannotTell()));
    assertThat(asked()).isEqualTo("chain-looks");
    assertThat(moment().judgement().forbidden()).contains("gate-running", "able-to-run");
  }

  @Test
  void a_danger_to_people_ends_the_search() {
    beginWork("chain-looks");
    say(new Event.Corrected(eventOf("danger-leaf"), new Answer.Chosen("off-or-leaning")));
    Step.MakeSafe stop = (Step.MakeSafe) step();
    assertThat(stop.now()).isNotEmpty();
    say(stop.done());
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.HandOver.class, s -> assertThat(s.ending()).isEqualTo(Ending.MADE_SAFE));
    say(new Event.Closed(Ending.MADE_SAFE));
    assertThat(step()).isEqualTo(new Step.Finished(Ending.MADE_SAFE));
  }

  @Test
  void taking_the_answer_back_lifts_the_stop() {
    beginWork("chain-looks");
    long answer = eventOf("danger-burning");
    say(new Event.Corrected(answer, new Answer.Chosen("burning")));
    assertThat(step()).isInstanceOf(Step.MakeSafe.class);
    say(new Event.Corrected(answer, new Answer.Chosen("none")));
    assertThat(asked()).isEqualTo("chain-looks");
  }

  @Test
  void a_technician_goes_on_in_the_safe_state_and_looks_again_after_a_repair() {
    beginWork("running-current", "battery-rest-voltage", "replace-motor");
    say(new Event.Corrected(eventOf("danger-burning"), new Answer.Chosen("burning")));
    say(((Step.MakeSafe) step()).done());
    assertThat(moment().state().work().setUps()).containsExactly("isolated");
    confirmSetUps(); // nothing that runs the gate or is live comes before the repair
    assertThat(mended()).isEqualTo("replace-motor");
    say(new Event.Repaired("replace-motor", true));
    assertThat(((Step.AskDangers) step()).dangers())
        .extracting(Check::id)
        .containsExactly("danger-burning");
    say(new Event.Answered("danger-burning", new Answer.Chosen("burning")));
    assertThat(step()).isInstanceOf(Step.MakeSafe.class);
    say(((Step.MakeSafe) step()).done());
    assertThat(moment().judgement().forbidden()).contains("gate-running");
  }

  /** A blow may have loosened what gives way under power: looks first, then the run that pays. */
  @ParameterizedTest
  @CsvSource({"TRAINEE", "TECHNICIAN", "ELECTRICIAN"})
  void a_gate_that_a_vehicle_struck_is_looked_over_before_it_is_run(Role role) {
    begin(role, "response", "ten-runs", "tighten-bracket");
    struck();
    List<String> seen = new ArrayList<>();
    while (!inForce().contains("gate-running")) {
      Step next = step();
      seen.addAll(next.cards());
      finish();
    }
    assertThat(seen).contains("track-look", "end-stop-look", "pad-and-bolts", "chain-looks");
    assertThat(seen).doesNotContain("tighten-bracket");
    assertThat(asked()).isEqualTo("response");
  }

  @Test
  void a_blow_that_is_told_after_a_repair_is_looked_at_before_the_gate_is_tried() {
    beginWork("switch-off-new-lamp");
    mend("switch-off-new-lamp");
    assertThat(step()).isInstanceOf(Step.Retest.class);
    assertThat(inForce()).contains("gate-running");
    say(new Event.Happened(List.of("vehicle-struck")));
    assertThat(moment().judgement().forbidden()).contains("gate-running", "able-to-run");
    assertThat(asked()).isEqualTo("chain-looks");
    assertThat(inForce()).doesNotContain("gate-running");
    for (int looks = 0; looks < 4; looks++) {
      finish();
    }
    assertThat(step()).isInstanceOf(Step.Retest.class);
  }

  @Test
  void what_nobody_can_tell_after_a_blow_is_found_by_looking_over_the_whole_gate() {
    begin(Role.TECHNICIAN, "ten-runs");
    struck();
    for (String look : List.of("track-look", "end-stop-look", "pad-and-bolts", "chain-looks")) {
      say(new Event.Answered(look, new Answer.CannotTell()));
    }
    mend("look-over-after-blow");
    assertThat(moment().judgement().forbidden()).doesNotContain("gate-running");
  }

  @Test
  void a_caller_is_not_asked_to_run_a_gate_that_a_vehicle_struck() {
    begin(Role.CALLER, "response");
    noDangers();
    say(new Event.SiteTaken());
    say(new Event.Complained(List.of("scrapes")));
    say(new Event.Pressed(List.of()));
    say(new Event.Happened(List.of("vehicle-struck")));
    assertThat(moment().judgement().unavailable()).contains("response");
  }

  private void struck() {
    noDangers();
    say(new Event.SiteTaken());
    say(new Event.Complained(List.of("scrapes")));
    say(new Event.Happened(List.of("vehicle-struck")));
  }

  /** A loop that calls now and then is seen only under power: nothing may move the leaf then. */
  @Test
  void what_moves_the_gate_by_itself_is_looked_for_under_power_with_its_motor_cut_off() {
    beginWork("loop-resistance", "detector-lamp", "detector-sees", "set-loops-apart");
    say(new Event.Corrected(eventOf("danger-movement"), new Answer.Chosen("moved-by-itself")));
    say(((Step.MakeSafe) step()).done());
    assertThat(inForce()).containsExactly("motor-off");
    assertThat(asked()).isEqualTo("loop-resistance");
    assertThat(inForce()).containsExactlyInAnyOrder("motor-off", "locked-off");
    say(new Event.Answered("loop-resistance", new Answer.Read("1 ohm", 1)));
    assertThat(asked()).isEqualTo("detector-lamp");
    assertThat(inForce()).containsExactlyInAnyOrder("motor-off", "cover-off");
    say(new Event.Answered("detector-lamp", new Answer.Chosen("comes-and-goes")));
    confirmSetUps(); // detector-sees runs the leaf: not now
    assertThat(mended()).isEqualTo("set-loops-apart");
    say(new Event.Repaired("set-loops-apart", true));
    ((Step.AskDangers) step())
        .dangers()
        .forEach(c -> say(new Event.Answered(c.id(), new Answer.Chosen("neither"))));
    assertThat(asked()).isEqualTo("detector-lamp");
    assertThat(inForce()).contains("motor-off");
    say(new Event.Answered("detector-lamp", new Answer.Chosen("comes-and-goes")));
    confirmSetUps(); // it still calls: the motor is not given back for a try
    assertThat(moment().judgement().forbidden()).contains("gate-running");
    assertThat(inForce()).contains("motor-off");
    say(new Event.Corrected(eventOf("detector-lamp"), new Answer.Chosen("no-vehicle")));
    confirmSetUps();
    assertThat(step()).isInstanceOf(Step.Retest.class);
    assertThat(inForce()).contains("gate-running").doesNotContain("motor-off");
  }

  /** Whoever works at the dead drive has their hands in it. */
  @Test
  void no_danger_gives_power_back_to_a_gate_that_is_locked_off() {
    beginWork("tighten-chain");
    long answer = eventOf("danger-movement");
    say(new Event.Corrected(answer, new Answer.Chosen("moved-by-itself")));
    assertThat(((Step.MakeSafe) step()).now()).anyMatch(l -> l.contains("switch the mains on"));
    say(new Event.Corrected(answer, new Answer.Chosen("neither")));
    confirmSetUps();
    assertThat(inForce()).containsExactly("locked-off");
    say(new Event.Corrected(answer, new Answer.Chosen("moved-by-itself")));
    assertThat(((Step.MakeSafe) step()).leaves()).contains(List.of("locked-off", "motor-off"));
    assertThat(((Step.MakeSafe) step()).now()).noneMatch(l -> l.contains("switch the mains on"));
  }

  /** What gives the power back is gone through before what proves dead. */
  @Test
  void whoever_comes_back_goes_through_a_lock_off_last() {
    beginWork("tighten-chain");
    confirmSetUps();
    say(new Event.Corrected(eventOf("danger-movement"), new Answer.Chosen("moved-by-itself")));
    say(((Step.MakeSafe) step()).done());
    say(new Event.Returned());
    noDangers();
    List<String> order = new ArrayList<>();
    while (step() instanceof Step.Enter again && again.again()) {
      order.add(again.setUp().id());
      say(again.done());
    }
    assertThat(order).containsExactly("motor-off", "locked-off");
  }

  private Set<String> inForce() {
    return moment().state().work().setUps();
  }

  @Test
  void a_danger_that_comes_back_is_made_safe_again() {
    beginWork("chain-looks");
    long answer = eventOf("danger-burning");
    say(new Event.Corrected(answer, new Answer.Chosen("burning")));
    say(((Step.MakeSafe) step()).done());
    say(new Event.Corrected(answer, new Answer.Chosen("none")));
    say(new Event.Corrected(answer, new Answer.Chosen("burning")));
    assertThat(step()).isInstanceOf(Step.MakeSafe.class);
  }

  @Test
  void a_set_up_is_entered_before_the_work_that_needs_it() {
    beginWork("tighten-chain");
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.Enter.class,
            s -> {
              assertThat(s.setUp().id()).isEqualTo("locked-off");
              assertThat(s.cautions()).isNotEmpty();
            });
    confirmSetUps();
    assertThat(mended()).isEqualTo("tighten-chain");
  }

  /** A lock that somebody else may have taken off is nobody's proof of dead. */
  @Test
  void whoever_comes_to_a_gate_that_was_locked_off_proves_it_dead_again() {
    beginWork("tighten-chain");
    confirmSetUps();
    assertThat(mended()).isEqualTo("tighten-chain");
    person = Role.ELECTRICIAN;
    say(new Event.Returned());
    noDangers();
    assertThat(seenToAgain()).isEqualTo("locked-off");
    assertThat(((Step.Enter) step()).cautions()).isNotEmpty();
    assertThat(((Step.Enter) step()).purpose().card()).isEqualTo("tighten-chain");
    confirmSetUps();
    assertThat(mended()).isEqualTo("tighten-chain");
    assertThat(moment().state().work().setUps()).containsExactly("locked-off");
  }

  /** Also while the case is open, and with nothing in force. */
  @Test
  void whoever_comes_anew_looks_for_dangers_first() {
    beginWork("chain-looks");
    person = Role.ELECTRICIAN;
    say(new Event.Returned());
    assertThat(step()).isInstanceOf(Step.AskDangers.class);
    noDangers();
    assertThat(step()).isInstanceOf(Step.LookRound.class);
  }

  /** The part may be on the van of whoever comes. */
  @Test
  void what_could_not_be_done_is_proposed_again_to_whoever_comes_anew() {
    couldNotTighten();
    say(new Event.Returned());
    noDangers();
    confirmSetUps();
    assertThat(mended()).isEqualTo("tighten-chain");
  }

  @Test
  void what_could_not_be_done_is_proposed_again_in_a_case_that_is_taken_up() {
    couldNotTighten();
    say(new Event.Closed(Ending.HANDED_OVER));
    say(new Event.TakenUp());
    noDangers();
    say(((Step.Leave) step()).done());
    confirmSetUps();
    assertThat(mended()).isEqualTo("tighten-chain");
  }

  private void couldNotTighten() {
    beginWork("tighten-chain");
    confirmSetUps();
    say(new Event.Repaired("tighten-chain", false, "no spanner"));
    confirmSetUps();
    assertThat(((Step.HandOver) step()).because())
        .isInstanceOfSatisfying(
            HandOverReason.NothingLeft.class,
            n -> assertThat(n.refused()).extracting("why").containsExactly("no spanner"));
  }

  @Test
  void what_lies_within_is_seen_to_after_what_it_lies_in() {
    beginWork("replace-wheel");
    confirmSetUps();
    assertThat(moment().state().work().setUps()).containsExactly("locked-off", "leaf-released");
    say(new Event.Returned());
    noDangers();
    assertThat(seenToAgain()).isEqualTo("locked-off");
    say(((Step.Enter) step()).done());
    assertThat(seenToAgain()).isEqualTo("leaf-released");
  }

  /** Not even to put the power back on: hands go in for that. */
  @Test
  void dead_is_proved_again_before_a_state_is_left_that_nobody_saw_to() {
    beginWork("tighten-chain");
    confirmSetUps();
    say(new Event.Repaired("tighten-chain", true));
    while (step() instanceof Step.Ask ask) {
      say(new Event.Answered(ask.check().id(), new Answer.CannotTell()));
    }
    assertThat(((Step.Leave) step()).setUp().id()).isEqualTo("locked-off");
    say(new Event.Returned());
    noDangers();
    assertThat(seenToAgain()).isEqualTo("locked-off");
  }

  private void takeUpWhatWasLeftOutOfUse() {
    beginWork("tighten-chain");
    say(new Event.GaveUp("called away"));
    confirmSetUps();
    say(new Event.Closed(Ending.HANDED_OVER));
    say(new Event.TakenUp());
    noDangers();
  }

  @Test
  void a_gate_left_out_of_use_is_proved_dead_again_before_the_work_goes_on() {
    takeUpWhatWasLeftOutOfUse();
    assertThat(((Step.Leave) step()).setUp().id()).isEqualTo("out-of-use");
    say(((Step.Leave) step()).done());
    assertThat(seenToAgain()).isEqualTo("locked-off");
  }

  @Test
  void whoever_gives_away_a_gate_left_out_of_use_opens_nothing() {
    takeUpWhatWasLeftOutOfUse();
    say(new Event.GaveUp("it rains"));
    assertThat(seenToAgain()).isEqualTo("out-of-use");
    say(((Step.Enter) step()).done());
    assertThat(step()).isInstanceOf(Step.HandOver.class);
  }

  /** Nobody locks off between two readings that are taken with the gate running. */
  @Test
  void of_what_a_repair_entails_that_is_measured_first_for_which_least_is_changed() {
    beginWork("renew-brushes");
    mend("renew-brushes");
    say(new Event.Retested(true));
    assertThat(moment().judgement().followUps())
        .extracting(f -> f.card())
        .contains("motor-alone-current", "running-current");
    assertThat(asked()).isEqualTo("running-current");
  }

  /** A tap set wrong once more would burn what the first run loads. */
  @Test
  void what_the_supply_gives_is_read_first_once_power_is_back() {
    beginWork("correct-supply-setting");
    mend("correct-supply-setting");
    assertThat(asked()).isEqualTo("dc-supply-voltage");
    say(new Event.Answered("dc-supply-voltage", new Answer.Read("62 V", 62)));
    assertThat(moment().judgement().forbidden()).contains("gate-running");
    assertThat(step()).isNotInstanceOf(Step.Retest.class);
  }

  @Test
  void what_kept_people_away_goes_last_of_all() {
    beginWork("tighten-chain");
    mend("tighten-chain");
    finishWhatIsAtHand();
    say(new Event.Retested(true));
    while (!(step() instanceof Step.CloseRepaired)) {
      finish();
    }
    assertThat(moment().state().work().setUps()).isEmpty();
    Step.CloseRepaired last = (Step.CloseRepaired) step();
    assertThat(last.ending()).isEqualTo(Ending.REPAIRED);
    assertThat(last.last()).anyMatch(s -> s.contains("barriers, cones and signs away"));
  }

  /**
   * Whoever watches a run relies on the stop button; then the gate runs undisturbed, before blocks,
   * beams and power cuts.
   */
  @Test
  void the_stop_button_and_then_an_undisturbed_run_are_the_first_proofs_of_a_running_gate() {
    beginWork("tighten-chain");
    mend("tighten-chain");
    finishWhatIsAtHand();
    say(new Event.Repaired("teach-limits", true));
    say(new Event.Retested(true));
    List<String> runs = new ArrayList<>();
    while (!(step() instanceof Step.CloseRepaired)) {
      if (step() instanceof Step.Ask ask
          && ask.check().kind() == Check.Kind.PROOF
          && !ask.check().needs().contains("locked-off")
          && ask.check().hazards().contains("moving-leaf")) {
        runs.add(ask.check().id());
      }
      finish();
    }
    assertThat(runs).hasSizeGreaterThan(4).startsWith("stop-button-works", "usual-run");
  }

  /** A gate that had nothing wrong with it was not repaired. */
  @Test
  void a_gate_with_nothing_wrong_is_not_closed_as_repaired() {
    beginWork("explain-use");
    mend("explain-use");
    say(new Event.Retested(true));
    while (!(step() instanceof Step.CloseRepaired)) {
      finish();
    }
    assertThat(((Step.CloseRepaired) step()).ending()).isEqualTo(Ending.NOTHING_FOUND);
    assertThat(Ending.NOTHING_FOUND.words()).doesNotContain("repair");
    assertThat(Ending.NOTHING_FOUND.isProved()).isTrue();
  }

  private String seenToAgain() {
    Step.Enter enter = (Step.Enter) step();
    assertThat(enter.again()).isTrue();
    return enter.setUp().id();
  }

  @Test
  void a_repair_is_followed_by_a_try_of_the_gate() {
    beginWork("tighten-chain");
    mend("tighten-chain");
    finishWhatIsAtHand();
    say(new Event.Repaired("teach-limits", true));
    assertThat(step()).isInstanceOf(Step.Retest.class);
    assertThat(moment().state().work().setUps()).containsExactly("gate-running");
  }

  /** A usual range may go by how the gate is installed, which is asked when it first matters. */
  @Test
  void what_is_told_of_the_gate_on_the_way_leads_nowhere_else() {
    beginWork("tighten-chain", "chain-looks");
    say(new Event.AskedFor("chain-length"));
    confirmSetUps();
    say(
        new Event.SiteAnswered(
            "chain-size", Shipped.BASE.siteQuestions().get("chain-size").usual()));
    assertThat(((Step.Ask) step()).check().id()).isEqualTo("chain-length");
    assertThat(((Step.Ask) step()).occasion().kind()).isEqualTo(Occasion.Kind.ASKED_FOR);
  }

  /** A leaf whose limits moved would strike, and the try would tell of nothing else. */
  @Test
  void what_is_set_on_the_running_gate_comes_before_the_try_under_watch() {
    beginWork("tighten-chain");
    mend("tighten-chain");
    finishWhatIsAtHand();
    assertThat(((Step.Mend) step()).repair().id()).isEqualTo("teach-limits");
    assertThat(moment().state().work().setUps()).containsExactly("gate-running");
  }

  @Test
  void what_could_not_be_set_before_the_try_is_asked_for_once_more_when_the_gate_runs() {
    beginWork("tighten-chain");
    mend("tighten-chain");
    finishWhatIsAtHand();
    say(new Event.Repaired("teach-limits", false));
    assertThat(step()).isInstanceOf(Step.Retest.class);
    say(new Event.Retested(true));
    finishWhatIsAtHand();
    assertThat(moment().judgement().followUps()).anyMatch(f -> f.card().equals("teach-limits"));
    boolean asked = false;
    while (!asked && !(step() instanceof Step.CloseRepaired)) {
      asked = step() instanceof Step.Mend m && m.repair().id().equals("teach-limits");
      finish();
    }
    assertThat(asked).isTrue();
    assertThat(step()).isNotInstanceOf(Step.HandOver.class);
  }

  @Test
  void what_a_repair_entails_and_the_set_up_allows_comes_before_the_set_up_is_left() {
    beginWork("tighten-chain");
    confirmSetUps();
    say(new Event.Repaired("tighten-chain", true));
    assertThat(((Step.Ask) step()).check().id()).isEqualTo("chain-sag");
    assertThat(moment().state().work().setUps()).containsExactly("locked-off");
  }

  @Test
  void a_repair_that_did_not_cure_is_not_proposed_again_and_the_search_goes_on() {
    beginWork("tighten-chain", "chain-looks");
    mend("tighten-chain");
    double before = moment().belief().atCallOut("chain-slack");
    say(new Event.Retested(false));
    assertThat(asked()).isEqualTo("chain-looks");
    assertThat(moment().belief().atCallOut("chain-slack")).isLessThan(before);
  }

  @Test
  void a_gate_that_does_the_same_after_a_repair_has_something_that_the_repair_left() {
    beginWork("tighten-chain", "chain-looks");
    mend("tighten-chain");
    double before = moment().belief().remaining()[place("chain-slack")];
    int until = entries.size();
    say(new Event.Retested(false, Optional.of(true)));
    double same = unknown();
    assertThat(moment().belief().remaining()[place("chain-slack")]).isGreaterThan(before);
    entries.subList(until, entries.size()).clear();
    say(new Event.Retested(true));
    assertThat(same).isGreaterThan(unknown());
  }

  private int place(String cause) {
    return moment().belief().model().indexOf(cause);
  }

  @Test
  void what_is_left_of_what_was_reported_points_to_what_is_left() {
    begin(Role.TECHNICIAN, "tighten-chain");
    noDangers();
    say(new Event.SiteTaken());
    say(new Event.Complained(List.of("scrapes", "slow")));
    say(new Event.Happened(List.of()));
    say(new Event.Repaired("tighten-chain", true));
    int until = entries.size();
    say(Event.Retested.left(List.of("slow"), List.of()));
    double slowLeft = moment().belief().remaining()[place("batteries-low")];
    entries.subList(until, entries.size()).clear();
    say(Event.Retested.left(List.of("scrapes"), List.of()));
    assertThat(slowLeft).isGreaterThan(moment().belief().remaining()[place("batteries-low")]);
  }

  private double unknown() {
    return moment().belief().atCallOut(Cause.NOT_IN_RULE_BASE);
  }

  @Test
  void a_repair_that_could_not_be_done_is_not_proposed_again() {
    beginWork("tighten-chain", "chain-looks");
    confirmSetUps();
    say(new Event.Repaired("tighten-chain", false));
    assertThat(asked()).isEqualTo("chain-looks");
  }

  @Test
  void after_a_repair_that_could_not_be_done_comes_the_next_one() {
    beginWork("tighten-chain", "replace-motor");
    confirmSetUps();
    assertThat(mended()).isEqualTo("tighten-chain");
    say(new Event.Repaired("tighten-chain", false));
    confirmSetUps();
    assertThat(mended()).isEqualTo("replace-motor");
    assertThat(moment().state().work().retestDue()).isFalse();
  }

  @Test
  void what_a_repair_entails_comes_before_the_proofs() {
    beginWork("tighten-chain");
    mend("tighten-chain");
    say(new Event.Retested(true));
    List<String> order = new ArrayList<>();
    while (!(step() instanceof Step.CloseRepaired)) {
      order.add(finish());
    }
    List<String> proofs = order.stream().filter(this::isProof).toList();
    assertThat(proofs)
        .contains("reversal-closing", "reversal-opening", "limits-hold", "manual-release-works");
    assertThat(order).endsWith(proofs.toArray(String[]::new));
    assertThat(order.subList(0, order.size() - proofs.size()))
        .contains("chain-sag", "teach-limits");
    assertThat(moment().state().work().setUps()).isEmpty();
  }

  /** Nothing is run that only a stop button could stop. */
  @Test
  void a_stop_button_that_fails_is_repaired_before_the_gate_runs_again() {
    beginWork("tighten-chain", "chain-looks");
    mend("tighten-chain");
    say(new Event.Retested(true));
    prove("stop-button-works", Check.FAIL);
    say(new Event.Reopened("stop-button-works"));
    assertThat(moment().judgement().whyForbidden(SetUp.GATE_RUNNING))
        .singleElement()
        .asString()
        .contains("a stop button did not stop it");
    confirmSetUps();
    assertThat(mended()).isEqualTo("restore-protection");
    assertThat(((Step.Mend) step()).occasion().kind()).isEqualTo(Occasion.Kind.FAILED_PROOF);

    say(new Event.Repaired("restore-protection", true));
    assertThat(moment().judgement().forbidden()).isEmpty();
  }

  @Test
  void a_stop_button_that_fails_keeps_the_gate_out_of_use() {
    beginWork("tighten-chain", "chain-looks");
    mend("tighten-chain");
    say(new Event.Retested(true));
    prove("stop-button-works", Check.FAIL);
    say(new Event.GaveUp("no button in the van"));
    confirmSetUps();
    assertThat(moment().state().work().setUps()).contains(SetUp.LOCKED_OFF, SetUp.OUT_OF_USE);
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.HandOver.class, h -> assertThat(h.ending()).isEqualTo(Ending.OUT_OF_SERVICE));
  }

  @Test
  void a_failed_proof_asks_for_a_decision_and_reopens_the_search() {
    beginWork("tighten-chain", "chain-looks");
    mend("tighten-chain");
    say(new Event.Retested(true));
    prove("reversal-closing", Check.FAIL);
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.DecideFailedProof.class,
            s -> assertThat(s.proof().id()).isEqualTo("reversal-closing"));
    say(new Event.Reopened("reversal-closing"));
    confirmSetUps();
    assertThat(mended()).isEqualTo("set-force");
    assertThat(((Step.Mend) step()).occasion().kind()).isEqualTo(Occasion.Kind.FAILED_PROOF);
  }

  @ParameterizedTest
  @CsvSource({"warning-signs-present, fit-warning-signs", "guards-in-place, refit-guards"})
  void what_no_fault_explains_is_put_right_where_its_proof_failed(String proof, String repair) {
    beginWork("tighten-chain", "chain-looks");
    mend("tighten-chain");
    say(new Event.Retested(true));
    prove(proof, Check.FAIL);
    say(new Event.Reopened(proof));
    confirmSetUps();
    assertThat(mended()).isEqualTo(repair);
    mend(repair);
    say(new Event.Retested(true));
    confirmSetUps();
    assertThat(step()).isNotInstanceOf(Step.HandOver.class);
  }

  @Test
  void whoever_has_the_batteries_off_gets_them_back_without_the_mains() {
    beginWork("tighten-chain", "chain-looks");
    confirmSetUps();
    assertThat(moment().state().work().setUps()).contains("locked-off");
    say(new Event.AskedFor("battery-block-difference"));
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.Enter.class,
            s -> {
              assertThat(s.setUp().id()).isEqualTo("mains-off-batteries-on");
              assertThat(s.instead()).containsExactly("locked-off");
            });
  }

  @Test
  void what_was_done_for_a_failed_proof_in_vain_is_not_done_again() {
    beginWork("tighten-chain", "chain-looks");
    mend("tighten-chain");
    say(new Event.Retested(true));
    prove("reversal-closing", Check.FAIL);
    say(new Event.Reopened("reversal-closing"));
    confirmSetUps();
    mend("set-force");
    if (step() instanceof Step.Retest) {
      say(new Event.Retested(true));
    }
    prove("reversal-closing", Check.FAIL);
    say(new Event.Reopened("reversal-closing"));
    confirmSetUps();
    assertThat(step() instanceof Step.Mend m && m.repair().id().equals("set-force")).isFalse();
  }

  @Test
  void a_proof_that_cannot_be_told_leaves_the_gate_out_of_service() {
    beginWork("tighten-chain");
    mend("tighten-chain");
    say(new Event.Retested(true));
    while (!(step() instanceof Step.HandOver)) {
      Step step = step();
      if (step instanceof Step.Ask ask && ask.check().id().equals("edge-reverses")) {
        say(new Event.Answered("edge-reverses", new Answer.CannotTell()));
      } else {
        finish();
      }
    }
    assertThat(((Step.HandOver) step()).ending()).isEqualTo(Ending.OUT_OF_SERVICE);
    assertThat(((Step.HandOver) step()).because())
        .isInstanceOfSatisfying(
            HandOverReason.Unproved.class,
            r -> assertThat(r.proofs()).contains(base().get("edge-reverses")));
  }

  /** It passes the proofs without a meter, but nobody set what the repair made necessary. */
  @Test
  void a_force_that_could_not_be_set_keeps_the_gate_out_of_use() {
    beginWork("set-speed");
    mend("set-speed");
    while (!(step() instanceof Step.HandOver) && !(step() instanceof Step.CloseRepaired)) {
      if (step() instanceof Step.Mend m && m.repair().id().equals("set-force")) {
        say(new Event.Repaired("set-force", false));
      } else if (step() instanceof Step.Retest) {
        say(new Event.Retested(true));
      } else {
        finish();
      }
    }
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.HandOver.class,
            s -> {
              assertThat(s.ending()).isEqualTo(Ending.OUT_OF_SERVICE);
              assertThat(StepWords.because(s.because()))
                  .contains("still to set, before anybody uses the gate", "obstruction sensing");
            });
  }

  @Test
  void a_caller_cannot_close_a_case_as_repaired() {
    begin(Role.CALLER, "explain-use");
    intake();
    nothingInTheTrack();
    assertThat(mended()).isEqualTo("explain-use");
    say(new Event.Repaired("explain-use", true));
    say(new Event.Retested(true));
    while (step() instanceof Step.Ask || step() instanceof Step.Mend) {
      finish();
    }
    assertThat(step()).isInstanceOf(Step.CloseSolved.class);
    person = Role.TECHNICIAN; // to whom a gate without its proofs is not in service
    noDangers();
    say(new Event.SiteTaken());
    assertThat(step()).isInstanceOf(Step.Enter.class);
  }

  @Test
  void somebody_at_the_gate_is_asked_the_dangers_and_what_a_caller_could_not_tell_again() {
    begin(Role.CALLER, "chain-looks", "noise-kind");
    intake();
    nothingInTheTrack();
    assertThat(asked()).isEqualTo("chain-looks");
    say(new Event.Answered("chain-looks", new Answer.CannotTell()));
    assertThat(asked()).isEqualTo("noise-kind");
    say(new Event.Answered("noise-kind", new Answer.Chosen("usual")));
    assertThat(asked()).isEqualTo("as-usual-again"); // before somebody is sent
    say(new Event.Answered("as-usual-again", new Answer.Chosen("not-as-usual")));
    assertThat(step()).isInstanceOf(Step.HandOver.class);
    person = Role.TECHNICIAN;
    noDangers();
    say(new Event.SiteTaken());
    assertThat(asked()).isEqualTo("chain-looks");
    finish();
    assertThat(step()).isInstanceOf(Step.HandOver.class);
  }

  @Test
  void what_somebody_at_the_gate_corrects_counts_for_what_their_eyes_are_worth() {
    begin(Role.CALLER, "noise-kind");
    intake();
    say(new Event.Answered("noise-kind", new Answer.Chosen("usual")));
    long event = eventOf("noise-kind");
    double byEar = weight(event);
    person = Role.TECHNICIAN;
    say(new Event.Corrected(event, new Answer.Chosen("usual")));
    assertThat(weight(event)).isGreaterThan(byEar).isEqualTo(1);
  }

  private double weight(long event) {
    return moment().judgement().finding(event).orElseThrow().weights().stream()
        .mapToDouble(Double::doubleValue)
        .max()
        .orElseThrow();
  }

  @Test
  void a_proof_that_passed_counts_whoever_closes_the_case() {
    beginWork("tighten-chain");
    mend("tighten-chain");
    say(new Event.Retested(true));
    while (!(step() instanceof Step.CloseRepaired)) {
      finish();
    }
    person = Role.TRAINEE;
    assertThat(step()).isInstanceOf(Step.CloseRepaired.class);
  }

  /** It is over, and what had passed before it has still to pass again. */
  @Test
  void what_was_proved_before_a_danger_is_proved_anew_though_the_danger_is_over() {
    beginWork("tighten-chain");
    mend("tighten-chain");
    say(new Event.Retested(true));
    while (!(step() instanceof Step.CloseRepaired)) {
      finish();
    }
    say(new Event.Answered("danger-movement", new Answer.Chosen("moved-by-itself")));
    assertThat(step()).isInstanceOf(Step.MakeSafe.class);
    say(((Step.MakeSafe) step()).done());
    say(new Event.Answered("danger-movement", new Answer.Chosen("neither")));
    assertThat(moment().judgement().stops()).isEmpty();
    assertThat(step()).isNotInstanceOf(Step.CloseRepaired.class);
    confirmSetUps();
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.Ask.class, s -> assertThat(s.check().kind()).isEqualTo(Check.Kind.PROOF));
  }

  @Test
  void a_check_that_was_put_off_comes_again_when_nothing_else_is_left() {
    beginWork("chain-looks", "speed-seen");
    say(new Event.Answered("chain-looks", new Answer.NotNow()));
    assertThat(asked()).isEqualTo("speed-seen");
    say(new Event.Answered("speed-seen", new Answer.CannotTell()));
    assertThat(asked()).isEqualTo("chain-looks");
  }

  @Test
  void a_check_that_was_put_off_twice_is_not_asked_again() {
    beginWork("chain-looks");
    say(new Event.Answered("chain-looks", new Answer.NotNow()));
    assertThat(asked()).isEqualTo("chain-looks");
    say(new Event.Answered("chain-looks", new Answer.NotNow()));
    confirmSetUps();
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.HandOver.class, s -> assertThat(s.ending()).isEqualTo(Ending.HANDED_OVER));
  }

  @Test
  void what_a_repair_entails_and_was_put_off_comes_again_before_the_proofs() {
    beginWork("tighten-chain");
    mend("tighten-chain");
    assertThat(asked()).isEqualTo("chain-sag");
    say(new Event.Answered("chain-sag", new Answer.NotNow()));
    confirmSetUps();
    say(new Event.Retested(true));
    List<String> order = new ArrayList<>();
    while (!(step() instanceof Step.CloseRepaired)) {
      order.add(finish());
    }
    assertThat(order).containsOnlyOnce("chain-sag");
    assertThat(order.indexOf("chain-sag"))
        .isGreaterThan(order.indexOf("teach-limits"))
        .isLessThan(order.indexOf(order.stream().filter(this::isProof).findFirst().orElseThrow()));
  }

  @Test
  void what_was_put_off_behind_a_cure_comes_again_before_the_case_closes() {
    person = Role.TECHNICIAN;
    interview =
        new Interview(
            Shipped.QUICK,
            (belief, options) -> {
              if (options.cured()) {
                return options.checks().contains("speed-seen")
                    ? Advices.asking("speed-seen")
                    : Advices.nothing();
              }
              return Advices.repairing("clear-track");
            });
    say(new Event.Opened("Harrow Quay, north gate", person, "any"));
    intake();
    mend("clear-track");
    say(new Event.Retested(true));
    assertThat(asked()).isEqualTo("speed-seen");
    say(new Event.Answered("speed-seen", new Answer.NotNow()));
    assertThat(asked()).isEqualTo("speed-seen");
    say(new Event.Answered("speed-seen", new Answer.NotNow()));
    List<String> order = new ArrayList<>();
    while (!(step() instanceof Step.CloseRepaired)) {
      order.add(finish());
    }
    assertThat(order).isNotEmpty().doesNotContain("speed-seen");
  }

  @Test
  void work_for_an_electrician_is_handed_over_by_a_technician() {
    beginWork("replace-supply-fuse");
    confirmSetUps();
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.HandOver.class, s -> assertThat(s.ending()).isEqualTo(Ending.HANDED_OVER));
    assertThat(moment().state().work().setUps()).containsExactly("locked-off", "out-of-use");
    person = Role.ELECTRICIAN;
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.Leave.class, s -> assertThat(s.setUp().id()).isEqualTo("out-of-use"));
    confirmSetUps();
    assertThat(mended()).isEqualTo("replace-supply-fuse");
  }

  @Test
  void a_technician_sets_a_selector_that_is_locked_off_and_proved_dead() {
    beginWork("correct-supply-setting");
    confirmSetUps();
    assertThat(mended()).isEqualTo("correct-supply-setting");
    assertThat(moment().state().work().setUps()).containsExactly("locked-off");
  }

  @Test
  void somebody_who_takes_over_touches_no_set_up_that_is_not_theirs() {
    beginWork("tighten-chain");
    confirmSetUps();
    person = Role.CALLER;
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.HandOver.class,
            s ->
                assertThat(s.because())
                    .isInstanceOfSatisfying(
                        HandOverReason.Barred.class,
                        r -> assertThat(r.setUp().id()).isEqualTo("locked-off")));
  }

  @Test
  void a_gate_that_is_handed_over_stays_locked_and_is_barred_and_signed() {
    beginWork("tighten-chain");
    confirmSetUps();
    say(new Event.GaveUp("called away"));
    assertThat(step())
        .isInstanceOfSatisfying(
            Step.Enter.class, s -> assertThat(s.setUp().id()).isEqualTo("out-of-use"));
    confirmSetUps();
    assertThat(moment().state().work().setUps()).containsExactly("locked-off", "out-of-use");
    assertThat(step())
        .isEqualTo(new Step.HandOver(Ending.HANDED_OVER, new HandOverReason.Wanted("called away")));
  }

  private Map<String, Check> base() {
    return Shipped.QUICK.base().checks();
  }

  private boolean isProof(String card) {
    return base().containsKey(card) && base().get(card).kind() == Check.Kind.PROOF;
  }

  private void begin(Role role, String... wanted) {
    person = role;
    interview = new Interview(Shipped.QUICK, new Wanting(List.of(wanted)));
    say(new Event.Opened("Harrow Quay, north gate", role, "any"));
  }

  private void beginWork(String... wanted) {
    begin(Role.TECHNICIAN, wanted);
    intake();
  }

  private void intake() {
    noDangers();
    say(new Event.SiteTaken());
    say(new Event.Complained(List.of("scrapes")));
    say(new Event.Happened(List.of()));
  }

  /** A gate that scrapes has its track looked at first, as a caller may put that right. */
  private void nothingInTheTrack() {
    assertThat(asked()).isEqualTo("debris-seen");
    say(new Event.Answered("debris-seen", new Answer.Chosen("clean")));
  }

  private void noDangers() {
    ((Step.AskDangers) step())
        .dangers()
        .forEach(c -> say(new Event.Answered(c.id(), new Answer.Chosen(c.outcomes().get(0).id()))));
  }

  private void mend(String repair) {
    confirmSetUps();
    assertThat(mended()).isEqualTo(repair);
    say(new Event.Repaired(repair, true));
    confirmSetUps();
  }

  /** Answers the checks that a repair entails and that are made before its set-up is left. */
  private void finishWhatIsAtHand() {
    while (step() instanceof Step.Ask ask) {
      say(new Event.Answered(ask.check().id(), new Answer.CannotTell()));
      confirmSetUps();
    }
  }

  private void confirmSetUps() {
    while (true) {
      if (step() instanceof Step.Enter s) {
        say(s.done());
      } else if (step() instanceof Step.Leave s) {
        say(s.done());
      } else {
        return;
      }
    }
  }

  /** Does what is asked: a check is ordinary, a proof passes, a repair is done. */
  private String finish() {
    confirmSetUps();
    String id;
    if (step() instanceof Step.Mend s) {
      id = s.repair().id();
      say(new Event.Repaired(id, true));
    } else if (step() instanceof Step.LookRound s) {
      id = s.card();
      s.looks().forEach(l -> say(new Event.Answered(l.card(), ordinary(l))));
    } else {
      Step.Ask s = (Step.Ask) step();
      id = s.check().id();
      say(new Event.Answered(id, ordinary(s)));
    }
    confirmSetUps();
    return id;
  }

  private static Answer ordinary(Step.Ask step) {
    if (!step.check().measured()) {
      return new Answer.Chosen(step.check().outcomes().get(0).id());
    }
    double usual = step.expectation().map(e -> (e.low() + e.high()) / 2).orElse(0.0);
    return new Answer.Read(step.check().measures().get().show(usual), usual);
  }

  private void prove(String proof, String outcome) {
    while (!(step() instanceof Step.Ask ask && ask.check().id().equals(proof))) {
      finish();
    }
    say(new Event.Answered(proof, new Answer.Chosen(outcome)));
  }

  private String asked() {
    confirmSetUps();
    assertThat(step()).isInstanceOfAny(Step.Ask.class, Step.LookRound.class);
    return step().card();
  }

  private String mended() {
    return ((Step.Mend) step()).repair().id();
  }

  private long eventOf(String check) {
    return moment().state().latest(check).orElseThrow().event();
  }

  private void say(Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, person, event));
  }

  private Moment moment() {
    return interview.at(entries, person);
  }

  private Step step() {
    return moment().step();
  }
}
