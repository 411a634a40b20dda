package yett.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Inspected;
import yett.knowledge.Edition;
import yett.knowledge.Planning;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.Telephone;

/**
 * A rule base of any size, drawn at random, like the shipped one in its shape: a few common causes
 * and many rare ones whose priors add up to 1.3, every other cause bringing about another,
 * two checks and one repair for each cause, checks that show three to six causes of one area in two
 * to four outcomes, and a complaint for every twenty causes.
 */
final class InventedRuleBase {
  private static final double EXPECTED = 1.3;
  private static final double COMMONEST = 0.12;
  private static final int AREA = 20;

  private final SplittableRandom random;
  private final int size;
  private final String last;

  private InventedRuleBase(int size, String last, long seed) {
    this.random = new SplittableRandom(seed);
    this.size = size;
    this.last = last;
  }

  /** The same for the same size and seed; the last cause is the unknown. */
  static RuleBase of(int causes, long seed) {
    return new InventedRuleBase(causes, Cause.NOT_IN_RULE_BASE, seed).build();
  }

  /** The same, but the last cause is like the others, so that the model has no hidden doubles. */
  static RuleBase ofKnown(int causes, long seed) {
    return new InventedRuleBase(causes, "cause-" + (causes - 1), seed).build();
  }

  private RuleBase build() {
    Map<String, Check> checks = new LinkedHashMap<>();
    for (int k = 0; k < 2 * size; k++) {
      Check check = check(k);
      checks.put(check.id(), check);
    }
    for (int area = 0; area * AREA < size; area++) {
      Check complaint = complaint(area);
      checks.put(complaint.id(), complaint);
    }
    Map<String, Repair> repairs = new LinkedHashMap<>();
    for (int c = 0; c < size - 1; c++) {
      repairs.put("repair-" + c, repair(c));
    }
    Map<String, SetUp> setUps = new LinkedHashMap<>();
    for (String id : List.of(SetUp.GATE_RUNNING, "locked-off", "cover-off")) {
      List<String> excludes = id.equals("locked-off") ? List.of(SetUp.GATE_RUNNING) : List.of();
      setUps.put(
          id,
          new SetUp(
              id,
              id,
              3,
              1,
              Role.TECHNICIAN,
              List.of(),
              List.of(),
              excludes,
              List.of("do"),
              List.of("undo"),
              List.of(),
              List.of(),
              "invented"));
    }
    return new RuleBase(
        "invented-" + size,
        Edition.NONE,
        causes(),
        Map.of(),
        checks,
        Map.of(),
        repairs,
        setUps,
        Map.of(),
        Map.of(),
        Map.of(),
        new Planning("planning", 1.5, 4, 20, 0.45, 8, 600, 300, 180, Map.of()),
        Telephone.NONE,
        Map.of(),
        new TreeMap<>(Map.of("rules/core.drl", coreRules())),
        Collections.emptySortedMap(),
        List.of(),
        () -> {
          throw new UnsupportedOperationException("an invented rule base protects nobody");
        });
  }

  private static String coreRules() {
    try {
      return Files.readString(Path.of("knowledge", "rules", "core.drl"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String id(int cause) {
    return cause == size - 1 ? last : "cause-" + cause;
  }

  private Map<String, Cause> causes() {
    double[] priors = priors();
    Map<String, Cause> causes = new LinkedHashMap<>();
    for (int c = 0; c < size; c++) {
      Map<String, Double> brings = new LinkedHashMap<>();
      if (c < size - 2 && random.nextInt(2) == 0) {
        int to = Math.min(size - 2, c + 1 + random.nextInt(6));
        brings.put(id(to), 0.05 + 0.7 * random.nextDouble());
      }
      causes.put(
          id(c),
          new Cause(id(c), id(c), "", priors[c], brings, Map.of(), 0.95, Map.of(), "", "", "invented"));
    }
    return causes;
  }

  /** Shares by a power law over a shuffled order, scaled to the expected number of causes. */
  private double[] priors() {
    double[] priors = new double[size];
    List<Integer> order = new ArrayList<>();
    for (int c = 0; c < size; c++) {
      order.add(random.nextInt(order.size() + 1), c);
    }
    for (int c = 0; c < size; c++) {
      priors[order.get(c)] = 1 / Math.pow(c + 3, 1.2);
    }
    for (int pass = 0; pass < 20; pass++) {
      double sum = 0;
      for (double p : priors) {
        sum += p;
      }
      for (int c = 0; c < size; c++) {
        priors[c] = Math.min(COMMONEST, priors[c] * EXPECTED / sum);
      }
    }
    return priors;
  }

  private Check check(int number) {
    int outcomes = 2 + random.nextInt(3);
    List<Check.Outcome> words = new ArrayList<>();
    for (int y = 0; y < outcomes; y++) {
      words.add(new Check.Outcome("o" + y, "outcome " + y, Optional.empty()));
    }
    Map<String, double[]> rows = new LinkedHashMap<>();
    int centre = number / 2;
    rows.put(id(centre), row(outcomes, 0.1));
    for (int i = 2 + random.nextInt(4); i > 0; i--) {
      int near = Math.floorMod(centre + random.nextInt(31) - 15, size);
      rows.put(id(near), row(outcomes, 0.3));
    }
    boolean handsOn = random.nextInt(3) == 0;
    return card(
        "check-" + number,
        Check.Kind.CHECK,
        words,
        rows,
        row(outcomes, 0.93),
        1 + random.nextInt(8),
        handsOn ? List.of(random.nextBoolean() ? "locked-off" : "cover-off") : List.of());
  }

  /** What people say of an area. */
  private Check complaint(int area) {
    Map<String, double[]> rows = new LinkedHashMap<>();
    for (int c = area * AREA; c < Math.min(size, (area + 1) * AREA); c++) {
      rows.put(id(c), row(2, 0.3));
    }
    List<Check.Outcome> words =
        List.of(
            new Check.Outcome("unsaid", "not said", Optional.empty()),
            new Check.Outcome(Check.SAID, "said", Optional.empty()));
    double[] otherwise = row(2, 0.995);
    return card("complaint-" + area, Check.Kind.COMPLAINT, words, rows, otherwise, 0, List.of());
  }

  private static Check card(
      String id,
      Check.Kind kind,
      List<Check.Outcome> outcomes,
      Map<String, double[]> rows,
      double[] otherwise,
      double minutes,
      List<String> needs) {
    return new Check(
        id,
        kind,
        new Check.Question("", "What shows at " + id + "?", "", "", Optional.empty(), outcomes),
        new Check.Evidence(rows, otherwise, Map.of(), Optional.empty(), 0),
        new Check.Work(Role.CALLER, minutes, needs, List.of(), Optional.empty()),
        "",
        Map.of(),
        false,
        new Inspected(List.of(), List.of()),
        "invented");
  }

  /** So much for the ordinary outcome, the rest shared out at random. */
  private double[] row(int outcomes, double ordinary) {
    double[] row = new double[outcomes];
    double sum = 0;
    for (int y = 1; y < outcomes; y++) {
      row[y] = 0.05 + random.nextDouble();
      sum += row[y];
    }
    for (int y = 1; y < outcomes; y++) {
      row[y] *= (1 - ordinary) / sum;
    }
    row[0] = ordinary;
    return row;
  }

  private Repair repair(int cause) {
    List<String> needs = random.nextInt(2) == 0 ? List.of("locked-off") : List.of();
    return new Repair(
        "repair-" + cause,
        "repair " + cause,
        List.of(),
        Map.of(id(cause), 0.95),
        5 + random.nextInt(40),
        List.of(),
        needs,
        Role.TECHNICIAN,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Map.of(),
        "invented");
  }
}
