package yett.command.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.command.diagnose.CallersCase;
import yett.command.diagnose.question.CallEnd;
import yett.command.diagnose.work.RetestList;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.Role;
import yett.record.DispatchPage;
import yett.record.HandOverSheet;
import yett.testing.Shipped;

/** What a caller says in haste, in the wrong place or by halves, where it is about danger. */
class DeskDangersTest extends CallersCase {
  private static final String FIRE_AND_SHUT_IN =
      "help theres a fire and people are locked in they cant get out";

  private static Event chosen(String check, String outcome) {
    return new Event.Answered(check, new Answer.Chosen(outcome));
  }

  /** From the first question on, at a gate that does nothing. */
  private void asked(String... lines) {
    Stream<String> before = Stream.of("it is dead", "0", "Ina Teal, 555 0107", "1", "0", "0");
    typed.type(Stream.concat(before, Arrays.stream(lines)).toArray(String[]::new));
  }

  private Moment moment() {
    try (OpenCase open = typed.open()) {
      return open.moment();
    }
  }

  @Test
  void yes_takes_each_danger_heard_and_the_graver_of_two_forms() {
    typed.type(FIRE_AND_SHUT_IN, "yes");
    assertThat(typed.screen()).contains("Are these true? yes, for 10 and 11");
    assertThat(typed.stored())
        .contains(chosen("danger-fire", "fire"), chosen("danger-shut-in", "needs-help"));
  }

  @Test
  void nobody_switches_on_while_a_danger_is_made_safe() {
    typed.type("it smells of burning at the box", "yes", "should I switch it on again to see");
    assertThat(typed.screen())
        .contains("nobody switches anything on")
        .doesNotContain("cannot be closed");
    assertThat(typed.stored()).contains(new Event.Said("should I switch it on again to see"));
  }

  @Test
  void other_words_do_not_put_a_suspicion_aside() {
    typed.type(FIRE_AND_SHUT_IN, "they can climb over the wall?", "0", "no", "well", "0");
    assertThat(typed.stored()).noneMatch(Event.Answered.class::isInstance);
    String last = typed.screen().substring(typed.screen().lastIndexOf("What was said may mean"));
    assertThat(last).contains("11 Somebody is shut in").doesNotContain("Flames");
  }

  @Test
  void each_suspicion_is_ruled_out_by_its_name() {
    typed.type(FIRE_AND_SHUT_IN, "0", "no", "no");
    assertThat(typed.stored())
        .contains(chosen("danger-fire", "none"), chosen("danger-shut-in", "nobody"));
  }

  @Test
  void a_suspicion_that_is_so_is_taken_although_the_list_was_denied() {
    typed.type(FIRE_AND_SHUT_IN, "no", "no", "11");
    assertThat(typed.stored())
        .contains(chosen("danger-fire", "none"), chosen("danger-shut-in", "needs-help"));
  }

  @Test
  void what_nobody_can_tell_of_one_danger_says_nothing_of_those_heard() {
    typed.type(FIRE_AND_SHUT_IN, "unknown 2", "10", "no");
    assertThat(typed.stored())
        .contains(
            chosen("danger-fire", "fire"),
            chosen("danger-shut-in", "nobody"),
            new Event.Answered("danger-leaf", new Answer.CannotTell()));
  }

  @Test
  void words_at_the_list_are_kept_when_the_call_drops() {
    typed.type("it is dead", "there is a fire in the shed", "x");
    assertThat(typed.stored()).contains(new Event.Said("there is a fire in the shed"));
    typed.type("0", "0");
    assertThat(typed.screen()).contains("What was said may mean: 10 Flames");
  }

  @Test
  void who_cries_for_help_is_not_said_to_need_none() {
    typed.type(
        "theres a fire in the shed and my brother is stuck inside the gate wont open help", "yes");
    assertThat(typed.stored())
        .contains(chosen("danger-fire", "fire"), chosen("danger-shut-in", "needs-help"));
  }

  @Test
  void help_is_called_once_for_a_fire_with_somebody_shut_in() {
    typed.type("fire", "10 11", "done", "done", "", "");
    assertThat(typed.screen().substring(0, typed.screen().indexOf("DANGER: At once")))
        .containsOnlyOnce("Call the emergency number now")
        .contains(
            "say where the fire is, whether anybody is shut in or hurt", "they wait on the road");
    assertThat(page()).contains("Wait on the road for the fire service");
  }

  @Test
  void of_dangers_told_in_passing_several_are_taken_and_the_words_are_kept() {
    asked("there is smoke from the box and he is caught in the gate", "1 2");
    assertThat(typed.stored())
        .contains(
            new Event.Said("there is smoke from the box and he is caught in the gate"),
            chosen("danger-burning", "burning"),
            chosen("danger-person", "hurt-or-trapped"));
  }

  @Test
  void a_bang_at_the_switch_is_asked_about_and_the_switch_stays_off() {
    typed.type("its tripped again that switch went off with a bang when we put it on", "yes");
    assertThat(typed.screen())
        .contains("Leave the gate's switch off", "That may mean danger: 3")
        .doesNotContain("It works again", "Has it opened once");
    assertThat(typed.stored()).contains(chosen("danger-burning", "burning"));
  }

  @Test
  void a_gate_whose_switch_went_off_again_is_not_run() {
    asked("the switch has gone off again, the breaker tripped", "3", "d", "d", "d", "d", "d", "d");
    assertThat(typed.screen())
        .contains("Leave the gate's switch off")
        .doesNotContain("Has it opened once", "open once and close once");
  }

  /** The caller was just told to leave the switch off, and is not led to it after all. */
  @Test
  void a_switch_that_went_off_again_is_not_put_on_either() {
    asked("its dead again, the switch has gone down again", "1", "", "d", "d", "d", "d", "d", "d");
    assertThat(typed.screen())
        .contains("Leave the gate's switch off")
        .doesNotContain("Switch the gate on again");
    assertThat(typed.stored()).contains(new Event.Repaired("switch-on-once", false));
  }

  @Test
  void more_than_a_no_is_taken_where_it_was_asked_whether_it_ran() {
    asked("works again", "no its off");
    assertThat(typed.stored()).contains(new Event.Said("its off"));
    assertThat(typed.screen())
        .contains("Then the call goes on where it was.")
        .doesNotContain("Type yes or no", CallEnd.TO_TRY);
  }

  @Test
  void what_went_off_before_is_not_switched_on() {
    asked("tell the breaker is off", "yes", "", "", "it went off last week too");
    assertThat(typed.screen())
        .contains("You switch it on once only: if it goes off again", "Then leave it off.")
        .doesNotContain("That may mean danger");
    assertThat(typed.stored())
        .contains(new Event.Repaired("switch-on-once", false), chosen("trips-again", "once"));
    assertThat(moment().step()).isNotInstanceOf(Step.Mend.class);
  }

  /** At any prompt, in passing. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "not doing that im pushing it now",
        "hes forcing it with the crowbar",
        "theyve hooked the tractor on",
        "cancel they got it open themselves with the tractor"
      })
  void who_forces_the_gate_is_told_not_to_and_the_dangers_come_again(String line) {
    asked(line);
    assertThat(typed.screen()).contains("Do not push, pull, lift or climb the gate");
    assertThat(moment().step()).isInstanceOf(Step.AskDangers.class);
    assertThat(typed.stored()).noneMatch(Event.Closed.class::isInstance);
    assertThat(page()).contains(Event.Noted.FORCED + line);
  }

  /** Said first, before anything else is asked, and the question stands. */
  @ParameterizedTest
  @ValueSource(
      strings = {"im holding it so it doesnt shut", "my husband is holding the gate open for me"})
  void who_holds_the_gate_is_told_to_let_go(String line) {
    asked(line, "0", "0");
    String answer = typed.screen().substring(typed.screen().indexOf("Question 1"));
    assertThat(answer).contains("Read out: Let go of the gate now and step clear");
    assertThat(page()).contains(Event.Noted.HELD + line);
  }

  @Test
  void who_forces_it_is_told_to_let_go_before_all_else() {
    asked("hes pushing it along by hand");
    assertThat(typed.screen())
        .contains("Read out: Let go of the gate now and step clear of it. Do not push");
  }

  @Test
  void before_the_gate_is_moved_nobody_holds_it() {
    assertThat(CallEnd.TO_TRY).startsWith("See that nobody holds the gate");
    assertThat(RetestList.SEEN_OR_TRIED).contains("nobody holds it or leans on it");
    assertThat(Shipped.BASE.telephone().cautions().get("leaf-crushes")).contains("Let go of it");
  }

  @Test
  void who_means_to_force_it_is_told_not_to_and_the_question_stands() {
    asked("can i force it open by hand");
    assertThat(typed.screen())
        .contains("Read out: Do not push, pull, lift or climb the gate")
        .doesNotContain("It can be pushed open by hand", "Right?");
    assertThat(moment().step()).isInstanceOf(Step.Ask.class);
  }

  @Test
  void force_in_the_first_words_keeps_what_is_wrong() {
    typed.type("its stuck shut im late im going to shove it", "0", "");
    assertThat(typed.screen()).contains("Read out: Do not push", "It is shut and will not open");
  }

  @Test
  void a_chain_that_is_down_is_left_alone_from_the_first_word_on() {
    typed.type(
        "the gate will not shut",
        "0",
        "",
        "the chain hangs down too",
        "1 2",
        "0",
        "0",
        "shall I try the button",
        "so the green button i push it please?",
        "I push or no push");
    String screen = typed.screen();
    assertThat(screen)
        .contains("Do not open or close it, and switch it off", "Read out: No. Nobody opens")
        .containsSubsequence("Question 1", "How does the chain look")
        .doesNotContain("is not one of the answers", "Question 2");
    assertThat(screen.indexOf("Do not open or close it")).isLessThan(screen.indexOf("Question 1"));
    try (OpenCase open = typed.open(Role.TECHNICIAN)) {
      assertThat(new HandOverSheet(Shipped.QUICK).markdown(open.moment(), "2026-0001", "Fish dock"))
          .contains("Nobody runs it: on the telephone the chain was said to hang");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"works again", "cancel", "no reply"})
  void a_gate_that_must_not_run_is_not_closed_by_what_a_caller_says(String ending) {
    typed.type("the chain hangs down", "0", "", "1", "0", "0", ending, "", "", "");
    assertThat(typed.stored()).noneMatch(Event.Closed.class::isInstance);
    assertThat(typed.screen()).contains("this call cannot be closed that way");
  }

  @Test
  void a_caller_who_is_gone_is_gone_to_if_it_is_urgent() {
    typed.type(
        "it is shut and will not open", "0", "", "1", "2", "0", "no reply", "3", "Pia, 14:30");
    assertThat(typed.screen()).contains("Somebody is needed there at once", "Who goes");
    assertThat(typed.stored()).noneMatch(Event.Closed.class::isInstance);
    assertThat(typed.stored().toString()).contains("at once, Pia, 14:30");
  }

  @Test
  void a_hurt_in_the_line_of_the_name_is_asked_about_and_kept() {
    typed.type(
        "it is dead",
        "0",
        "Kit Marlow, ropewalk 3, 07700 900222, the lad grazed his knee a bit",
        "yes");
    assertThat(typed.screen()).contains("That may mean danger");
    assertThat(typed.stored())
        .contains(
            new Event.Said("the lad grazed his knee a bit"),
            chosen("danger-person", "hurt-or-trapped"));
  }

  @Test
  void a_wild_guess_is_not_taken_by_enter() {
    asked("yes a bit", "");
    assertThat(typed.stored()).last().isEqualTo(new Event.Happened(List.of()));
  }

  @Test
  void a_complaint_that_tells_of_danger_does_not_get_in_without_it() {
    typed.type("it is dead", "0", "", "list", "moves-alone", "0");
    assertThat(typed.screen()).contains("That may mean danger: 1 The gate moved when nothing");
    assertThat(typed.stored()).contains(new Event.Complained(List.of("moves-alone")));
  }

  private String page() {
    return DispatchPage.markdown(sheet(), Optional.empty());
  }
}
