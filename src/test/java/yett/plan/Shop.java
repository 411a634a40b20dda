package yett.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** Puts scenes together. */
final class Shop {
  static final double NEVER = 1e6;

  private final List<int[]> hypotheses = new ArrayList<>();
  private final List<Scene.Look> checks = new ArrayList<>();
  private final List<Scene.Job> repairs = new ArrayList<>();
  private List<Workshop.Stand> stands = List.of();
  private int retest;
  private int causes;
  private double handOver = NEVER;
  private double retestCost;
  private double callBack;
  private double[] due;
  private boolean cured;

  /** One fault at a time. */
  static Shop faults(int count) {
    Shop shop = new Shop();
    shop.causes = count;
    for (int c = 0; c < count; c++) {
      shop.hypotheses.add(new int[] {c});
    }
    return shop;
  }

  /** All sets of faults but the empty one. */
  static Shop sets(int count) {
    Shop shop = new Shop();
    shop.causes = count;
    for (int bits = 1; bits < 1 << count; bits++) {
      int set = bits;
      shop.hypotheses.add(IntStream.range(0, count).filter(c -> (set >> c & 1) != 0).toArray());
    }
    return shop;
  }

  Shop setUps(Workshop.Stand... list) {
    stands = List.of(list);
    return this;
  }

  Shop retest(int needs, double cost) {
    retest = needs;
    retestCost = cost;
    return this;
  }

  Shop handOver(double cost) {
    handOver = cost;
    return this;
  }

  /** The gate runs, perhaps with nothing wrong any more; what stays hidden costs a return visit. */
  Shop cured(double returning) {
    hypotheses.add(new int[0]);
    callBack = returning;
    cured = true;
    return this;
  }

  /** What the repair of each fault costs when it is left to others, or to another day. */
  Shop due(double... minutes) {
    due = minutes;
    return this;
  }

  /** A repair that needs set-ups and removes causes, each with its chance. */
  Shop repair(double cost, int needs, double... removes) {
    repairs.add(new Scene.Job("r" + repairs.size(), cost, needs, removes));
    return this;
  }

  /** Repairs without set-ups, the i-th removing the i-th cause with certainty. */
  Shop repairs(double... costs) {
    for (double cost : costs) {
      double[] removes = new double[causes];
      removes[repairs.size()] = 1;
      repair(cost, 0, removes);
    }
    return this;
  }

  /** A check with the chance of each outcome under each hypothesis, outcome by outcome. */
  Shop check(double cost, int needs, double[]... chances) {
    checks.add(new Scene.Look("k" + checks.size(), cost, needs, chances));
    return this;
  }

  /** A look at a place, answered by yes with these chances; cheaper where another came first. */
  Shop look(int place, double cost, double along, double... yes) {
    double[] no = IntStream.range(0, yes.length).mapToDouble(h -> 1 - yes[h]).toArray();
    double[][] chances = {yes, no};
    checks.add(new Scene.Look("k" + checks.size(), cost, 0, chances, place, along));
    return this;
  }

  /** A check answered by yes with these chances under the hypotheses. */
  Shop question(double cost, double... yes) {
    double[] no = new double[yes.length];
    for (int h = 0; h < yes.length; h++) {
      no[h] = 1 - yes[h];
    }
    return check(cost, 0, yes, no);
  }

  Scene scene() {
    return new Scene(
        hypotheses.toArray(int[][]::new),
        causes,
        checks,
        repairs,
        new Workshop(stands),
        retest,
        retestCost,
        handOver,
        callBack,
        due == null ? new double[causes] : due,
        cured);
  }

  /** Up to 6 repairs of one fault out of several, 4 checks, 3 set-ups. */
  static Scene randomFault(SplittableRandom random) {
    int faults = 3 + random.nextInt(4);
    Shop shop = faults(faults);
    shop.furnish(random, faults, 1 + random.nextInt(4));
    return shop.scene();
  }

  /** Up to 3 causes in all combinations, 3 repairs, 2 checks, 3 set-ups. */
  static Scene randomSets(SplittableRandom random) {
    Shop shop = sets(2 + random.nextInt(2));
    shop.furnish(random, 2 + random.nextInt(2), 1 + random.nextInt(2));
    return shop.scene();
  }

  private void furnish(SplittableRandom random, int jobs, int looks) {
    int count = random.nextInt(4);
    List<Workshop.Stand> list = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<String> excludes = random.nextInt(3) == 0 && i > 0 ? List.of("s" + (i - 1)) : List.of();
      boolean inside = i > 0 && excludes.isEmpty() && random.nextInt(3) == 0;
      List<String> within = inside ? List.of("s" + (i - 1)) : List.of();
      list.add(
          new Workshop.Stand("s" + i, 1 + random.nextInt(8), random.nextInt(5), within, excludes));
    }
    stands = list;
    retest = count > 0 && random.nextBoolean() ? 1 : 0;
    retestCost = 1 + random.nextInt(3);
    handOver = random.nextInt(3) == 0 ? 60 + random.nextInt(100) : 300;
    for (int r = 0; r < jobs; r++) {
      double[] removes = new double[causes];
      removes[r < causes ? r : random.nextInt(causes)] = 1 - random.nextInt(3) * 0.1;
      if (random.nextInt(4) == 0) {
        removes[random.nextInt(causes)] = 0.9;
      }
      repair(4 + random.nextInt(60), needs(count, random), removes);
    }
    for (int k = 0; k < looks; k++) {
      int outcomes = 2 + random.nextInt(8) / 7;
      double[][] chances = new double[outcomes][hypotheses.size()];
      for (int h = 0; h < hypotheses.size(); h++) {
        double left = 1;
        for (int y = 0; y < outcomes; y++) {
          double sharp = random.nextBoolean() ? 0.9 : 0.1;
          chances[y][h] = y == outcomes - 1 ? left : left * sharp;
          left -= chances[y][h];
        }
      }
      check(1 + random.nextInt(6), needs(count, random), chances);
    }
  }

  private static int needs(int count, SplittableRandom random) {
    return count > 0 && random.nextBoolean() ? 1 << random.nextInt(count) : 0;
  }

  static double[] weights(Scene scene, SplittableRandom random) {
    double[] weights = new double[scene.hypotheses().length];
    double sum = 0;
    for (int h = 0; h < weights.length; h++) {
      weights[h] = Math.pow(random.nextDouble(), 2) / scene.hypotheses()[h].length + 0.005;
      sum += weights[h];
    }
    for (int h = 0; h < weights.length; h++) {
      weights[h] /= sum;
    }
    return weights;
  }
}
