package yett.interview.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.state.CaseState;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** Ada and Ben both know the opening and one answer; Ada's events are stored first. */
class MeanwhileTest {
  private static final Instant AT = Instant.parse("2026-11-25T09:30:00Z");
  private static final Event LIT = answered("display-lit", "steady");
  private static final Event DARK = answered("display-lit", "dark");
  private static final Event SLAP = answered("noise-kind", "slap");
  private static final List<Entry> KNOWN =
      List.of(
          entry(1, 0, Role.CALLER, new Event.Opened("Fish dock", Role.CALLER, "f")),
          entry(2, 1, Role.CALLER, answered("danger-person", "nobody")));

  private static final Event HURT = answered("danger-person", "hurt-or-trapped");
  private static final Event FREE = answered("danger-person", "nobody");
  private static final Event BURNS = answered("danger-burning", "burning");
  private static final Event REPAIRED = new Event.Repaired("tension-chain", true);

  private static Event answered(String check, String outcome) {
    return new Event.Answered(check, new Answer.Chosen(outcome));
  }

  private static Entry entry(int number, int second, Role by, Event event) {
    return new Entry(number, AT.plusSeconds(second), by, event);
  }

  private static List<Entry> numbered(int second, Role by, Event... events) {
    List<Entry> entries = new ArrayList<>();
    for (Event event : events) {
      entries.add(entry(3 + entries.size(), second + entries.size(), by, event));
    }
    return entries;
  }

  private static List<Entry> ada(Event... events) {
    return numbered(10, Role.TECHNICIAN, events);
  }

  private static List<Entry> ben(Event... events) {
    return numbered(100, Role.CALLER, events);
  }

  private static Meanwhile.Together together(List<Entry> theirs, List<Entry> mine) {
    List<Entry> stored = new ArrayList<>(KNOWN);
    stored.addAll(theirs);
    return Meanwhile.of(Shipped.BASE, EventText::write, stored, KNOWN.size(), mine);
  }

  private static List<Event> added(List<Entry> theirs, List<Entry> mine) {
    return together(theirs, mine).added().stream().map(Entry::event).toList();
  }

  @Test
  void answers_to_different_questions_all_stand() {
    var together = together(ada(LIT), ben(SLAP));

    assertThat(together.theirs()).extracting(Entry::event).containsExactly(LIT);
    assertThat(together.added())
        .containsExactly(entry(4, 100, Role.CALLER, SLAP)); // at the time it was given
    assertThat(together.clashes()).isEmpty();
  }

  @Test
  void the_same_answer_is_not_kept_twice() {
    assertThat(added(ada(LIT), ben(LIT, SLAP))).containsExactly(SLAP);
  }

  @Test
  void answers_that_differ_are_both_kept_and_only_one_counts() {
    var together = together(ada(LIT), ben(DARK));

    assertThat(together.clashes())
        .containsExactly(
            new Meanwhile.Clash(
                "display-lit", 3, new Answer.Chosen("steady"), new Answer.Chosen("dark")));
    assertThat(together.added()).hasSize(1);
    assertThat(together.added().get(0).event())
        .isInstanceOfSatisfying(
            Event.Noted.class, n -> assertThat(n.text()).startsWith("At the same time: "));
  }

  @Test
  void an_answer_takes_the_place_of_cannot_tell_and_not_the_other_way_about() {
    Event unknown = new Event.Answered("display-lit", new Answer.CannotTell());

    assertThat(added(ada(unknown), ben(DARK)))
        .containsExactly(new Event.Corrected(3, new Answer.Chosen("dark")));
    assertThat(added(ada(DARK), ben(unknown))).isEmpty();
  }

  @Test
  void what_was_seen_before_a_repair_does_not_count_as_seen_after_it() {
    Event repaired = new Event.Repaired("tension-chain", true);

    assertThat(added(ada(repaired), ben(SLAP)))
        .singleElement()
        .isInstanceOfSatisfying(
            Event.Noted.class, n -> assertThat(n.text()).startsWith("Before the repair: "));
    assertThat(added(ada(SLAP), ben(repaired))).containsExactly(repaired);
    assertThat(added(ada(repaired), ben(repaired))).isEmpty();
  }

  @Test
  void a_danger_counts_whatever_the_other_did_or_said() {
    assertThat(added(ada(REPAIRED), ben(HURT))).containsExactly(HURT);
    assertThat(together(ada(FREE), ben(HURT)).clashes()).isEmpty();
    assertThat(added(ada(FREE), ben(HURT))).containsExactly(HURT);
    assertThat(added(ada(answered("danger-burning", "none"), REPAIRED), ben(BURNS)))
        .containsExactly(BURNS);
    assertThat(
            added(
                ada(answered("danger-conductors", "bare-wires")),
                ben(answered("danger-conductors", "water"))))
        .startsWith(answered("danger-conductors", "water"));
    Event untold = new Event.Answered("danger-leaf", new Answer.CannotTell());
    assertThat(added(ada(REPAIRED), ben(untold))).startsWith(untold);
  }

  @Test
  void no_danger_to_the_one_takes_nothing_from_what_the_other_reported() {
    assertThat(added(ada(HURT), ben(FREE))).singleElement().isInstanceOf(Event.Noted.class);
    assertThat(together(ada(HURT), ben(FREE)).clashes()).as("chosen away").isEmpty();
    Event none = new Event.Corrected(3, new Answer.Chosen("none"));
    assertThat(added(ada(BURNS), ben(BURNS, none))).noneMatch(Event.Corrected.class::isInstance);
    assertThat(added(ada(BURNS), ben(BURNS, new Event.Retracted(3))))
        .noneMatch(Event.Retracted.class::isInstance);
  }

  @Test
  void an_answer_corrected_into_a_danger_counts_though_the_answer_became_a_note() {
    assertThat(
            added(
                ada(REPAIRED),
                ben(
                    answered("danger-burning", "none"),
                    new Event.Corrected(3, new Answer.Chosen("burning")))))
        .contains(BURNS);
  }

  @Test
  void a_danger_opens_a_case_that_the_other_has_closed() {
    List<Entry> closed = ada(new Event.Closed(Ending.REPAIRED));
    List<Entry> mine = ben(DARK, HURT, SLAP);
    var together = together(closed, mine);

    assertThat(together.added())
        .extracting(Entry::event)
        .containsSubsequence(new Event.TakenUp(), HURT)
        .doesNotContain(DARK, SLAP);
    List<Entry> all = new ArrayList<>(closed);
    all.addAll(together.added());
    List<Entry> stored = new ArrayList<>(KNOWN);
    stored.addAll(all);
    assertThat(CaseState.of(stored).closed()).isEmpty();
    assertThat(together(all, mine).added()).as("delivered once").isEmpty();
    assertThat(added(closed, ben(FREE))).noneMatch(Event.TakenUp.class::isInstance);
  }

  private static java.util.Set<String> inForce(List<Entry> theirs, List<Entry> mine) {
    List<Entry> stored = new ArrayList<>(KNOWN);
    stored.addAll(theirs);
    stored.addAll(together(theirs, mine).added());
    CaseState.Work work = CaseState.of(stored).work();
    assertThat(work.unseen()).as("gone through again").isEqualTo(work.setUps());
    return work.setUps();
  }

  @Test
  void set_ups_of_both_are_in_force_only_together_and_are_gone_through_again() {
    Event locked = new Event.SetUpEntered("locked-off", "");
    Event released = new Event.SetUpEntered("leaf-released", "");
    Event running = new Event.SetUpEntered("gate-running", "");

    assertThat(
            inForce(
                ada(locked, released), ben(locked, new Event.SetUpLeft("locked-off", ""), running)))
        .containsExactly("locked-off", "leaf-released");
    assertThat(inForce(ada(running), ben(locked, released)))
        .containsExactly("locked-off", "leaf-released");
    assertThat(inForce(ada(new Event.SetUpEntered("cover-off", "")), ben(running)))
        .containsExactlyInAnyOrder("cover-off", "gate-running");
    assertThat(inForce(ada(locked), ben(new Event.SetUpEntered("mains-off-batteries-on", ""))))
        .containsExactly("locked-off");
    List<Entry> theirs = ada(running);
    List<Entry> mine = ben(locked, released);
    List<Entry> all = new ArrayList<>(theirs);
    all.addAll(together(theirs, mine).added());
    assertThat(together(all, mine).added()).as("delivered once").isEmpty();
  }

  @Test
  void a_set_up_that_was_left_and_entered_again_is_in_force() {
    Event locked = new Event.SetUpEntered("locked-off", "");
    Event left = new Event.SetUpLeft("locked-off", "");
    assertThat(added(ada(LIT), ben(locked, left, locked))).containsExactly(locked, left, locked);
  }

  @Test
  void work_beside_a_danger_of_the_other_begins_with_the_dangers() {
    assertThat(added(ada(BURNS), ben(new Event.SetUpEntered("gate-running", ""))))
        .endsWith(new Event.Returned());
    assertThat(added(ada(REPAIRED), ben(new Event.SetUpEntered("gate-running", ""))))
        .endsWith(new Event.Returned());
    assertThat(added(ada(LIT), ben(new Event.SetUpEntered("gate-running", ""))))
        .doesNotContain(new Event.Returned());
  }

  @Test
  void corrections_and_retractions_follow_their_answer_to_its_new_number() {
    assertThat(
            added(
                ada(LIT),
                ben(
                    SLAP,
                    new Event.Corrected(3, new Answer.Chosen("usual")),
                    new Event.Retracted(3),
                    new Event.Retracted(2))))
        .containsExactly(
            SLAP,
            new Event.Corrected(4, new Answer.Chosen("usual")),
            new Event.Retracted(4),
            new Event.Retracted(2));
  }

  @Test
  void a_change_to_an_answer_that_became_a_note_is_a_note_too() {
    var events = added(ada(LIT), ben(DARK, new Event.Corrected(3, new Answer.Chosen("dark"))));

    assertThat(events).hasSize(2).allMatch(Event.Noted.class::isInstance);
  }

  @Test
  void complaints_and_histories_of_both_count() {
    assertThat(
            added(
                ada(new Event.Complained(List.of("a", "b"))),
                ben(new Event.Complained(List.of("b", "c")))))
        .containsExactly(new Event.Complained(List.of("a", "b", "c")));
  }

  @Test
  void nobody_closes_a_case_over_answers_they_did_not_see() {
    var together = together(ada(LIT), ben(new Event.Closed(Ending.REPAIRED)));

    assertThat(together.unclosed()).contains(Ending.REPAIRED);
    assertThat(together.added())
        .singleElement()
        .extracting(Entry::event)
        .isInstanceOf(Event.Noted.class);
  }

  @Test
  void what_comes_after_the_closing_is_kept_as_a_note() {
    assertThat(added(ada(new Event.Closed(Ending.HANDED_OVER)), ben(DARK)))
        .singleElement()
        .isInstanceOfSatisfying(
            Event.Noted.class, n -> assertThat(n.text()).startsWith("After the closing: "));
  }

  @Test
  void that_the_gate_still_fails_stands_against_that_it_runs() {
    assertThat(added(ada(new Event.Retested(false)), ben(new Event.Retested(true))))
        .singleElement()
        .isInstanceOf(Event.Noted.class);
    assertThat(added(ada(new Event.Retested(true)), ben(new Event.Retested(false))))
        .containsExactly(new Event.Retested(false));
  }

  /** Nobody told Ben that his first answer had arrived before the line was cut. */
  @Test
  void what_has_arrived_already_is_not_delivered_again() {
    List<Entry> mine = ben(SLAP, new Event.Retracted(3), DARK);
    List<Entry> stored = List.of(mine.get(0), entry(4, 50, Role.TECHNICIAN, LIT));

    var together = together(stored, mine);

    assertThat(together.theirs()).extracting(Entry::event).containsExactly(LIT);
    assertThat(together.added().get(0).event()).isEqualTo(new Event.Retracted(3));
    assertThat(together.clashes()).hasSize(1);
    List<Entry> all = new ArrayList<>(stored);
    all.addAll(together.added());
    assertThat(together(all, mine).added()).isEmpty();
  }
}
