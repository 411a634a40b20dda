package yett.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.trial.Difference.Turn;

class DifferenceTest {
  private static final Account FERRY =
      account(
          true,
          List.of("noise-kind", "chain-sag", "repair tighten-chain"),
          Map.of("chain-slack", 0.9),
          42,
          Map.of("chain-slack", 11.0, "chain-worn", 0.0));

  private static Account account(
      boolean right,
      List<String> path,
      Map<String, Double> ranking,
      double minutes,
      Map<String, Double> decibans) {
    return new Account(
        "ferry",
        "chain/stories.case.yaml",
        Optional.of(right),
        "repaired",
        path,
        ranking,
        List.of("tighten-chain"),
        List.of(),
        minutes,
        List.of(),
        List.of(new Weighed("chain-sag", "slack", decibans)));
  }

  @Test
  void what_nobody_would_notice_is_no_difference() {
    Account hardly =
        account(
            true, FERRY.path(), Map.of("chain-slack", 0.905), 42.3, Map.of("chain-slack", 11.6));
    assertThat(Difference.between(FERRY, FERRY)).isEmpty();
    assertThat(Difference.between(FERRY, hardly)).isEmpty();
  }

  @Test
  void everything_that_moved_is_told() {
    Account other =
        account(
            false,
            List.of("noise-kind", "display-lit"),
            Map.of("chain-worn", 0.6),
            50,
            Map.of("chain-slack", 4.5, "chain-worn", 2.0));
    Difference difference = Difference.between(FERRY, other).orElseThrow();
    assertThat(difference.turn()).isEqualTo(Turn.WORSE);
    assertThat(difference.outcome()).isTrue();
    assertThat(difference.words())
        .contains(
            "first cause: was chain-slack 90 %, is chain-worn 60 %",
            "step 2: was chain-sag, is display-lit (3 steps before, 2 now)",
            "minutes: was 42.0, is 50.0",
            "evidence for chain-slack: chain-sag slack, was +11.0 dB, is +4.5 dB",
            "evidence for chain-worn: chain-sag slack, was under 0.5 dB, is +2.0 dB");
    assertThat(Difference.between(other, FERRY).orElseThrow().turn()).isEqualTo(Turn.BETTER);
  }
}
