package yett.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Textbook networks that are made of causes, links and checks. Three famous ones are not: in the
 * sprinkler network clouds make the sprinkler less likely; in the burglar alarm (0.95, 0.94, 0.29,
 * 0.001) and in the shortness of breath of the chest clinic (0.9, 0.8, 0.7, 0.1) two causes
 * together weigh less than noisy-OR has it.
 */
class TextbookTest {
  private static final double TEN_DIGITS = 1e-10;

  /** Noisy-OR over ordinary and telling: what shows with {@code leak} and with each cause alone. */
  private static void finding(
      CausalModel.Builder builder, String id, double leak, Map<String, Double> shows) {
    Map<String, double[]> rows = new LinkedHashMap<>();
    shows.forEach((cause, q) -> rows.put(cause, new double[] {1 - q, q}));
    builder.check(id, new double[] {1 - leak, leak}, rows);
  }

  /** Learns "f1" as on and "-f1" as off. */
  private static Belief given(CausalModel model, String findings) {
    Belief belief = Belief.prior(model, model.size());
    for (String f : findings.isBlank() ? new String[0] : findings.trim().split(" ")) {
      boolean off = f.startsWith("-");
      belief = belief.learn(Observation.of(off ? f.substring(1) : f, off ? 0 : 1, 2));
    }
    return belief;
  }

  // Russell and Norvig, Artificial Intelligence, noisy-OR table of fever.
  @ParameterizedTest
  @CsvSource({
    "'', 0",
    "malaria, 0.9",
    "flu, 0.8",
    "flu malaria, 0.98",
    "cold, 0.4",
    "cold malaria, 0.94",
    "cold flu, 0.88",
    "cold flu malaria, 0.988"
  })
  void fever_by_noisy_or(String present, double chance) {
    CausalModel.Builder builder =
        CausalModel.builder().cause("cold", 0.1).cause("flu", 0.05).cause("malaria", 0.01);
    finding(builder, "fever", 0, Map.of("cold", 0.4, "flu", 0.8, "malaria", 0.9));
    CausalModel model = builder.build();
    int[] causes =
        present.isBlank()
            ? new int[0]
            : List.of(present.split(" ")).stream().mapToInt(model::indexOf).toArray();
    assertThat(model.table("fever").outcomeChances(causes)[1]).isCloseTo(chance, within(1e-15));
  }

  // The table above with our own priors, by Bayes' rule over its eight rows in exact fractions.
  @Test
  void causes_of_a_fever() {
    CausalModel.Builder builder =
        CausalModel.builder().cause("cold", 0.1).cause("flu", 0.05).cause("malaria", 0.01);
    finding(builder, "fever", 0, Map.of("cold", 0.4, "flu", 0.8, "malaria", 0.9));
    Belief belief = given(builder.build(), "fever");
    assertThat(Math.exp(belief.logEvidence())).isCloseTo(0.0866944, within(TEN_DIGITS));
    assertThat(belief.atCallOut())
        .containsExactly(
            new double[] {0.4950538904, 0.4670013288, 0.1047172597}, within(TEN_DIGITS));
  }

  private static CausalModel twoLayers() {
    CausalModel.Builder builder =
        CausalModel.builder()
            .cause("d1", 0.02)
            .cause("d2", 0.05)
            .cause("d3", 0.1)
            .cause("d4", 0.01)
            .cause("d5", 0.03);
    finding(builder, "f1", 0.01, Map.of("d1", 0.8, "d2", 0.5, "d4", 0.9));
    finding(builder, "f2", 0.02, Map.of("d1", 0.6, "d3", 0.3, "d4", 0.9));
    finding(builder, "f3", 0.05, Map.of("d2", 0.7, "d3", 0.2, "d5", 0.4));
    finding(builder, "f4", 0.005, Map.of("d1", 0.3, "d4", 0.6, "d5", 0.8));
    finding(builder, "f5", 0.03, Map.of("d2", 0.4, "d4", 0.5));
    finding(builder, "f6", 0.01, Map.of("d3", 0.9, "d5", 0.2));
    return builder.build();
  }

  // Form of Heckerman 1989 (Quickscore); figures by exact fractions over all 32 sets, equal to his
  // alternating sum, and for the first row to a junction tree (Weka 3.8.6).
  @ParameterizedTest
  @CsvSource({
    "f1 f2 f4 -f3 -f5,"
        + " 0.004781644678, 0.5633217495, 0.0109249824, 0.0916624759, 0.4467357280, 0.0414610002",
    "'', 1, 0.02, 0.05, 0.1, 0.01, 0.03",
    "-f3 -f5," + " 0.851373342438, 0.02, 0.0093847758, 0.0816326531, 0.0050251256, 0.0182186235",
    "f1, 0.058742254, 0.2753341572, 0.4403165394, 0.1, 0.1540661685, 0.03",
    "f1 f2 f4 -f3 -f5 f6,"
        + " 0.000473652216, 0.5922182363, 0.0144030006, 0.8346711575, 0.4054368944, 0.1203427108",
    "f1 f2 f4 -f3 -f5 -f6,"
        + " 0.004307992462, 0.5601446583, 0.0105425836, 0.0099706643, 0.4512764239, 0.0327881677",
  })
  void two_layer_noisy_or(
      String findings, double evidence, double d1, double d2, double d3, double d4, double d5) {
    Belief belief = given(twoLayers(), findings);
    assertThat(Math.exp(belief.logEvidence())).isCloseTo(evidence, within(1e-12));
    assertThat(belief.atCallOut())
        .containsExactly(new double[] {d1, d2, d3, d4, d5}, within(TEN_DIGITS));
  }

  // Same source: the best explanations, and the finding that was not looked at.
  @Test
  void two_layer_noisy_or_explanations_and_prediction() {
    Belief belief = given(twoLayers(), "f1 f2 f4 -f3 -f5");
    List<Belief.Explanation> best = belief.explanations(5);
    assertThat(best)
        .extracting(Belief.Explanation::causes)
        .containsExactly(
            List.of("d1"),
            List.of("d4"),
            List.of("d1", "d3"),
            List.of("d3", "d4"),
            List.of("d1", "d5"));
    assertThat(best.stream().mapToDouble(Belief.Explanation::chance).toArray())
        .containsExactly(
            new double[] {0.4683361927, 0.3831596674, 0.0496819797, 0.0351687523, 0.0246462926},
            within(TEN_DIGITS));
    assertThat(belief.predict("f6")[1]).isCloseTo(0.0990563390, within(TEN_DIGITS));
  }

  // Form of Heckerman 1989; three causes, by enumeration over the eight sets.
  @ParameterizedTest
  @CsvSource({
    "s1, .1119240000, .72097137, .16479039, .02000000",
    "s1 s2, .0156653472, .33071059, .83398941, .13037910",
    "s1 s2 -s3, .0116731861, .17516267, .92346959, .04272259",
    "s1 s2 s3, .0039921611, .78553687, .57234695, .38668909",
    "-s1 -s2 -s3, .7901400841, .01098901, .01093181, .00081566",
  })
  void three_causes(String findings, double evidence, double d1, double d2, double d3) {
    Belief belief = given(threeCauses(), findings);
    assertThat(Math.exp(belief.logEvidence())).isCloseTo(evidence, within(TEN_DIGITS));
    assertThat(belief.atCallOut()).containsExactly(new double[] {d1, d2, d3}, within(1e-8));
  }

  private static CausalModel threeCauses() {
    CausalModel.Builder builder =
        CausalModel.builder().cause("d1", 0.1).cause("d2", 0.05).cause("d3", 0.02);
    finding(builder, "s1", 0.02, Map.of("d1", 0.8, "d2", 0.3));
    finding(builder, "s2", 0.01, Map.of("d2", 0.7, "d3", 0.9));
    finding(builder, "s3", 0.05, Map.of("d1", 0.5, "d3", 0.6));
    return builder.build();
  }

  // Same source: the best single cause comes only third.
  @Test
  void pairs_of_causes_beat_the_best_single_one() {
    assertThat(given(threeCauses(), "s1 s2 s3").explanations(4))
        .extracting(e -> e.causes() + " " + Math.round(e.chance() * 1e6))
        .containsExactly("[d1, d2] 390852", "[d1, d3] 279262", "[d2] 121923", "[d1] 98437");
  }

  private static CausalModel chargerBatteryTerminal(double link) {
    CausalModel.Builder builder =
        CausalModel.builder()
            .cause("C", 0.05)
            .cause("B", 0.04)
            .cause("T", 0.06)
            .link("C", "B", link);
    finding(builder, "N", 0.02, Map.of("B", 0.9, "T", 0.7));
    finding(builder, "V", 0.01, Map.of("C", 0.95));
    finding(builder, "L", 0.03, Map.of("B", 0.8, "T", 0.3));
    return builder.build();
  }

  // Enumeration in exact fractions; N L, N L V, N L -V and -N V also by a junction tree
  // (Weka 3.8.6).
  @ParameterizedTest
  @CsvSource({
    "'', 1, 0.05, 0.0808, 0.06",
    "N, 0.1294324448, 0.3030315688, 0.5656554886, 0.3371857873",
    "N L, 0.0723017875, 0.4357448175, 0.8199587258, 0.2291138831",
    "N L V, 0.0303535919, 0.9865595286, 0.9925521342, 0.0752328004",
    "N L -V, 0.0419481956, 0.0371769005, 0.6950706393, 0.3404617853",
    "V, 0.057025, 0.8334064007, 0.7200596230, 0.06",
    "-N V, 0.0188422747, 0.5436911490, 0.2045935822, 0.0187891441",
  })
  void a_dead_charger_brings_about_a_flat_battery(
      String findings, double evidence, double c, double b, double t) {
    Belief belief = given(chargerBatteryTerminal(0.85), findings);
    assertThat(Math.exp(belief.logEvidence())).isCloseTo(evidence, within(TEN_DIGITS));
    assertThat(belief.atCallOut()).containsExactly(new double[] {c, b, t}, within(TEN_DIGITS));
  }

  @Test
  void without_the_link_a_flat_battery_says_nothing_of_the_charger() {
    assertThat(given(chargerBatteryTerminal(0), "N L").atCallOut())
        .containsExactly(new double[] {0.05, 0.6834215532, 0.3508478944}, within(TEN_DIGITS));
  }

  private static CausalModel ordered() {
    return CausalModel.builder()
        .cause("a", 0.1)
        .cause("b", 0.2)
        .check(
            "Y",
            new double[] {0.9, 0.08, 0.02},
            Map.of("a", new double[] {0.2, 0.5, 0.3}, "b", new double[] {0.4, 0.1, 0.5}))
        .build();
  }

  // Noisy-MAX as in Diez 1993, three ordered outcomes; by cumulative products in exact fractions.
  @ParameterizedTest
  @CsvSource({
    "0, 0.7286400000, 0.0217391304, 0.0909090909",
    "1, 0.1269000000, 0.3617021277, 0.2271079590",
    "2, 0.1444600000, 0.2648484009, 0.7264294614",
  })
  void three_ordered_outcomes(int outcome, double chance, double a, double b) {
    Belief prior = Belief.prior(ordered(), 2);
    assertThat(prior.predict("Y")[outcome]).isCloseTo(chance, within(TEN_DIGITS));
    assertThat(prior.learn(Observation.of("Y", outcome, 3)).atCallOut())
        .containsExactly(new double[] {a, b}, within(TEN_DIGITS));
  }

  // Same: "weak or strong" counts as one outcome, and is then the noisy-OR of what is not "none".
  @Test
  void partial_evidence_collapses_to_noisy_or() {
    Belief belief = Belief.prior(ordered(), 2).learn(new Observation("Y", List.of(0.0, 1.0, 1.0)));
    CausalModel.Builder builder = CausalModel.builder().cause("a", 0.1).cause("b", 0.2);
    finding(builder, "Y", 0.1, Map.of("a", 0.8, "b", 0.6));
    assertThat(belief.atCallOut())
        .containsExactly(new double[] {0.3101415094, 0.4929245283}, within(TEN_DIGITS));
    assertThat(given(builder.build(), "Y").atCallOut())
        .containsExactly(belief.atCallOut(), within(1e-15));
  }

  // Good's decibans: prior 0.01 and four findings independent given the cause, by Bayes' rule.
  @Test
  void decibans_of_independent_findings_add_up() {
    CausalModel.Builder builder = CausalModel.builder().cause("c", 0.01);
    double[][] shows = {{0.9, 0.1}, {0.8, 0.2}, {0.3, 0.6}, {0.8, 0.05}};
    for (int i = 0; i < shows.length; i++) {
      // As noisy-MAX: the greater of base and contribution; where the cause makes the finding
      // rarer, the outcomes are turned round.
      boolean raises = shows[i][0] > shows[i][1];
      double with = raises ? shows[i][0] : 1 - shows[i][0];
      double without = raises ? shows[i][1] : 1 - shows[i][1];
      finding(builder, "f" + i, without, Map.of("c", 1 - (1 - with) / (1 - without)));
    }
    Belief belief = Belief.prior(builder.build(), 1);
    double[] expected = {9.542425, 6.020600, -3.010300, -6.766936};
    int[] outcome = {1, 1, 0, 0};
    for (int i = 0; i < expected.length; i++) {
      Belief next = belief.learn(Observation.of("f" + i, outcome[i], 2));
      assertThat(Decibans.between(belief.atCallOut("c"), next.atCallOut("c")))
          .isCloseTo(expected[i], within(1e-6));
      belief = next;
    }
    assertThat(belief.atCallOut("c")).isCloseTo(0.0368663594, within(TEN_DIGITS));
  }

  // Ten times the common logarithm of the odds.
  @ParameterizedTest
  @CsvSource({
    "0.5, 0",
    "0.55, 0.871502",
    "0.6, 1.760913",
    "0.7, 3.679768",
    "0.8, 6.020600",
    "0.9, 9.542425",
    "0.95, 12.787536",
    "0.99, 19.956352",
    "0.999, 29.995655",
    "0.01, -19.956352",
    "0.1, -9.542425",
    "0.990099, 20",
    "0.952273, 13",
    "0.557312, 1"
  })
  void decibans_of_a_probability(double probability, double decibans) {
    assertThat(Decibans.ofProbability(probability)).isCloseTo(decibans, within(1e-4));
  }

  // Car start problem of Jensen and Nielsen 2007: no fuel 0.02, dirty plugs 0.04; it starts with
  // 0.99 if neither, 0.01 if only the plugs are dirty; the gauge shows half, full, empty.
  @Test
  void car_start() {
    Map<String, double[]> gauge =
        Map.of("fuel", new double[] {0.001 / 0.60, 0.002 / 0.99 - 0.001 / 0.60, 1 - 0.002 / 0.99});
    CausalModel.Builder builder =
        CausalModel.builder()
            .cause("fuel", 0.02)
            .cause("plugs", 0.04)
            .check("gauge", new double[] {0.60, 0.39, 0.01}, gauge);
    finding(builder, "fails", 0.01, Map.of("fuel", 1.0, "plugs", 1 - 0.01 / 0.99));
    Belief belief = given(builder.build(), "fails");
    assertThat(Math.exp(belief.logEvidence())).isCloseTo(1 - 0.931784, within(TEN_DIGITS));
    assertThat(belief.atCallOut())
        .containsExactly(new double[] {0.29318635, 0.58062625}, within(1e-8));
    assertThat(belief.learn(Observation.of("gauge", 0, 3)).atCallOut())
        .containsExactly(new double[] {6.90855832e-4, 0.80434963}, within(1e-8));
  }

  // Prevalence 0.08, sensitivity 0.75, specificity 0.96 (OpenMarkov tutorial, one test).
  @Test
  void one_test() {
    CausalModel.Builder builder = CausalModel.builder().cause("disease", 0.08);
    finding(builder, "test", 0.04, Map.of("disease", 1 - 0.25 / 0.96));
    CausalModel model = builder.build();
    assertThat(given(model, "test").atCallOut("disease"))
        .isCloseTo(0.6198347107, within(TEN_DIGITS));
    assertThat(1 - given(model, "-test").atCallOut("disease"))
        .isCloseTo(0.9778565102, within(TEN_DIGITS));
  }

  // Virtual evidence as in Pearl 1988: a reading of 12.38 V with a standard uncertainty of 0.05 V
  // at the limit of 12.40 V; sum of weight times P(band | cause) by hand.
  @Test
  void a_reading_near_a_limit_speaks_softly() {
    CausalModel model =
        CausalModel.builder()
            .cause("worn", 0.2)
            .check(
                "volts",
                // P(band | sound), good first; as noisy-MAX the contribution is the ratio of the
                // cumulative rows.
                new double[] {0.90, 0.08, 0.02},
                Map.of(
                    "worn", new double[] {0.10 / 0.90, 0.70 / 0.98 - 0.10 / 0.90, 1 - 0.70 / 0.98}))
            .build();
    Belief prior = Belief.prior(model, 1);
    assertThat(prior.learn(Observation.of("volts", 1, 3)).atCallOut("worn"))
        .isCloseTo(0.6521739130, within(TEN_DIGITS));
    assertThat(prior.learn(Observation.of("volts", 0, 3)).atCallOut("worn"))
        .isCloseTo(0.0270270270, within(TEN_DIGITS));
    Observation soft = new Observation("volts", List.of(0.3445782584, 0.6554217416, 0.0));
    assertThat(prior.learn(soft).atCallOut("worn")).isCloseTo(0.2277568530, within(TEN_DIGITS));
  }

  // The repair of fault 1 helps in 9 of 10 cases; p = 0.40, 0.25, 0.20, 0.15 of one fault, by
  // Bayes' rule (the setting of Heckerman, Breese and Rommelse 1995).
  @Test
  void a_repair_that_did_not_help_leaves_its_fault_possible() {
    double[] p = {0.40, 0.25, 0.20, 0.15};
    CausalModel.Builder builder = CausalModel.builder();
    for (int i = 0; i < p.length; i++) {
      builder.cause("f" + i, p[i] / (1 + p[i]));
    }
    // At depth 1, given that there is one, causes have these shares.
    Belief belief =
        Belief.atReport(builder.build(), 1)
            .repaired(Map.of("f0", 0.9))
            .retested(Retest.ran(false), new double[] {1, 1, 1, 1});
    // A retest fails by mistake in 1 of 200 cases: 0.36 x 0.005 joins what remains.
    double total = 0.04 + 0.25 + 0.20 + 0.15 + 0.36 * 0.005;
    assertThat(belief.remaining())
        .containsExactly(
            new double[] {0.04 / total, 0.25 / total, 0.20 / total, 0.15 / total}, within(1e-12));
    assertThat(0.04 / 0.64).isCloseTo(0.0625, within(1e-12));
  }
}
