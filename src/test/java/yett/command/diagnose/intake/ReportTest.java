package yett.command.diagnose.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.command.diagnose.TypedCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** Complaints and recent events, picked from their lists. */
class ReportTest {
  @TempDir private Path folder;

  @Test
  void what_was_picked_is_said_back_whether_by_number_or_by_name() {
    String slow = Shipped.BASE.checks().get("slow").ask();
    try (TypedCase typed = new TypedCase(folder, Shipped.QUICK, Role.TECHNICIAN)) {
      typed.begin("0", "");
      typed.type("slow; chain-hangs", "1");

      assertThat(typed.screen().replaceAll("\\s+", " "))
          .contains("Noted: " + slow + "; ")
          .contains("Noted: " + Shipped.BASE.histories().values().iterator().next().name() + ".");
    }
  }

  @Test
  void a_picked_complaint_that_tells_of_a_danger_has_it_asked_about() {
    try (TypedCase typed = new TypedCase(folder, Shipped.QUICK, Role.TECHNICIAN)) {
      typed.begin("0", "");
      typed.type("moves-alone", "yes");

      assertThat(typed.screen()).contains("That may mean danger:", "DANGER:");
      assertThat(typed.stored())
          .contains(
              new Event.Complained(List.of("moves-alone")),
              new Event.Answered("danger-movement", new Answer.Chosen("moved-by-itself")));
    }
  }

  @Test
  void a_picked_complaint_that_tells_of_no_danger_has_none_asked_about() {
    try (TypedCase typed = new TypedCase(folder, Shipped.QUICK, Role.TECHNICIAN)) {
      typed.begin("0", "");
      typed.type("slow");

      assertThat(typed.screen()).doesNotContain("That may mean danger:");
    }
  }
}
