package yett.command.diagnose.question;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.casebook.Person;
import yett.command.diagnose.CallersCase;
import yett.desk.OpenCase;
import yett.dispatch.DispatchSheet;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.interview.step.Step;
import yett.record.CaseRecord;
import yett.record.DispatchPage;
import yett.testing.Shipped;

/** How calls end that end by what the caller says, and what is kept of those that go on. */
class CallEndTest extends CallersCase {
  private static final String AGAIN = "It works again, she put the breaker on";

  /** What is typed up to each prompt of a call, and whether the words are taken there at once. */
  static Stream<List<String>> prompts() {
    List<String> all = List.of("it is dead", "0", "Ina Teal, 4 Quay Road, 555 0107", "1", "0", "0");
    return Stream.of(0, 1, 2, 3, 4, 5, 6).map(n -> all.subList(0, n));
  }

  @ParameterizedTest
  @MethodSource("prompts")
  void it_works_again_ends_a_call_at_any_prompt(List<String> before) {
    List<String> lines =
        Stream.of(
                before.stream(),
                Stream.of(AGAIN),
                before.size() < 2 ? Stream.of("0", "Ina Teal") : Stream.<String>of(),
                Stream.of("yes", "the breaker was off", "close"))
            .flatMap(s -> s)
            .toList();
    typed.type(lines.toArray(String[]::new));
    assertThat(typed.stored())
        .as(typed.screen())
        .contains(
            new Event.Tended(Tending.WORKS_AGAIN, AGAIN + "; the breaker was off"),
            new Event.Closed(Ending.WORKS_AGAIN));
    assertThat(typed.screen()).contains("do not put it right a second time");
  }

  /** That the gate runs does not say that nobody rides on it any more. */
  @ParameterizedTest
  @CsvSource({"yes, true", "no, false"})
  void a_danger_that_a_run_does_not_end_is_asked_about_before_the_call_is_closed(
      String over, boolean closed) {
    typed.type("it is dead", "0", "Ina Teal, 4 Quay Road, 555 0107", "1", "0", "0");
    typed.type("danger", "13", "done", "it works again", over, "yes", "they were told", "close");
    assertThat(typed.screen()).contains("Is that over now?");
    assertThat(typed.stored().contains(new Event.Closed(Ending.WORKS_AGAIN)))
        .as(typed.screen())
        .isEqualTo(closed);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"yes it opens and closes now, marvellous", "he says it opens and shuts fine now"})
  void a_run_told_in_a_sentence_is_a_yes(String seen) {
    typed.type("it is dead", "0", "Ina Teal, 4 Quay Road, 555 0107", "1", "0", "0");
    typed.type("it works again", seen, "the breaker was off", "close");
    assertThat(typed.stored()).as(typed.screen()).contains(new Event.Closed(Ending.WORKS_AGAIN));
  }

  /** The steps about wet ground and earlier trips may still come. */
  @Test
  void nobody_tries_the_gate_between_the_steps_of_a_repair() {
    typed.type("it is dead", "0", "Ina Teal", "1", "0", "0", "1", "3", "it works again", "no");
    assertThat(typed.screen())
        .contains("Step 1 of 6", "Has it opened once and closed once", "goes on where it was")
        .doesNotContain("Let it open once and close once");
  }

  /** A fault that came back was not solved, whoever put the breaker on. */
  @Test
  void the_same_fault_again_is_not_solved() {
    worksAgain("it is dead", "the breaker was off");
    typed.another();
    worksAgain("it is dead", "the breaker was off again", "yes", "send", "Tom, in an hour");
    assertThat(typed.screen())
        .contains("The same fault again", "works again: the breaker was off", "Send somebody");
    assertThat(typed.stored()).noneMatch(Event.Closed.class::isInstance);
    assertThat(sheet().call().because().orElse("")).contains("the same fault was there before");
  }

  @Test
  void another_fault_is_solved_for_all_that() {
    worksAgain("it is dead", "the breaker was off");
    typed.another();
    worksAgain("it stops halfway", "a stone lay in the track", "close");
    assertThat(typed.screen()).doesNotContain("The same fault again");
    assertThat(typed.stored()).contains(new Event.Closed(Ending.WORKS_AGAIN));
  }

  private void worksAgain(String words, String why, String... after) {
    List<String> lines = List.of(words, "0", "Ina Teal, 555 0107", "1", "0", "0", "works again");
    boolean again = after.length > 1;
    typed.type(
        Stream.of(
                lines.stream(),
                again ? Stream.of("yes") : Stream.of("yes", why, "close"),
                Stream.of(after))
            .flatMap(s -> s)
            .toArray(String[]::new));
  }

  /** The line is asked for once more, and what was typed is kept for nobody's name. */
  @ParameterizedTest
  @ValueSource(strings = {"nobody", "none", "?", "no one, 14:30", "-", "nobody yet"})
  void nobody_is_no_name(String line) {
    typed.type(
        "it is dead",
        "0",
        line,
        "",
        "1",
        "d",
        "d",
        "d",
        "d",
        "d",
        "d",
        "send",
        line,
        "Tom, 14:30",
        "none");
    assertThat(typed.screen()).contains("That is not a name", "That is no name. Type who goes");
    assertThat(typed.casebook().people(typed.id())).isEmpty();
    assertThat(typed.stored().toString())
        .contains("Tom, 14:30")
        .doesNotContain("SENT, words=next working day, " + line);
  }

  @Test
  void a_complaint_by_its_very_name_is_taken_at_once() {
    typed.type("it is dead", "0", "0", "It starts, then it just stops", "0");
    assertThat(typed.stored())
        .contains(new Event.Complained(List.of("runs-then-stops")), new Event.Pressed(List.of()));
    assertThat(typed.screen()).contains("Understood: It starts, then it just stops.");
  }

  /** Only what belongs to what did it is read out, not all that the words faintly fit. */
  @Test
  void what_to_watch_is_for_what_did_it() {
    typed.type(
        "it is dead",
        "0",
        "0",
        "1",
        "0",
        "0",
        "works again",
        "yes",
        "my nephew pulled the red stop button out",
        "close");
    String watch = typed.screen().substring(typed.screen().lastIndexOf("Read out:"));
    assertThat(watch).contains("do not put it right a second time").doesNotContain(" 7 ", "panel");
  }

  /** The desk was told to ask whether everybody is well. */
  @Test
  void all_well_is_said_of_people_and_ends_no_danger() {
    typed.type("it is dead", "12", "nobody has the key, all well");
    assertThat(typed.screen()).doesNotContain("Is that over now");
  }

  @Test
  void what_takes_the_cure_back_lets_the_call_go_on() {
    typed.type("it is dead", "0", "0", "1", "0", "0", AGAIN, "yes", "no wait, it does not work");
    assertThat(typed.stored())
        .as(typed.screen())
        .noneMatch(e -> e instanceof Event.Closed)
        .contains(new Event.Said("no wait, it does not work"));
  }

  @Test
  void what_did_it_is_not_asked_anew_of_who_has_said_it() {
    typed.type(
        "it is dead",
        "0",
        "0",
        "1",
        "0",
        "0",
        "the breaker was off, it works again",
        "yes",
        "",
        "close");
    assertThat(typed.screen()).contains("What made it work? Press Enter to keep what they said");
    assertThat(typed.stored())
        .contains(new Event.Tended(Tending.WORKS_AGAIN, "the breaker was off, it works again"));
  }

  @Test
  void who_can_tell_nothing_at_all_is_heard_out_in_few_lines() {
    typed.type("it is dead", "0", "d", "1", "d", "I don't know", "d", "d", "d", "d", "send");
    assertThat(typed.stored())
        .contains(
            new Event.Noted("Nobody could say how urgent it is."),
            new Event.Pressed(List.of()),
            new Event.Noted("Nobody could say what happened lately."),
            new Event.Happened(List.of()));
    assertThat(typed.screen())
        .contains("Send somebody", "The caller could not answer the last questions")
        .doesNotContain("Question 6");
  }

  /** It is no answer to how urgent it is, which has not been asked yet. */
  @ParameterizedTest
  @ValueSource(strings = {"dunno", "I don't know", "d"})
  void who_cannot_confirm_what_was_read_back_is_still_asked_how_urgent_it_is(String line) {
    typed.type("it is dead, the switch in the fuse box is down", "0", "0", "1", line);
    assertThat(typed.screen()).contains("Was this said as well?");
    assertThat(typed.stored())
        .noneMatch(Event.Noted.class::isInstance)
        .noneMatch(Event.Pressed.class::isInstance);
    try (OpenCase open = typed.open()) {
      assertThat(open.moment().step()).isInstanceOf(Step.AskPressing.class);
    }
  }

  /** Nothing on the list fits, or nobody knows: nothing is made up, and the sheet says so. */
  @ParameterizedTest
  @ValueSource(strings = {"d", "I don't know"})
  void who_cannot_say_which_complaint_it_is_goes_on(String line) {
    typed.type("it is funny", "0", "", "send", line, "d", "d", "d", "d", "d", "d", "d", "send");
    assertThat(typed.stored())
        .contains(
            new Event.Noted("Nobody could say which complaint it is."),
            new Event.Complained(List.of()))
        .noneMatch(e -> e instanceof Event.Said s && s.words().equals("send"));
    assertThat(typed.screen())
        .contains("Send somebody")
        .doesNotContain("Question 6", "Has it opened once");
    assertThat(DispatchPage.markdown(sheet(), Optional.empty()))
        .contains(
            "it is funny",
            "nobody could say how urgent it is",
            "Not diagnosed: the caller could tell nothing")
        .doesNotContain("nothing at the site makes it urgent", "%");
    assertThat(typed.casebook().cases().get(0).summary().title())
        .isEqualTo("nobody could tell what is wrong");
  }

  @Test
  void an_urgency_that_is_told_after_all_is_no_longer_untold() {
    typed.type("it is dead", "0", "0", "1", "d", "back", "0", "0");
    assertThat(sheet().urgency().reasons()).contains("nothing at the site makes it urgent");
  }

  @Test
  void no_unit_of_evidence_is_shown_on_a_call() {
    typed.type("it is dead", "0", "0", "1", "0", "0", "tell the display is dark", "1", "belief");
    assertThat(typed.screen())
        .contains(
            "Understood as: nothing is lit", "Probable causes", "where this figure comes from")
        .doesNotContain("\u00a0dB", " dB", "sets of causes", "odds times");
  }

  @Test
  void what_was_not_seen_to_run_is_no_end() {
    typed.type("it is dead", "0", "0", "1", "0", "0", AGAIN, "no", "no");
    assertThat(typed.stored()).contains(new Event.Said(AGAIN));
    assertThat(typed.stored()).noneMatch(Event.Closed.class::isInstance);
    assertThat(typed.screen()).contains("Then the call goes on where it was. Question 1");
  }

  @Test
  void a_call_with_a_danger_is_not_closed_because_it_works_again_or_nobody_rings() {
    typed.type("it hit somebody", "1", "done", "0", "no reply", AGAIN, "cancel");
    assertThat(typed.stored()).noneMatch(Event.Closed.class::isInstance);
    assertThat(typed.screen()).contains("this call cannot be closed that way");
  }

  /** A danger that nobody could see, and a complaint that tells of one. */
  @ParameterizedTest
  @CsvSource({
    "it is dead, unknown 1, 1, Nobody could say whether there is a danger",
    "It starts to close while a car is still in the way, 0, 0, was reported"
  })
  void what_is_not_settled_is_not_closed_because_it_works_again(
      String words, String dangers, String complaint, String why) {
    typed.type(
        words, dangers, "no", "0", "", complaint, "0", "0", "works again", "send", "", "Tom");
    assertThat(typed.stored()).noneMatch(Event.Closed.class::isInstance);
    assertThat(typed.screen())
        .contains(why, "The case stays open, with the urgency \"at once\"", "Send somebody")
        .doesNotContain("Let it open once");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "no good",
        "that is no good",
        "it is not fine",
        "it does not work again",
        "no better"
      })
  void no_good_is_no_end(String words) {
    typed.type("it is dead", "0", "0", "1", "0", "0", "tell " + words);
    assertThat(typed.screen()).doesNotContain("It works again", "Has it opened once");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"all good now", "no need to send anybody, it works again", "never mind, it runs"})
  void all_good_is_one(String words) {
    typed.type("it is dead", "0", "0", "1", "0", "0", "tell " + words);
    assertThat(typed.screen()).contains("Has it opened once");
  }

  /** Nobody answers any more, and the list of dangers was not gone through. */
  @ParameterizedTest
  @ValueSource(strings = {"it hit somebody", "it is dead"})
  void who_hangs_up_before_the_dangers_are_told_is_not_forgotten(String words) {
    typed.type(words, "cancel", "no reply", "twice", "fire service, 19:42", "Tom, 14:30");
    assertThat(typed.stored())
        .contains(new Event.Tended(Tending.NOT_REACHED, "twice"))
        .noneMatch(Event.Closed.class::isInstance);
    assertThat(typed.stored().toString()).contains("at once, Tom, 14:30");
    assertThat(typed.screen())
        .contains(
            "The list of dangers comes first", "The case stays open, with the urgency \"at once\"");
    assertThat(sheet().urgency().level()).isEqualTo("at once");
    typed.type("no", "no", "no", "0", "Ina Teal, 555 0107"); // they ring back
    try (OpenCase open = typed.open()) {
      assertThat(open.moment().step()).isInstanceOf(Step.AskComplaints.class);
    }
  }

  @Test
  void a_call_that_dropped_before_the_dangers_were_told_is_urgent() {
    typed.type("it is dead", "x");
    assertThat(sheet().urgency())
        .isEqualTo(
            new DispatchSheet.Urgency(
                "at once", List.of("dangers not ruled out: the list was not finished")));
    assertThat(DispatchPage.markdown(sheet(), Optional.empty()))
        .contains("Not diagnosed: nothing was asked", "Nobody runs the gate or goes near it");
  }

  @Test
  void a_danger_that_nobody_could_see_is_not_excluded() {
    typed.type("it is dead", "unknown 1", "", "1", "0", "0");
    assertThat(sheet().urgency())
        .isEqualTo(
            new DispatchSheet.Urgency(
                "at once",
                List.of("not ruled out: somebody is hurt, trapped or caught by the gate")));
    typed.type("danger", "0");
    assertThat(sheet().urgency().level()).isEqualTo("next working day");
  }

  @Test
  void an_emergency_of_which_nothing_was_asked_is_not_diagnosed() {
    typed.type("it hit somebody", "1", "done", "", "send", "ambulance", "Tom");
    assertThat(sheet().believed()).isEmpty();
    assertThat(DispatchPage.markdown(sheet(), Optional.empty()))
        .contains("Not diagnosed: an emergency")
        .doesNotContain("%", "Parts and tools", "On site: about");
  }

  /** At "done" it is the desk that types: no danger is heard in what it did. */
  @Test
  void what_the_desk_did_meanwhile_is_kept_as_its_own() {
    typed.type(
        "it hit somebody",
        "1",
        "ambulance called 19:42, fire engine coming too",
        "told her not to touch the live wires",
        "done, rang the police as well",
        "",
        "send",
        "",
        "Tom");
    assertThat(typed.screen().split("That may mean")).hasSize(2);
    assertThat(typed.screen()).contains("Called for help: ambulance called 19:42");
    assertThat(typed.stored())
        .contains(
            new Event.Noted("told her not to touch the live wires"),
            new Event.Tended(
                Tending.HELP_CALLED,
                "ambulance called 19:42, fire engine coming too; rang the police as well"))
        .doesNotContain(new Event.Said("told her not to touch the live wires"));
    assertThat(DispatchPage.markdown(sheet(), Optional.empty()))
        .contains("ambulance called 19:42, fire engine coming too; rang the police as well");
  }

  /** What the line says beside the desk's own deeds may be what the caller sees. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "told him to stay back, but there is smoke coming out of the motor",
        "ambulance called 19:42. there is smoke coming out of the motor",
        "done, and there is smoke coming out of the motor",
        "told me smoke is coming out of the motor",
        "the fire is coming out of the cabinet"
      })
  void a_danger_beside_what_the_desk_did_is_asked_about(String line) {
    typed.type("it hit somebody", "1", line, "1");
    assertThat(typed.screen().split("That may mean danger")).as(typed.screen()).hasSize(3);
    assertThat(typed.stored().toString()).doesNotContain("HELP_CALLED, words=the fire");
    try (OpenCase open = typed.open()) {
      assertThat(open.moment().step()).isInstanceOf(Step.MakeSafe.class);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"done, but he can't get to the switch", "done the first two"})
  void what_is_done_in_part_is_not_done(String line) {
    typed.type("it hit somebody", "1", line);
    assertThat(typed.stored()).noneMatch(e -> e instanceof Event.MadeSafe);
  }

  /** Another danger is asked about; "done" is no answer to that, and no reason to begin again. */
  @Test
  void done_is_no_answer_to_a_danger_that_is_asked_about() {
    typed.type("it hit somebody", "1", "there is a fire in the shed", "done", "0", "done", "");
    assertThat(typed.screen()).contains("Look first; then say whether it is true.", "Emergency");
    assertThat(typed.screen().split("Before anything else")).hasSize(2);
  }

  @Test
  void what_has_not_been_called_is_no_help() {
    typed.type("it hit somebody", "1", "nobody has called the ambulance", "done", "", "send", "");
    assertThat(typed.stored())
        .noneMatch(e -> e.toString().contains("HELP_CALLED, words=nobody has called"));
  }

  @Test
  void a_danger_that_stands_is_not_asked_about_again() {
    typed.type("it hit somebody", "1", "a man was hit by the gate", "done", "", "dunno", "send");
    assertThat(typed.screen().split("That may mean danger")).hasSize(2);
    assertThat(typed.stored()).contains(new Event.Said("a man was hit by the gate"));
  }

  @Test
  void a_time_that_is_not_understood_is_asked_for() {
    typed.type("it is dead", "0", "", "1", "0", "0", "hand over", "they want somebody");
    typed.type("", "send", "Tom as soon as he can", "when he is done", "tomorow at 9");
    assertThat(typed.screen())
        .contains("By when?", "No time could be found in that", "somebody will be there by");
    assertThat(typed.stored().stream().filter(e -> e instanceof Event.Tended))
        .last()
        .isInstanceOfSatisfying(
            Event.Tended.class,
            t -> {
              assertThat(t.words()).endsWith("Tom as soon as he can"); // the time is kept beside
              assertThat(t.due()).isNotEmpty();
            });
  }

  @Test
  void nobody_is_sent_to_a_gate_that_works_again() {
    typed.type("it is dead", "0", "0", "1", "0", "0", AGAIN, "yes", "the breaker was off", "close");
    assertThat(sheet().urgency())
        .isEqualTo(
            new DispatchSheet.Urgency(
                "nobody is sent", List.of("works again", AGAIN + "; the breaker was off")));
    assertThat(DispatchPage.markdown(sheet(), Optional.empty()))
        .contains("Nobody is sent")
        .doesNotContain("working day", "Look first", "to bring", "until somebody comes", "On site");
  }

  @Test
  void what_was_said_of_the_remotes_is_read_back_and_not_asked() {
    typed.type("the remotes do not work but the keypad does", "0", "", "1", "1 2", "0", "0", "d");
    assertThat(typed.screen())
        .contains("Was this said as well", "The remote controls.", "Question ")
        .doesNotContain(
            "Read out: Which one is it that fails", "Read out: How have you tried to open it");
  }

  @Test
  void a_call_that_is_called_off_or_cannot_be_reached_says_so() {
    typed.type("it is dead", "0", "0", "cancel", "they found another firm", "close");
    assertThat(typed.stored())
        .contains(
            new Event.Tended(Tending.CANCELLED, "they found another firm"),
            new Event.Closed(Ending.CANCELLED));
  }

  @Test
  void nobody_reached_is_an_ending_of_its_own() {
    typed.type("it is dead", "0", "0", "1", "0", "no reply", "three times", "close");
    assertThat(typed.stored())
        .contains(
            new Event.Tended(Tending.NOT_REACHED, "three times"),
            new Event.Closed(Ending.NOT_REACHED));
  }

  @Test
  void who_calls_is_asked_once_and_kept_apart_from_the_answers() {
    typed.type("it is dead", "0", "Ina Teal, 4 Quay Road, 555 0107", "1", "0", "0");
    assertThat(typed.casebook().people(typed.id()))
        .containsExactly(new Person(Person.Part.CALLER, "Ina Teal", "555 0107"));
    assertThat(typed.stored()).contains(new Event.Tended(Tending.WHERE, "4 Quay Road"));
    assertThat(typed.stored()).noneMatch(e -> e.toString().contains("Teal"));
    typed.type("0");
    assertThat(typed.screen().split("Who is calling")).hasSize(2);
  }

  @Test
  void the_record_tells_why_it_was_handed_over() {
    typed.type("it is dead", "0", "", "1", "0", "0", "hand over", "Ms Pell has the key");
    try (OpenCase open = typed.open()) {
      assertThat(new CaseRecord(Shipped.BASE).markdown(open.moment(), "1", "Fish dock"))
          .contains("handed over because: Ms Pell has the key");
    }
  }
}
