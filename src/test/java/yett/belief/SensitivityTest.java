package yett.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import yett.belief.Sensitivity.Entry;

/** Derivatives against finite differences of the belief itself, and against a case by hand. */
class SensitivityTest {
  private static final int CAUSES = 5;
  private static final double STEP = 1e-5;

  /** Rows by check, then by cause; "" is the row of none of them. */
  private final Map<String, Map<String, double[]>> rows = new LinkedHashMap<>();

  private final List<Observation> observations = new ArrayList<>();

  private CausalModel model(Map<String, Map<String, double[]>> rows) {
    CausalModel.Builder builder = CausalModel.builder();
    for (int c = 0; c < CAUSES; c++) {
      builder.cause("c" + c, 0.05 + 0.03 * c);
    }
    builder.link("c0", "c3", 0.6);
    rows.forEach(
        (check, all) -> {
          Map<String, double[]> own = new LinkedHashMap<>(all);
          builder.check(check, own.remove(""), own);
        });
    builder.repeats("again", "first", 0.4, 0, 1, 2);
    builder.repeats("partly", "first", 0.7, 0, 1, -1);
    return builder.build();
  }

  private Belief belief(Map<String, Map<String, double[]>> rows) {
    Belief belief = Belief.atReport(model(rows), CAUSES);
    for (Observation observation : observations) {
      belief = belief.learn(observation);
    }
    return belief;
  }

  private void draw(Random random) {
    for (String check : List.of("first", "again", "partly", "other")) {
      int outcomes = check.equals("partly") ? 2 : 3;
      Map<String, double[]> all = new LinkedHashMap<>();
      all.put("", row(random, outcomes));
      for (int c = 0; c < CAUSES; c++) {
        if (random.nextInt(3) > 0) {
          all.put("c" + c, row(random, outcomes));
        }
      }
      rows.put(check, all);
      if (!check.equals("first") || random.nextBoolean()) {
        observations.add(new Observation(check, weights(random, outcomes)));
      }
    }
  }

  private static double[] row(Random random, int outcomes) {
    double[] row = random.doubles(outcomes, 0.05, 1).toArray();
    double sum = java.util.Arrays.stream(row).sum();
    return java.util.Arrays.stream(row).map(p -> p / sum).toArray();
  }

  private static List<Double> weights(Random random, int outcomes) {
    return random.doubles(outcomes, 0, 1).boxed().toList();
  }

  /** The rows with the log-odds of one number moved, the others of its row in proportion. */
  private Map<String, Map<String, double[]>> moved(Entry entry, double by) {
    Map<String, Map<String, double[]>> moved = new LinkedHashMap<>();
    rows.forEach((check, all) -> moved.put(check, new LinkedHashMap<>(all)));
    double[] row = rows.get(entry.check()).get(entry.cause()).clone();
    double old = row[entry.outcome()];
    double odds = old / (1 - old) * Math.exp(by);
    double chance = odds / (1 + odds);
    for (int y = 0; y < row.length; y++) {
      row[y] = y == entry.outcome() ? chance : row[y] * (1 - chance) / (1 - old);
    }
    moved.get(entry.check()).put(entry.cause(), row);
    return moved;
  }

  private static double logOdds(double chance) {
    return Math.log(chance / (1 - chance));
  }

  @RepeatedTest(20)
  void derivatives_are_those_of_the_belief(RepetitionInfo repetition) {
    draw(new Random(repetition.getCurrentRepetition()));
    Sensitivity sensitivity = new Sensitivity(belief(rows), observations);
    Map<Entry, Double> odds = sensitivity.ofLogOdds("c2");
    Map<Entry, Double> ratio = sensitivity.ofRatio("c2", "c3");
    assertThat(odds).isNotEmpty();
    rows.forEach(
        (check, all) ->
            all.forEach(
                (cause, row) -> {
                  for (int y = 0; y < row.length; y++) {
                    Entry entry = new Entry(check, cause, y);
                    Belief up = belief(moved(entry, STEP));
                    Belief down = belief(moved(entry, -STEP));
                    assertThat(odds.getOrDefault(entry, 0.0))
                        .as("%s", entry)
                        .isCloseTo(
                            (logOdds(up.atCallOut("c2")) - logOdds(down.atCallOut("c2")))
                                / (2 * STEP),
                            within(1e-6));
                    assertThat(ratio.getOrDefault(entry, 0.0))
                        .isCloseTo(
                            (Math.log(up.atCallOut("c2") / up.atCallOut("c3"))
                                    - Math.log(down.atCallOut("c2") / down.atCallOut("c3")))
                                / (2 * STEP),
                            within(1e-6));
                  }
                }));
  }

  /**
   * One cause against none, one sure answer: the log-odds are those of the prior plus log p - log
   * q, so a deciban on the odds of p = 0.8 moves them by 1 - p = 0.2, one on q by q - 1.
   */
  @Test
  void a_single_cause_by_hand() {
    CausalModel model =
        CausalModel.builder()
            .cause("slack", 0.2)
            .check("slap", new double[] {1 - 0.1, 0.1}, Map.of("slack", new double[] {0.2, 0.8}))
            .build();
    List<Observation> said = List.of(new Observation("slap", List.of(0.0, 1.0)));
    Belief belief = Belief.prior(model, 1).learn(said.get(0));
    Map<Entry, Double> odds = new Sensitivity(belief, said).ofLogOdds("slack");
    // P(slap | slack) = 1 - 0.9 * 0.2 = 0.82 by noisy-MAX; its derivative is 0.9 * 0.8 * 0.2.
    assertThat(odds.get(new Entry("slap", "slack", 1))).isCloseTo(0.144 / 0.82, within(1e-12));
    // The base: 0.1 * 0.9 * 0.2 / 0.82 where slack is there, less 0.1 * 0.9 / 0.1 where it is not.
    assertThat(odds.get(new Entry("slap", "", 1))).isCloseTo(0.018 / 0.82 - 0.9, within(1e-12));
  }
}
