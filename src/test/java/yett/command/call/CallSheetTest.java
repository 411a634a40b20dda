package yett.command.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import yett.command.diagnose.CallersCase;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.record.CaseRecord;
import yett.record.DispatchPage;
import yett.testing.Shipped;

/** What the sheet and the screens say of a call whose danger, urgency or ending is not plain. */
class CallSheetTest extends CallersCase {
  private String page() {
    return DispatchPage.markdown(sheet(), Optional.empty());
  }

  private void record(Event... events) {
    try (OpenCase open = typed.open()) {
      open.record(events);
    }
  }

  @Test
  void a_fire_that_a_caller_says_is_over_stays_in_force_and_everything_says_why() {
    typed.type("there is a fire in the shed", "10", "done");
    record(new Event.DangersAgain());
    typed.type("0", "no", "ask her", "over, the fire brigade said ok", "done");

    assertThat(typed.screen())
        .as(typed.screen())
        .contains("does not say whether it is over", "(the caller says that it is over");
    assertThat(typed.stored())
        .contains(
            new Event.Said("the fire brigade said ok"),
            new Event.Said("ask her"),
            new Event.Answered("danger-fire", new Answer.Chosen("none")));
    assertThat(sheet().urgency().level()).isEqualTo("at once");
    assertThat(sheet().urgency().reasons().get(0))
        .startsWith("Fire on the site (the caller says that it is over");
  }

  /** In an emergency the page has room: what a helper has to know is rarely said first. */
  @Test
  void all_that_was_said_is_on_a_page_that_has_room() {
    typed.type("somebody is shut in and is ill", "11", "done", "Dmitri, 555 0182");
    record(
        new Event.Said("the boss has the key of the release"),
        new Event.Said("the driver is sixty or so"),
        new Event.Said("there is a back door but it is nailed up"),
        new Event.Said("he needs insulin, and it is in the van outside"));

    assertThat(page()).contains("he needs insulin").doesNotContain("more: dispatch CASE");
    assertThat(page().lines().mapToInt(l -> Math.max(1, (l.length() + 79) / 80)).sum())
        .isLessThanOrEqualTo(60);
  }

  /** Whoever drives out on a Friday evening cannot look into a file for the names of the parts. */
  @Test
  void every_part_that_is_worth_bringing_has_its_name_on_the_page() {
    typed.type("the chain is on the ground", "0", "Ray, 555 0107", "1", "0", "0", "3", "d", "d");

    assertThat(sheet().bring().parts()).hasSizeGreaterThan(2);
    sheet().bring().parts().forEach(p -> assertThat(page()).contains(p.name()));
  }

  /** Whoever is asked whether the one is over may tell of the next. */
  @Test
  void another_danger_told_with_over_is_asked_about() {
    typed.type("there is smoke", "3", "done");
    record(new Event.DangersAgain());
    typed.type("0", "no", "over, but it hit my daughter", "yes");
    assertThat(typed.stored())
        .as(typed.screen())
        .contains(new Event.Answered("danger-person", new Answer.Chosen("hurt-or-trapped")));
  }

  @Test
  void two_dangers_are_one_list_with_people_first_and_no_line_twice() {
    typed.type("it is dead", "1 8", "done", "done");
    assertThat(sheet().untilThen())
        .startsWith(
            "Press the stop button if you can reach it without touching the gate. Press"
                + " nothing else.")
        .noneMatch(l -> l.contains("do not open or close"))
        .filteredOn(l -> l.contains("a switch away from it"))
        .hasSize(1);
  }

  /** "It closes on cars" is a danger whatever was said to the list. */
  @Test
  void a_complaint_that_tells_of_danger_is_urgent_at_once() {
    typed.type("hello", "0", "", "It starts to close while a car is still in the way", "0", "0");
    assertThat(sheet().urgency().level()).as(typed.screen()).isEqualTo("at once");
    assertThat(sheet().urgency().reasons()).anyMatch(r -> r.contains("was reported"));
  }

  @Test
  void dangers_that_nobody_could_tell_are_counted_as_on_the_list() {
    typed.type("it is dead", "unknown all");
    assertThat(typed.screen()).contains("14 kinds of danger not ruled out");
  }

  @Test
  void what_urgency_nobody_could_say_does_not_wait() {
    typed.type("it is dead", "0", "", "1", "d", "0");
    assertThat(sheet().urgency().level()).isEqualTo("today");
  }

  @Test
  void who_was_sent_before_it_worked_again_is_called_off() {
    typed.type("it is dead", "0", "", "1", "0", "0");
    record(new Event.Tended(Tending.SENT, "next working day, Bess"));
    typed.type("works again", "yes", "the breaker was off", "close");
    assertThat(typed.screen()).contains("Already sent: next working day, Bess. Tell them");
    assertThat(page())
        .contains("Sent before, to be called off: next working day, Bess")
        .doesNotContain("Sent: ");
  }

  @Test
  void a_note_of_the_desk_is_on_the_sheet_and_does_not_move_the_time_of_the_call() {
    typed.type("it is dead", "0", "", "1", "0", "0");
    String at = sheet().at();
    record(new Event.Noted("the key is at the bakery"));
    assertThat(sheet().at()).isEqualTo(at);
    assertThat(page()).contains("Note: the key is at the bakery");
  }

  @Test
  void who_called_nobody_for_help_is_not_kept_as_help() {
    typed.type(
        "it hit somebody",
        "1",
        "done",
        "",
        "send",
        "mum has cleaned him up no ambulance",
        "Pia, now");
    assertThat(typed.stored())
        .as(typed.screen())
        .contains(
            new Event.Tended(Tending.HELP_CALLED, "nobody (mum has cleaned him up no ambulance)"))
        .anyMatch(
            e -> e instanceof Event.Tended t && t.what() == Tending.SENT && !t.due().isEmpty());
  }

  /** The details of the gate were not asked, so there is nothing of them to take back. */
  @Test
  void back_at_the_complaint_takes_back_the_dangers() {
    typed.type("it is dead", "0", "", "back");
    assertThat(typed.screen())
        .contains("Taken back: the list of dangers")
        .doesNotContain("Taken back: the page");
  }

  /** A step done at Yett's word is kept as what did it, if the caller knows no better. */
  @Test
  void what_was_done_on_the_call_is_what_made_it_work() {
    typed.type("it is dead", "0", "", "1", "0", "0");
    record(new Event.Repaired("release-stop-button", true));
    typed.type("works again", "yes", "", "close");
    assertThat(typed.stored().toString()).contains("WORKS_AGAIN, words=Release the stop button");
  }

  /** "About time" is no word about the clock, where a battery was changed at Yett's word. */
  @Test
  void what_to_watch_is_for_what_was_done_at_yetts_word() {
    typed.type("it is dead", "0", "", "1", "0", "0");
    record(new Event.Repaired("renew-transmitter-battery", true));
    typed.type("it works again, about time", "yes", "", "close");
    assertThat(typed.screen())
        .contains("It works again", "Watch the next runs")
        .doesNotContain("clock", "set hours");
  }

  /** Words that fit a repair only faintly give no advice about it. */
  @Test
  void what_was_done_is_not_guessed_from_faint_words() {
    typed.type(
        "it is dead",
        "0",
        "",
        "1",
        "0",
        "0",
        "works again",
        "yes",
        "the son pushed a wire back on the little box",
        "close");
    assertThat(typed.screen().substring(typed.screen().lastIndexOf("Read out:")))
        .doesNotContain("switch goes off again", "goes off again");
  }

  /** The caller hears everything once; the screen at the end says that it holds. */
  @Test
  void what_was_read_out_in_an_emergency_is_not_printed_again() {
    typed.type("the gate leans over", "2", "done");
    assertThat(typed.screen())
        .contains("What you read out holds until somebody comes")
        .doesNotContain("Read out what they have not heard yet");
    String now = typed.screen().substring(typed.screen().indexOf("Read out, in this order"));
    sheet().untilThen().forEach(line -> assertThat(now.split(Pattern.quote(line), -1)).hasSize(2));
  }

  /** Another sitting, another hour: then it is read out again, whole. */
  @Test
  void at_another_sitting_it_is_read_out_again() {
    typed.type("the gate leans over", "2", "done");
    String before = typed.screen();
    typed.type("");
    assertThat(typed.screen().substring(before.length()))
        .contains("Read out. This holds until somebody comes:")
        .contains(sheet().untilThen().get(0));
  }

  /** The record says the same, with the same figure. */
  @Test
  void what_was_put_right_on_the_telephone_stands_on_sheet_and_record_alike() {
    typed.begin("it is dead", "0", "", "1", "0", "0");
    record(
        new Event.Answered("breaker-position", new Answer.Chosen("tripped")),
        new Event.Repaired("switch-on-once", true));
    String cause = sheet().putRight().get(0).name();
    String line = page().lines().filter(l -> l.contains(cause)).findFirst().orElseThrow().strip();
    assertThat(line).endsWith(", put right");
    try (OpenCase open = typed.open()) {
      String record = new CaseRecord(Shipped.BASE).markdown(open.moment(), "1", "Fish dock");
      assertThat(record).contains(line);
    }
  }
}
