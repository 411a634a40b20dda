package yett.interview.setup;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.testing.Shipped;

/** Whoever works more safely than before undoes nothing on the way. */
class KeptOffTest {
  @ParameterizedTest
  @CsvSource({
    "mains-off-batteries-on, locked-off, true",
    "locked-off, mains-off-batteries-on, true", // mains and cover stay off
    "isolated, mains-off-batteries-on, false", // what was dangerous is looked at first
    "cover-off, locked-off, true",
    "cover-off, motor-unplugged, true",
    "cover-off, mains-off-batteries-on, false", // the gate can still run there
    "cover-off, gate-running, false",
    "locked-off, cover-off, false", // no power comes back to an open operator
    "motor-unplugged, locked-off, false", // its leads are put back first
    "gate-running, locked-off, false",
    "drive-free, locked-off, false",
  })
  void a_state_goes_on_into_another_without_being_left(String from, String into, boolean kept) {
    var setUps = Shipped.BASE.setUps();
    assertThat(KeptOff.between(setUps.get(from), setUps.get(into), Shipped.BASE)).isEqualTo(kept);
  }
}
