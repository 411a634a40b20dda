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
}
