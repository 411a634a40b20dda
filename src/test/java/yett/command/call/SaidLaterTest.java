package yett.command.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.command.diagnose.CallersCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.event.Tending;

/** What callers say in their own words after the first sentence, or when they ring once more. */
class SaidLaterTest extends CallersCase {
  private static final String[] REMOTES = {
    "the clickers do not work, the keypad does", "0", "June Alder, 555 0130", "1", "0", "0", "0",
  };

  @Test
  void what_is_newly_wrong_on_a_second_call_is_read_back_and_makes_it_urgent() {
    typed.type(REMOTES);
    typed.ringsAgain(
        "now it will not shut at all, it stands wide open", "0", "Pete, 555 0133", "1", "3");

    assertThat(typed.screen()).contains("Was this said as well?", "How urgent is it now?");
    assertThat(typed.stored()).contains(new Event.Pressed(List.of("site-open")));
    assertThat(complaints()).contains("stays-open", "one-command-fails");
  }

  @Test
  void the_same_trouble_on_a_second_call_is_nothing_new() {
    typed.type(REMOTES);
    typed.ringsAgain("the clickers still do not work", "0", "", "0");

    assertThat(typed.screen()).doesNotContain("The complaint:").contains("How urgent is it now?");
    assertThat(complaints()).containsExactly("one-command-fails");
  }

  /** That the gate stands open is not asked while only the remote controls fail. */
  @Test
  void a_complaint_that_comes_later_is_asked_how_urgent_it_is() {
    typed.type(
        Stream.concat(
                Stream.of(REMOTES), Stream.of("and it does not close any more", "1", "3", "1"))
            .toArray(String[]::new));

    assertThat(typed.screen()).contains("How urgent is it with that?");
    assertThat(sheet().urgency().reasons()).anyMatch(r -> r.contains("stands open"));
  }

  /** A caller does not wait until the desk has chosen what the last words meant. */
  @ParameterizedTest
  @ValueSource(strings = {"oh no it has shut on his leg", "oh god his hand is stuck in it"})
  void a_danger_is_heard_while_the_desk_is_asked_what_was_meant(String words) {
    typed.type(
        Stream.concat(
                Stream.of(REMOTES), Stream.of("and it does not close any more", words, "yes", "1"))
            .toArray(String[]::new));

    assertThat(typed.screen()).contains("Which do you mean?", "That may mean danger");
    assertThat(typed.stored())
        .contains(new Event.Answered("danger-person", new Answer.Chosen("hurt-or-trapped")));
  }

  @Test
  void where_the_caller_knows_nothing_the_desk_asks_for_somebody_who_does() {
    typed.type("the boss said to ring", "unknown all", "Bev, 555 0144", "d", "d", "d", "d", "d");
    typed.type("d", "d", "d");

    assertThat(typed.screen()).contains("Send somebody", "Ask who is at the gate or has its key");
  }

  @Test
  void back_names_only_the_complaint_that_came_last() {
    typed.type(
        Stream.concat(Stream.of(REMOTES), Stream.of("and it does not close any more", "1", "back"))
            .toArray(String[]::new));

    assertThat(typed.screen())
        .contains("Taken back: the complaint: Opens, but does not close again.");
    assertThat(sheet().complaints()).hasSize(1);
  }

  private List<String> complaints() {
    return typed.stored().stream()
        .filter(Event.Complained.class::isInstance)
        .map(e -> ((Event.Complained) e).complaints())
        .reduce((a, b) -> b)
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "'both bits of it lie on the floor', hangs",
    "'it looks normal, only slightly curved', ordinary",
    "'the end of it has come loose', parted"
  })
  void an_answer_in_other_words_is_offered_before_anything_else(String words, String outcome) {
    typed.type("the chain is down", "0", "Ray, 555 0107", "1", "0", "0", words, "1");

    assertThat(typed.screen()).contains("How does the chain look");
    assertThat(typed.stored())
        .contains(new Event.Answered("chain-looks", new Answer.Chosen(outcome)));
  }

  @Test
  void what_is_taken_up_stays_on_the_sheet_as_it_was_said() {
    typed.type(REMOTES);
    typed.type("tell there are new lamps in the car park since Friday", "yes");

    assertThat(sheet().said()).contains("there are new lamps in the car park since Friday");
    assertThat(sheet().notes()).noneMatch(n -> n.contains("new lamps"));
  }

  /** What is no danger of the gate may be what the helpers have to know. */
  @Test
  void what_is_denied_as_a_danger_stays_on_the_sheet_as_it_was_said() {
    typed.type("somebody is shut in and is ill", "11", "he is wobbly and leans on the gate", "0");

    assertThat(typed.screen()).contains("That may mean danger", "leans");
    assertThat(sheet().said()).contains("he is wobbly and leans on the gate");
  }

  @Test
  void what_made_it_work_is_not_asked_again_where_it_was_just_said() {
    String words = "oh he has just moved the bin from in front of the eye, it works again";
    typed.type("it would not close", "0", "Sonia Kett, 555 0161", words, "yes", "", "close");

    assertThat(typed.screen()).contains("Press Enter to keep what they said");
    assertThat(typed.stored()).contains(new Event.Tended(Tending.WORKS_AGAIN, words));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"yes it has opened and closed again", "yeah, she drove in and out", "Yep. Twice"})
  void a_yes_with_more_behind_it_is_a_yes(String yes) {
    typed.type("it is dead", "0", "Ina, 555 0107", "works again", yes, "the breaker", "close");

    assertThat(typed.stored()).contains(new Event.Tended(Tending.WORKS_AGAIN, "the breaker"));
    assertThat(sheet().said()).contains(yes);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "yes but it stops halfway",
        "yes, it didn't close though",
        "yeah it only opened",
        "yes and it hit the car"
      })
  void a_yes_that_is_taken_back_is_none(String yes) {
    typed.type("it is dead", "0", "Ina, 555 0107", "works again", yes);

    assertThat(typed.screen()).doesNotContain("What made it work");
  }

  /** Enter says nothing new, so it must not take back who was told to go. */
  @Test
  void enter_on_a_second_call_keeps_who_was_sent() {
    typed.type("it gave me a shock", "9", "done", "", "send", "", "Hal Denby, 23:00");
    typed.ringsAgain("it does not open", "9", "done", "", "send", "", "");

    assertThat(typed.screen()).contains("It stays as it was: ");
    assertThat(typed.stored())
        .filteredOn(e -> e instanceof Event.Tended t && t.what() == Tending.SENT)
        .as(typed.screen())
        .hasSize(1);
    assertThat(sheet().toString()).contains("Hal Denby");
  }

  /** "Clean" is near "dirt" in meaning; the "no" before it is what was asked for. */
  @Test
  void no_before_other_words_is_the_no_of_the_question() {
    typed.type("it starts to close and comes back", "0", "", "1", "0", "0");
    typed.type("ask beam-path", "no, they look clean to me, young lady", "yes");

    assertThat(typed.screen()).contains("No, clear and clean. Right?");
    assertThat(typed.stored())
        .contains(new Event.Answered("beam-path", new Answer.Chosen("clear")));
  }

  /** A danger behind the "no" comes first. */
  @Test
  void a_danger_behind_a_no_is_no_plain_answer() {
    typed.type("it starts to close and comes back", "0", "", "1", "0", "0");
    typed.type("ask beam-path", "no, but there is smoke coming out of the box", "yes");

    assertThat(typed.screen()).doesNotContain("No, clear and clean. Right?");
    assertThat(typed.stored())
        .contains(new Event.Answered("danger-burning", new Answer.Chosen("burning")));
  }
}
