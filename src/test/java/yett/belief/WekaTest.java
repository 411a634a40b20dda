package yett.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weka.classifiers.bayes.net.BIFReader;
import weka.classifiers.bayes.net.EditableBayesNet;
import weka.classifiers.bayes.net.MarginCalculator;
import yett.belief.PlainModel.Look;
import yett.testing.Shipped;
import yett.testing.Size;

/**
 * Belief against the junction tree of Weka (University of Waikato), which knows nothing of sets of
 * causes: causes and checks are nodes with tables. A node "reported" is on when some cause is
 * there; it also joins the network into one, as Weka asks for.
 */
class WekaTest {
  private static final double PRECISION = 1e-9;
  private static final PlainModel SHIPPED = PlainModel.of(Shipped.BASE);
  private static final PlainModel SHIPPED_WITH_EFFECTS = PlainModel.withEffects(Shipped.BASE);

  private static PrintStream errors;

  /** Weka looks for native libraries and for a document type, and tells standard error. */
  @BeforeAll
  static void hush() {
    errors = System.err;
    System.setErr(new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8));
  }

  @AfterAll
  static void speak() {
    System.setErr(errors);
  }

  static LongStream seeds() {
    return Size.seeds(15, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void random_models(long seed) throws Exception {
    SplittableRandom random = new SplittableRandom(seed);
    agree(withoutRepetitions(PlainModel.random(random, 8)), random);
  }

  /** Two causes and what they bring about; the rows of causes agree with these for one look. */
  @ParameterizedTest
  @MethodSource("seeds")
  void causes_with_effects(long seed) throws Exception {
    agree(PlainModel.withEffects(EffectRowsTest.random(seed)), new SplittableRandom(seed));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void parts_of_the_shipped_rule_base_with_effects(long seed) throws Exception {
    SplittableRandom random = new SplittableRandom(seed);
    agree(partWithEffects(SHIPPED_WITH_EFFECTS, random), random);
  }

  private static PlainModel withoutRepetitions(PlainModel plain) {
    return plain.only(plain.causes, plain.looks.stream().map(Look::id).toList());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void parts_of_the_shipped_rule_base(long seed) throws Exception {
    SplittableRandom random = new SplittableRandom(seed);
    agree(part(SHIPPED, random), random);
  }

  /** The causes of one check, up to nine, and the checks on which most of them show. */
  private static PlainModel part(PlainModel whole, SplittableRandom random) {
    Look centre = whole.looks.get(random.nextInt(whole.looks.size()));
    List<Integer> kept =
        IntStream.range(0, whole.size())
            .filter(c -> centre.rows()[c] != null || linked(whole, centre, c))
            .limit(9)
            .boxed()
            .toList();
    return withLooks(whole, kept);
  }

  /** Up to three effects that show on one check, and the most probable causes of them. */
  private static PlainModel partWithEffects(PlainModel whole, SplittableRandom random) {
    List<Look> centres = whole.looks.stream().filter(l -> !effects(whole, l).isEmpty()).toList();
    List<Integer> effects = effects(whole, centres.get(random.nextInt(centres.size())));
    List<Integer> kept = new ArrayList<>(effects);
    IntStream.range(0, whole.size())
        .boxed()
        .filter(c -> whole.priors[c] > 0)
        .filter(c -> effects.stream().anyMatch(e -> whole.links[c][e] > 0))
        .sorted((a, b) -> Double.compare(whole.priors[b], whole.priors[a]))
        .limit(5)
        .forEach(kept::add);
    return withLooks(whole, kept);
  }

  private static List<Integer> effects(PlainModel whole, Look look) {
    return IntStream.range(0, whole.size())
        .filter(e -> look.rows()[e] != null && whole.priors[e] == 0)
        .limit(3)
        .boxed()
        .toList();
  }

  /** These causes, with the checks on which most of them show. */
  private static PlainModel withLooks(PlainModel whole, List<Integer> kept) {
    List<String> checks =
        whole.looks.stream()
            .sorted((a, b) -> Long.compare(shown(b, kept), shown(a, kept)))
            .limit(6)
            .map(Look::id)
            .toList();
    return whole.only(kept.stream().map(whole.causes::get).toList(), checks);
  }

  private static boolean linked(PlainModel whole, Look centre, int cause) {
    return IntStream.range(0, whole.size())
        .anyMatch(
            c ->
                centre.rows()[c] != null
                    && (whole.links[c][cause] > 0 || whole.links[cause][c] > 0));
  }

  private static long shown(Look look, List<Integer> causes) {
    return causes.stream().filter(c -> look.rows()[c] != null).count();
  }

  private static void agree(PlainModel plain, SplittableRandom random) throws Exception {
    Belief belief = Belief.atReport(plain.model(), plain.size());
    EditableBayesNet net = net(plain);
    MarginCalculator margins = new MarginCalculator();
    margins.calcMargins(net);
    margins.setEvidence(net.getNode("reported"), 1);
    List<Look> open = new ArrayList<>(plain.looks);
    for (int answers = 0; answers < 3 && open.size() > 1; answers++) {
      Look look = open.remove(random.nextInt(open.size()));
      int outcome = random.nextInt(look.base().length);
      belief = belief.learn(Observation.of(look.id(), outcome, look.base().length));
      margins.setEvidence(net.getNode(look.id()), outcome);
    }
    double[] causes = belief.atCallOut();
    for (int c = 0; c < plain.size(); c++) {
      assertThat(causes[c])
          .isCloseTo(margins.getMargin(net.getNode(plain.causes.get(c)))[1], within(PRECISION));
    }
    for (Look look : open) {
      assertThat(belief.predict(look.id()))
          .containsExactly(margins.getMargin(net.getNode(look.id())), within(PRECISION));
    }
  }

  private static EditableBayesNet net(PlainModel plain) throws Exception {
    StringBuilder bif =
        new StringBuilder("<?xml version=\"1.0\"?><BIF VERSION=\"0.3\"><NETWORK><NAME>n</NAME>");
    plain.causes.forEach(c -> variable(bif, c, 2));
    plain.looks.forEach(l -> variable(bif, l.id(), l.base().length));
    variable(bif, "reported", 2);
    for (int c = 0; c < plain.size(); c++) {
      int cause = c;
      List<Integer> parents =
          IntStream.range(0, plain.size()).filter(p -> plain.links[p][cause] > 0).boxed().toList();
      table(bif, plain, plain.causes.get(c), parents, set -> presence(plain, cause, set));
    }
    for (Look look : plain.looks) {
      List<Integer> parents =
          IntStream.range(0, plain.size()).filter(c -> look.rows()[c] != null).boxed().toList();
      table(bif, plain, look.id(), parents, set -> plain.outcomes(look, set));
    }
    table(
        bif,
        plain,
        "reported",
        IntStream.range(0, plain.size()).boxed().toList(),
        set -> PlainModel.none(set) ? new double[] {1, 0} : new double[] {0, 1});
    bif.append("</NETWORK></BIF>");
    BIFReader reader = new BIFReader();
    reader.processString(bif.toString());
    return new EditableBayesNet(reader);
  }

  private static double[] presence(PlainModel plain, int cause, boolean[] set) {
    double absent = 1 - plain.priors[cause];
    for (int p = 0; p < plain.size(); p++) {
      absent *= set[p] ? 1 - plain.links[p][cause] : 1;
    }
    return new double[] {absent, 1 - absent};
  }

  private static void variable(StringBuilder bif, String id, int outcomes) {
    bif.append("<VARIABLE TYPE=\"nature\"><NAME>").append(id).append("</NAME>");
    for (int y = 0; y < outcomes; y++) {
      bif.append("<OUTCOME>o").append(y).append("</OUTCOME>");
    }
    bif.append("</VARIABLE>");
  }

  private interface Row {
    double[] of(boolean[] set);
  }

  /** A table whose last parent runs fastest, with the outcome inside. */
  private static void table(
      StringBuilder bif, PlainModel plain, String id, List<Integer> parents, Row row) {
    bif.append("<DEFINITION><FOR>").append(id).append("</FOR>");
    parents.forEach(p -> bif.append("<GIVEN>").append(plain.causes.get(p)).append("</GIVEN>"));
    bif.append("<TABLE>");
    for (int bits = 0; bits < 1 << parents.size(); bits++) {
      boolean[] set = new boolean[plain.size()];
      for (int k = 0; k < parents.size(); k++) {
        set[parents.get(k)] = (bits >> (parents.size() - 1 - k) & 1) != 0;
      }
      for (double p : row.of(set)) {
        bif.append(p).append(' ');
      }
    }
    bif.append("</TABLE></DEFINITION>");
  }
}
