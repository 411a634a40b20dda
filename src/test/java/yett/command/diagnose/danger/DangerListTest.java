package yett.command.diagnose.danger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.TypedCase;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Role;
import yett.saying.DangerSayings;
import yett.testing.Shipped;

/** Words typed at the list of dangers are never taken for "no danger". */
class DangerListTest extends TechniciansCase {
  private String last(String check) {
    return typed.stored().stream()
        .filter(e -> e instanceof Event.Answered a && a.check().equals(check))
        .map(e -> ((Answer.Chosen) ((Event.Answered) e).answer()).outcome())
        .reduce((a, b) -> b)
        .orElseThrow();
  }

  private Set<String> answers() {
    Set<String> answers = new TreeSet<>();
    for (Event event : typed.stored()) {
      if (event instanceof Event.Answered a && a.answer() instanceof Answer.Chosen chosen) {
        answers.add(a.check() + " " + chosen.outcome());
      }
    }
    return answers;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "none of the men can free him, he is trapped",
        "no power and bare wires",
        "nothing moves, smoke from the motor",
        "no, he can not get out",
        "no",
        "nothing at all",
        "none really",
        "unknown",
        "unknown 99999999999",
        "0 0",
        "0, 2",
        "15",
        "yes",
        "jkhgf"
      })
  void no_other_words_than_none_say_that_there_is_no_danger(String words) {
    typed.type(words);

    assertThat(answers()).isEmpty();
  }

  @Test
  void asking_for_the_dangers_and_going_back_takes_no_answer_away() {
    typed.type("0", "", "slow", "0", "danger", "back");
    Set<String> before = answers();

    assertThat(before).hasSize(11);
    assertThat(typed.stored())
        .filteredOn(Event.Retracted.class::isInstance)
        .hasSize(1); // that of looking again, and nothing else
  }

  /** Several answers of one screen are one act; what was answered before it stays. */
  @ParameterizedTest
  @ValueSource(strings = {"0", "3", "3 9", "unknown 2", "there is smoke"})
  void back_after_the_dangers_takes_back_their_answers_and_no_others(String said) {
    typed.type("0", "", "slow", "0", "?1");
    List<Event> before = typed.stored();
    assertThat(before.get(before.size() - 1)).isInstanceOf(Event.Answered.class);

    typed.type("danger", said, said.startsWith("there") ? "3" : "note then back", "back");

    List<Event> fresh = typed.stored().subList(before.size(), typed.stored().size());
    Set<Long> gone =
        fresh.stream()
            .filter(Event.Retracted.class::isInstance)
            .map(e -> ((Event.Retracted) e).event())
            .filter(n -> !(typed.stored().get((int) (n - 2)) instanceof Event.Noted)) // its words
            .collect(Collectors.toSet());
    Set<Long> given =
        IntStream.range(0, fresh.size())
            .filter(i -> fresh.get(i) instanceof Event.Answered)
            .mapToObj(i -> before.size() + i + 2L) // the opening is the first
            .collect(Collectors.toSet());
    assertThat(given).hasSize(11);
    assertThat(gone).isEqualTo(given);
    try (OpenCase open = typed.open()) {
      assertThat(open.moment().step()).isInstanceOf(Step.AskDangers.class);
    }
  }

  /**
   * The third: smoke. Whoever comes to a gate that is off sees none of it, and nothing is mended.
   */
  @Test
  void a_danger_that_was_reported_is_not_ended_by_one_key() {
    typed.type("3", "leave");
    typed.type("danger", "0", "", "leave");
    String kept = last("danger-burning");
    typed.type("danger", "0", "over", "leave");

    assertThat(kept).isNotEqualTo("none");
    assertThat(last("danger-burning")).isEqualTo("none");
    assertThat(typed.screen())
        .contains("Reported in this case, and nothing has been repaired since");
  }

  /**
   * What was picked by mistake never was, whoever says so; that something is over is another thing.
   */
  @Test
  void a_caller_takes_a_slip_back_and_cannot_end_a_danger_by_a_word() {
    for (String word : List.of("over", "mistake")) {
      try (TypedCase call = new TypedCase(folder.resolve(word), Shipped.QUICK, Role.CALLER)) {
        call.type("it does not open", "3", "done", "danger", "0", word, "leave");
        try (OpenCase open = call.open()) {
          assertThat(open.moment().judgement().stops()).hasSize(word.equals("over") ? 1 : 0);
          assertThat(open.moment().state().answer("danger-burning").orElseThrow().answer())
              .isEqualTo(new Answer.Chosen("none"));
        }
        assertThat(call.screen().contains("It stays in force until somebody"))
            .isEqualTo(word.equals("over"));
      }
    }
  }

  @Test
  void back_takes_a_mistake_back_together_with_its_list() {
    typed.type("3", "done", "danger", "0", "mistake", "back");
    try (OpenCase open = typed.open()) {
      assertThat(open.moment().judgement().stops()).hasSize(1);
    }
  }

  @Test
  void two_screens_of_dangers_are_two_acts() {
    hurtAndTakenUp();
    typed.type("0", "1", "back");

    assertThat(typed.stored().stream().filter(Event.Retracted.class::isInstance)).hasSize(1);
    assertThat(answers()).contains("danger-scene kept");
  }

  private void hurtAndTakenUp() {
    typed.type("1", "done", "leave");
    try (OpenCase open = typed.open()) {
      open.record(new Event.TakenUp());
    }
  }

  @Test
  void where_somebody_was_hurt_nothing_is_looked_for_and_the_case_stays_open() {
    typed.type("1", "done", "close", "leave");

    assertThat(typed.stored()).noneMatch(Event.Closed.class::isInstance);
    assertThat(typed.screen()).contains("The case stays open for the inquiry");
    try (OpenCase open = typed.open()) {
      assertThat(open.moment().step())
          .isInstanceOfSatisfying(Step.HandOver.class, h -> assertThat(h.staysOpen()).isTrue());
      assertThat(open.moment().state().work().setUps()).containsExactly("isolated");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", "unknown 1"})
  void a_scene_that_is_not_released_stays_as_it_is(String said) {
    hurtAndTakenUp();
    typed.type("0", said, "done", "leave");

    assertThat(typed.stored()).noneMatch(Event.Closed.class::isInstance);
    try (OpenCase open = typed.open()) {
      assertThat(open.moment().step())
          .isInstanceOfSatisfying(Step.HandOver.class, h -> assertThat(h.staysOpen()).isTrue());
    }
  }

  @Test
  void a_scene_that_is_released_is_gone_on_with() {
    hurtAndTakenUp();
    typed.type("0", "0");

    try (OpenCase open = typed.open()) {
      assertThat(open.moment().step()).isInstanceOf(Step.AskSite.class);
    }
  }

  @Test
  void a_caller_cannot_say_that_the_scene_is_released() {
    try (TypedCase call = new TypedCase(folder.resolve("call"), Shipped.QUICK, Role.CALLER)) {
      call.type("he is caught", "1", "done", "danger", "0", "done");

      try (OpenCase open = call.open()) {
        assertThat(open.moment().step())
            .isInstanceOfSatisfying(Step.HandOver.class, h -> assertThat(h.staysOpen()).isTrue());
      }
    }
  }

  /** No stop of the work: it is told, and the questions go on, on the telephone too. */
  @ParameterizedTest
  @EnumSource(Role.class)
  void who_is_shut_in_and_needs_no_help_does_not_stop_the_work(Role role) {
    try (TypedCase other = new TypedCase(folder.resolve("other"), Shipped.QUICK, role)) {
      other.type(role == Role.CALLER ? "gate stays shut" : "12", role == Role.CALLER ? "12" : "");
      other.type("done");

      try (OpenCase open = other.open()) {
        assertThat(open.moment().step())
            .isNotInstanceOf(Step.HandOver.class)
            .isNotInstanceOf(Step.MakeSafe.class);
        assertThat(open.moment().judgement().forbidden()).isEmpty();
      }
    }
  }

  @Test
  void a_case_that_was_left_begins_with_the_dangers_when_it_is_taken_up_again() {
    typed.type("2", "done", "close");
    assertThat(typed.stored()).contains(new Event.Closed(Ending.MADE_SAFE));
    try (OpenCase open = typed.open()) {
      open.record(new Event.TakenUp());
      assertThat(open.moment().step()).isInstanceOf(Step.AskDangers.class);
    }
  }

  @Test
  void what_cannot_be_told_is_no_danger_and_no_all_clear() {
    typed.type("unknown 2");

    assertThat(typed.stored())
        .contains(new Event.Answered("danger-leaf", new Answer.CannotTell()))
        .contains(new Event.Answered("danger-person", new Answer.Chosen("nobody")));
    assertThat(answers()).noneMatch(a -> a.startsWith("danger-leaf"));
    assertThat(typed.screen())
        .contains("Nobody runs the gate, watched or not, until somebody has looked:")
        .contains("Not ruled out: the gate leans");
  }

  /** Whoever comes next reads why it may not be run. */
  @Test
  void what_could_not_be_told_is_said_at_the_hand_over() {
    typed.type("unknown 2", "", "slow", "0", "hand over", "no time", "", "done", "", "done");

    assertThat(typed.screen())
        .contains("Hand over No time.")
        .contains("Nobody runs the gate: \"Does the leaf stand upright")
        .contains("nobody could say whether this danger exists.");
  }

  @Test
  void of_a_gate_that_nobody_sees_all_is_unknown() {
    try (TypedCase call = new TypedCase(folder.resolve("call"), Shipped.QUICK, Role.CALLER)) {
      call.type("it does not open", "I am not there", "unknown all");

      assertThat(call.screen()).contains("unknown all if nobody sees the gate");
      assertThat(call.stored())
          .filteredOn(Event.Answered.class::isInstance)
          .hasSize(11)
          .allMatch(e -> ((Event.Answered) e).answer() instanceof Answer.CannotTell);
    }
  }

  /** A danger that is told of in the middle of a call, or of a second one, is named, too. */
  @Test
  void words_since_the_list_was_asked_last_are_heard() {
    try (TypedCase call = new TypedCase(folder.resolve("call"), Shipped.QUICK, Role.CALLER)) {
      call.type("it does not open", "0", "");
      try (OpenCase open = call.open()) {
        open.record(new Event.Said("smells like burning plastic"), new Event.DangersAgain());
      }
      call.type("0", "0");

      assertThat(call.screen()).contains("That may mean danger", "What was said may mean");
      try (OpenCase open = call.open()) {
        assertThat(open.moment().step()).isInstanceOf(Step.AskDangers.class);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "none", " None ", "nothing"})
  void nought_or_none_say_it(String words) {
    typed.type(words);

    assertThat(answers()).contains("danger-person nobody", "danger-movement neither").hasSize(11);
  }

  @Test
  void what_words_tell_of_is_asked_back_and_stored_once_it_is_confirmed() {
    typed.type("none of the men can free him, he is trapped", "yes");

    assertThat(typed.screen()).contains("That may mean danger", "Is this true? yes");
    assertThat(answers()).contains("danger-person hurt-or-trapped", "danger-leaf upright");
    assertThat(typed.screen()).contains("Somebody is struck or trapped");
    assertThat(typed.stored())
        .contains(new Event.Noted("none of the men can free him, he is trapped"));
  }

  /** One 0 does not pass over what the caller began with. */
  @ParameterizedTest
  @CsvSource({
    "it hit my daughter's bike and kept pushing, pushed on",
    "the gate jumped the rail, has left its track",
    "there is a smell like burning plastic, A burning smell",
    "he got a shock off the cabinet, shock or a tingle",
    "'my mother is shut in, there is a fire in the shed', Flames"
  })
  void danger_in_the_first_words_of_a_call_is_asked_about(String words, String asked) {
    try (TypedCase call = new TypedCase(folder.resolve("call"), Shipped.QUICK, Role.CALLER)) {
      call.type(words, "0", "0");

      assertThat(call.screen())
          .contains("That may mean danger", asked)
          .contains("What was said may mean");
      assertThat(call.stored()).noneMatch(Event.Answered.class::isInstance);
    }
  }

  @Test
  void only_no_denies_what_the_first_words_of_a_call_tell_of() {
    try (TypedCase call = new TypedCase(folder.resolve("call"), Shipped.QUICK, Role.CALLER)) {
      call.type("smells like burning plastic", "0", "no");

      assertThat(call.stored())
          .contains(new Event.Answered("danger-burning", new Answer.Chosen("none")));
    }
  }

  @Test
  void no_to_what_was_heard_says_nothing_of_the_rest_of_the_list() {
    try (TypedCase call = new TypedCase(folder.resolve("call"), Shipped.QUICK, Role.CALLER)) {
      call.type("smells like burning plastic", "no");
      assertThat(call.stored()).noneMatch(Event.Answered.class::isInstance);
    }
    try (TypedCase call = new TypedCase(folder.resolve("again"), Shipped.QUICK, Role.CALLER)) {
      call.type("smells like burning plastic", "no", "0");
      assertThat(call.stored())
          .contains(new Event.Answered("danger-burning", new Answer.Chosen("none")));
    }
  }

  @Test
  void first_words_without_danger_are_not_asked_about() {
    try (TypedCase call = new TypedCase(folder.resolve("call"), Shipped.QUICK, Role.CALLER)) {
      call.type("it opens but it does not close", "0");

      assertThat(call.screen()).doesNotContain("may tell of");
      assertThat(call.stored())
          .contains(new Event.Answered("danger-burning", new Answer.Chosen("none")));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"3 4", "3, 4", "3 and 4"})
  void numbers_stay_numbers(String line) {
    typed.type(line);

    assertThat(answers()).contains("danger-burning burning", "danger-conductors bare-wires");
  }

  @ParameterizedTest
  @CsvSource({
    "'none of the men can free him, he is trapped', danger-person",
    "'no power and bare wires', danger-conductors",
    "'nothing moves, smoke from the motor', danger-burning",
    "'no he can not get out', danger-person",
    "'the gate has jumped off the rail', danger-leaf",
    "'my battery looks swollen', danger-battery",
    "'it smells burned', danger-burning",
    "'i got an electric shock from the fence', danger-shock",
    "'it gave me a tingle', danger-shock",
    "'there are flames coming out of the hut', danger-fire",
    "'we are locked in and cannot get out', danger-shut-in",
    "'there is a child locked in and she has no medicine', danger-shut-in",
    "'the gate pushed on though it hit the van', danger-movement"
  })
  void the_right_danger_is_asked_back(String words, String check) {
    List<DangerSayings.Danger> asked =
        Shipped.BASE.checks().values().stream()
            .filter(c -> c.danger() && c.who() == Role.CALLER)
            .flatMap(c -> c.outcomes().stream().skip(1).map(o -> new DangerSayings.Danger(c, o)))
            .toList();
    List<String> heard =
        new DangerSayings(Shipped.HEARING)
            .hear(words, asked).stream().map(d -> d.check().id()).toList();

    assertThat(heard).contains(check);
  }
}
