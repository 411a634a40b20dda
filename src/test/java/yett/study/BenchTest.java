package yett.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.interview.course.Expertise;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.rules.DecisionTables;
import yett.rules.RuleCache;
import yett.testing.Shipped;
import yett.testing.Size;

class BenchTest {
  private final RuleBase base = Shipped.BASE;
  private final RuleCache cache = new RuleCache(Path.of("target/rule-cache"));
  private final Expertise expertise = quick(Shipped.EXPERTISE);
  private final Bench bench = new Bench(expertise, cache);

  /** With causes a tenth as likely, so that fewer sets are listed; all that happens is the same. */
  private static Expertise quick(Expertise whole) {
    Map<String, Double> rarer = new HashMap<>();
    whole.base().causes().keySet().forEach(cause -> rarer.put(cause, 0.1));
    return new Expertise(
        whole.base(), whole.rules(), whole.model().withOdds(rarer), whole.planner());
  }

  /**
   * Yett, one that follows answers and one that throws dice; the others are built like the last.
   */
  private List<Policy> some(long seed) {
    return List.of(
        new Yett(expertise.planner()),
        new FlowChart(),
        new RuleOfThumb(base, expertise.planner(), RuleOfThumb.Order.RANDOM, seed));
  }

  @Test
  void the_tables_can_be_read_without_the_card_of_any_cause() {
    assertThat(base.causes().keySet())
        .isNotEmpty()
        .allSatisfy(c -> assertThat(DecisionTables.problems(Reduced.without(base, c))).isEmpty());
  }

  @Test
  void faults_are_played_to_an_end_and_the_same_seed_gives_the_same_end() {
    for (LongFunction<Supplier<FaultyGate>> gates :
        List.<LongFunction<Supplier<FaultyGate>>>of(bench::drawn, bench::physical)) {
      int last = Size.of(1, 4);
      for (long seed = 1; seed <= last; seed++) {
        Map<String, Played> all = bench.play(gates.apply(seed), some(seed));
        assertThat(all.keySet()).containsExactly("Yett", "fixed flow chart", "any telling check");
        all.values().forEach(BenchTest::isPlayedToAnEnd);
        if (seed == last) {
          assertThat(bench.play(gates.apply(seed), some(seed))).isEqualTo(all);
        }
      }
    }
  }

  private static void isPlayedToAnEnd(Played p) {
    assertThat(p.truth()).isNotEmpty();
    // A danger hands over before any work.
    assertThat(p.minutes() > 0 || p.handedOver()).isTrue();
    assertThat(List.of(p.cured(), p.left(), p.handedOver())).containsOnlyOnce(true);
  }

  @Test
  void a_study_that_was_broken_off_goes_on_where_it_stopped(@TempDir Path folder)
      throws IOException {
    Map<String, Played> played = bench.play(bench.drawn(2), some(2));
    new Ledger(folder, "these-cards").add("drawn", 2, played);
    Files.writeString(
        folder.resolve("these-cards.jsonl"),
        "{\"kind\":\"drawn\",\"num",
        StandardOpenOption.APPEND);
    Ledger again = new Ledger(folder, "these-cards");
    assertThat(again.has("drawn", 2)).isTrue();
    assertThat(again.has("drawn", 3)).isFalse();
    assertThat(again.of("drawn", "Yett")).isEqualTo(Map.of(2L, played.get("Yett")));
    assertThat(new Ledger(folder, "other-cards").has("drawn", 2)).isFalse();
  }

  @Test
  void a_gate_is_the_same_in_whatever_order_it_is_asked() {
    FaultyGate one = bench.drawn(5).get();
    FaultyGate other = bench.drawn(5).get();
    assertThat(one.truth()).isEqualTo(other.truth());
    List<String> asked = List.of("chain-looks", "response", "what-turns", "speed-seen");
    for (int i = 0; i < asked.size(); i++) {
      Check check = base.checks().get(asked.get(i));
      Check back = base.checks().get(asked.get(asked.size() - 1 - i));
      one.answer(check, Optional.empty());
      other.answer(back, Optional.empty());
    }
    for (String id : asked) {
      Check check = base.checks().get(id);
      assertThat(one.answer(check, Optional.empty()))
          .isEqualTo(other.answer(check, Optional.empty()));
    }
  }

  @Test
  void a_rule_base_without_a_card_says_nothing_of_it() {
    RuleBase less = Reduced.without(base, "marker-lost");
    assertThat(less.causes()).doesNotContainKey("marker-lost").containsKey(Cause.NOTHING_WRONG);
    assertThat(less.checks().values()).noneMatch(c -> c.likelihood().containsKey("marker-lost"));
    assertThat(less.repairs().get("fit-marker").removes()).containsOnlyKeys("marker-displaced");
    base.causes()
        .keySet()
        .forEach(
            cause ->
                assertThat(String.join("\n", Reduced.without(base, cause).tables().values()))
                    .doesNotContainPattern("(?<![\\w-])" + cause + " [0-9.]"));
    assertThat(Reduced.without(base, "manual-release-engaged").repairs())
        .doesNotContainKey("engage-release");
  }
}
