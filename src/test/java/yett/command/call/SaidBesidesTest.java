package yett.command.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.command.diagnose.TypedCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** What the first sentence of a call says besides the complaint is read back, and not asked. */
class SaidBesidesTest {
  private static final String TOO = "Was this said as well?";

  @TempDir private Path folder;

  @Test
  void a_breaker_that_the_caller_tells_of_is_found_at_once() {
    try (TypedCase call = new TypedCase(folder, Shipped.QUICK, Role.CALLER)) {
      call.type(
          "the gate is dead, a switch in the fuse box has fallen down",
          "0",
          "Ina",
          "1",
          "1",
          "yes");

      assertThat(call.screen()).contains(TOO, "is anything off, half way or pulled out");
      assertThat(call.stored())
          .contains(new Event.Answered("breaker-position", new Answer.Chosen("tripped")));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "none", ""})
  void none_of_it_counts_that_is_not_confirmed(String none) {
    try (TypedCase call = new TypedCase(folder, Shipped.QUICK, Role.CALLER)) {
      call.type(
          "the gate is dead, a switch in the fuse box has fallen down", "0", "Ina", "1", none);

      assertThat(call.screen()).contains(TOO, "How urgent is it?");
      assertThat(call.stored())
          .noneMatch(e -> e instanceof Event.Answered a && a.check().equals("breaker-position"));
    }
  }

  @Test
  void nothing_is_read_back_where_nothing_more_was_said() {
    try (TypedCase call = new TypedCase(folder, Shipped.QUICK, Role.CALLER)) {
      call.type("it opens but it does not close", "0", "Ina", "1");

      assertThat(call.screen()).doesNotContain(TOO).contains("How urgent is it?");
    }
  }
}
