package yett.practice.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.interview.course.Expertise;
import yett.knowledge.Problem;
import yett.knowledge.Role;
import yett.practice.Exercise;
import yett.practice.Exercises;
import yett.practice.Notebook;
import yett.practice.Result;
import yett.record.Markdown;
import yett.replay.SmallRuleBase;

class CourseTest {
  private static final Expertise EXPERTISE = SmallRuleBase.expertise();
  private static final String COURSE =
      """
      course: harrow-quay-spring
      title: Spring at Harrow Quay
      trainees: [Ada, Tom, Bea, Kit]
      exercises:
        - {area: "", seed: 11}
        - {seed: 12}
      """;
  private static final List<PlanAverage> AVERAGES =
      List.of(new PlanAverage(50, 20, 12), new PlanAverage(100, 0, 12));

  @TempDir private Path folder;

  private static Course course() {
    CourseFile file = CourseFile.read("spring.yaml", COURSE, List.of("chain"));
    assertThat(file.problems()).isEmpty();
    return file.course().orElseThrow();
  }

  private static Result result(
      String trainee, int number, int slips, boolean right, int guesses, double minutes) {
    return new Result(
        Instant.EPOCH.plusSeconds(number),
        "exercise",
        number,
        "chain",
        "easy",
        right,
        "",
        minutes,
        0,
        1,
        0,
        slips,
        0,
        30.0,
        Optional.of(guesses),
        Optional.of(new Result.Sitting("harrow-quay-spring", trainee, number, "cards")));
  }

  private static ClassTable table(Result... results) {
    return ClassTable.of(course(), List.of(results), AVERAGES, "cards");
  }

  private static List<String> order(Result... results) {
    return table(results).rows().stream().map(ClassTable.Row::trainee).toList();
  }

  @Test
  void all_that_is_wrong_in_a_course_is_told_in_its_place() {
    CourseFile file =
        CourseFile.read(
            "spring.yaml",
            """
            course: spring
            trainees: [Ada, ada]
            exercises:
              - {area: chian, level: esay, seed: 11}
              - {seed: often}
            """,
            List.of("chain"));
    assertThat(file.course()).isEmpty();
    assertThat(file.problems())
        .extracting(Problem::kind)
        .contains("trainee-twice", "no-area", "no-seed");
    assertThat(file.problems()).allSatisfy(p -> assertThat(p.line()).isPositive());
  }

  @Test
  void whoever_was_quick_and_unsafe_stands_below_whoever_was_slow_and_safe() {
    assertThat(order(result("Ada", 1, 1, true, 0, 10), result("Tom", 1, 0, true, 0, 200)))
        .startsWith("Tom", "Ada");
  }

  @Test
  void whoever_hands_over_at_once_stands_below_whoever_mended_with_one_slip() {
    assertThat(order(result("Ada", 1, 0, false, 0, 5), result("Tom", 1, 1, true, 0, 200)))
        .startsWith("Tom", "Ada");
    assertThat(order(result("Ada", 1, 0, false, 0, 5), result("Tom", 1, 2, true, 0, 200)))
        .as("whoever is careless is worse than whoever leaves it alone")
        .startsWith("Ada", "Tom");
  }

  @Test
  void a_lucky_guess_stands_below_a_fault_that_was_confirmed() {
    assertThat(order(result("Ada", 1, 0, true, 1, 10), result("Tom", 1, 0, true, 0, 200)))
        .startsWith("Tom", "Ada");
  }

  @Test
  void time_and_parts_are_held_against_the_average_and_only_where_a_gate_was_put_right() {
    ClassTable.Row ada =
        table(result("Ada", 1, 0, true, 0, 75), result("Ada", 2, 0, false, 0, 9)).rows().get(0);
    assertThat(ada.time().getAsDouble()).isCloseTo(1.5, within(1e-9));
    assertThat(ada.parts().getAsDouble()).isCloseTo(10, within(1e-9));
    assertThat(ada.done()).isEqualTo(2);
    assertThat(ada.putRight()).isEqualTo(1);
  }

  @Test
  void what_does_not_count_is_said_and_nobody_is_left_out() {
    Result other = result("Zoe", 1, 0, true, 0, 10);
    ClassTable table =
        table(
            result("Ada", 1, 0, true, 0, 10),
            result("Ada", 1, 0, true, 0, 5),
            result("Tom", 9, 0, true, 0, 5),
            other);
    assertThat(table.unused())
        .contains(
            "Exercise 1 of Ada: done again; the first time counts.",
            "Exercise 9 of Tom: the course has no such exercise.",
            "Exercise 1 of Zoe: nobody of this name is in the course.");
    assertThat(table.rows()).hasSize(4);
    assertThat(ClassTable.of(course(), List.of(other), AVERAGES, "later cards").unused())
        .isNotEmpty();
  }

  @Test
  void a_misspelt_name_is_answered_with_the_nearest_one() {
    Course course = course();
    Course max =
        new Course(course.id(), course.title(), course.role(), List.of("Max Ford"), course.tasks());
    assertThat(
            ClassTable.of(max, List.of(result("Max Fort", 1, 0, true, 0, 10)), AVERAGES, "cards")
                .unused())
        .containsExactly(
            "Exercise 1 of Max Fort: nobody of this name is in the course. Maybe Max Ford?");
  }

  @Test
  void results_of_two_computers_are_read_each_once_and_a_broken_line_is_told() throws IOException {
    Path one = folder.resolve("one");
    Notebook notebook = new Notebook(one);
    notebook.finish(result("Ada", 1, 0, true, 0, 10));
    Path copy = Files.copy(notebook.results(), folder.resolve("copy.jsonl"));
    Files.writeString(copy, Files.readString(copy) + "{\"at\": 5\n");
    ResultFiles read = ResultFiles.read(List.of(notebook.results(), copy));
    assertThat(read.results()).containsExactly(result("Ada", 1, 0, true, 0, 10));
    assertThat(read.problems()).singleElement().asString().contains("copy.jsonl:2: ");
  }

  @Test
  void a_line_of_an_earlier_version_is_read_and_counts_in_no_course() throws IOException {
    Path old = folder.resolve("practice.jsonl");
    Files.writeString(
        old,
        """
        {"at":"2026-01-01T00:00:00Z","exercise":"e","seed":1,"area":"chain","level":"easy","putRight":true,"ended":"","minutes":1.0,"cost":1.0,"planMinutes":1.0,"planCost":1.0,"slips":0,"hints":0}
        """);
    ResultFiles read = ResultFiles.read(List.of(old));
    assertThat(read.problems()).isEmpty();
    assertThat(read.results().get(0).guesses()).isEmpty();
    assertThat(table(read.results().get(0)).unused()).isEmpty();
  }

  /** What somebody writes who means no good: nothing of it stops the others from being counted. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "null",
        "[]",
        "{\"at\":\"2026-11-25T09:30:00Z\",\"exercise\":\"x\",\"ended\":\"y\",\"minutes\":1e999}",
        "{\"at\":\"2026-11-25T09:30:00Z\",\"exercise\":\"x\",\"ended\":\"y\",\"slips\":-5}",
        "{\"at\":\"2026-11-25T09:30:00Z\",\"exercise\":\"x\",\"ended\":\"y\",\"course\":{}}",
        "{\"course\":{\"course\":\"quay\",\"trainee\":\"Ada\",\"number\":1,\"ruleBase\":\"\"}}"
      })
  void a_line_that_no_exercise_can_have_left_is_told_and_passed_over(String line)
      throws IOException {
    Path file = Files.writeString(folder.resolve("odd.jsonl"), line + "\n");

    ResultFiles read = ResultFiles.read(List.of(file));

    assertThat(read.results()).isEmpty();
    assertThat(read.problems()).singleElement().asString().contains("odd.jsonl:1: this line is no");
  }

  @Test
  void a_file_of_nothing_but_broken_lines_is_read_no_further_than_anybody_reads()
      throws IOException {
    Path file = Files.writeString(folder.resolve("odd.jsonl"), "x\n".repeat(100_000));

    assertThat(ResultFiles.read(List.of(file)).problems()).hasSizeLessThan(30);
  }

  @Test
  void the_sheet_keeps_what_the_solution_tells() {
    Exercise exercise =
        new Exercises(EXPERTISE).drawn(Optional.empty(), Optional.empty(), Role.TECHNICIAN, 11);
    CoursePaper paper = new CoursePaper(EXPERTISE, course());
    Markdown sheet = new Markdown();
    paper.sheet(sheet, List.of(exercise));
    Markdown solution = new Markdown();
    PlanAverage average = PlanAverage.of(EXPERTISE, exercise, 3, () -> {});
    paper.solution(solution, List.of(exercise), List.of(average));
    String fault = EXPERTISE.base().causes().get(exercise.truth().iterator().next()).name();
    assertThat(sheet.toString()).contains("Exercise 1", "Reported").doesNotContain(fault);
    assertThat(solution.toString()).contains("model solution", fault, "over 3 gates");
    Markdown cheap = new Markdown();
    paper.solution(cheap, List.of(exercise), List.of(new PlanAverage(50, 0, 12)));
    assertThat(cheap.toString()).contains(", no parts, over 12 gates");
    Markdown dear = new Markdown();
    paper.solution(dear, List.of(exercise), List.of(new PlanAverage(50, 20, 12)));
    assertThat(dear.toString()).contains(" and parts for 20, over 12 gates");
    assertThat(average.minutes()).isPositive();
    assertThat(PlanAverage.of(EXPERTISE, exercise, 3, () -> {})).isEqualTo(average);
  }
}
