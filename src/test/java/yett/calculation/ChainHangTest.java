package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ChainHangTest {
  // ASME B29.1: 3125 lbf for No. 40, a seventh of it times 0.8 is 357.1 lbf; H = w L²/(8 s),
  // statics
  // textbooks, with 0.41 lb/ft; a fifth of the load is 71.43 lbf: 0.41 x 1.5²/0.3048² / (8 x 71.43)
  // ft.
  @Test
  void a_short_run_may_hang_less() {
    ChainHang hang = new ChainHang(RollerChain.NO_40, 1.5);

    assertThat(hang.workingLoad()).isCloseTo(357.1 * 4.44822, within(0.3));
    assertThat(hang.usualSag().low() / 0.3048)
        .isCloseTo(0.41 * Math.pow(1.5 / 0.3048, 2) / (8 * 71.43), within(1e-6));
    assertThat(hang.usualSag().high()).isEqualTo(ChainSag.usualSag(1.5).high());
    assertThat(hang.byHandbook()).isFalse();
    assertThat(ChainSag.sagForMovement(hang.usualMovement().low()))
        .isCloseTo(hang.usualSag().low(), within(1e-12));
  }

  // Complete Guide to Chain: 2 % to 4 % of movement, whatever the size.
  @Test
  void a_long_run_hangs_as_the_handbook_has_it() {
    ChainHang hang = new ChainHang(RollerChain.NO_40, 5.2);

    assertThat(hang.byHandbook()).isTrue();
    assertThat(hang.usualMovement().low()).isCloseTo(0.104, within(1e-9));
    assertThat(hang.usualMovement().high()).isCloseTo(0.208, within(1e-9));
    assertThatThrownBy(() -> new ChainHang(RollerChain.NO_40, 0)).hasMessageContaining("span");
  }
}
