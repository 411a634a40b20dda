package yett.benchmark;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import weka.classifiers.bayes.net.BIFReader;
import weka.classifiers.bayes.net.EditableBayesNet;
import weka.classifiers.bayes.net.MarginCalculator;
import yett.belief.Belief;
import yett.belief.CardModel;
import yett.belief.CausalModel;
import yett.belief.Observation;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * Three answers, and then the chance of every cause: Yett over all sets of causes, against the
 * junction tree of Weka on the same network. Both give the same chances to nine digits, or the
 * benchmark does not start. The tree is built beforehand and given the same three answers anew. The
 * rule base has no unknown: its doubles, one for each cause, would only make the network larger.
 *
 * <pre>{@code
 * mvn -q -Pbenchmark -DskipTests package exec:exec@benchmark
 * }</pre>
 */
@State(Scope.Thread)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@BenchmarkMode(Mode.AverageTime)
@Warmup(iterations = 1, time = 4)
@Measurement(iterations = 2, time = 4)
@Fork(1)
public class Exact {
  @Param({"8", "10", "12"})
  public int causes;

  private RuleBase base;
  private CausalModel model;
  private Belief start;
  private List<Observation> answers;
  private EditableBayesNet net;
  private MarginCalculator tree;

  @Setup
  public void invent() throws Exception {
    System.setErr(new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8));
    base = InventedRuleBase.ofKnown(causes, 3);
    model = CardModel.of(base);
    start = Belief.prior(model, causes);
    answers = new ArrayList<>();
    for (int k : new int[] {1, causes, 2 * causes - 2}) {
      int outcomes = model.table("check-" + k).outcomes();
      answers.add(Observation.of("check-" + k, k % outcomes, outcomes));
    }
    BIFReader reader = new BIFReader();
    reader.processString(network());
    net = new EditableBayesNet(reader);
    tree = new MarginCalculator();
    tree.calcMargins(net);
    double[] ours = yett();
    double[] theirs = weka();
    for (int c = 0; c < causes; c++) {
      if (!(Math.abs(ours[c] - theirs[c]) < 1e-9)) {
        throw new IllegalStateException(
            "they differ: " + Arrays.toString(ours) + " " + Arrays.toString(theirs));
      }
    }
  }

  @Benchmark
  public double[] yett() {
    Belief belief = start;
    for (Observation answer : answers) {
      belief = belief.learn(answer);
    }
    return belief.atCallOut();
  }

  @Benchmark
  public double[] weka() throws Exception {
    for (Observation answer : answers) {
      tree.setEvidence(net.getNode(answer.check()), answer.weights().indexOf(1.0));
    }
    double[] chances = new double[causes];
    for (int c = 0; c < causes; c++) {
      chances[c] = tree.getMargin(net.getNode(model.causes().get(c)))[1];
    }
    return chances;
  }

  private String network() {
    StringBuilder bif =
        new StringBuilder("<?xml version=\"1.0\"?><BIF VERSION=\"0.3\"><NETWORK><NAME>n</NAME>");
    model.causes().forEach(c -> variable(bif, c, 2));
    base.checks().values().forEach(c -> variable(bif, c.id(), c.outcomes().size()));
    for (String cause : model.causes()) {
      List<Integer> parents =
          IntStream.range(0, causes)
              .filter(p -> card(p).consequences().containsKey(cause))
              .boxed()
              .toList();
      table(bif, cause, parents, present -> presence(cause, present));
    }
    for (Check check : base.checks().values()) {
      List<Integer> parents =
          IntStream.range(0, causes)
              .filter(p -> check.likelihood().containsKey(card(p).id()))
              .boxed()
              .toList();
      table(bif, check.id(), parents, present -> model.table(check.id()).outcomeChances(present));
    }
    return bif.append("</NETWORK></BIF>").toString();
  }

  private Cause card(int cause) {
    return base.causes().get(model.causes().get(cause));
  }

  private double[] presence(String cause, int[] present) {
    double absent = 1 - model.prior(model.indexOf(cause));
    for (int p : present) {
      absent *= 1 - card(p).consequences().getOrDefault(cause, 0.0);
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
    double[] of(int[] present);
  }

  /** A table whose last parent runs fastest, with the outcome inside. */
  private void table(StringBuilder bif, String id, List<Integer> parents, Row row) {
    bif.append("<DEFINITION><FOR>").append(id).append("</FOR>");
    parents.forEach(p -> bif.append("<GIVEN>").append(model.causes().get(p)).append("</GIVEN>"));
    bif.append("<TABLE>");
    for (int bits = 0; bits < 1 << parents.size(); bits++) {
      int set = bits;
      int[] present =
          IntStream.range(0, parents.size())
              .filter(k -> (set >> (parents.size() - 1 - k) & 1) != 0)
              .map(parents::get)
              .toArray();
      for (double p : row.of(present)) {
        bif.append(p).append(' ');
      }
    }
    bif.append("</TABLE></DEFINITION>");
  }
}
