package yett.command.diagnose.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.command.diagnose.TypedCase;
import yett.command.diagnose.question.PromptRequests;
import yett.console.Block;
import yett.desk.OpenCase;
import yett.interview.event.Event;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** Whoever reads a long screen can still say what matters more. */
class ReadScreensTest {
  private static final List<List<Block>> PAGES =
      List.of(List.of(Block.paragraph("Cautions.")), List.of(Block.paragraph("Steps.")));

  @TempDir private Path folder;
  private TypedCase typed;

  @BeforeEach
  void begin() {
    typed = new TypedCase(folder, Shipped.QUICK, Role.TECHNICIAN);
    typed.begin("0", "", "4", "0");
  }

  @AfterEach
  void end() {
    typed.close();
  }

  private void read(String... lines) {
    try (OpenCase open = typed.open()) {
      Sitting sitting = typed.sitting(open, lines);
      ReadScreens screens = new ReadScreens(sitting);
      screens.hears(new PromptRequests(sitting)::grantOrHear);
      screens.show(PAGES);
    }
  }

  @Test
  void danger_is_taken_where_only_enter_is_asked_for() {
    assertThatThrownBy(() -> read("danger", "")).isInstanceOf(MovedOnException.class);
    assertThat(typed.stored()).endsWith(new Event.DangersAgain());
    assertThat(typed.screen()).doesNotContain("Steps.");
  }

  @Test
  void words_of_danger_are_heard_there_too() {
    assertThatThrownBy(() -> read("smoke comes out of the motor", "1"))
        .isInstanceOf(MovedOnException.class);
    assertThat(typed.screen()).contains("That may mean danger:");
  }

  @Test
  void a_slip_of_the_keyboard_turns_no_page() {
    read("qq", "");
    assertThat(typed.screen()).contains("Press Enter to go on", "Steps.");
  }
}
