package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

/** What is told in a danger comes in the order that keeps whoever does it whole. */
class StopOrderTest {
  private static List<String> technician(Stop stop) {
    return stop.now().getOrDefault(Role.TECHNICIAN, List.of()).stream()
        .map(Stop.Line::text)
        .toList();
  }

  private static int first(List<String> lines, String pattern) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).matches("(?i).*(" + pattern + ").*")) {
        return i;
      }
    }
    return lines.size();
  }

  @Test
  void people_are_sent_out_of_reach_before_anything_is_done_at_a_gate_that_moves_by_itself() {
    assertThat(technician(Shipped.BASE.stops().get("moves-uncommanded")).get(0))
        .contains("out of reach");
  }

  @Test
  void dead_is_proved_before_wires_are_taken_off() {
    for (Stop stop : Shipped.BASE.stops().values()) {
      List<String> lines = technician(stop);
      int wires = first(lines, "wires off");
      if (wires < lines.size()) {
        assertThat(first(lines, "prove dead")).as("%s: %s", stop.id(), lines).isLessThan(wires);
      }
    }
  }
}
