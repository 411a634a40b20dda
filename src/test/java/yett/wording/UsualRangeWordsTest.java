package yett.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yett.rules.Conclusion.Expectation;
import yett.rules.Reason;
import yett.testing.Shipped;

class UsualRangeWordsTest {
  private static String reasoned(String check, double low, double high) {
    Reason reason = new Reason("a rule", "because", "a handbook", List.of());
    return UsualRangeWords.reasoned(
        Shipped.BASE.checks().get(check), new Expectation(check, low, high, "its pitch", reason));
  }

  /** What passes is told where the range is told, or a reading between the two has two ranges. */
  @Test
  void what_is_in_order_beyond_what_is_usual_stands_beside_it() {
    assertThat(reasoned("sprocket-offset", 0, 6.2))
        .isEqualTo("0 mm to 6.2 mm, in order up to 12.4 mm on this gate: its pitch (a handbook)");
  }

  @Test
  void a_range_of_which_nothing_more_is_in_order_is_told_by_itself() {
    assertThat(reasoned("chain-sag", 53.7, 107.2))
        .isEqualTo("54 mm to 107 mm on this gate: its pitch (a handbook)");
  }
}
