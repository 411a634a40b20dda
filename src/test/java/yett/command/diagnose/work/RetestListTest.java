package yett.command.diagnose.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.desk.OpenCase;
import yett.interview.event.Event;

class RetestListTest extends TechniciansCase {
  @Test
  void a_gate_that_is_tried_again_is_asked_about_with_the_same_lines() {
    try (OpenCase open = typed.open()) {
      open.record(new Event.Complained(List.of("slow", "runs-then-stops")));
      Sitting sitting = typed.sitting(open, "2", "1");
      RetestList list =
          new RetestList(sitting, new Questions(sitting, new PromptRequests(sitting)));
      list.ask(List.<Block>of(), "");
      assertThat(typed.screen()).contains("5 it still fails, hard to say how");
      list.ask(List.<Block>of(), "");
    }
    assertThat(typed.screen()).doesNotContain("6 it runs as it should");
    assertThat(typed.stored())
        .endsWith(new Event.Retested(false, java.util.Optional.of(true)), new Event.Retested(true));
  }

  private void runs(List<String> complaints, String... lines) {
    try (OpenCase open = typed.open()) {
      open.record(new Event.Complained(complaints));
      Sitting sitting = typed.sitting(open, lines);
      new RetestList(sitting, new Questions(sitting, new PromptRequests(sitting)))
          .ask(List.<Block>of(), "");
    }
  }

  /** A chain that no longer slaps says nothing about the batteries. */
  @Test
  void a_gate_that_runs_is_asked_about_what_a_run_does_not_show() {
    runs(List.of("noisy-chain", "low-battery-warning"), "1", "", "1");
    assertThat(typed.screen())
        .contains("1 Warns of low battery or low supply: a run or two does not drain")
        .doesNotContain("Chain rattles, slaps or cracks:");
    assertThat(typed.stored())
        .endsWith(Event.Retested.left(List.of("low-battery-warning"), List.of()));
  }

  @Test
  void what_comes_and_goes_is_not_gone_by_one_run() {
    runs(List.of("works-sometimes"), "1", "1");
    assertThat(typed.stored()).endsWith(new Event.Retested(false, java.util.Optional.of(true)));
  }

  @Test
  void what_has_gone_is_said_to_have_gone() {
    runs(List.of("works-sometimes"), "1", "0");
    assertThat(typed.stored()).endsWith(new Event.Retested(true));
  }

  @Test
  void what_nobody_can_tell_yet_is_kept_in_the_notes() {
    runs(List.of("slow", "works-sometimes"), "1", "unknown");
    assertThat(typed.stored())
        .endsWith(
            new Event.Noted(
                "for the customer: A run does not show whether this has gone: Works sometimes."
                    + " Tell us if it comes again."),
            new Event.Retested(true));
  }

  @Test
  void what_a_run_shows_is_not_asked_again() {
    runs(List.of("slow", "scrapes"), "1");
    assertThat(typed.screen()).doesNotContain("What a run does not show");
    assertThat(typed.stored()).endsWith(new Event.Retested(true));
  }

  /** Back at the second question leads to the first one; the repair before it stays. */
  @Test
  void back_at_what_is_left_takes_nothing_back() {
    try (OpenCase open = typed.open()) {
      open.record(new Event.Complained(List.of("slow", "runs-then-stops")));
      Sitting sitting = typed.sitting(open, "3", "back", "1");
      RetestList list =
          new RetestList(sitting, new Questions(sitting, new PromptRequests(sitting)));
      list.ask(List.<Block>of(), "");
      list.ask(List.<Block>of(), "");
    }
    assertThat(typed.stored())
        .noneMatch(Event.Retracted.class::isInstance)
        .endsWith(new Event.Retested(true));
  }

  /** What was picked at the first question is not asked again because of a word at the second. */
  @Test
  void help_at_what_is_left_comes_back_to_what_is_left() {
    try (OpenCase open = typed.open()) {
      open.record(new Event.Complained(List.of("slow", "runs-then-stops")));
      Sitting sitting = typed.sitting(open, "3", "?", "1");
      new RetestList(sitting, new Questions(sitting, new PromptRequests(sitting)))
          .ask(List.<Block>of(), "");
    }
    assertThat(typed.screen().split("What is left\\?", -1)).hasSize(3);
    assertThat(typed.stored()).endsWith(Event.Retested.left(List.of("slow"), List.of()));
  }
}
