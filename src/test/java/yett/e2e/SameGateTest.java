package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tests a second call about a gate with an open case, under another name for the gate. */
class SameGateTest {
  @TempDir private Path home;

  @BeforeEach
  void firstCall() {
    Pipe.Result first =
        run("it does not open\n0\nIna Teal, quay 4, 555 0107\n1\n0\n0\nx\n", "call", "Fish dock");
    assertThat(first.exitCode()).as(first.stderr()).isZero();
  }

  private Pipe.Result run(String stdin, String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString()), stdin, words);
  }

  @Test
  void nearly_the_same_name_is_asked_about() {
    Pipe.Result second = run("1\n1\nx\n", "call", "the fish docks gate");

    assertThat(second.stdout()).contains("Is it this gate?", "This gate has an open case");
    assertThat(run("", "calls").stdout()).contains("1 call is open.");
  }

  /** What is said instead of a number is danger as at any other prompt, in either case. */
  @ParameterizedTest
  @ValueSource(strings = {"1", "0"})
  void words_at_the_choice_of_a_case_are_taken_up(String choice) {
    Pipe.Result second =
        run("there is a fire in the shed\n" + choice + "\nx\n", "call", "Fish dock");

    assertThat(second.stdout())
        .containsSubsequence(
            "This gate has an open case", "Kept, and taken up in a moment", "That may mean danger")
        .doesNotContain("Type it as the caller says it");
  }

  /** What else is said on the line does not hide a number that is known. */
  @Test
  void a_known_number_finds_the_gate_within_a_sentence() {
    assertThat(run("1\n1\nx\n", "call", "555 0107, it's about the gate by the quay").stdout())
        .contains("Is it this gate?", "Fish dock", "This gate has an open case");
  }

  /** A technician barred the gate and went: on the telephone nobody runs it or switches it on. */
  @Test
  void a_gate_that_was_left_barred_is_not_run_by_a_caller() {
    String barred = run("8\ndone\n\nsave\n", "inspect", "Tide dock").stdout();
    assertThat(barred).contains("opening barred, users kept away");

    String call =
        run("the gate is dead\n0\ndone\n4\nSam, Tide dock, 555 0111\nx\n", "call", "Tide dock")
            .stdout();

    assertThat(call)
        .contains("The gate has been taken out of use", "Nobody takes one off")
        .doesNotContain("press once to open", "Switch the gate on");
    assertThat(call.indexOf("Somebody is hurt")).isLessThan(call.indexOf("Leave every lock"));
    assertThat(call).contains("How urgent is it?", "Send somebody").doesNotContain("Emergency");
    assertThat(run("", "dispatch", "3").stdout())
        .contains("The gate has been taken out of use")
        .doesNotContainIgnoringCase("at once");
  }

  /** A gate of which only an open case is known is a gate as any other. */
  @Test
  void the_gates_of_open_cases_are_known() {
    run("it is dead\n0\n\n1\n0\n0\nx\n", "call", "Ropewalk 3");

    assertThat(run("", "call").stdout()).contains("Which gate?", "Fish dock", "Ropewalk 3");
    assertThat(run("1\n1\nx\n", "call", "rope walk").stdout())
        .contains("Is it this gate?", "This gate has an open case");
    assertThat(run("1\nx\n", "call", "Ropewalk 3").stdout())
        .contains("This gate has an open case")
        .doesNotContain("Is it this gate?");
  }

  /** Whoever rings now may know what the first caller did not. */
  @Test
  void what_nobody_could_say_is_asked_again_on_the_next_call() {
    run("hello\nunknown all\n\nd\nd\nd\nx\n", "call", "Slipway");
    assertThat(run("", "calls").stdout()).contains("at once · Slipway");

    Pipe.Result second =
        run(
            "1\nits Sal now, it just sits half open and hums when you press it\n0\n\n1\n0\n3\nx\n",
            "call",
            "Slipway");

    assertThat(second.stdout())
        .contains("Understood", "At that time nobody could say", "standing open");
    assertThat(run("", "dispatch", "2").stdout()).contains("the site stands open");
  }

  @Test
  void the_same_number_leads_to_the_open_case_and_nothing_is_said_twice() {
    Pipe.Result second =
        run("it does not close either\n0\nIna, 555-0107\n1\n0\nx\n", "call", "Ropewalk");

    assertThat(second.stdout())
        .contains("Open under this name or number", "Case 2026-0001 at Fish dock")
        .containsOnlyOnce("In the caller's own words");
    assertThat(run("", "calls").stdout()).contains("Fish dock", "1 call is open.");
    assertThat(run("", "record", "2").stdout()).contains("the same as case 2026-0001");
    assertThat(run("", "dispatch", "1").stdout()).contains("it does not close either");
  }

  @Test
  void the_open_case_is_told_after_a_danger_that_came_with_the_number() {
    String call = "it is dead\n0\nIna, 555-0107, it hit my daughter\n1\ndone\n\n\nx\n";
    assertThat(run(call, "call", "Ropewalk").stdout())
        .contains("Open under this name or number, too: Case 2026-0001 at Fish dock");
  }

  @Test
  void who_had_the_call_before_is_told() {
    run("", "calls", "agent", "Ana Brook");
    assertThat(run("", "calls", "take", "1").stdout()).doesNotContain("It was with");
    run("", "calls", "agent", "Ben Reed");
    assertThat(run("", "calls", "take", "1").stdout()).contains("It was with Ana Brook.");
    assertThat(run("", "calls").stdout()).contains("with Ben Reed");
  }

  @Test
  void another_matter_stays_a_case_of_its_own() {
    run("it does not close\n0\nIna, 555-0107\n0\nx\n", "call", "Ropewalk");

    assertThat(run("", "calls").stdout()).contains("Fish dock", "Ropewalk", "2 calls are open.");
  }

  @Test
  void a_second_caller_is_kept_beside_the_first() {
    Pipe.Result second =
        run(
            "1\nit still does not open\n0\nBen Moss, the office, 555 0199\n0\nx\n",
            "call",
            "Fish dock");

    assertThat(second.stdout()).contains("or if it is again Ina Teal");
    assertThat(run("", "dispatch", "1").stdout())
        .contains("Ina Teal and Ben Moss, 555 0107 (Ina Teal), 555 0199 (Ben Moss)")
        .contains("quay 4; the office");
    assertThat(run("", "cases", "people", "--person", "ben moss").stdout())
        .contains("other caller");
  }

  @Test
  void the_same_caller_again_is_one_person() {
    run("1\nit still does not open\n0\nIna again\n0\nx\n", "call", "Fish dock");

    assertThat(run("", "dispatch", "1").stdout()).contains("Called by: Ina Teal, 555 0107");
  }

  /** Whoever stands before the wrong gate has to call back. */
  @Test
  void a_number_that_is_not_known_is_asked_for_once_when_somebody_goes() {
    Pipe.Result call =
        run(
            "it is dead\n0\nAna\n1\n0\n0\nhand over\n\nsend\nTom, 14:30\nno idea, ask her\n555"
                + " 0111\n",
            "call",
            "Slipway");
    assertThat(call.stdout())
        .contains("Type the number, or none.", "The sheet for whoever goes: dispatch");
    assertThat(run("", "dispatch", "2").stdout()).contains("Ana, 555 0111");

    Pipe.Result none =
        run("it is dead\n0\nBo\n1\n0\n0\nhand over\n\nsend\n\nnone\n", "call", "Ropewalk");
    assertThat(none.stdout()).contains("The sheet for whoever goes: dispatch");
  }

  @Test
  void how_urgent_it_is_is_asked_again() {
    assertThat(run("", "dispatch", "1").stdout()).contains("nothing at the site makes it urgent");

    Pipe.Result second = run("1\n1\nit stands open now\n0\n\n0\n1\nx\n", "call", "Fish dock");

    assertThat(second.stdout())
        .contains("At that time none applied", "Was this said as well?")
        .containsOnlyOnce("How urgent is it now?");
    assertThat(run("", "dispatch", "1").stdout())
        .doesNotContain("nothing at the site makes it urgent");
  }

  @Test
  void an_inspection_is_told_of_and_not_offered_to_a_caller() {
    run("0\n\nsave\n", "inspect", "Slipway");

    Pipe.Result call = run("it does not open\n0\n\n1\n0\n0\nx\n", "call", "Slipway");

    assertThat(call.stdout())
        .doesNotContain("This gate has an open case")
        .contains("Inspection 2026-0002 at this gate is not finished: left open");
  }

  @Test
  void what_a_gate_does_not_have_is_no_danger_that_was_left_out() {
    run("", "gates", "usual", "batteries=none");

    run("it does not open\n0\n\n1\n0\n0\nx\n", "call", "Slipway");

    assertThat(run("", "dispatch", "2").stdout())
        .contains("nothing at the site makes it urgent")
        .doesNotContain("the list was not finished");
  }

  @Test
  void a_part_of_a_known_name_is_asked_about() {
    run("", "calls", "agent", "Maud O'Hare");
    assertThat(run("yes\n", "calls", "give", "1", "maud").stdout())
        .contains("given to: Maud O'Hare");
    assertThat(run("no\n", "calls", "give", "1", "Maud").stdout()).contains("given to: Maud.");
    assertThat(run("", "calls", "give", "1", "maud").stdout()).contains("given to: Maud.");
  }

  @Test
  void a_misspelt_name_is_asked_about_and_without_an_answer_nothing_is_given() {
    run("", "calls", "agent", "Maud O'Hare");

    Pipe.Result unanswered = run("", "calls", "give", "1", "Maudd");

    assertThat(unanswered.exitCode()).isEqualTo(64);
    assertThat(unanswered.stderr()).contains("Nothing was changed", "Maud O'Hare");
    assertThat(run("", "calls").stdout()).doesNotContain("Maud");
    assertThat(run("yes\n", "calls", "give", "1", "Maudd").stdout())
        .contains("given to: Maud O'Hare");
  }

  /** The word stands on the screen at the end of a call, so it is typed before that too. */
  @Test
  void somebody_is_sent_before_the_questions_are_through() {
    String call =
        "it is dead\n0\nSal, 555 0119\n1\n0\n0\nsend\nnobody can look\nsend\nTom, in 40 min\n";

    assertThat(run(call, "call", "Slipway").stdout())
        .contains("Send somebody", "somebody will be there by");
    assertThat(run("", "calls").stdout()).contains("Tom, in 40 min");
  }
}
