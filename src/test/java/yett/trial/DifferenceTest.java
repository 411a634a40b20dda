package yett.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

  private static Account led(String first, Weighed... evidence) {
    return new Account(
        "ferry",
        "chain/stories.case.yaml",
        Optional.of(true),
        "repaired",
        List.of("noise-kind", "bracket-look"),
        Map.of(first, 0.9),
        List.of("tighten-chain"),
        List.of(),
        42,
        List.of(),
        List.of(evidence));
  }

  private static final Account SLACK =
      led(
          "chain-slack",
          new Weighed(Weighed.OUTSET, "", Map.of("chain-slack", -11.0, "chain-worn", -17.0)),
          new Weighed("noise-kind", "slap", Map.of("chain-slack", 9.0)));

  private static List<String> turned(Account now, Additions fresh) {
    return Difference.between(SLACK, now, fresh).stream()
        .flatMap(d -> d.words().stream())
        .filter(
            w ->
                w.startsWith("taken over")
                    || w.startsWith("moved by")
                    || w.startsWith("nothing new"))
        .toList();
  }

  @Test
  void a_cause_that_is_new_and_first_is_told_with_what_speaks_for_it() {
    Account now =
        led(
            "bracket-cracked",
            new Weighed(Weighed.OUTSET, "", Map.of("chain-slack", -11.0, "bracket-cracked", -23.0)),
            new Weighed("noise-kind", "slap", Map.of("chain-slack", 9.0)),
            new Weighed("bracket-look", "cracked", Map.of("bracket-cracked", 31.5)));
    assertThat(turned(now, new Additions(Set.of("bracket-cracked"), Set.of(), Map.of())))
        .containsExactly(
            "taken over by bracket-cracked, a cause that only the second has: +31.5 dB bracket-look"
                + " cracked, -23.0 dB at the outset");
    assertThat(turned(now, Additions.UNKNOWN)).isEmpty();
  }

  @Test
  void a_check_or_a_rule_that_is_new_and_turned_the_case_is_told() {
    Account now =
        led(
            "chain-worn",
            new Weighed(Weighed.OUTSET, "", Map.of("chain-slack", -20.0, "chain-worn", -17.2)),
            new Weighed("noise-kind", "slap", Map.of("chain-slack", 9.3)),
            new Weighed("links-look", "long", Map.of("chain-worn", 12.0, "chain-slack", -4.0)));
    Additions fresh =
        new Additions(
            Set.of(),
            Set.of("links-look"),
            Map.of(
                "quay/odds.drl", "new Odds(\"chain-slack\", 0.1)",
                "quay/noise.drl", "Given(check == \"noise-kind\")",
                "quay/other.drl", "new Odds(\"chain-slack-too\", 0.1)"));
    assertThat(turned(now, fresh))
        .containsExactly(
            "moved by the check links-look long, which only the second has: -4.0 dB for"
                + " chain-slack, +12.0 dB for chain-worn",
            "moved by rules of quay/odds.drl, which only the second has: at the outset -9.0 dB for"
                + " chain-slack");
    assertThat(turned(SLACK_TWICE, fresh)).isEmpty();
  }

  @Test
  void a_case_that_only_took_another_way_says_so() {
    Account now =
        account(
            true, List.of("chain-sag"), Map.of("chain-worn", 0.9), 42, Map.of("chain-worn", 9.0));
    Additions fresh = new Additions(Set.of("bracket-cracked"), Set.of(), Map.of());
    assertThat(turned(now, fresh))
        .containsExactly("nothing new speaks for or against the two; other things were asked");
    assertThat(turned(now, Additions.UNKNOWN)).isEmpty();
  }

  /** The first cause stays, so nothing was taken over. */
  private static final Account SLACK_TWICE =
      led("chain-slack", new Weighed("links-look", "long", Map.of("chain-slack", -4.0)));

  @Test
  void only_a_chance_that_moves_by_less_than_five_points_is_slight() {
    assertThat(slight(0.94)).isTrue();
    assertThat(slight(0.96)).isFalse();
    Account slower =
        account(true, FERRY.path(), Map.of("chain-slack", 0.93), 43, Map.of("chain-slack", 11.0));
    assertThat(Difference.between(FERRY, slower).orElseThrow().slight()).isFalse();
  }

  private static boolean slight(double chance) {
    Account now =
        account(true, FERRY.path(), Map.of("chain-slack", chance), 42, Map.of("chain-slack", 11.0));
    return Difference.between(FERRY, now).orElseThrow().slight();
  }
}
