package yett.command.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.command.diagnose.CallersCase;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.interview.step.Step;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.record.DispatchPage;
import yett.saying.OnTheLine;
import yett.testing.Shipped;

/** A child fetches a grown-up, and does nothing at the gate until one comes. */
class ChildOnTheLineTest extends CallersCase {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "the gate hums, mum is out",
        "I am nine",
        "I'm eight, the gate is on my brother's foot",
        "I'm 10 years old and it won't open",
        "I'm home alone",
        "mummy can't get the car out",
        "My dad's at work",
        "it's a child"
      })
  void a_child_is_heard(String line) {
    assertThat(OnTheLine.mayBeChild(line)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "I'm ten minutes away",
        "I am at number nine",
        "my son is nine",
        "a child ran through it",
        "I am six months pregnant",
        "dad is here",
        "it goes out alone",
        "I'm eight doors down"
      })
  void others_are_not(String line) {
    assertThat(OnTheLine.mayBeChild(line)).isFalse();
  }

  @Test
  void a_child_gets_no_step_at_the_gate() {
    typed.type(childRings("no", "no", "no", "no"));
    assertThat(typed.screen())
        .contains("Please fetch a grown-up and let them talk to me", "Nobody goes to look")
        .doesNotContain("That may mean danger", "Look from two metres away");
    try (OpenCase open = typed.open()) {
      Set<String> closed = open.moment().judgement().unavailable();
      assertThat(Shipped.BASE.repairs().values())
          .filteredOn(r -> r.who() == Role.CALLER)
          .extracting(Repair::id)
          .allMatch(closed::contains);
      assertThat(closed)
          .contains(
              "response", "breaker-position", "stop-button-look", "release-lid", "held-devices")
          .doesNotContain("stops-where", "same-circuit", "danger-person");
    }
    typed.type("d", "d", "d", "d", "d", "send", "Tom, in an hour");
    assertThat(typed.screen()).contains("Send somebody").doesNotContain("What the caller can do");
    String page = DispatchPage.markdown(sheet(), Optional.empty());
    assertThat(page)
        .contains("A child rang", "Fetch a grown-up to the telephone")
        .doesNotContain("Have somebody watch the opening");
  }

  /** Also in an emergency: what is read out has no hand in it. */
  @Test
  void a_child_presses_nothing_in_an_emergency() {
    typed.type("my brother is stuck in the gate, I'm home alone", "no", "yes");
    String now = typed.screen().substring(typed.screen().indexOf("Read out, in this order"));
    assertThat(now)
        .contains("Call the emergency number now")
        .doesNotContain("Press the stop button", "Unlock the gate", "switch it off");
  }

  @Test
  void it_goes_on_as_usual_with_a_grown_up() {
    typed.type(childRings("no", "no", "no", "no"));
    typed.type("here is my dad now", "yes", "0");
    assertThat(typed.stored()).contains(new Event.Tended(Tending.GROWN_UP, ""));
    try (OpenCase open = typed.open()) {
      assertThat(open.moment().step()).isInstanceOf(Step.Ask.class);
      assertThat(open.moment().judgement().unavailable()).doesNotContain("breaker-position");
    }
  }

  @Test
  void whoever_has_a_grown_up_there_is_asked_once() {
    typed.type("it is dead, I'm ten", "yes", "0", "I'm ten, mum is out");
    assertThat(typed.screen().split("A child may be on the telephone")).hasSize(2);
    assertThat(typed.stored()).noneMatch(e -> e.toString().contains("CHILD"));
  }

  /** Whoever goes has to know that the first caller may have switched it off. */
  @Test
  void what_a_grown_up_was_told_before_stays_on_the_sheet() {
    typed.type("the chain hangs down", "0", "Pim, 555 0107", "1", "0", "0");
    try (OpenCase open = typed.open()) {
      open.record(new Event.Tended(Tending.CHILD, ""));
    }
    assertThat(sheet().untilThen())
        .anyMatch(line -> line.contains("Fetch a grown-up"))
        .anyMatch(line -> line.contains("switch it off if its switch is away from it"));
  }

  /** Few plain questions, one at a time, before it goes to fetch somebody. */
  @Test
  void a_child_is_asked_plainly_and_then_sent_for_a_grown_up() {
    typed.type("it is dead, mum is out", "no", "no", "unknown", "no", "no");
    assertThat(typed.screen())
        .containsSubsequence(
            "Is somebody hurt, or stuck in the gate?",
            "Has the gate fallen over",
            "Can you see fire",
            "Is anybody locked in",
            "Please fetch a grown-up")
        .doesNotContain("bad eggs", "Type danger as soon as you can tell");
    assertThat(typed.stored())
        .contains(
            new Event.Answered("danger-person", new Answer.Chosen("nobody")),
            new Event.Answered("danger-leaf", new Answer.CannotTell()),
            new Event.Answered("danger-battery", new Answer.CannotTell()));
    assertThat(sheet().urgency().level()).isEqualTo("at once");
  }

  @Test
  void after_a_yes_a_child_is_asked_nothing_more() {
    typed.type("it is dead, mum is out", "no", "no", "no", "yes it burns");
    assertThat(typed.screen())
        .containsSubsequence("Please fetch a grown-up", "Get away from the fire")
        .doesNotContain("locked in");
  }

  @Test
  void a_danger_that_a_child_tells_of_is_asked_about_before_the_others() {
    typed.type("it gave my sister an electric shock, I'm home alone", "no", "no", "yes");
    assertThat(typed.stored())
        .contains(new Event.Answered("danger-shock", new Answer.Chosen("shock")));
  }

  /** What only a grown-up can see is ruled out by a grown-up. */
  @Test
  void a_grown_up_goes_through_the_whole_list() {
    typed.type("it is dead, mum is out", "no", "no", "here is my dad now", "yes", "0");
    assertThat(typed.screen()).contains("A smell of bad eggs");
    assertThat(typed.stored())
        .contains(new Event.Answered("danger-battery", new Answer.Chosen("sound")));
  }

  private static String[] childRings(String... answers) {
    return Stream.of(
            Stream.of("it is dead, mum is out", "no"),
            Stream.of(answers),
            Stream.of("Pim, 555 0107", "1", "0", "0"))
        .flatMap(lines -> lines)
        .toArray(String[]::new);
  }
}
