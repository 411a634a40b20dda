package yett.interview.danger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import yett.desk.Undo;
import yett.interview.course.Advised;
import yett.interview.course.AnyAdviser;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.interview.watch.Watches;
import yett.knowledge.Role;
import yett.knowledge.SetUp;
import yett.record.HandOverSheet;
import yett.testing.Shipped;

/** What making safe does at the gate, how it is taken back, and what is written of it. */
class MadeSafeTest {
  private static final Instant AT = Instant.parse("2026-11-25T09:30:00Z");

  private final Interview interview = Advised.interview(Shipped.QUICK, new AnyAdviser(7));
  private final List<Entry> entries = new ArrayList<>();
  private Role role = Role.TECHNICIAN;

  @AfterEach
  void close() {
    interview.close();
  }

  private void say(Event... events) {
    for (Event event : events) {
      int number = entries.size() + 1;
      entries.add(new Entry(number, AT.plusSeconds(number), role, event));
    }
  }

  private static Event answered(String check, String outcome) {
    return new Event.Answered(check, new Answer.Chosen(outcome));
  }

  private Moment moment() {
    return interview.at(entries, role);
  }

  private void begin() {
    say(new Event.Opened("Fish dock", role, "any"));
    Step step = moment().step();
    for (var danger : ((Step.AskDangers) step).dangers()) {
      say(answered(danger.id(), danger.outcomes().get(0).id()));
    }
  }

  private void makeSafe() {
    say(((Step.MakeSafe) moment().step()).done());
  }

  private void back() {
    Undo.last(entries, Shipped.BASE).forEach(n -> say(new Event.Retracted(n)));
  }

  @Test
  void taking_back_what_made_it_safe_puts_no_earlier_state_back_in_force() {
    begin();
    say(
        new Event.SiteTaken(),
        new Event.Complained(List.of("dead")),
        new Event.Happened(List.of()),
        new Event.SetUpEntered("mains-off-batteries-on", ""),
        answered("danger-movement", "moved-by-itself"));
    makeSafe();
    assertThat(moment().state().work().setUps()).containsExactly("motor-off");

    back();
    assertThat(moment().step()).isInstanceOf(Step.MakeSafe.class);
    assertThat(moment().state().work().setUps()).containsExactly("motor-off");
    back();
    assertThat(moment().judgement().stops()).isEmpty();
    assertThat(moment().state().work().setUps()).containsExactly("motor-off");
    assertThat(moment().step().needs()).doesNotContain(SetUp.GATE_RUNNING);
    Watches.after(Shipped.BASE, entries.size()).accept(moment(), role);
  }

  private String sheet() {
    return new HandOverSheet(Shipped.QUICK).markdown(moment(), "2026-0001", "Fish dock");
  }

  private String record() {
    return new yett.record.CaseRecord(Shipped.BASE).markdown(moment(), "2026-0001", "Fish dock");
  }

  private void isWritten(boolean safe) {
    assertThat(sheet().contains("NOT yet made safe")).isNotEqualTo(safe);
    assertThat(record().contains("not yet made safe")).isNotEqualTo(safe);
    assertThat(moment().step() instanceof Step.MakeSafe).isNotEqualTo(safe);
  }

  @Test
  void what_a_caller_did_is_not_written_as_made_safe_once_somebody_stands_there() {
    role = Role.CALLER;
    begin();
    say(answered("danger-burning", "burning"));
    makeSafe();
    isWritten(true);
    role = Role.TECHNICIAN;
    say(new Event.Noted("here"));
    assertThat(sheet()).contains("NOT yet made safe");
    assertThat(record()).contains("not yet made safe");
  }

  @Test
  void a_danger_reported_anew_is_written_as_not_made_safe_and_once() {
    begin();
    say(answered("danger-burning", "burning"));
    isWritten(false);
    makeSafe();
    isWritten(true);
    say(answered("danger-burning", "burning"));
    isWritten(false);
    makeSafe();
    isWritten(true);
    say(new Event.SetUpLeft("isolated", ""));
    isWritten(false);
  }

  /** Bare metal is found by a look and by a reading: one danger, written once. */
  @Test
  void one_danger_told_twice_is_one_line_of_the_record() {
    role = Role.ELECTRICIAN;
    begin();
    say(
        answered("danger-shock", "shock"),
        new Event.Answered("frame-voltage", new Answer.Read("118 V", 118)));
    assertThat(moment().judgement().stops()).hasSize(2);
    assertThat(record().split("STOP: ", -1)).hasSize(2);
  }
}
