package yett.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import yett.belief.PlainModel.Answered;
import yett.belief.PlainModel.Step;
import yett.belief.PlainModel.World;
import yett.knowledge.RuleBase;
import yett.testing.Shipped;
import yett.testing.Size;

/** Belief over the cards that are shipped, against plain enumeration. */
class ShippedModelTest {
  private static final RuleBase BASE = Shipped.BASE;

  /** What looks at effects say of each other is EffectRowsTest's. */
  private static final CausalModel MODEL = CardModel.of(BASE).withoutEffects();

  private static final PlainModel PLAIN = PlainModel.of(BASE);
  private static final Belief START = Belief.atReport(MODEL);

  /** The sets that are listed, but for that of no cause, as plain enumeration has them. */
  private static List<World> outset;

  @BeforeAll
  static void enumerate() {
    outset = PLAIN.outset(PLAIN.sets(START), true);
  }

  @AfterAll
  static void forget() {
    outset = null;
  }

  @Test
  void random_interviews_are_believed_as_plain_enumeration_has_it() {
    assertThat(MODEL.positions()).isEqualTo(PLAIN.causes);
    int causes = BASE.causes().size();
    for (long seed = 1; seed <= Size.of(8, 50); seed++) {
      List<Step> steps = answers(PLAIN, START, new SplittableRandom(seed));
      Belief belief = PLAIN.belief(START, steps);
      List<World> worlds = PLAIN.after(steps, outset);
      assertThat(belief.atCallOut())
          .as("seed " + seed)
          .containsExactly(marginals(PLAIN, worlds, causes), within(1e-9));
    }
  }

  @Test
  void the_sets_left_out_have_the_prior_chance_that_is_stated() {
    double none = PLAIN.prior(new boolean[PLAIN.size()]);
    double listed = outset.stream().mapToDouble(World::weight).sum();
    assertThat(START.neglected())
        .isCloseTo(1 - listed / (1 - none), within(1e-9))
        .isLessThanOrEqualTo(Belief.NEGLECT_AT_MOST);
  }

  /**
   * What leaving out large sets does to the beliefs is measured where all sets can be listed: on
   * the sixteen most probable causes.
   */
  @Test
  void sets_left_out_shift_beliefs_by_little() {
    List<String> sixteen =
        IntStream.range(0, PLAIN.size())
            .boxed()
            .sorted(Comparator.comparingDouble(c -> -PLAIN.priors[c]))
            .limit(16)
            .map(PLAIN.causes::get)
            .toList();
    PlainModel plain = PLAIN.only(sixteen, PLAIN.looks.stream().map(PlainModel.Look::id).toList());
    CausalModel model = plain.model();
    Belief few = Belief.atReport(model);
    Belief all = Belief.atReport(model, 16);
    assertThat(all.neglected()).isCloseTo(0, within(1e-9));
    double mean = 0;
    double worst = 0;
    int count = Size.of(15, 60);
    for (long seed = 1; seed <= count; seed++) {
      List<Step> steps = answers(plain, few, new SplittableRandom(seed));
      double[] one = plain.belief(few, steps).atCallOut();
      double[] other = plain.belief(all, steps).atCallOut();
      double shift = 0;
      for (int c = 0; c < one.length; c++) {
        shift = Math.max(shift, Math.abs(one[c] - other[c]));
      }
      mean += shift / count;
      worst = Math.max(worst, shift);
    }
    System.out.printf(
        "%d sets of 16 causes, %.4f of the prior left out:"
            + " greatest shift of a belief %.4f on average, %.4f at worst%n",
        few.hypotheses(), few.neglected(), mean, worst);
    assertThat(few.neglected()).isLessThanOrEqualTo(Belief.NEGLECT_AT_MOST);
    assertThat(mean).isLessThan(Belief.NEGLECT_AT_MOST);
  }

  /** Six answers, drawn as the belief expects them, some of them soft. */
  private static List<Step> answers(PlainModel plain, Belief start, SplittableRandom random) {
    List<Step> steps = new ArrayList<>();
    Belief belief = start;
    for (int i = 0; i < 6; i++) {
      int k = random.nextInt(plain.looks.size());
      double[] chances = belief.predict(plain.looks.get(k).id());
      double u = random.nextDouble();
      int y = 0;
      while (y < chances.length - 1 && u > chances[y]) {
        u -= chances[y++];
      }
      double[] weights = new double[chances.length];
      weights[y] = 1;
      if (random.nextInt(3) == 0) {
        weights[y] = 0.7;
        weights[y == 0 ? 1 : y - 1] = 0.3;
      }
      Step step = new Answered(k, weights);
      steps.add(step);
      belief = plain.belief(belief, List.of(step));
    }
    return steps;
  }

  private static double[] marginals(PlainModel plain, List<World> worlds, int causes) {
    double[] sums = new double[causes];
    double total = 0;
    for (World w : worlds) {
      total += w.weight();
      boolean[] told = plain.told(w.before(), causes);
      for (int c = 0; c < sums.length; c++) {
        sums[c] += told[c] ? w.weight() : 0;
      }
    }
    for (int c = 0; c < sums.length; c++) {
      sums[c] /= total;
    }
    return sums;
  }
}
