package yett.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Role;
import yett.replay.SmallRuleBase;

class NotebookTest {
  private static final Notebook.Begun BEGUN =
      new Notebook.Begun("5ca1ab1e", "", "", "chain", "easy", "technician", 4711);
  private static final PracticeEntry SEEN =
      PracticeEntry.of(new Event.Answered("noise-kind", new Answer.Chosen("slap")));

  @TempDir private Path folder;

  @Test
  void what_was_kept_is_there_again_and_a_line_cut_off_by_a_power_cut_costs_that_line_only()
      throws IOException {
    Notebook notebook = new Notebook(folder.resolve("new"));
    assertThat(notebook.left()).isEmpty();
    notebook.begin(BEGUN);
    notebook.keep(SEEN);
    notebook.keep(PracticeEntry.of(new Slip(3, "Chain sag", "the gate may start")));
    Path file = folder.resolve("new/practice-open.jsonl");
    Files.writeString(file, "{\"event\":{\"type\":\"ans", StandardOpenOption.APPEND);
    notebook.keep(PracticeEntry.hint("Try the gate"));
    Notebook.Left left = new Notebook(folder.resolve("new")).left().orElseThrow();
    assertThat(left.begun()).isEqualTo(BEGUN);
    assertThat(left.entries())
        .containsExactly(
            SEEN,
            PracticeEntry.of(new Slip(3, "Chain sag", "the gate may start")),
            PracticeEntry.hint("Try the gate"));
  }

  @Test
  void an_end_is_added_to_what_was_practised_before_and_nothing_is_left() {
    Notebook notebook = new Notebook(folder);
    notebook.begin(BEGUN);
    notebook.finish(result("chain", true, 30, 20, 0));
    notebook.finish(result("battery", false, 10, 20, 2));
    assertThat(notebook.left()).isEmpty();
    TraineeProgress progress = notebook.progress();
    assertThat(progress.areas())
        .extracting(TraineeProgress.Area::name)
        .containsExactly("battery", "chain");
    assertThat(progress.weak()).extracting(TraineeProgress.Area::name).containsExactly("battery");
    assertThat(progress.ratio()).hasValue(1.5);
  }

  @Test
  void what_was_weak_long_ago_is_weak_no_more() {
    List<Result> results =
        List.of(
            result("chain", false, 100, 20, 3),
            result("chain", true, 20, 20, 0),
            result("chain", true, 20, 20, 0),
            result("chain", true, 20, 20, 0),
            result("chain", true, 20, 20, 0),
            result("chain", true, 20, 20, 0));
    assertThat(new TraineeProgress(results).weak()).isEmpty();
    assertThat(new TraineeProgress(results.subList(0, 2)).weak()).isNotEmpty();
  }

  @Test
  void the_same_seed_is_the_same_exercise_and_wishes_are_kept() {
    Exercises exercises = new Exercises(SmallRuleBase.expertise());
    Optional<String> supply = Optional.of("supply");
    for (long seed = 0; seed < 8; seed++) {
      Exercise one = exercises.drawn(supply, Optional.empty(), Role.TECHNICIAN, seed);
      Exercise two = exercises.drawn(supply, Optional.empty(), Role.TECHNICIAN, seed);
      assertThat(one).isEqualTo(two);
      assertThat(one.area()).isEqualTo("supply");
      assertThat(one.told().complaints()).isNotEmpty();
    }
    Exercise hard = exercises.drawn(Optional.empty(), Optional.of(Level.HARD), Role.ELECTRICIAN, 3);
    assertThat(hard.level()).isEqualTo(Level.HARD);
    assertThat(hard.truth().size()).isGreaterThan(1);
  }

  private static Result result(
      String area, boolean putRight, double minutes, double plan, int slips) {
    return new Result(
        Instant.EPOCH,
        "exercise 1",
        1,
        area,
        "easy",
        putRight,
        "",
        minutes,
        0,
        plan,
        0,
        slips,
        0,
        0.0,
        Optional.of(0),
        Optional.empty());
  }
}
