package yett.command.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.console.Layout;
import yett.console.PlainConsole;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.practice.Exercise;
import yett.practice.Exercises;
import yett.practice.Workbench;
import yett.replay.CaseFile;
import yett.testing.Shipped;

/** What a trainee sees on the way through an exercise. */
class PracticeTableTest {
  private static final RuleBase BASE = Shipped.BASE;
  private static final String LOCKED = label(SetUp.LOCKED_OFF);

  private static String label(String setUp) {
    return new LabelledCards(BASE)
        .all().stream()
            .filter(t -> t.card().equals(BASE.setUps().get(setUp)))
            .findFirst()
            .orElseThrow()
            .label();
  }

  private static String screens(String... typed) {
    CaseFile file =
        CaseFile.read(
            "quay.case.yaml",
            """
            case: tank-farm-heavy-leaf
            person: technician
            complaints: [scrapes]
            truth: [wheel-worn]
            """,
            BASE);
    Exercise exercise = new Exercises(Shipped.EXPERTISE).of(file.cases().get(0), 1).orElseThrow();
    ByteArrayOutputStream screen = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(screen, true, StandardCharsets.UTF_8);
    PlainConsole console =
        new PlainConsole(
            new ByteArrayInputStream(
                (String.join("\n", typed) + "\n").getBytes(StandardCharsets.UTF_8)),
            out,
            out,
            new Layout(1000, false, true),
            true);
    try (Workbench bench = new Workbench(Shipped.EXPERTISE, exercise, List.of(), entry -> {})) {
      new PracticeTable(console, bench, BASE).run();
    }
    return screen.toString(StandardCharsets.UTF_8).replaceAll("\\s+", " ");
  }

  @Test
  void the_steps_out_of_a_set_up_are_shown_like_those_into_it() {
    SetUp lockedOff = BASE.setUps().get(SetUp.LOCKED_OFF);
    String entered = screens("dangers", LOCKED, "", "done");
    assertThat(entered).contains(lockedOff.enter()).doesNotContain(lockedOff.leave().get(0));
    assertThat(screens("dangers", LOCKED, "", "done", LOCKED, "done")).contains(lockedOff.leave());
  }

  @Test
  void done_means_no_check_where_nothing_waits_for_it() {
    assertThat(screens("dangers", "done"))
        .contains("Nothing is waiting for that.")
        .doesNotContain("Which of these?");
  }

  @Test
  void what_has_to_be_left_first_is_said_before_the_question_whether_to_hand_over() {
    String released = label("leaf-released");
    assertThat(screens("dangers", LOCKED, "", "done", released, "", "done", "hand over", "so far"))
        .contains("To leave first: " + released)
        .doesNotContain("\"yes\" ends the exercise", "To leave first: " + LOCKED);
  }
}
