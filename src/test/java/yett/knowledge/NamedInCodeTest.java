package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.interview.danger.Dangers;
import yett.testing.Shipped;

/** Cards that the code names by their ids: renamed, they would silently do nothing. */
class NamedInCodeTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "stop-button-works",
        "opens-which-way",
        "reversal-closing",
        "reversal-opening",
        "trips-again",
        "danger-person",
        "danger-burning",
        "danger-shut-in",
        "danger-riding",
        Dangers.TAGGED_OFF,
        "trips-its-breaker",
        "battery-running-voltage",
        Telephone.WORKS_AGAIN,
        "chain-sag",
        "moves-alone",
        "one-command-fails",
      })
  void check_or_complaint(String id) {
    assertThat(Shipped.BASE.checks()).containsKey(id);
  }

  @ParameterizedTest
  @ValueSource(strings = {"switch-on-once"})
  void repair(String id) {
    assertThat(Shipped.BASE.repairs()).containsKey(id);
  }
}
