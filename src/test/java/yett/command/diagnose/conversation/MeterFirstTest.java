package yett.command.diagnose.conversation;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.command.diagnose.TypedCase;
import yett.desk.OpenCase;
import yett.interview.step.Step;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** Nobody locks a gate off for a few minutes saved before a meter was on it. */
class MeterFirstTest {
  @TempDir private Path folder;

  @Test
  void at_a_battery_warning_the_charging_voltage_comes_before_a_lock_off() {
    try (TypedCase typed = new TypedCase(folder, Shipped.EXPERTISE, Role.TECHNICIAN)) {
      typed.begin("0", "battery age 4 years", "", "slow, low-battery-warning", "0");
      try (OpenCase open = typed.open()) {
        assertThat(open.moment().step())
            .isInstanceOfSatisfying(
                Step.Enter.class,
                enter -> {
                  assertThat(enter.setUp().id()).isEqualTo("cover-off");
                  assertThat(enter.purpose().toString()).contains("charging-voltage");
                });
      }
    }
  }
}
