package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import yett.calculation.Conductor;
import yett.calculation.RollerChain;

class SiteValuesTest {
  static Stream<String> feederSizes() {
    return Rules.BASE.siteQuestions().get("feeder-size").choices().keySet().stream();
  }

  static Stream<String> chainSizes() {
    return Rules.BASE.siteQuestions().get("chain-size").choices().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("feederSizes")
  void every_feeder_that_can_be_chosen_is_in_the_tables(String choice) {
    Conductor conductor = SiteValues.conductor(choice).orElseThrow();
    assertThat(SiteValues.sizesLike(choice)).contains(conductor);
  }

  @ParameterizedTest
  @MethodSource("chainSizes")
  void every_chain_that_can_be_chosen_is_in_the_tables(String choice) {
    assertThat(SiteValues.chain(choice)).map(RollerChain::pitch).isPresent();
  }

  /** NEC chapter 9 table 8, stranded; IEC 60228 class 2. */
  @ParameterizedTest
  @CsvSource({"awg-12, 12 AWG, 0.00649606", "mm2-1-5, 1.5 mm2, 0.0121", "mm2-6, 6 mm2, 0.00308"})
  void a_choice_names_its_size(String choice, String size, double ohmPerMetre) {
    Conductor conductor = SiteValues.conductor(choice).orElseThrow();
    assertThat(conductor.size()).isEqualTo(size);
    assertThat(conductor.resistance()).isCloseTo(ohmPerMetre, within(1e-7));
  }

  @Test
  void a_choice_that_names_no_size_has_none() {
    assertThat(SiteValues.conductor("awg-99")).isEmpty();
    assertThat(SiteValues.chain("bicycle")).isEmpty();
  }

  @Test
  void the_mains_feeds_motor_and_charger() {
    // (24 V x 5 A + 120 W)/(0.75 x 120 V); 2 x 2.667 A x 45.72 m x 10.30 mohm/m (14 AWG at 75 degC)
    assertThat(SiteValues.mainsCurrent(5, 120)).isCloseTo(2.667, within(0.001));
    assertThat(
            SiteValues.feederDrop(SiteValues.conductor("awg-14").orElseThrow(), 45720, 75, 5, 120))
        .isCloseTo(2.512, within(0.001));
  }

  @Test
  void devices_add_up_by_what_is_fitted() {
    // a radio 40 mA, two beams 160 mA, loops 120 mA; what is not fitted takes nothing
    assertThat(
            SiteValues.accessories(
                List.of(
                    Rules.site("radio", "fitted"),
                    Rules.site("beams", "two"),
                    Rules.site("loops", "fitted"),
                    Rules.site("keypad", "none"))))
        .isEqualTo(0.32);
  }
}
