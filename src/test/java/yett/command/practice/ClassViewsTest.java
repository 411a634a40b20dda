package yett.command.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import yett.knowledge.Role;
import yett.practice.course.ClassTable;
import yett.practice.course.Course;

class ClassViewsTest {
  private static String table(double parts) {
    ClassTable.Row row =
        new ClassTable.Row(
            "Ada Bell", 2, 0, 1, 1, 0, OptionalDouble.of(0.87), OptionalDouble.of(parts));
    return ClassViews.table(
            new Course("spring", "Spring course", Role.TECHNICIAN, List.of("Ada Bell"), List.of()),
            new ClassTable(List.of(row), List.of()),
            12)
        .toString();
  }

  @Test
  void parts_that_come_to_nothing_are_said_to_be_as_the_plan_s() {
    assertThat(table(-0.33)).contains("parts: as the plan").doesNotContain("-0");
    assertThat(table(12.4)).contains("parts: +12 a gate");
    assertThat(table(-7)).contains("parts: -7 a gate");
  }

  private static final ClassTable MIXED =
      new ClassTable(
          List.of(
              new ClassTable.Row(
                  "Ada Bell", 1, 1, 1, 1, 0, OptionalDouble.of(1), OptionalDouble.of(0)),
              new ClassTable.Row(
                  "Tom Reeve", 2, 0, 0, 0, 0, OptionalDouble.empty(), OptionalDouble.empty()),
              new ClassTable.Row(
                  "Max Ford", 0, 0, 0, 0, 0, OptionalDouble.empty(), OptionalDouble.empty())),
          List.of("Exercise 1 of Max Fort: nobody of this name is in the course."));

  @Test
  void a_gate_not_put_right_is_shown_among_the_errors_by_which_the_table_is_sorted() {
    Course course = new Course("spring", "Spring", Role.TECHNICIAN, List.of(), List.of());
    assertThat(ClassViews.table(course, MIXED, 12).toString())
        .contains("errors: 1 (safety 1, not put right 0), put right: 1 of 1")
        .contains("errors: 2 (safety 0, not put right 2), put right: 0 of 2")
        .contains("a gate that was not put right counting as one");
  }

  @Test
  void the_sheet_says_what_is_missing_and_what_does_not_count() {
    assertThat(ClassViews.csv(MIXED).lines())
        .anyMatch(l -> l.equals("\"Max Ford\",0,,,,,,,\"no result\""))
        .anyMatch(l -> l.contains("Not counted: Exercise 1 of Max Fort"));
  }
}
