package yett.command.diagnose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yett.command.diagnose.TechniciansCase;
import yett.interview.event.Event;

/** The list of open checks, a check asked for, and a cause suspected. */
class CheckListTest extends TechniciansCase {
  private static final String[] BEGINNING = {"0", "", "4", "0"};

  private String typed(String... lines) {
    typed.begin(BEGINNING);
    typed.type(lines);
    return typed.screen();
  }

  private List<Event> wishes() {
    return typed.stored().stream().filter(Event.AskedFor.class::isInstance).toList();
  }

  @Test
  void the_list_comes_in_pages_and_a_number_takes_a_check() {
    String screen = typed("checks", "", "7");
    assertThat(screen)
        .contains("Checks that pay now: 1 to 5 of", "Checks that pay now: 6 to 10 of");
    assertThat(screen).contains("bears on", "min");
    assertThat(wishes()).hasSize(1);
  }

  /** Nobody reads through 170 checks for the one that helps. */
  @Test
  void what_pays_comes_first_and_the_others_by_place_when_asked_for() {
    String[] pages = new String[45];
    java.util.Arrays.fill(pages, "");
    pages[0] = "checks";
    String screen = typed(pages);
    assertThat(screen).containsPattern("Enter for \\d+ others by place, 0 to go back");
    int others = screen.indexOf("Other checks, by place");
    assertThat(others).isPositive();
    assertThat(screen.substring(0, others)).doesNotContain("adds little now");
    assertThat(screen.substring(others)).doesNotContain("bears on").contains("along the track;");
  }

  @Test
  void where_a_name_lacks_some_of_the_words_others_are_offered_with_it() {
    assertThat(typed("suspect twisted guide bracket", "", "save"))
        .contains(
            "Which cause? The first fits best 1 Guide bracket or guide post bent",
            "Chain bracket loose or bent on the leaf");
    assertThat(typed("suspect chain bracket loose", "", "save"))
        .contains("Chain bracket loose or bent on the leaf: where this figure comes from");
  }

  /** "Too" is in no name as a word that counts, and yet the name is complete. */
  @Test
  void the_full_name_of_a_cause_means_that_cause() {
    assertThat(typed("suspect chain too slack", "save"))
        .contains("Chain too slack: where this figure comes from")
        .doesNotContain("Which cause?");
  }

  @Test
  void the_list_is_left_without_a_wish() {
    typed("checks", "0", "checks", "99", "0");
    assertThat(wishes()).isEmpty();
    assertThat(typed.screen()).contains("Type a number from 1 to 5.");
  }

  @Test
  void what_goes_at_every_prompt_goes_at_the_list() {
    assertThat(typed("checks", "note wet ground"))
        .contains("Noted.")
        .doesNotContain("Type a number");
  }

  /** Back leaves the list and takes no answer back. */
  @Test
  void back_leaves_the_list() {
    typed("checks", "back", "save");
    assertThat(typed.stored()).noneMatch(Event.Retracted.class::isInstance);
    assertThat(wishes()).isEmpty();
  }

  @Test
  void a_cause_is_suspected_by_a_word_of_what_puts_it_right() {
    assertThat(typed("suspect selector", "save"))
        .contains("Input voltage setting does not match the supply")
        .doesNotContain("No cause matches");
  }

  /** Why the gate has to be in this state is why its check is asked. */
  @Test
  void why_at_a_set_up_tells_what_the_check_behind_it_can_show() {
    assertThat(typed("ask charging-fuse", "why", "save"))
        .contains("The next step needs the gate in this state", "Tells apart:", ". Then ");
  }

  @Test
  void only_a_question_mark_shows_the_cautions_again() {
    String danger = "DANGER:";
    assertThat(typed("ask charging-fuse", "", "help", "save").split(danger, -1)).hasSize(2);
    typed.type("?", "save");
    assertThat(typed.screen().split(danger, -1)).hasSize(4);
  }

  @Test
  void why_is_answered_at_the_list() {
    assertThat(typed("checks", "why")).doesNotContain("Type a number").contains("Can show:");
  }

  @Test
  void a_check_for_somebody_else_names_who_may_and_why() {
    assertThat(typed("ask supply-fuse"))
        .contains(
            "it is for an electrician, because it is work on mains terminals; the firm may name"
                + " others.");
    assertThat(wishes()).isEmpty();
  }

  @Test
  void a_list_that_a_danger_has_overtaken_is_left() {
    assertThat(typed("checks", "he is trapped", "yes", "")).contains("People first");
    assertThat(typed.screen()).doesNotContain("Checks that pay now: 6 to 10 of");
  }

  @Test
  void a_check_is_asked_for_by_id_by_words_and_by_its_number_in_the_list() {
    typed("ask charging-fuse", "");
    assertThat(wishes()).containsExactly(new Event.AskedFor("charging-fuse"));
    assertThat(typed.screen()).contains("Set-up:", "DANGER:");
    typed.type("ask the display", "1", "checks", "0", "ask 3");
    assertThat(wishes()).hasSizeGreaterThan(1);
  }

  @Test
  void what_the_person_asked_for_says_so() {
    String screen = typed("ask display-lit", "why");
    assertThat(screen)
        .contains("You asked for it.", "Is a light or a display on", "you asked for it; it saves");
  }

  @Test
  void what_cannot_be_asked_says_why() {
    String screen =
        typed("ask mains-at-terminals", "ask limits-hold", "ask 3", "ask the moon", "ask");
    assertThat(screen)
        .contains(
            "it is for an electrician, because it is work at the mains.",
            "all proofs come once the gate runs again",
            "No list has been shown yet",
            "No check matches these words");
    assertThat(wishes()).isEmpty();
  }

  @Test
  void before_the_complaint_is_known_there_is_no_list() {
    typed.type("0", "checks", "ask display-lit", "save");
    assertThat(typed.screen()).contains("Before that comes the gate as installed.");
    assertThat(wishes()).isEmpty();
  }

  @Test
  void a_suspected_cause_is_weighed_and_what_settles_it_can_come_next() {
    String screen = typed("suspect beam-dirty", "yes");
    assertThat(screen)
        .contains("where this figure comes from", "at the outset", "The check that tells most");
    assertThat(wishes()).hasSize(1);
  }

  @Test
  void a_suspicion_alone_changes_nothing() {
    String screen = typed("suspect worn chain", "", "suspect the moon", "suspect solar-undersized");
    assertThat(screen)
        .contains("Chain or sprocket worn", "No cause matches these words", "cannot be here");
    assertThat(wishes()).isEmpty();
  }

  @Test
  void people_come_before_checks_and_causes() {
    String screen = typed("tell he is trapped", "yes", "checks", "suspect beam-dirty");
    assertThat(screen).contains("People first.").doesNotContain("Checks that pay now");
  }
}
