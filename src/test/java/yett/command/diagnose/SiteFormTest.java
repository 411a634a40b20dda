package yett.command.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** "Enter if all is right" stands below what is to be right. */
class SiteFormTest {
  private static final String PAGE = "Taken as usual:";

  @TempDir private Path folder;
  private TypedCase typed;

  @BeforeEach
  void begin() {
    typed = new TypedCase(folder, Shipped.QUICK, Role.TECHNICIAN);
  }

  @AfterEach
  void end() {
    typed.close();
  }

  @Test
  void the_gate_is_shown_again_after_what_was_told_in_between() {
    typed.type("0", "since the chain was changed yesterday an alarm sounds", "1", "", "");
    assertThat(typed.screen().split(PAGE, -1)).hasSize(3);
  }

  @Test
  void a_line_that_is_changed_is_told_by_itself() {
    typed.type("0", "6 m");
    assertThat(typed.screen().split(PAGE, -1)).hasSize(2);
  }
}
