package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SmallNumbersTest {

  /**
   * R. G. Newcombe, "Two-sided confidence intervals for the single proportion", Statistics in
   * Medicine 17 (1998) 857–872, table I, method 3 (score); values from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2553, 0.3662",
    "15, 148, 0.0624, 0.1605",
    "0, 20, 0.0000, 0.1611",
    "1, 29, 0.0061, 0.1718",
  })
  void shares_are_those_of_newcombe(int hits, int all, double low, double high) {
    var range = SmallNumbers.share(hits, all);

    assertThat(range.low()).isCloseTo(low, within(0.00006));
    assertThat(range.high()).isCloseTo(high, within(0.00006));
    var others = SmallNumbers.share(all - hits, all);
    assertThat(others.low()).isCloseTo(1 - range.high(), within(1e-12));
  }

  /**
   * Garwood's limits as in E. S. Pearson and H. O. Hartley, Biometrika Tables for Statisticians,
   * vol. 1, table 40 (95 %); values from memory.
   */
  @ParameterizedTest
  @CsvSource({"0, 0, 3.69", "1, 0.0253, 5.57", "5, 1.62, 11.67", "10, 4.80, 18.39"})
  void means_are_those_of_garwood(int count, double low, double high) {
    var range = SmallNumbers.mean(count);

    assertThat(range.low()).isCloseTo(low, within(0.0051));
    assertThat(range.high()).isCloseTo(high, within(0.0051));
  }

  /**
   * Ranks of the order statistics that hold the median with at least 95 %, from the binomial tables
   * (W. J. Conover, Practical Nonparametric Statistics, section on quantiles); from memory.
   */
  @ParameterizedTest
  @CsvSource({"5, 0", "6, 1", "8, 1", "9, 2", "10, 2", "15, 4", "20, 6", "0, 0"})
  void ranks_are_those_of_the_tables(int n, int rank) {
    assertThat(SmallNumbers.lowerRank(n)).isEqualTo(rank);
  }

  @Test
  void the_median_lies_between_its_ranks() {
    double[] values = {9, 1, 3, 2, 8, 4, 7, 5, 6, 10};

    assertThat(SmallNumbers.median(values)).isEqualTo(5.5);
    assertThat(SmallNumbers.medianRange(values)).isEqualTo(new Range(2, 9));
    assertThat(SmallNumbers.medianRange(1, 2, 3).high()).isInfinite();
  }

  @Test
  void what_is_no_share_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> SmallNumbers.share(1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> SmallNumbers.share(3, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> SmallNumbers.mean(-1));
  }
}
