package yett.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.belief.PlainModel.Answered;
import yett.belief.PlainModel.World;
import yett.testing.Size;

class ConflictsTest {
  /** A flat battery shows on the lamp and on the meter, nothing else does on either. */
  private static CausalModel battery() {
    Map<String, double[]> dark = Map.of("flat", new double[] {0.05, 0.95});
    return CausalModel.builder()
        .cause("flat", 0.3)
        .cause("chain", 0.2)
        .check("lamp", new double[] {0.99, 0.01}, dark)
        .check("meter", new double[] {0.99, 0.01}, dark)
        .check("sound", new double[] {0.9, 0.1}, Map.of("chain", new double[] {0.3, 0.7}))
        .build();
  }

  private static Observation seen(String check, int outcome) {
    return Observation.of(check, outcome, 2);
  }

  // By hand: base and cause combine, so dark with 1 - 0.99 x 0.05 = 0.9505 if flat, else 0.01.
  @Test
  void answers_of_one_cause_that_agree_are_below_zero_and_those_that_jar_above() {
    Belief prior = Belief.prior(battery(), 2);
    double dark = 0.3 * 0.9505 + 0.7 * 0.01;
    double both = 0.3 * 0.9505 * 0.9505 + 0.7 * 0.01 * 0.01;
    double jarring = 0.3 * 0.9505 * 0.0495 + 0.7 * 0.01 * 0.99;
    assertThat(Conflicts.of(prior, List.of(seen("lamp", 1), seen("meter", 1))))
        .isCloseTo(Math.log(dark * dark / both) / Math.log(2), within(1e-9))
        .isNegative();
    assertThat(Conflicts.of(prior, List.of(seen("lamp", 1), seen("meter", 0))))
        .isCloseTo(Math.log(dark * (1 - dark) / jarring) / Math.log(2), within(1e-9))
        .isGreaterThan(Conflicts.TOLD - 0.2);
    assertThat(Conflicts.of(prior, List.of(seen("lamp", 1), seen("sound", 1))))
        .isCloseTo(0, within(1e-9));
  }

  static LongStream seeds() {
    return Size.seeds(25, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void it_is_that_of_plain_enumeration(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    PlainModel plain = PlainModel.random(random, 8);
    List<PlainModel.Step> steps = new ArrayList<>();
    List<Observation> seen = new ArrayList<>();
    for (PlainModel.Look look : plain.looks) {
      double[] weights = PlainModel.row(look.base().length, random);
      steps.add(new Answered(plain.looks.indexOf(look), weights));
      seen.add(
          new Observation(
              look.id(), IntStream.range(0, weights.length).mapToObj(y -> weights[y]).toList()));
    }
    double bits = -Math.log(total(plain, steps)) / Math.log(2);
    for (PlainModel.Step step : steps) {
      bits += Math.log(total(plain, List.of(step))) / Math.log(2);
    }
    Belief prior = Belief.prior(plain.model(), plain.size());
    assertThat(Conflicts.of(prior, seen)).isCloseTo(bits, within(1e-7));
  }

  private static double total(PlainModel plain, List<PlainModel.Step> steps) {
    return plain.worlds(steps, plain.size(), false).stream().mapToDouble(World::weight).sum();
  }

  @Test
  void a_set_in_conflict_needs_all_of_its_members() {
    assertThat(seeds().filter(ConflictsTest::hasASetInConflict)).hasSizeGreaterThan(5);
  }

  private static boolean hasASetInConflict(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    CausalModel.Builder builder = CausalModel.builder();
    int causes = 4;
    for (int c = 0; c < causes; c++) {
      builder.cause("c" + c, 0.02 + 0.2 * random.nextDouble());
    }
    List<Observation> seen = new ArrayList<>();
    for (int k = 0; k < 9; k++) {
      double shows = 0.005 + 0.02 * random.nextDouble();
      builder.check(
          "k" + k,
          new double[] {1 - shows, shows},
          Map.of("c" + random.nextInt(causes), new double[] {0.02, 0.98}));
      seen.add(seen("k" + k, random.nextInt(2)));
    }
    Belief before = Belief.atReport(builder.build(), causes);
    List<Integer> named = IntStream.range(0, 8).boxed().toList();
    List<Integer> set = Conflicts.smallest(before, seen, named, 8);
    if (set.isEmpty()) {
      return false;
    }
    assertThat(set).contains(8).isSorted().doesNotHaveDuplicates();
    assertThat(conflict(before, seen, set)).isGreaterThanOrEqualTo(Conflicts.TOLD);
    for (Integer member : set) {
      List<Integer> less = new ArrayList<>(set);
      less.remove(member);
      assertThat(member == 8 || less.size() < 2 || conflict(before, seen, less) < Conflicts.TOLD)
          .isTrue();
    }
    return true;
  }

  private static double conflict(Belief before, List<Observation> seen, List<Integer> set) {
    return Conflicts.of(before, set.stream().map(seen::get).toList());
  }

  @Test
  void what_shares_nothing_with_the_conflict_is_not_named() {
    List<Observation> seen =
        List.of(seen("sound", 1), seen("lamp", 1), seen("sound", 1), seen("meter", 0));
    CausalModel sharp =
        CausalModel.builder()
            .cause("flat", 0.3)
            .cause("chain", 0.2)
            .check("lamp", new double[] {0.999, 0.001}, Map.of("flat", new double[] {0.01, 0.99}))
            .check("meter", new double[] {0.999, 0.001}, Map.of("flat", new double[] {0.01, 0.99}))
            .check("sound", new double[] {0.9, 0.1}, Map.of("chain", new double[] {0.3, 0.7}))
            .build();
    assertThat(Conflicts.smallest(Belief.prior(sharp, 2), seen, List.of(0, 1, 2), 3))
        .containsExactly(1, 3);
  }

  @Test
  void answers_that_exclude_each_other_have_a_finite_measure() {
    CausalModel model =
        CausalModel.builder()
            .cause("flat", 0.3)
            .check("lamp", new double[] {1, 0}, Map.of("flat", new double[] {0, 1}))
            .check("meter", new double[] {1, 0}, Map.of("flat", new double[] {0, 1}))
            .build();
    Belief prior = Belief.prior(model, 1);
    List<Observation> seen = List.of(seen("lamp", 1), seen("meter", 0));
    assertThat(Conflicts.of(prior, seen)).isEqualTo(Conflicts.MOST);
    assertThat(Conflicts.smallest(prior, seen, List.of(0), 1)).containsExactly(0, 1);
  }
}
