package yett.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.belief.PlainModel.Answered;
import yett.belief.PlainModel.Mended;
import yett.belief.PlainModel.Step;
import yett.belief.PlainModel.Tried;
import yett.belief.PlainModel.World;
import yett.testing.Size;

/** Belief against plain enumeration of all subsets, on random models; the argument is the seed. */
class EnumerationTest {
  private static final double EXACT = 1e-9;

  static LongStream seeds() {
    return Size.seeds(30, 80);
  }

  /** A few models of 13 causes, many smaller ones. */
  private static PlainModel model(long seed) {
    return PlainModel.random(new SplittableRandom(seed), seed % 10 == 0 ? 13 : 7);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void belief_after_answers_repairs_and_retests_is_that_of_the_enumeration(long seed) {
    PlainModel plain = model(seed);
    List<Step> steps = story(plain, new SplittableRandom(-seed));
    boolean reported = seed % 2 == 0;
    CausalModel model = plain.model();
    Belief start =
        reported ? Belief.atReport(model, plain.size()) : Belief.prior(model, plain.size());
    Belief belief = plain.belief(start, steps);
    List<World> worlds = plain.worlds(steps, plain.size(), reported);
    double evidence = total(worlds);
    double before = total(plain.worlds(List.of(), plain.size(), reported));

    assertThat(start.neglected()).isCloseTo(0, within(EXACT));
    assertThat(belief.logEvidence()).isCloseTo(Math.log(evidence / before), within(EXACT));
    for (int c = 0; c < plain.size(); c++) {
      int cause = c;
      assertThat(belief.atCallOut()[c]).isBetween(0.0, 1.0);
      assertThat(belief.atCallOut()[c])
          .isCloseTo(share(worlds, evidence, w -> w.before()[cause]), within(EXACT));
      assertThat(belief.remaining()[c])
          .isCloseTo(share(worlds, evidence, w -> w.now()[cause]), within(EXACT));
    }
    explanations(plain, belief, worlds, evidence);
  }

  private static void explanations(
      PlainModel plain, Belief belief, List<World> worlds, double evidence) {
    Map<List<String>, Double> chances = new LinkedHashMap<>();
    for (World w : worlds) {
      List<String> names =
          IntStream.range(0, plain.size())
              .filter(c -> w.before()[c])
              .mapToObj(plain.causes::get)
              .toList();
      chances.merge(names, w.weight() / evidence, Double::sum);
    }
    List<Belief.Explanation> best = belief.explanations(1 << plain.size());
    assertThat(best.stream().mapToDouble(Belief.Explanation::chance).sum())
        .isCloseTo(1, within(EXACT));
    for (int i = 0; i < best.size(); i++) {
      assertThat(best.get(i).chance())
          .isCloseTo(chances.get(best.get(i).causes()), within(EXACT))
          .isLessThanOrEqualTo(i == 0 ? 1 + EXACT : best.get(i - 1).chance());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void predictions_are_those_of_the_enumeration(long seed) {
    PlainModel plain = model(seed);
    List<Step> steps = story(plain, new SplittableRandom(-seed));
    Belief belief = plain.belief(Belief.prior(plain.model(), plain.size()), steps);
    double evidence = total(plain.worlds(steps, plain.size(), false));
    Support all = belief.support(2, Integer.MAX_VALUE);
    for (int k = 0; k < plain.looks.size(); k++) {
      PlainModel.Look look = plain.looks.get(k);
      double[] chances = belief.predict(look.id());
      double[][] bySet = belief.predict(look.id(), all);
      double sum = 0;
      for (int y = 0; y < chances.length; y++) {
        List<Step> further = new ArrayList<>(steps);
        double[] sure = new double[chances.length];
        sure[y] = 1;
        further.add(new Answered(k, sure));
        double expected = total(plain.worlds(further, plain.size(), false)) / evidence;
        assertThat(chances[y]).isCloseTo(expected, within(EXACT));
        double mixed = 0;
        for (int i = 0; i < all.size(); i++) {
          mixed += all.weights()[i] * bySet[y][i];
        }
        assertThat(mixed).isCloseTo(expected, within(EXACT));
        sum += chances[y];
      }
      // An answered check that was answered softly may predict itself; it still adds up.
      assertThat(sum).isCloseTo(1, within(EXACT));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void the_order_of_answers_does_not_matter(long seed) {
    PlainModel plain = model(seed);
    List<Step> steps = answers(plain, new SplittableRandom(-seed));
    Belief start = Belief.atReport(plain.model(), plain.size());
    Belief one = plain.belief(start, steps);
    List<Step> turned = new ArrayList<>(steps);
    Collections.shuffle(turned, new Random(seed));
    Belief other = plain.belief(start, turned);
    assertThat(other.logEvidence()).isCloseTo(one.logEvidence(), within(EXACT));
    assertThat(other.atCallOut()).containsExactly(one.atCallOut(), within(EXACT));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void taking_back_an_answer_leaves_no_trace(long seed) {
    PlainModel plain = model(seed);
    List<Step> steps = answers(plain, new SplittableRandom(-seed));
    Belief start = Belief.atReport(plain.model(), plain.size());
    Belief before = plain.belief(start, steps.subList(0, 1));
    double[] was = before.atCallOut();
    plain.belief(before, steps.subList(1, 2));
    assertThat(before.atCallOut()).containsExactly(was);
    Belief after = plain.belief(before, steps.subList(2, 3));
    Belief never = plain.belief(start, List.of(steps.get(0), steps.get(2)));
    assertThat(after.atCallOut()).containsExactly(never.atCallOut());
    assertThat(after.logEvidence()).isEqualTo(never.logEvidence());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void decibans_along_the_answers_add_up_to_the_log_odds(long seed) {
    PlainModel plain = model(seed);
    Belief belief = Belief.prior(plain.model(), plain.size());
    double[] first = belief.atCallOut();
    double[] sum = new double[plain.size()];
    for (Step step : answers(plain, new SplittableRandom(-seed))) {
      Belief next = plain.belief(belief, List.of(step));
      for (int c = 0; c < sum.length; c++) {
        sum[c] += Decibans.between(belief.atCallOut()[c], next.atCallOut()[c]);
      }
      belief = next;
    }
    for (int c = 0; c < sum.length; c++) {
      if (first[c] > 0) {
        assertThat(Decibans.ofProbability(first[c]) + sum[c])
            .isCloseTo(Decibans.ofProbability(belief.atCallOut()[c]), within(1e-7));
      }
    }
  }

  private interface Property {
    boolean of(World world);
  }

  private static double share(List<World> worlds, double evidence, Property property) {
    double sum = 0;
    for (World w : worlds) {
      sum += property.of(w) ? w.weight() / evidence : 0;
    }
    return sum;
  }

  private static double total(List<World> worlds) {
    return worlds.stream().mapToDouble(World::weight).sum();
  }

  /** Answers, a repair that did not help, more answers, a second repair. */
  private static List<Step> story(PlainModel plain, SplittableRandom random) {
    List<Step> steps = new ArrayList<>(answers(plain, random));
    if (random.nextInt(3) > 0) {
      steps.add(mended(plain, random));
      steps.add(tried(plain, steps, random));
      steps.addAll(answers(plain, random).subList(0, 2));
      if (random.nextBoolean()) {
        steps.add(mended(plain, random));
        steps.add(tried(plain, steps, random));
      }
    }
    if (random.nextInt(3) == 0) {
      steps.add(mended(plain, random));
      steps.addAll(answers(plain, random).subList(1, 2));
    }
    return steps;
  }

  /** Three answers, sure or soft; now and then the same check twice. */
  private static List<Step> answers(PlainModel plain, SplittableRandom random) {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      int k = random.nextInt(plain.looks.size());
      double[] weights = new double[plain.looks.get(k).base().length];
      boolean soft = random.nextInt(3) == 0 || i == 2;
      int sure = random.nextInt(weights.length);
      for (int y = 0; y < weights.length; y++) {
        weights[y] = soft ? 0.05 + random.nextDouble() * 0.9 : y == sure ? 1 : 0.02;
      }
      steps.add(new Answered(k, weights));
    }
    return steps;
  }

  private static Mended mended(PlainModel plain, SplittableRandom random) {
    double[] removes = new double[plain.size()];
    for (int i = 0; i < 2; i++) {
      removes[random.nextInt(plain.size())] = random.nextInt(3) == 0 ? 1 : random.nextDouble();
    }
    return new Mended(removes);
  }

  /** It ran, or did some of what was said at first, or something else. */
  private static Tried tried(PlainModel plain, List<Step> steps, SplittableRandom random) {
    Retest.How how = Retest.How.values()[random.nextInt(Retest.How.values().length)];
    List<Answered> told =
        steps.subList(0, random.nextInt(4)).stream().map(Answered.class::cast).toList();
    List<Boolean> left =
        how == Retest.How.SHOWED
            ? told.stream().map(t -> random.nextBoolean()).toList()
            : List.of();
    return new Tried(how, told, left, fails(plain, random));
  }

  private static double[] fails(PlainModel plain, SplittableRandom random) {
    return IntStream.range(0, plain.size())
        .mapToDouble(c -> 0.5 + random.nextDouble() / 2)
        .toArray();
  }
}
