package yett.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.belief.CardModel;
import yett.belief.CausalModel;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.knowledge.Instruments;
import yett.knowledge.RuleBase;
import yett.replay.SmallRuleBase;

class SymptomDrawTest {
  private static final RuleBase BASE = SmallRuleBase.base();
  private static final int MANY = 20_000;

  /** The belief's own table, without its half percent of slips (at most 0.005 away). */
  @ParameterizedTest
  @ValueSource(strings = {"display-lit", "battery-rest-voltage", "charging-voltage"})
  void gates_show_what_the_belief_expects_of_their_causes(String id) {
    CausalModel model = CardModel.of(BASE);
    Check check = BASE.checks().get(id);
    for (Set<String> causes :
        List.of(
            Set.<String>of(), Set.of("batteries-low"), Set.of("mains-missing", "batteries-low"))) {
      double[] often = new double[check.outcomes().size()];
      for (int seed = 0; seed < MANY; seed++) {
        often[new SymptomDraw(BASE, new Noise(seed)).outcome(check, causes, 0)] += 1.0 / MANY;
      }
      double[] expected =
          model.table(id).outcomeChances(causes.stream().mapToInt(model::indexOf).toArray());
      for (int i = 0; i < often.length; i++) {
        // Five standard deviations of a share of 20,000, and the slips.
        double slack = 5 * Math.sqrt(expected[i] * (1 - expected[i]) / MANY) + 0.006;
        assertThat(often[i]).as(id + causes + i).isCloseTo(expected[i], within(slack));
      }
    }
  }

  @Test
  void a_repair_takes_away_what_its_cause_contributed_and_nothing_else() {
    Check lit = BASE.checks().get("display-lit");
    int changed = 0;
    for (int seed = 0; seed < 200; seed++) {
      SymptomDraw shows = new SymptomDraw(BASE, new Noise(seed));
      int both = shows.outcome(lit, Set.of("batteries-low", "mains-missing"), 0);
      int one = shows.outcome(lit, Set.of("mains-missing"), 0);
      assertThat(one).isLessThanOrEqualTo(both);
      assertThat(shows.outcome(lit, Set.of("chain-slack", "mains-missing"), 0)).isEqualTo(one);
      changed += one < both ? 1 : 0;
    }
    assertThat(changed).isPositive();
  }

  @Test
  void a_check_that_repeats_another_copies_its_share() {
    Check lit = BASE.checks().get("display-lit");
    Check noise = BASE.checks().get("noise-kind");
    Check again = repeating(noise, lit, 0.7);
    int same = 0;
    for (int seed = 0; seed < MANY; seed++) {
      SymptomDraw shows = new SymptomDraw(BASE, new Noise(seed));
      Set<String> causes = Set.of("mains-missing");
      same += shows.outcome(again, causes, 0) == shows.outcome(lit, causes, 0) ? 1 : 0;
    }
    // Made anew it is dark in 1 of 100, the original in half: 0.7 + 0.3 * (0.5 * 0.99 + 0.5 *
    // 0.01).
    assertThat(same / (double) MANY).isCloseTo(0.85, within(0.02));
  }

  /** The second check with the outcomes of the first, so that it can copy it. */
  private static Check repeating(Check second, Check first, double share) {
    return new Check(
        second.id(),
        second.kind(),
        new Check.Question(
            "", second.ask(), second.lay(), second.how(), Optional.empty(), first.outcomes()),
        new Check.Evidence(
            Map.of(),
            new double[] {0.99, 0.01},
            second.reliability(),
            Optional.of(new Check.Repeats(first.id(), share)),
            1),
        second.work(),
        second.area(),
        second.onlyIf(),
        false,
        second.inspected(),
        second.source());
  }

  @Test
  void readings_lie_in_their_band_and_scatter_by_the_uncertainty_that_the_rules_weigh_them_with() {
    Check rest = BASE.checks().get("battery-rest-voltage");
    int low = rest.indexOf("low");
    double value = ((Answer.Read) read(7, rest, low, 0)).value();
    double u = Instruments.uncertainty(rest.measures().orElseThrow(), value);
    List<Double> readings = new ArrayList<>();
    for (int time = 0; time < 4000; time++) {
      readings.add(((Answer.Read) read(7, rest, low, time)).value());
    }
    double mean = readings.stream().mapToDouble(d -> d).average().orElseThrow();
    double variance = readings.stream().mapToDouble(d -> (d - mean) * (d - mean)).sum() / 3999;
    assertThat(mean).isBetween(24.0, 25.2);
    // Five standard errors of a standard deviation, s / sqrt(2 n); showing three figures adds
    // 0.1 V / sqrt(12).
    double shown = Math.hypot(u, 0.1 / Math.sqrt(12));
    assertThat(Math.sqrt(variance)).isCloseTo(shown, within(5 * shown / Math.sqrt(8000)));
    assertThat(read(7, rest, low, 3)).isEqualTo(read(7, rest, low, 3));
    assertThat(read(7, rest, low, 0)).isNotEqualTo(read(8, rest, low, 0));
  }

  @Test
  void readings_of_open_bands_stay_near_their_limit() {
    Check rest = BASE.checks().get("battery-rest-voltage");
    for (int seed = 0; seed < 300; seed++) {
      double flat = ((Answer.Read) read(seed, rest, rest.indexOf("flat"), 0)).value();
      double charged = ((Answer.Read) read(seed, rest, rest.indexOf("charged"), 0)).value();
      assertThat(flat).isBetween(22.2, 24.6);
      assertThat(charged).isBetween(24.6, 27.0);
    }
  }

  private static Answer read(long seed, Check check, int outcome, int time) {
    return new Readings(new Noise(seed)).read(check, outcome, Optional.empty(), time);
  }

  /** Streams of chance for different words have nothing to do with each other. */
  @Test
  void noise_is_even_and_free_of_what_it_is_asked_for() {
    Random words = new Random(1);
    double sum = 0;
    double product = 0;
    for (int i = 0; i < MANY; i++) {
      Noise noise = new Noise(words.nextLong());
      double a = noise.even("a");
      double b = noise.even("b");
      sum += a;
      product += (a - 0.5) * (b - 0.5);
    }
    assertThat(sum / MANY).isCloseTo(0.5, within(5 / Math.sqrt(12.0 * MANY)));
    assertThat(product / MANY).isCloseTo(0, within(5 / 12.0 / Math.sqrt(MANY)));
  }
}
