package yett.command.diagnose.told;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.command.diagnose.TypedCase;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** What a person tells at a prompt that asks for something else. */
class VolunteeredTest {
  /** Dangers, the gate as installed, one complaint, no history. */
  private static final String[] BEGINNING = {"0", "", "4", "0"};

  @TempDir private Path folder;
  private TypedCase typed;

  @AfterEach
  void end() {
    typed.close();
  }

  private void sit(Role role, String... lines) {
    typed = new TypedCase(folder, Shipped.QUICK, role);
    typed.type(lines);
  }

  /** As a technician, from the first check on. */
  private void told(String... lines) {
    typed = new TypedCase(folder, Shipped.QUICK, Role.TECHNICIAN);
    typed.begin(BEGINNING);
    typed.type(lines);
  }

  private Moment moment() {
    try (OpenCase open = typed.open()) {
      return open.moment();
    }
  }

  private static Event chosen(String check, String outcome) {
    return new Event.Answered(check, new Answer.Chosen(outcome));
  }

  @Test
  void the_reason_for_a_hand_over_is_read_for_danger() {
    told("hand over", "he got a shock off the cabinet", "1", "done");
    assertThat(typed.screen()).contains("That may mean danger:", "The gate or its fence gives");
    assertThat(typed.stored())
        .contains(
            chosen("danger-shock", "shock"), new Event.GaveUp("he got a shock off the cabinet"));
  }

  /** The card of a gate that moves by itself has the leaf released and watched, and says how. */
  @Test
  void that_the_leaf_rolls_can_be_said_after_a_gate_that_moves_by_itself_was_made_safe() {
    String say = "tell released leaf rolls away by itself";
    assertThat(Shipped.BASE.stops().get("moves-uncommanded").now(Role.TECHNICIAN))
        .anyMatch(line -> line.contains(say));
    told("it moves on its own", "yes", "done", say, "yes", "yes");
    assertThat(typed.stored()).contains(chosen("released-leaf-rolls", "rolls"));
  }

  @Test
  void several_complaints_that_were_understood_are_taken_together() {
    sit(Role.TECHNICIAN, "0", "", "it crawls, rattles and stops half way", "1 2", "", "0");
    assertThat(typed.screen()).contains("Which do you mean?");
    assertThat(moment().state().told().complaints().orElseThrow()).hasSize(2);
  }

  @Test
  void how_it_is_done_is_told_at_a_single_check() {
    told("ask chain-looks", "how");
    String how = Shipped.BASE.checks().get("chain-looks").how();
    assertThat(typed.screen().split(Pattern.quote(how), -1)).hasSize(3);
  }

  /** What was picked rarely says all: of "hums" no complaint tells. */
  @Test
  void words_of_which_something_was_picked_are_kept_as_a_note() {
    String said = "it crawls, rattles and stops half way since the hedge was cut";
    sit(Role.TECHNICIAN, "0", "", said, "1 2", "", "0");
    assertThat(typed.stored()).contains(new Event.Noted(said));
  }

  @Test
  void words_of_a_report_are_kept_though_they_mean_one_complaint() {
    sit(Role.TECHNICIAN, "0", "", "in the rain it won't close", "yes", "", "0");
    assertThat(moment().state().told().complaints().orElseThrow()).containsExactly("stays-open");
    assertThat(typed.stored()).contains(new Event.Noted("in the rain it won't close"));
  }

  @Test
  void what_a_list_takes_is_no_reading_elsewhere() {
    told("ask charging-fuse", "how 5", "save");
    assertThat(typed.screen()).doesNotContain("Which do you mean?", "5 mm");
  }

  /**
   * The marker on the chain is not a detail of the gate but what is looked at next. What keeps the
   * limits was told before, so one detail is left.
   */
  @Test
  void what_is_said_of_it_at_a_single_detail_is_said_of_that_detail() {
    told("ask marker-look", "1", "1", "its missing", "1", "save");
    assertThat(typed.screen()).contains("Reference marker:");
    assertThat(typed.stored()).contains(chosen("marker-look", "gone"));
    assertThat(moment().state().told().site()).doesNotContainEntry("marker", "none");
  }

  @ParameterizedTest
  @ValueSource(strings = {"its missing", "it's missing", "it\u2019s missing", "it is missing"})
  void what_is_said_of_it_at_a_check_is_said_of_what_is_asked_for(String line) {
    told("ask marker-look", "", "", "done", line, "yes", "save");
    assertThat(typed.stored()).contains(chosen("marker-look", "gone"));
  }

  @Test
  void the_reason_for_a_hand_over_may_follow_a_comma() {
    told("hand over, no time", "save");
    assertThat(typed.stored()).contains(new Event.GaveUp("no time"));
    assertThat(typed.screen()).doesNotContain("danger:");
  }

  @Test
  void a_note_is_read_for_danger() {
    told("note he got a shock off the cabinet", "0");
    assertThat(typed.screen()).contains("Noted.", "That may mean danger:");
    assertThat(typed.stored()).contains(new Event.Noted("he got a shock off the cabinet"));
  }

  @Test
  void a_reading_is_shown_back_and_counts_once_it_is_confirmed() {
    told("tell battery at rest 23.1 V", "1", "yes");
    assertThat(typed.screen())
        .contains(
            "Was it done like this? Mains off for ten minutes", "Battery rest voltage: 23.1 V.")
        .contains("Understood as: 23.1 V, flat.");
    assertThat(typed.stored())
        .contains(new Event.Answered("battery-rest-voltage", new Answer.Read("23.1 V", 23.1)));
  }

  @Test
  void plain_words_at_another_question_are_heard() {
    told("the display is dark", "1");
    assertThat(typed.stored()).contains(chosen("display-lit", "dark"));
  }

  @Test
  void words_that_share_one_with_an_answer_are_not_taken_for_it() {
    told("ask chain-looks", "supply battery low", "0", "quit");
    assertThat(typed.stored())
        .noneMatch(e -> e instanceof Event.Answered a && a.check().equals("chain-looks"));
  }

  @Test
  void several_that_may_be_meant_stand_under_numbers_and_none_is_taken_unasked() {
    told("chain is off", "0");
    assertThat(typed.screen()).contains("Which do you mean?", "The complaint: Chain hangs low");
    assertThat(typed.stored())
        .endsWith(new Event.Happened(List.of()), new Event.Noted("chain is off"));
    assertThat(moment().step()).isInstanceOfAny(Step.Ask.class, Step.LookRound.class);
  }

  @Test
  void a_complaint_told_joins_the_others() {
    told("tell runs slower than before", "yes");
    assertThat(typed.stored()).contains(new Event.Complained(List.of("runs-then-stops", "slow")));
  }

  @Test
  void a_complaint_told_before_they_are_asked_for_is_followed_by_the_others() {
    sit(Role.TECHNICIAN, "0", "tell runs slower than before", "yes", "4", "", "0");
    assertThat(typed.stored()).contains(new Event.Complained(List.of("slow", "closes-partway")));
  }

  @Test
  void a_complaint_by_its_very_name_is_taken_without_asking_back() {
    told("tell Starts to close, stops or comes back before it is closed");
    assertThat(typed.screen())
        .doesNotContain("Which do you mean?")
        .contains("Added: Starts to close, stops or comes back before it is closed.");
    assertThat(typed.stored())
        .contains(new Event.Complained(List.of("runs-then-stops", "closes-partway")));
  }

  @Test
  void a_name_of_one_word_is_asked_back_because_it_may_be_a_slip() {
    told("tell scrapes", "yes");
    assertThat(typed.screen())
        .contains("The complaint: Scrapes, grinds or is hard to move. Right?");
    assertThat(typed.stored())
        .contains(new Event.Complained(List.of("runs-then-stops", "scrapes")));
  }

  @Test
  void a_name_that_tells_of_danger_is_asked_about_first() {
    told("tell moves without being told to", "0");
    assertThat(typed.screen()).contains("That may mean danger");
    assertThat(typed.stored())
        .contains(new Event.Complained(List.of("runs-then-stops", "moves-alone")));
  }

  @Test
  void a_name_in_the_list_of_complaints_is_that_complaint() {
    sit(Role.TECHNICIAN, "0", "", "Starts, then stops on its own, chain-hangs");
    assertThat(typed.stored())
        .contains(new Event.Complained(List.of("runs-then-stops", "chain-hangs")));
  }

  @Test
  void what_happened_joins_what_is_known() {
    told("tell there was a thunderstorm last night", "1");
    assertThat(typed.stored()).contains(new Event.Happened(List.of("thunderstorm")));
  }

  /** An entry of a page that was not shown is named, so that a slip is seen. */
  @Test
  void what_is_added_is_named() {
    sit(
        Role.TECHNICIAN,
        "0",
        "",
        "4",
        "tell there was a thunderstorm last night",
        "1",
        "19",
        "save");
    List<String> all = ((Event.Happened) typed.stored().get(typed.stored().size() - 1)).histories();
    assertThat(all).hasSize(2);
    assertThat(typed.screen())
        .contains(
            all.stream()
                .map(h -> Shipped.BASE.histories().get(h).name())
                .collect(Collectors.joining("; ", "Added: ", ".")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "nothing that I know",
        "nothing I know of",
        "not that I know of",
        "none that I'm aware of",
        "nothing special lately",
        "no, nothing",
        "nope"
      })
  void nothing_that_i_know_is_nothing(String words) {
    sit(Role.TECHNICIAN, "0", "", "4", words);
    assertThat(typed.screen()).doesNotContain("Right?");
    assertThat(typed.stored()).last().isEqualTo(new Event.Happened(List.of()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"unknown", "back", "none of them", "no", "0", ""})
  void none_of_several_that_may_be_meant_is_taken(String words) {
    told("chain is off", words);
    assertThat(typed.screen()).contains("Which do you mean?").doesNotContain("Type numbers");
    assertThat(typed.stored()).last().isEqualTo(new Event.Noted("chain is off"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"unknown", "back", "wrong", "no"})
  void what_is_not_right_is_not_taken(String words) {
    told("tell scrapes", words, "save");
    assertThat(typed.screen()).contains("Right?").doesNotContain("Type yes if it is right");
    assertThat(typed.stored()).last().isEqualTo(new Event.Happened(List.of()));
  }

  /** However clear it is: at every read-back Enter alone means the same. */
  @ParameterizedTest
  @ValueSource(
      strings = {"runs slower than before", "it runs slower than before and the chain slaps"})
  void enter_alone_takes_nothing_of_what_was_understood(String words) {
    told("tell " + words, "", "save");
    assertThat(typed.screen()).contains("Enter for no").doesNotContain("Enter for yes");
    assertThat(typed.stored()).noneMatch(this::takesUpSomething);
  }

  private boolean takesUpSomething(Event event) {
    return event instanceof Event.Complained c && c.complaints().contains("slow")
        || event instanceof Event.Answered a && a.check().startsWith("chain");
  }

  /** Two bare numbers compare something; neither is the reading of some check. */
  @Test
  void of_two_numbers_without_a_unit_none_is_a_reading() {
    told("tell selector is on 230 and supply 120", "0", "0");
    assertThat(typed.screen()).doesNotContain("230 V.", "120 V.");
  }

  @Test
  void it_is_what_the_question_asks_about() {
    told("ask marker-look", "", "", "done", "it's missing", "save");
    assertThat(typed.screen()).contains("No, there is no marker on the chain. Right?");
  }

  @Test
  void an_effect_is_told_by_what_shows_it() {
    told("tell the chain pulls in jerks", "1", "1");
    assertThat(typed.screen()).contains("The chain pulls in jerks: how does it show?");
    assertThat(typed.stored()).last().isNotEqualTo(new Event.Happened(List.of()));
  }

  @Test
  void danger_told_is_asked_back_at_once_and_stops_the_work() {
    told("tell smoke is coming out of the operator", "1");
    assertThat(typed.screen()).contains("That may mean danger", "DANGER:");
    assertThat(moment().step()).isInstanceOf(Step.MakeSafe.class);
  }

  @Test
  void plain_words_of_danger_need_no_tell() {
    told("he is trapped", "yes");
    assertThat(typed.stored()).contains(chosen("danger-person", "hurt-or-trapped"));
  }

  @Test
  void danger_that_is_not_clearly_denied_brings_the_whole_list() {
    told("he is trapped", "well, nearly");
    assertThat(typed.stored()).contains(new Event.Noted("he is trapped"));
    assertThat(moment().step()).isInstanceOf(Step.AskDangers.class);
  }

  @Test
  void danger_denied_leaves_the_question_as_it_was() {
    told("he is trapped", "0");
    assertThat(typed.stored()).last().isEqualTo(new Event.Happened(List.of()));
    assertThat(moment().step()).isInstanceOfAny(Step.Ask.class, Step.LookRound.class);
  }

  @Test
  void what_this_person_may_not_measure_does_not_count() {
    told("tell mains voltage at the terminals 231 V", "yes");
    assertThat(typed.screen())
        .contains("That does not count: it is reserved for better qualified people");
    assertThat(typed.stored()).last().isEqualTo(new Event.Happened(List.of()));
  }

  @Test
  void words_that_nobody_knows_are_kept_and_the_question_stands() {
    told("tell the weather is lovely", "the weather is lovely");
    assertThat(typed.screen()).contains("These words match nothing here; they are kept");
    assertThat(typed.stored()).last().isEqualTo(new Event.Noted("the weather is lovely"));
    assertThat(moment().step()).isInstanceOfAny(Step.Ask.class, Step.LookRound.class);
  }

  @Test
  void a_reading_without_words_needs_them() {
    told("tell 23.1 V");
    assertThat(typed.screen()).contains("Say what was measured as well");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "one battery reads 12.6 V and the other 10.4 V",
        "battery 24 V, then 27 V",
        "sag 2 in, chain 12 5/16 in"
      })
  void of_several_readings_none_is_picked_out_and_none_is_lost(String words) {
    told("tell " + words);
    assertThat(typed.screen()).contains("These are several readings: ").doesNotContain("Right?");
    assertThat(typed.stored()).last().isEqualTo(new Event.Noted(words));
  }

  @Test
  void a_number_beside_the_reading_is_not_taken_for_it() {
    told("tell battery 1 at rest 23.1 V", "0", "0");
    assertThat(typed.screen()).contains("Battery rest voltage: 23.1 V.");
  }

  @Test
  void the_voltage_of_a_gate_that_is_being_described_is_no_measurement() {
    sit(Role.TECHNICIAN, "0", "24 V battery operator, photocell");
    assertThat(typed.screen()).doesNotContain("Which do you mean?", "Right?");
  }

  @Test
  void a_stray_token_is_no_detail_of_the_gate_before_it_is_confirmed() {
    sit(Role.TECHNICIAN, "0", "1c", "no");
    assertThat(typed.screen()).contains("Temperature at the operator today: 1c").contains("Right?");
    assertThat(typed.stored()).noneMatch(Event.SiteAnswered.class::isInstance);
  }

  @Test
  void what_a_part_of_the_line_names_is_asked() {
    sit(Role.TECHNICIAN, "0", "6 m, photo eye, batteries", "2", "3", "quit");
    assertThat(typed.stored())
        .contains(
            new Event.SiteAnswered("opening", "6 m"),
            new Event.SiteAnswered("beams", "one"),
            new Event.SiteAnswered("batteries", "none"));
  }

  @Test
  void back_names_what_it_takes_back() {
    told("the display is dark", "1", "back", "back");
    assertThat(typed.screen())
        .contains("Taken back: the answer \"nothing is lit\" to: Is a light or a display on")
        .contains("Taken back: the history: ");
  }

  /** What they are is not understood, which does not make them worthless to whoever comes next. */
  @Test
  void words_of_which_nothing_is_meant_are_kept() {
    told("the display is dark and the chain hangs low", "");
    assertThat(typed.stored())
        .contains(new Event.Noted("the display is dark and the chain hangs low"));
  }

  @Test
  void a_word_of_another_prompt_tells_of_nothing() {
    told("close", "done", "cannot", "fire", "0");
    assertThat(typed.screen()).containsOnlyOnce("That may mean danger");
  }

  @ParameterizedTest
  @ValueSource(strings = {"cannot", "not possible"})
  void a_repair_that_cannot_be_done_leads_to_what_is_next_best(String word) {
    sit(
        Role.TECHNICIAN,
        "0",
        "",
        "13",
        "0",
        "?1-3",
        "",
        "",
        "done",
        "320 mm",
        "1 mm",
        "307 mm",
        "",
        word);
    assertThat(typed.stored())
        .last()
        .isInstanceOfSatisfying(
            Event.Repaired.class,
            r -> {
              assertThat(r.done()).isFalse();
              assertThat(moment().step().card()).isNotEqualTo(r.repair());
            });
    assertThat(moment().step())
        .isInstanceOfAny(
            Step.Mend.class,
            Step.Ask.class,
            Step.LookRound.class,
            Step.Enter.class,
            Step.Leave.class);
    assertThat(moment().state().work().retestDue()).isFalse();
  }

  @Test
  void an_answer_told_can_be_taken_back() {
    told("the display is dark", "1", "back");
    assertThat(typed.stored()).last().isInstanceOf(Event.Retracted.class);
    assertThat(moment().state().answer("display-lit")).isEmpty();
  }

  @Test
  void at_the_list_of_dangers_tell_is_read_for_danger() {
    sit(Role.TECHNICIAN, "tell he is trapped", "yes");
    assertThat(typed.stored()).contains(chosen("danger-person", "hurt-or-trapped"));
  }

  @Test
  void the_desk_tells_what_the_caller_says() {
    sit(
        Role.CALLER,
        "it stops half way",
        "0",
        "1",
        "0",
        "0",
        "tell the chain is off its wheel",
        "2");
    assertThat(typed.screen()).contains("Which do you mean?");
    assertThat(moment().state().answers()).anyMatch(a -> !a.check().startsWith("danger"));
  }

  @Test
  void while_a_danger_is_made_safe_nothing_else_is_taken_up() {
    told("he is trapped", "yes", "tell the display is dark");
    assertThat(typed.stored()).last().isEqualTo(new Event.Noted("the display is dark"));
    assertThat(moment().step()).isInstanceOf(Step.MakeSafe.class);
  }
}
