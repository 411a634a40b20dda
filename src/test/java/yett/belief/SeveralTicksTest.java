package yett.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.testing.Size;

/** Several outcomes seen at once, against plain enumeration of what each cause contributes. */
class SeveralTicksTest {
  private static final double EXACT = 1e-9;
  private static final int OUTCOMES = 5;

  static LongStream seeds() {
    return Size.seeds(30, 80);
  }

  /** A random model with looks of five outcomes, one of which repeats part of another. */
  private static PlainModel model(SplittableRandom random) {
    PlainModel plain = PlainModel.random(random, 6);
    Arrays.setAll(plain.priors, c -> Math.max(0.05, plain.priors[c]));
    plain.looks.clear();
    plain.looks.add(look("noise", plain, random, -1));
    plain.looks.add(look("again", plain, random, 0));
    plain.looks.add(look("alone", plain, random, -1));
    return plain;
  }

  private static PlainModel.Look look(
      String id, PlainModel plain, SplittableRandom random, int original) {
    double[][] rows = new double[plain.size()][];
    for (int c = 0; c < rows.length; c++) {
      rows[c] = c < 2 || random.nextInt(3) > 0 ? PlainModel.row(OUTCOMES, random) : null;
    }
    int[] same = original < 0 ? new int[0] : new int[] {0, 2, -1, 1, 4};
    double[] base = PlainModel.row(OUTCOMES, random);
    return new PlainModel.Look(id, base, rows, original, random.nextDouble(), same);
  }

  /** Two or three outcomes that are out of the ordinary, in any order. */
  private static List<Integer> seen(SplittableRandom random) {
    List<Integer> all = new ArrayList<>(List.of(1, 2, 3, 4));
    Collections.shuffle(all, new Random(random.nextLong()));
    return all.subList(0, 2 + random.nextInt(2));
  }

  /** Chance that the contributions have exactly this greatest one and all of these among them. */
  private static double contributed(
      PlainModel plain, int look, boolean[] set, int greatest, List<Integer> needed) {
    PlainModel.Look table = plain.looks.get(look);
    List<double[]> rows = new ArrayList<>(List.of(table.base()));
    IntStream.range(0, set.length)
        .filter(c -> set[c] && table.rows()[c] != null)
        .forEach(c -> rows.add(table.rows()[c]));
    return contributed(rows, 0, new ArrayList<>(), greatest, needed);
  }

  private static double contributed(
      List<double[]> rows, int at, List<Integer> made, int greatest, List<Integer> needed) {
    if (at == rows.size()) {
      return Collections.max(made) == greatest && made.containsAll(needed) ? 1 : 0;
    }
    double sum = 0;
    for (int y = 0; y < OUTCOMES; y++) {
      made.add(y);
      sum += rows.get(at)[y] * contributed(rows, at + 1, made, greatest, needed);
      made.remove(made.size() - 1);
    }
    return sum;
  }

  private static void agrees(PlainModel plain, Belief belief, ToDoubleFunction<boolean[]> chance) {
    double[] present = new double[plain.size()];
    double all = 0;
    double before = 0;
    for (boolean[] set : plain.sets(plain.size())) {
      double prior = PlainModel.none(set) ? 0 : plain.prior(set);
      double weight = prior * chance.applyAsDouble(set);
      before += prior;
      all += weight;
      for (int c = 0; c < present.length; c++) {
        present[c] += set[c] ? weight : 0;
      }
    }
    double total = all;
    assertThat(Math.exp(belief.logEvidence())).isCloseTo(all / before, within(EXACT));
    assertThat(belief.atCallOut())
        .containsExactly(Arrays.stream(present).map(p -> p / total).toArray(), within(EXACT));
  }

  private static Belief start(PlainModel plain) {
    return Belief.atReport(plain.model(), plain.size());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void the_others_are_contributed_by_somebody(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    PlainModel plain = model(random);
    List<Integer> seen = seen(random);
    Belief belief = start(plain).learn(Observation.several("alone", seen, OUTCOMES));
    agrees(plain, belief, set -> contributed(plain, 2, set, Collections.max(seen), seen));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void a_doubtful_witness_is_right_about_all_ticks_or_about_none_of_the_others(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    PlainModel plain = model(random);
    List<Integer> seen = seen(random);
    int highest = Collections.max(seen);
    Double[] weights = new Double[OUTCOMES];
    Arrays.fill(weights, 0.1);
    weights[highest] = 0.6;
    Observation doubtful =
        new Observation("alone", List.of(weights)).with(Observation.Ticks.of(seen, 0.5));
    agrees(
        plain,
        start(plain).learn(doubtful),
        set ->
            0.5 * contributed(plain, 2, set, highest, seen)
                + 0.1 * contributed(plain, 2, set, highest, List.of())
                + IntStream.range(0, OUTCOMES)
                    .filter(y -> y != highest)
                    .mapToDouble(y -> 0.1 * contributed(plain, 2, set, y, List.of()))
                    .sum());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void a_check_that_repeats_copies_the_highest_of_the_ticks(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    PlainModel plain = model(random);
    List<Integer> seen = seen(random);
    int highest = Collections.max(seen);
    int repeated = random.nextInt(OUTCOMES);
    PlainModel.Look again = plain.looks.get(1);
    int copy = again.sameOutcomes()[highest];
    ToDoubleFunction<boolean[]> chance =
        set -> {
          double fresh = contributed(plain, 1, set, repeated, List.of());
          double given =
              copy < 0
                  ? fresh
                  : again.share() * (copy == repeated ? 1 : 0) + (1 - again.share()) * fresh;
          return contributed(plain, 0, set, highest, seen) * given;
        };
    Observation ticks = Observation.several("noise", seen, OUTCOMES);
    Observation other = Observation.of("again", repeated, OUTCOMES);
    agrees(plain, start(plain).learn(ticks).learn(other), chance);
    agrees(plain, start(plain).learn(other).learn(ticks), chance);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void predictions_after_ticks_are_the_same_for_all_sets_and_for_a_selection(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    PlainModel plain = model(random);
    Belief belief = start(plain).learn(Observation.several("noise", seen(random), OUTCOMES));
    Support all = belief.support(2, Integer.MAX_VALUE);
    double[][] bySet = belief.predict("again", all);
    double[] expected = belief.predict("again");
    for (int y = 0; y < OUTCOMES; y++) {
      double mixed = 0;
      for (int i = 0; i < all.size(); i++) {
        mixed += all.weights()[i] * bySet[y][i];
      }
      assertThat(mixed).isCloseTo(expected[y], within(EXACT));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void seen_again_on_an_unchanged_machine_the_others_say_nothing_more(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    PlainModel plain = model(random);
    List<Integer> seen = seen(random);
    Observation ticks = Observation.several("alone", seen, OUTCOMES);
    Belief mended = start(plain).learn(ticks).repaired(Map.of());
    Observation highest = Observation.of("alone", Collections.max(seen), OUTCOMES);
    assertThat(mended.learn(ticks).atCallOut())
        .containsExactly(mended.learn(highest).atCallOut(), within(EXACT));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void the_order_of_ticks_does_not_matter_and_one_tick_is_a_single_answer(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Integer> seen = seen(random);
    assertThat(Observation.several("alone", seen, OUTCOMES))
        .isEqualTo(Observation.several("alone", List.copyOf(new TreeSet<>(seen)), OUTCOMES));
    int one = seen.get(0);
    assertThat(Observation.several("alone", List.of(one), OUTCOMES))
        .isEqualTo(Observation.of("alone", one, OUTCOMES));
  }

  @Test
  void the_ordinary_outcome_is_not_seen_besides_another() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Observation.several("alone", List.of(0, 2), 3))
        .withMessage("outcomes [0] cannot be seen besides outcome 2");
  }

  /** One cause, and a machine that contributes nothing by itself: two noises cannot be. */
  private static Belief oneNoise() {
    CausalModel model =
        CausalModel.builder()
            .cause("chain", 0.1)
            .cause("gear", 0.1)
            .check("noise", new double[] {1, 0, 0}, Map.of("chain", new double[] {0.2, 0.5, 0.3}))
            .build();
    return Belief.atReport(model, 2);
  }

  @Test
  void more_ticks_than_anything_can_contribute_are_impossible() {
    assertThatExceptionOfType(ImpossibleEvidence.class)
        .isThrownBy(() -> oneNoise().learn(Observation.several("noise", List.of(1, 2), 3)));
  }

  @Test
  void with_room_for_a_slip_impossible_ticks_count_as_the_highest_alone() {
    Observation highest = Observation.of("noise", 2, 3);
    Optional<Observation.Ticks> ticks = Observation.Ticks.of(List.of(1, 2), 1 - CardModel.SLIP);
    assertThat(oneNoise().learn(highest.with(ticks)).atCallOut())
        .containsExactly(oneNoise().learn(highest).atCallOut(), within(EXACT));
  }
}
