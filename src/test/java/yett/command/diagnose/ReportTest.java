package yett.command.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
}
