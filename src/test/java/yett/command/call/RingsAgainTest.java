package yett.command.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.command.diagnose.TypedCase;
import yett.desk.OpenCase;
import yett.interview.event.Event;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** Two callers about one gate, on the line with two desks at once. */
class RingsAgainTest {
  @TempDir Path folder;

  @Test
  void the_second_caller_is_asked_about_dangers_although_the_first_has_just_answered() {
    try (TypedCase call = new TypedCase(folder, Shipped.QUICK, Role.CALLER);
        OpenCase second = call.open()) {
      second.record(new Event.DangersAgain());
      call.type("it stops half way and goes back", "0");

      call.conversation(second, "the gate closes on cars", "8", "done")
          .ringsAgain(false, List.of())
          .run();

      assertThat(call.screen())
          .contains(
              "Go on from here. Before anything else",
              "DANGER: The gate closes on people or vehicles.");
    }
  }
}
