package yett.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import yett.knowledge.Cause;
import yett.knowledge.Effect;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.testing.Size;

/**
 * The rows that come of effects, against a model in which every effect is a cause of its own
 * without a prior, brought about by what leads to it.
 */
class EffectRowsTest {
  private static final double EXACT = 1e-9;

  private static RuleBase read(String cards) {
    TreeMap<String, String> files =
        new TreeMap<>(
            KnowledgeSource.folder(Path.of("src/test/resources/sound-knowledge")).files());
    files.put("effects.yaml", cards);
    return RuleBase.read(() -> files);
  }

  private static String cause(String id, String more) {
    return "cause: %s\nname: N\nprior: 0.1\n%s\nremoved-by: {tighten-chain: 0.5}\nsource: test\n---\n"
        .formatted(id, more);
  }

  private static String effect(String id, String more) {
    return "effect: %s\nname: N\n%s\nsource: test\n---\n".formatted(id, more);
  }

  private static String check(String id) {
    return """
        check: %s
        ask: Which?
        minutes: 1
        outcomes: {usual: as ever, more: more, most: most}
        otherwise: {usual: 0.9, more: 0.07, most: 0.03}
        source: test
        ---
        """
        .formatted(id);
  }

  private static String row(SplittableRandom random) {
    double[] row = PlainModel.row(3, random);
    return "{usual: %s, more: %s, most: %s}".formatted(row[0], row[1], row[2]);
  }

  /** With the causes alone, by the rows that were worked out and what looks make of them. */
  private static CausalModel compiled(RuleBase base) {
    CausalModel.Builder builder = CausalModel.builder();
    base.causes().values().forEach(c -> builder.cause(c.id(), c.prior()));
    base.causes()
        .values()
        .forEach(c -> c.consequences().forEach((to, q) -> builder.link(c.id(), to, q)));
    base.checks().values().forEach(c -> builder.check(c.id(), c.otherwise(), c.likelihood()));
    CardEffects.of(base).into(builder, Set.of(), 0);
    return builder.build();
  }

  private static CausalModel whole(RuleBase base) {
    return PlainModel.withEffects(base).model();
  }

  private static Belief after(CausalModel model, String... seen) {
    Belief belief = Belief.prior(model, model.size());
    for (String one : seen) {
      String[] parts = one.split(" ");
      belief = belief.learn(Observation.of(parts[0], Integer.parseInt(parts[1]), 3));
    }
    return belief;
  }

  static LongStream seeds() {
    return Size.seeds(20, 200);
  }

  /** Two causes, each with up to five effects of its own, in any shape that is no ring. */
  static RuleBase random(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    StringBuilder cards = new StringBuilder();
    List<String> checks = List.of("k0", "k1", "k2");
    for (String of : List.of("a", "b")) {
      int n = 1 + random.nextInt(5);
      List<List<String>> parents = new ArrayList<>();
      for (int e = 0; e <= n; e++) {
        parents.add(new ArrayList<>());
      }
      for (int e = 0; e < n; e++) { // n stands for the cause
        int parent = e == 0 || random.nextBoolean() ? n : random.nextInt(e);
        parents.get(parent).add("%s%d: %s".formatted(of, e, chance(random)));
        if (e > 1 && random.nextBoolean()) {
          int second = (parent == n ? random.nextInt(e) : n);
          parents.get(second).add("%s%d: %s".formatted(of, e, chance(random)));
        }
      }
      cards.append(cause(of, "leads-to: {" + String.join(", ", parents.get(n)) + "}"));
      for (int e = 0; e < n; e++) {
        StringBuilder more = new StringBuilder("shows: {k0: " + row(random));
        for (String check : checks.subList(1, 3)) {
          more.append(random.nextBoolean() ? ", " + check + ": " + row(random) : "");
        }
        more.append("}\nleads-to: {" + String.join(", ", parents.get(e)) + "}");
        cards.append(effect(of + e, more.toString()));
      }
    }
    checks.forEach(c -> cards.append(check(c)));
    return read(cards.substring(0, cards.lastIndexOf("---")));
  }

  private static double chance(SplittableRandom random) {
    return random.nextInt(4) == 0 ? 1 : random.nextDouble();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void one_look_says_of_causes_what_the_whole_model_says(long seed) {
    RuleBase base = random(seed);
    for (String check : List.of("k0", "k1", "k2")) {
      for (int outcome = 0; outcome < 3; outcome++) {
        Belief rows = after(compiled(base), check + " " + outcome);
        Belief whole = after(whole(base), check + " " + outcome);
        assertThat(rows.logEvidence()).isCloseTo(whole.logEvidence(), within(EXACT));
        for (String cause : base.causes().keySet()) {
          assertThat(rows.atCallOut(cause)).isCloseTo(whole.atCallOut(cause), within(EXACT));
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void an_effect_is_as_probable_as_in_the_whole_model_when_its_cause_is_there(long seed) {
    RuleBase base = random(seed);
    CausalModel model = whole(base);
    Belief prior = Belief.prior(model, model.size());
    Cause cause = base.causes().get("a");
    base.effectRows()
        .chances(cause)
        .forEach(
            (effect, chance) ->
                assertThat(cause.prior() * chance)
                    .isCloseTo(prior.atCallOut(effect.id()), within(EXACT)));
  }

  private static final String STRAINS =
      effect("strains", "shows: {k0: {usual: 0.1, more: 0.6, most: 0.3}, k1: 0}")
          .replace("k1: 0", "k1: {usual: 0.15, more: 0.6, most: 0.25}");

  @Test
  void a_row_of_the_causes_own_stands() {
    RuleBase base =
        read(
            cause("a", "leads-to: {strains: 0.9}\nshows: {k0: {usual: 0.5, more: 0.5}}")
                + STRAINS
                + check("k0")
                + check("k1").replace("---\n", ""));
    Cause cause = base.causes().get("a");
    assertThat(base.checks().get("k0").likelihood().get("a")).containsExactly(0.5, 0.5, 0);
    assertThat(base.effectRows().behind(cause, base.checks().get("k0"))).isEmpty();
    // 0.1 of the time nothing is to be seen
    assertThat(base.checks().get("k1").likelihood().get("a"))
        .containsExactly(new double[] {0.1 + 0.9 * 0.15, 0.9 * 0.6, 0.9 * 0.25}, within(EXACT));
    assertThat(base.effectRows().behind(cause, base.checks().get("k1")))
        .extracting(Effect::id)
        .containsExactly("strains");
  }

  @Test
  void no_row_is_worked_out_for_a_cause_and_a_check_that_no_gate_has_together() {
    String apart =
        cause("a", "leads-to: {strains: 0.9}\nonly-if: {marker: [none]}")
            + STRAINS
            + check("k0").replace("minutes: 1", "minutes: 1\nonly-if: {marker: [fitted]}")
            + check("k1").replace("---\n", "");
    RuleBase base = read(apart);
    assertThat(base.checks().get("k0").likelihood()).doesNotContainKey("a");
    assertThat(base.checks().get("k1").likelihood()).containsKey("a");
  }

  private static RuleBase rivals(double a, double b, int looks) {
    StringBuilder cards = new StringBuilder();
    cards.append(cause("a", "leads-to: {strains: %s}".formatted(a)));
    cards.append(cause("b", "leads-to: {strains: %s}".formatted(b)));
    StringBuilder shows = new StringBuilder();
    for (int k = 0; k < looks; k++) {
      cards.append(check("k" + k));
      shows.append(k == 0 ? "" : ", ").append("k" + k + ": {usual: 0.2, more: 0.5, most: 0.3}");
    }
    cards.append(effect("strains", "shows: {" + shows + "}"));
    return read(cards.substring(0, cards.lastIndexOf("---")));
  }

  /**
   * What several looks at one effect that is not certain say too much where two causes that are
   * both there share it: the greatest difference of a cause's chance from that in the whole model,
   * over all answers.
   */
  @ParameterizedTest
  @CsvSource({
    "0.9, 0.6, 1, 0.011",
    "0.9, 0.6, 2, 0.041",
    "0.9, 0.6, 3, 0.082",
    "0.9, 0.3, 2, 0.041",
    "0.9, 0.3, 3, 0.093",
    "0.99, 0.9, 3, 0.076",
  })
  void looks_at_one_uncertain_effect_say_no_more_too_much_than_this(
      double a, double b, int looks, double most) {
    RuleBase base = rivals(a, b, looks);
    double greatest = 0;
    for (int i = 0; i < Math.pow(3, looks); i++) {
      String[] seen = new String[looks];
      for (int k = 0, rest = i; k < looks; k++, rest /= 3) {
        seen[k] = "k" + k + " " + rest % 3;
      }
      Belief rows = after(compiled(base), seen);
      Belief whole = after(whole(base), seen);
      for (String cause : List.of("a", "b")) {
        greatest = Math.max(greatest, Math.abs(rows.atCallOut(cause) - whole.atCallOut(cause)));
      }
    }
    assertThat(greatest).isBetween(0.95 * most, most);
  }

  /**
   * Each taken for itself, six ordinary looks at one effect of 0.9 spoke 23 decibans too much
   * against its cause. What is left comes of the rival, which hardly leads to the effect.
   */
  @ParameterizedTest
  @CsvSource({"0.9, 2", "0.9, 3", "0.9, 6", "0.99, 3", "0.99, 6"})
  void ordinary_answers_are_one_piece_of_news(double chance, int looks) {
    RuleBase base = rivals(chance, 0.001, looks);
    String[] seen = new String[looks];
    for (int k = 0; k < looks; k++) {
      seen[k] = "k" + k + " 0";
    }
    double rows = after(compiled(base), seen).atCallOut("a");
    double whole = after(whole(base), seen).atCallOut("a");
    double decibans = 10 * Math.log10(whole / (1 - whole) * (1 - rows) / rows);
    assertThat(decibans).isCloseTo(0, within(0.001));
  }
}
