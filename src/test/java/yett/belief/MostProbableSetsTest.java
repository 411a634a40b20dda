package yett.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.belief.PlainModel.Answered;
import yett.belief.PlainModel.Mended;
import yett.belief.PlainModel.Step;
import yett.belief.PlainModel.Tried;
import yett.belief.PlainModel.World;
import yett.testing.Shipped;
import yett.testing.Size;

/** Which sets are listed, against sorting all of them; the argument is the seed. */
class MostProbableSetsTest {
  private static final double EXACT = 1e-9;
  private static final double[] LEFT_OUT = {0.3, 0.1, 0.05, 0.01, 0.001};

  static LongStream seeds() {
    return Size.seeds(40, 100);
  }

  /** Links, certain ones too; causes without a chance of their own; some more likely than not. */
  private static PlainModel model(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    PlainModel plain = PlainModel.random(random, seed % 10 == 0 ? 12 : 8);
    for (int c = 0; c < plain.size(); c++) {
      plain.priors[c] = random.nextInt(9) == 0 ? 0.5 + random.nextDouble() / 2 : plain.priors[c];
    }
    return plain;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void they_are_the_most_probable_ones_with_their_subsets(long seed) {
    PlainModel plain = model(seed);
    List<boolean[]> all = new ArrayList<>(plain.sets(plain.size()));
    all.removeIf(PlainModel::none);
    all.sort(Comparator.comparingDouble(s -> -plain.prior(s)));
    double possible = all.stream().mapToDouble(plain::prior).sum();
    for (double leftOut : LEFT_OUT) {
      Belief belief = Belief.atReport(plain.model(), leftOut, 100_000);
      Set<List<Integer>> needed = new HashSet<>();
      Set<List<Integer>> allowed = new HashSet<>(Set.of(List.of()));
      double sum = 0;
      double last = 1;
      for (boolean[] set : all) {
        double prior = plain.prior(set);
        boolean enough = sum >= (1 - leftOut) * possible;
        if (enough && prior < last * (1 - EXACT)) {
          break;
        }
        if (sum < (1 - leftOut) * possible * (1 - EXACT)) {
          needed.add(causes(set));
        }
        addSubsets(causes(set), allowed);
        sum += prior;
        last = enough ? last : prior;
      }
      Set<List<Integer>> listed = new HashSet<>();
      plain.sets(belief).forEach(s -> assertThat(listed.add(causes(s))).isTrue());
      assertThat(listed).containsAll(needed);
      assertThat(allowed).containsAll(listed);
      double mass =
          plain.sets(belief).stream()
              .filter(s -> !PlainModel.none(s))
              .mapToDouble(plain::prior)
              .sum();
      assertThat(belief.neglected())
          .isCloseTo(1 - mass / possible, within(EXACT))
          .isLessThanOrEqualTo(leftOut + EXACT);
    }
  }

  private static List<Integer> causes(boolean[] set) {
    return IntStream.range(0, set.length).filter(c -> set[c]).boxed().toList();
  }

  private static void addSubsets(List<Integer> set, Set<List<Integer>> into) {
    if (into.add(set)) {
      for (int k = 0; k < set.size(); k++) {
        List<Integer> less = new ArrayList<>(set);
        less.remove(k);
        addSubsets(less, into);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void a_set_without_one_of_its_causes_is_found_and_parents_come_first(long seed) {
    Lattice lattice = Belief.atReport(model(seed).model(), 0.05, 100_000).lattice();
    for (int h = 0; h < lattice.size(); h++) {
      int[] members = lattice.members(h);
      for (int c : members) {
        int[] less = Arrays.stream(members).filter(m -> m != c).toArray();
        assertThat(lattice.members(lattice.without(h, c))).containsExactly(less);
      }
      assertThat(h == 0 || lattice.parent(h) < h).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void belief_is_that_of_plain_enumeration_over_the_same_sets(long seed) {
    PlainModel plain = model(seed);
    SplittableRandom random = new SplittableRandom(-seed);
    List<Step> steps = new ArrayList<>(List.of(answer(plain, random), answer(plain, random)));
    double[] removes = new double[plain.size()];
    removes[random.nextInt(plain.size())] = 0.9;
    removes[random.nextInt(plain.size())] = 1;
    double[] fails = new double[plain.size()];
    Arrays.fill(fails, 0.9);
    steps.addAll(List.of(new Mended(removes), new Tried(false, fails), answer(plain, random)));
    Belief start = Belief.atReport(plain.model(), 0.1, 100_000);
    Belief belief = plain.belief(start, steps);
    List<World> worlds = plain.worlds(steps, plain.sets(start), true);
    double total = worlds.stream().mapToDouble(World::weight).sum();
    for (int c = 0; c < plain.size(); c++) {
      int cause = c;
      assertThat(belief.atCallOut()[c])
          .isCloseTo(weight(worlds, w -> w.before()[cause]) / total, within(EXACT));
      assertThat(belief.remaining()[c])
          .isCloseTo(weight(worlds, w -> w.now()[cause]) / total, within(EXACT));
    }
  }

  private static double weight(List<World> worlds, Predicate<World> property) {
    return worlds.stream().filter(property).mapToDouble(World::weight).sum();
  }

  private static Answered answer(PlainModel plain, SplittableRandom random) {
    int k = random.nextInt(plain.looks.size());
    double[] weights = new double[plain.looks.get(k).base().length];
    Arrays.fill(weights, 0.05);
    weights[random.nextInt(weights.length)] = 1;
    return new Answered(k, weights);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void with_nothing_left_out_it_is_that_of_all_sets(long seed) {
    PlainModel plain = model(seed);
    Belief all = Belief.atReport(plain.model(), plain.size());
    Belief possible = Belief.atReport(plain.model(), 0, 100_000);
    List<Step> steps = List.of(answer(plain, new SplittableRandom(seed)));
    assertThat(possible.neglected()).isCloseTo(0, within(EXACT));
    assertThat(plain.belief(possible, steps).atCallOut())
        .containsExactly(plain.belief(all, steps).atCallOut(), within(EXACT));
  }

  @Test
  void a_cause_that_is_ruled_out_is_in_no_set() {
    CausalModel model =
        CausalModel.builder()
            .cause("charger", 0.05)
            .cause("battery", 0.1)
            .cause("chain", 0.1)
            .link("charger", "battery", 0.7)
            .build()
            .withOdds(Map.of("battery", 0.0));
    Belief belief = Belief.atReport(model);
    assertThat(belief.explanations(10))
        .extracting(Belief.Explanation::causes)
        .containsExactlyInAnyOrder(
            List.of("charger"), List.of("chain"), List.of("charger", "chain"));
  }

  @Test
  void equal_causes_are_listed_all_or_not_at_all() {
    CausalModel.Builder builder = CausalModel.builder();
    for (int c = 0; c < 300; c++) {
      builder.cause("c" + c, 0.004);
    }
    Belief belief = Belief.atReport(builder.build(), 0.01, 1_000);
    // All pairs are 44,850, too many; the larger sets are left out, and that is said.
    assertThat(belief.hypotheses()).isEqualTo(301);
    double none = Math.pow(0.996, 300);
    assertThat(belief.neglected())
        .isCloseTo(1 - 300 * 0.004 / 0.996 * none / (1 - none), within(EXACT));
    assertThat(Arrays.stream(belief.atCallOut()).distinct().count()).isLessThan(3);
  }

  @Test
  void two_thousand_causes_stay_within_bounds() {
    SplittableRandom random = new SplittableRandom(1);
    CausalModel.Builder builder = CausalModel.builder();
    Map<String, double[]> rows = new LinkedHashMap<>();
    for (int c = 0; c < 2_000; c++) {
      builder.cause("c" + c, Math.pow(random.nextDouble(), 6) * 0.0025);
      if (c % 10 == 0) {
        rows.put("c" + c, new double[] {0.2, 0.8});
      }
    }
    builder.link("c7", "c1990", 1).link("c1990", "c3", 0.5);
    builder.check("k", new double[] {0.99, 0.01}, rows);
    Belief belief = Belief.atReport(builder.build()).learn(Observation.of("k", 1, 2));
    assertThat(belief.hypotheses()).isBetween(2_001, 150_000);
    assertThat(belief.neglected()).isBetween(0.0, 0.5);
    assertThat(belief.atCallOut()[1990]).isGreaterThan(belief.atCallOut()[7]);
  }

  /** Where the search for the limit begins must not change what is listed, nor its order. */
  @Test
  void a_listing_does_not_depend_on_where_it_begins() {
    CausalModel model = Shipped.EXPERTISE.model();
    for (int most : new int[] {50, 4_000}) {
      for (double leftOut : new double[] {0.01, 0.3}) {
        Lattice alone = Enumeration.mostProbable(model, leftOut, most);
        for (double least = 0.1; least > 1e-12; least /= 3) {
          Likely likely = new Likely();
          likely.least(least);
          Lattice other = Enumeration.mostProbable(model, leftOut, most, likely);
          assertThat(other.size()).as("from %s", least).isEqualTo(alone.size());
          assertThat(model.priors(other)).isEqualTo(model.priors(alone));
        }
      }
    }
  }

  /**
   * A thread uses its room for numbers again and knows the last answer; a new thread has neither.
   */
  @Test
  void a_chance_does_not_depend_on_what_was_asked_before() throws Exception {
    CausalModel model = Shipped.EXPERTISE.model();
    Belief rough = Belief.roughly(model);
    Belief fewer = Belief.atReport(model, 0.3, 500);
    Observation slack = Observation.of("chain-sag", 2, model.table("chain-sag").outcomes());
    Observation hangs = Observation.of("chain-looks", 1, model.table("chain-looks").outcomes());
    Belief seen = rough.learn(slack);
    for (Belief belief : List.of(rough, seen, fewer, rough, seen.learn(hangs), seen)) {
      for (Observation asked : List.of(hangs, slack, hangs)) {
        double[] alone = new double[1];
        Thread thread = new Thread(() -> alone[0] = belief.chanceOf(asked));
        thread.start();
        thread.join();
        assertThat(belief.chanceOf(asked)).isEqualTo(alone[0]);
      }
    }
  }
}
