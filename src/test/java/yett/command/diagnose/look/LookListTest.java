package yett.command.diagnose.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.command.diagnose.TypedCase;
import yett.command.diagnose.sitting.CaseLeftException;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** A round of looks at a prompt. */
class LookListTest {
  private static final String[] BEGIN = {"0", "", "slow", "0"};

  @TempDir private Path folder;
  private TypedCase typed;
  private List<Check> looks;
  private int before;

  @BeforeEach
  void begin() {
    typed = new TypedCase(folder, Shipped.QUICK, Role.TECHNICIAN);
    typed.begin(BEGIN);
    before = typed.stored().size();
    looks = round().orElseThrow().looks().stream().map(Step.Ask::check).toList();
  }

  @AfterEach
  void end() {
    typed.close();
  }

  private Optional<Step.LookRound> round() {
    try (OpenCase open = typed.open()) {
      return open.moment().step() instanceof Step.LookRound r ? Optional.of(r) : Optional.empty();
    }
  }

  private List<Event> fresh() {
    return typed.stored().subList(before, typed.stored().size());
  }

  /** What is stored of the looks, by check. */
  private Map<String, Answer> answers() {
    return fresh().stream()
        .filter(Event.Answered.class::isInstance)
        .map(Event.Answered.class::cast)
        .collect(Collectors.toMap(Event.Answered::check, Event.Answered::answer, (a, b) -> b));
  }

  private Answer ordinary(int look) {
    return outcome(look, 0);
  }

  private Answer outcome(int look, int outcome) {
    return new Answer.Chosen(looks.get(look).outcomes().get(outcome).id());
  }

  @Test
  void enter_says_that_all_is_ordinary_one_event_for_each_look() {
    typed.type("");

    assertThat(typed.screen()).contains("Looks: ", looks.get(0).ask(), looks.get(1).ask());
    assertThat(fresh())
        .isEqualTo(
            looks.stream()
                .map(c -> new Event.Answered(c.id(), new Answer.Chosen(c.outcomes().get(0).id())))
                .toList());
    assertThat(typed.screen()).contains("Understood as: all as usual");
  }

  /** Where a rare answer is asked back, it is kept. */
  @Test
  void a_number_asks_what_it_is_and_the_others_are_ordinary() {
    typed.type("1", "b", "yes", "save");

    assertThat(answers().get(looks.get(0).id())).isEqualTo(outcome(0, 1));
    assertThat(answers().get(looks.get(1).id())).isEqualTo(ordinary(1));
  }

  @Test
  void a_letter_or_words_pick_at_once_and_signs_say_what_was_not_told() {
    typed.type("1b, ?2", "yes", "save");

    assertThat(answers().get(looks.get(0).id())).isEqualTo(outcome(0, 1));
    assertThat(answers().get(looks.get(1).id())).isEqualTo(new Answer.CannotTell());
    assertThat(typed.screen()).doesNotContain("all as usual");
  }

  /** They share a word with that answer only; elsewhere they might mean anything. */
  @Test
  void words_behind_a_number_are_of_that_look() {
    List<String> ids = looks.stream().map(Check::id).toList();
    assertThat(ids).contains("fault-shown");
    typed.type(1 + ids.indexOf("fault-shown") + " beam blocked", "yes", "save");

    assertThat(answers().get("fault-shown")).isEqualTo(new Answer.Chosen("beam-input"));
  }

  @Test
  void words_that_match_no_one_answer_are_asked_for_that_look_alone_and_kept() {
    typed.type("2 mauve and woolly", "b", "yes", "save");

    assertThat(typed.screen())
        .contains(
            "2: \"mauve and woolly\" is kept as a remark. Which is it? " + looks.get(1).ask());
    assertThat(answers().get(looks.get(0).id())).isEqualTo(ordinary(0));
    assertThat(answers().get(looks.get(1).id())).isEqualTo(outcome(1, 1));
    assertThat(fresh())
        .contains(new Event.Noted("mauve and woolly", Optional.of(looks.get(1).id())));
  }

  @Test
  void what_was_understood_of_a_line_is_kept_while_the_rest_is_asked_again() {
    typed.type("?1, quixotic");
    assertThat(fresh()).isEmpty();
    assertThat(typed.screen())
        .contains("\"quixotic\" matches none of these looks. Type the number of the look first.")
        .contains("So far: 1 cannot tell.");

    typed.type("?1, quixotic", "");
    assertThat(answers()).isEmpty();

    typed.type("?1, quixotic", "0");
    assertThat(answers().get(looks.get(0).id())).isEqualTo(new Answer.CannotTell());
    assertThat(answers().get(looks.get(1).id())).isEqualTo(ordinary(1));
    assertThat(fresh()).contains(new Event.Noted("quixotic"));
  }

  @Test
  void a_look_that_is_named_behind_a_remark_on_another_is_not_taken_as_ordinary() {
    typed.inspection();
    before = typed.stored().size();
    typed.round(looks, "remark 2 rust at the far end, 1b");
    assertThat(fresh())
        .contains(new Event.Noted("rust at the far end", Optional.of(looks.get(1).id())));
    assertThat(answers()).containsEntry(looks.get(0).id(), outcome(0, 1));
    assertThat(answers()).containsEntry(looks.get(1).id(), ordinary(1));
  }

  @Test
  void a_remark_on_a_look_that_is_not_there_ends_no_round() {
    typed.inspection();
    before = typed.stored().size();
    assertThatExceptionOfType(CaseLeftException.class)
        .isThrownBy(() -> typed.round(looks, "1b, remark 9 rust at the far end"));
    assertThat(fresh()).isEmpty();
    assertThat(typed.screen()).contains("The looks are numbered 1 to " + looks.size() + ".");
  }

  @Test
  void nought_says_that_none_is_out_of_the_ordinary() {
    typed.type("0");

    assertThat(answers().values()).hasSameSizeAs(looks);
    assertThat(typed.screen()).contains("Understood as: all as usual");
  }

  /** A letter that the look does not have, or a number that no look has. */
  @ParameterizedTest
  @ValueSource(strings = {"2x", "2 x", "?2b", "2 19", "2x, 2 q"})
  void a_look_that_was_named_and_not_understood_is_never_taken_as_ordinary(String line) {
    typed.type(line, "", "");
    assertThat(answers()).isEmpty();

    typed.type(line, "0", "b", "yes", "save");
    assertThat(answers().get(looks.get(1).id())).isEqualTo(outcome(1, 1));
  }

  @Test
  void enter_is_no_answer_to_a_look_that_is_asked_alone() {
    typed.type("2 mauve and woolly", "", "", "save");

    assertThat(answers()).isEmpty();
    assertThat(fresh())
        .contains(new Event.Noted("mauve and woolly", Optional.of(looks.get(1).id())));
  }

  @Test
  void a_look_left_open_by_a_request_is_still_open_when_its_round_comes_back() {
    typed.type("2 mauve and woolly", "note it rains", "", "b", "yes", "save");

    assertThat(typed.screen()).contains("Still to be answered: 2.");
    assertThat(answers().get(looks.get(1).id())).isEqualTo(outcome(1, 1));
  }

  /** What had its answer in a round that was left is not taken as usual by the next Enter. */
  @Test
  void a_look_that_was_answered_in_a_round_that_was_left_is_asked_again() {
    typed.type("2b 3 mauve and woolly", "note it rains", "", "save");

    assertThat(typed.screen()).contains("Still to be answered: 2, 3.");
    assertThat(answers()).isEmpty();
  }

  @Test
  void back_in_a_round_takes_back_what_was_typed_in_it_and_nothing_before_it() {
    typed.type("2b 9", "back", "", "save");

    assertThat(typed.screen()).contains("What was named is asked again.");
    assertThat(fresh()).noneMatch(Event.Retracted.class::isInstance);
  }

  @Test
  void back_after_a_part_that_was_read_leaves_its_look_open() {
    typed.type("2b, 9", "back", "", "save");

    assertThat(typed.screen()).contains("Taken back: 2 ", "What was named is asked again.");
    assertThat(fresh()).noneMatch(Event.Retracted.class::isInstance);
    assertThat(answers()).isEmpty(); // look 2 is asked, not taken as usual
  }

  @Test
  void back_at_the_question_of_one_look_leads_to_the_round() {
    typed.type("2b 3 mauve and woolly", "back", "", "save");

    assertThat(typed.screen()).contains("Taken back: 2 ", "Still to be answered: 2, 3.");
    assertThat(fresh()).noneMatch(Event.Retracted.class::isInstance);
    assertThat(answers()).isEmpty();
  }

  @Test
  void a_look_that_was_not_understood_is_still_open_after_a_request() {
    typed.type("2x", "note it rains", "", "", "save");

    assertThat(typed.screen()).contains("Still to be answered: 2.");
    assertThat(answers()).isEmpty();
  }

  @Test
  void danger_denied_behind_a_number_leaves_the_look_to_be_answered() {
    typed.type("2 there is smoke coming out", "0", "", "", "save");

    assertThat(answers()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"why", "belief", "how", "how 1", "?", "unknown", "later", "note it rains"})
  void a_wish_or_a_question_leaves_the_round_open(String wish) {
    typed.type(wish);

    assertThat(answers()).isEmpty();
    assertThat(round()).isPresent();
  }

  /** Also behind a number: whoever types it may have looked up from the list. */
  @ParameterizedTest
  @ValueSource(
      strings = {"there is smoke coming out of the operator", "1 there is smoke coming out"})
  void words_that_may_tell_of_danger_are_asked_about_first(String words) {
    typed.type(words, "1");

    assertThat(typed.screen()).contains("That may mean danger:");
    assertThat(answers().keySet()).isNotEmpty().allMatch(c -> c.startsWith("danger-"));
    try (OpenCase open = typed.open()) {
      assertThat(open.moment().step()).isInstanceOf(Step.MakeSafe.class);
    }
  }

  @Test
  void what_is_told_besides_counts_and_the_round_goes_on() {
    typed.type("the chain is rusty", "yes", "save");

    assertThat(answers()).containsKey("chain-surface");
  }

  @Test
  void a_look_that_is_asked_for_is_asked_alone() {
    typed.type("ask pad-and-bolts");

    assertThat(round()).isEmpty();
    try (OpenCase open = typed.open()) {
      assertThat(open.moment().step().card()).isEqualTo("pad-and-bolts");
    }
  }

  @Test
  void how_tells_how_to_look() {
    typed.type("how");
    assertThat(typed.screen()).contains(looks.get(0).how().replaceAll("\\s+", " "));
  }

  @Test
  void one_asks_the_looks_one_at_a_time() {
    typed.type("one", "unknown", "save");

    assertThat(answers()).isEqualTo(Map.of(looks.get(0).id(), new Answer.CannotTell()));
    assertThat(typed.screen()).contains("Check 1", looks.get(0).how().replaceAll("\\s+", " "));
  }

  @Test
  void back_takes_the_whole_round_back() {
    typed.type("", "back");

    assertThat(typed.screen())
        .contains("Taken back: the round of looks: ", " (" + looks.size() + " answers).");
    assertThat(fresh().stream().filter(Event.Retracted.class::isInstance)).hasSameSizeAs(looks);
    assertThat(round().orElseThrow().looks().stream().map(Step.Ask::check)).isEqualTo(looks);
  }

  @Test
  void one_look_of_a_round_is_corrected_by_itself() {
    typed.type("", "correct", looks.get(1).id(), "2", "save");

    assertThat(fresh().stream().filter(Event.Corrected.class::isInstance)).hasSize(1);
  }

  /** A round of these looks, at which the lines are typed. */
  private void round(List<String> checks, String... lines) {
    typed.round(checks.stream().map(Shipped.BASE.checks()::get).toList(), lines);
  }

  /** Whatever is found set is a yes, in whatever words; it is asked back, and the words stay. */
  @Test
  void words_about_a_look_of_two_answers_are_asked_back_as_the_one_that_is_not_ordinary() {
    String words = "the toggle switch in the guardhouse is set to hold open";
    round(List.of("held-devices"), "1 " + words, "", "yes", "yes");

    assertThat(typed.screen()).contains("is kept as a remark.", "Yes, one is. Right?");
    assertThat(answers()).isEqualTo(Map.of("held-devices", new Answer.Chosen("one")));
    assertThat(fresh()).contains(new Event.Noted(words, Optional.of("held-devices")));
  }

  /** "Nothing is lit" shares no word with what was typed. */
  @Test
  void words_about_a_look_are_understood_by_their_meaning() {
    round(List.of("display-lit"), "1 the screen is quite black", "yes", "yes", "yes");

    assertThat(answers()).isEqualTo(Map.of("display-lit", new Answer.Chosen("dark")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1 nobody has turned anything", "1 none that I could find"})
  void words_that_deny_are_not_turned_round(String line) {
    round(List.of("held-devices"), line, "a", "yes");

    assertThat(typed.screen()).contains("is kept as a remark. Which is it?");
    assertThat(answers()).isEqualTo(Map.of("held-devices", new Answer.Chosen("none")));
  }

  /** The first line names one look without saying how; its answers come at its own question. */
  @Test
  void several_answers_to_one_look_are_stored_together() {
    round(List.of("track-look", "ice-seen"), "1, 2bc", "b and d", "yes", "yes", "yes");

    assertThat(typed.screen()).contains("3bc").contains("(several may be true: bc)");
    assertThat(answers())
        .isEqualTo(
            Map.of(
                "track-look", new Answer.Chosen("bent", List.of("dirty")),
                "ice-seen", new Answer.Chosen("in-track", List.of("on-chain"))));
    assertThat(typed.screen())
        .contains("dirty, some grit, and also bent, lifted or worn through; yes, on the chain");
  }
}
