package yett.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Searches ahead over checks and repairs. Every check is evaluated one step ahead; the most
 * promising ones further, one step deeper each time until a fixed amount of work is used up, and to
 * the very end on small scenes. Where the search stops, the value is the cost of the best order of
 * repairs or, if that is less, the cost of the repair if the fault were known plus that of the
 * checks needed to know it.
 */
final class Search {
  /**
   * Most repairs that are ordered: when looking ahead among many, and ({@link #REPAIRS_NOW}) for
   * the plan itself.
   */
  private static final int REPAIRS_AHEAD = 5;

  private static final int REPAIRS_NOW = 8;

  /** Most checks that are evaluated as the next step: those that resolve most for their cost. */
  private static final int LOOKED_AT = 32;

  /** Most checks that are evaluated deeper: as the next step, and after it. */
  private static final int DEEPER = 5;

  private static final int INNER = 7;

  /** Most repairs that are tried as the first step when there are many. */
  private static final int FIRSTS = 3;

  /**
   * Limit of the work for deeper steps. A state costs {@link #WORK_A_STATE} and 1 for each
   * hypothesis.
   */
  private static final int WORK = 120_000;

  private static final int WORK_A_STATE = 32;

  /**
   * Factor on the cost of resolving the rest at the price of the best check, because later checks
   * resolve less.
   */
  private static final double BLUNTING = 1.5;

  /**
   * Chance below which a check that would change the first repair is left until after that repair.
   */
  private static final double CHANGES = 0.03;

  /**
   * Minutes by which a check's cost may exceed its saving one step ahead and the check is still
   * evaluated deeper. One step does not show what it resolves together with further checks.
   */
  private static final double TOGETHER = 2;

  private static final double EPSILON = 1e-9;
  private static final double NO_PRICE = Double.POSITIVE_INFINITY;

  private final Scene scene;
  private final boolean few;
  private final RepairOrder ahead;
  private final RepairOrder now;
  private final Aftermath aftermath;
  private final boolean single;
  private final boolean[] asked;
  private final boolean[] tried;

  /** By answers and failed repairs so far and set-ups in force. */
  private final Known orders = new Known();

  /** By these, the depth and the place of the round. */
  private final Known values = new Known();

  private WorthOfFinding outlook;
  private double[] scratch = new double[0];
  private List<Integer> checks = List.of();
  private List<Integer> inner = List.of();
  private List<Integer> firsts = List.of();

  /** Place of the look that comes first, whose other looks follow at once; -1 if none. */
  private int round = -1;

  private int work;
  private boolean cutShort;

  Search(Scene scene) {
    this.scene = scene;
    this.few = scene.repairs().size() <= REPAIRS_NOW;
    this.ahead = new RepairOrder(scene, few ? REPAIRS_NOW : REPAIRS_AHEAD);
    this.now = ahead.withLimit(REPAIRS_NOW);
    this.aftermath = new Aftermath(scene);
    this.single = Arrays.stream(scene.hypotheses()).allMatch(set -> set.length <= 1);
    this.asked = new boolean[scene.checks().size()];
    this.tried = new boolean[scene.repairs().size()];
  }

  /**
   * A check as the next step.
   *
   * @param check its position in the scene
   * @param value expected cost until the end if it comes first
   */
  record Ranked(int check, double value) {}

  /**
   * The result of a search.
   *
   * @param order the best order of repairs if nothing more is asked
   * @param checks all checks, the best first
   * @param repairFirst expected cost if a repair is done now and checks may follow
   * @param first that repair, or -1
   * @param findingOut whether the checks worth their cost are sorted by what they resolve for it
   */
  record Result(
      RepairOrder.Order order,
      List<Ranked> checks,
      double repairFirst,
      int first,
      boolean findingOut) {}

  /** Thrown when the limit of work is reached. */
  private static final class TooMany extends RuntimeException {
    TooMany() {
      super(null, null, false, false);
    }
  }

  Result run(double[] weights, int state) {
    scratch = new double[weights.length];
    outlook = new WorthOfFinding(scene, ahead, state);
    checks = cheapest(prices(telling(weights), weights, state));
    double finding = finding(weights, state);
    ahead.searching(finding);
    now.searching(finding);
    RepairOrder.Order order = now.order(weights, state, tried);
    inner = checks;
    firsts = firsts(order);
    work = Integer.MIN_VALUE;
    Ranking ranking = new Ranking(weights, state, order.value());
    ranking.look(checks, 0);
    work = 0;
    inner = ranking.best(INNER);
    List<Integer> deeper =
        ranking.findingOut(order) ? checks.stream().limit(DEEPER).toList() : ranking.best(DEEPER);
    int reached = 0;
    for (int depth = 1; cutShort; depth++) {
      cutShort = inner.size() < checks.size();
      values.clear();
      try {
        ranking.look(deeper, depth);
      } catch (TooMany e) {
        Arrays.fill(asked, false); // the exception left some set
        Arrays.fill(tried, false);
        break;
      }
      reached = depth;
      if (inner.size() < checks.size()) {
        break;
      }
    }
    if (!few && !ranking.findingOut(order)) {
      ranking.lookBefore(reached);
    }
    return ranking.result(order);
  }

  /** The values of the next steps as far as they have been evaluated. */
  private final class Ranking {
    private final double[] weights;
    private final int state;
    private final Map<Integer, Double> asking = new HashMap<>();
    private final Map<Integer, Double> oneStep = new HashMap<>();
    private double repairing;
    private int first = -1;

    /** A look that comes first although a step with a set-up may save as much; -1 if none. */
    private int lookFirst = -1;

    Ranking(double[] weights, int state, double repairing) {
      this.weights = weights;
      this.state = state;
      this.repairing = repairing;
    }

    void look(List<Integer> which, int depth) {
      Map<Integer, Double> found = new HashMap<>();
      for (int check : which) {
        Scene.Look look = scene.checks().get(check);
        round = look.place();
        found.put(check, asking(check, weights, state, depth, 0) + (round < 0 ? 0 : look.along()));
      }
      round = -1;
      double least = now.value(weights, state, tried);
      int best = -1;
      for (int repair : firsts) {
        double value = few ? repairing(repair, weights, state, depth, 0) : first(repair, depth + 1);
        if (value < least - EPSILON) {
          least = value;
          best = repair;
        }
      }
      found.forEach(oneStep::putIfAbsent);
      asking.putAll(found);
      repairing = least;
      first = best;
    }

    /** Evaluates looks before the set-up that the best next step needs. */
    void lookBefore(int reached) {
      List<Ranked> ranked = ranked();
      if (ranked.isEmpty() || ranked.get(0).value() >= repairing) {
        return;
      }
      work = Integer.MIN_VALUE; // no limit: only a few looks at few places
      int leader = ranked.get(0).check();
      Map<Integer, Double> before =
          new Beforehand(scene, Search.this)
              .values(ranked, leader, weights, state, Math.min(reached, 1));
      before.forEach((look, value) -> asking.merge(look, value, Math::min));
      double even = Math.min(asking.get(leader) + Beforehand.EVEN, repairing);
      before.keySet().stream()
          .filter(look -> asking.get(look) < even)
          .min(Comparator.comparingDouble(asking::get))
          .ifPresent(look -> lookFirst = look);
    }

    /**
     * The value of doing a repair before anything is asked, followed by the checks that suit what
     * it leaves.
     */
    private double first(int repair, int depth) {
      List<Integer> before = inner;
      double[] left = normal(aftermath.of(weights, repair));
      if (left.length > 0) {
        inner = suiting(left, scene.afterTrying(repair, state));
      }
      double value = repairing(repair, weights, state, depth, 0);
      inner = before;
      return value;
    }

    List<Integer> best(int most) {
      return ranked().stream().limit(most).map(Ranked::check).toList();
    }

    private List<Ranked> ranked() {
      return asking.entrySet().stream()
          .map(e -> new Ranked(e.getKey(), e.getValue()))
          .sorted(
              Comparator.comparing((Ranked r) -> r.check() != lookFirst)
                  .thenComparingDouble(Ranked::value)
                  .thenComparing(r -> scene.checks().get(r.check()).id()))
          .toList();
    }

    Result result(RepairOrder.Order order) {
      boolean findingOut = findingOut(order);
      if (!few && !findingOut) {
        double estimate = ahead.value(weights, state, tried);
        int begins = ahead.first();
        asking.replaceAll(
            (check, value) -> waits(check, estimate, begins) ? Math.max(value, repairing) : value);
        lookFirst = asking.getOrDefault(lookFirst, repairing) < repairing ? lookFirst : -1;
      }
      List<Ranked> ranked = ranked();
      return new Result(
          order, findingOut ? resolving(ranked) : ranked, repairing, first, findingOut);
    }

    /**
     * Whether many faults are possible and no repair is worth trying yet. Then only several checks
     * together save anything, and in a search of a few steps any cheap check seems as good as the
     * telling one that would follow it. So the checks that resolve most for their cost are
     * evaluated deeper, and the first of those worth their cost is asked.
     */
    boolean findingOut(RepairOrder.Order order) {
      return !few && first < 0 && order.repairs().isEmpty();
    }

    private List<Ranked> resolving(List<Ranked> ranked) {
      return ranked.stream()
          .sorted(
              Comparator.comparingInt(
                  r -> r.value() < repairing - EPSILON ? checks.indexOf(r.check()) : checks.size()))
          .toList();
    }

    /**
     * Whether a check can wait until the first repair has failed: it costs clearly more than it
     * lowers the estimate, or it hardly ever changes the first repair.
     *
     * @param estimate cost from here, estimated as after an answer
     * @param begins the repair that comes first if nothing is asked, or -1
     */
    private boolean waits(int check, double estimate, int begins) {
      if (asking.get(check) >= repairing || oneStep.get(check) > estimate + TOGETHER) {
        return true;
      }
      Scene.Look look = scene.checks().get(check);
      int after = scene.workshop().after(state, look.needs());
      double[] posterior = new double[weights.length];
      double changes = 0;
      for (double[] row : look.chances()) {
        double chance = posterior(weights, row, posterior);
        if (chance > EPSILON) {
          ahead.value(posterior, after, tried);
          changes += ahead.first() == begins ? 0 : chance;
        }
      }
      return changes < CHANGES;
    }
  }

  /** The weights scaled to add up to 1; empty if their sum is 0. */
  private static double[] normal(double[] weights) {
    double sum = sum(weights);
    return sum > EPSILON ? Arrays.stream(weights).map(w -> w / sum).toArray() : new double[0];
  }

  private static double sum(double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    return sum;
  }

  /** The checks that resolve most for their cost after a repair that did not cure. */
  private List<Integer> suiting(double[] weights, int state) {
    return cheapest(prices(telling(weights), weights, state)).stream().limit(INNER).toList();
  }

  /**
   * Repairs to try as the first step: all if there are few, otherwise the first of the best order.
   */
  private List<Integer> firsts(RepairOrder.Order order) {
    if (scene.cured()) {
      return List.of();
    }
    List<Integer> all = new ArrayList<>();
    for (int r = 0; r < scene.repairs().size(); r++) {
      if (now.mayBegin(r)) {
        all.add(r);
      }
    }
    return few ? all : order.repairs().stream().filter(now::mayBegin).limit(FIRSTS).toList();
  }

  private List<Integer> telling(double[] weights) {
    List<Integer> telling = new ArrayList<>();
    for (int c = 0; c < scene.checks().size(); c++) {
      if (tells(c, weights)) {
        telling.add(c);
      }
    }
    return telling;
  }

  /** Whether the outcomes of a check differ between the hypotheses. */
  private boolean tells(int check, double[] weights) {
    for (double[] row : scene.checks().get(check).chances()) {
      double least = 1;
      double most = 0;
      for (int h = 0; h < row.length; h++) {
        if (weights[h] > 1e-6) {
          least = Math.min(least, row[h]);
          most = Math.max(most, row[h]);
        }
      }
      if (most - least > 0.01) {
        return true;
      }
    }
    return false;
  }

  /** For each check, its cost (minutes) for each unit that it resolves. */
  private Map<Integer, Double> prices(List<Integer> which, double[] weights, int state) {
    double open = outlook.open(weights);
    Map<Integer, Double> prices = new HashMap<>();
    which.forEach(check -> prices.put(check, price(check, open, weights, state)));
    return prices;
  }

  private double price(int check, double open, double[] weights, int state) {
    double resolved = resolved(check, open, weights);
    return resolved > 1e-6 ? cost(check, state) / resolved : NO_PRICE;
  }

  /** The average amount that a check resolves of what is open. */
  private double resolved(int check, double open, double[] weights) {
    double left = 0;
    for (double[] row : scene.checks().get(check).chances()) {
      double chance = posterior(weights, row, scratch);
      left += chance > EPSILON ? chance * outlook.open(scratch) : 0;
    }
    return open - left;
  }

  /** Estimated cost of finding out with which repairs to begin. */
  private double finding(double[] weights, int state) {
    double open = outlook.open(weights);
    double price = checks.isEmpty() ? NO_PRICE : price(checks.get(0), open, weights, state);
    return price == NO_PRICE ? NO_PRICE : BLUNTING * open * price;
  }

  /** The checks worth evaluating, the one that resolves most for its cost first. */
  private static List<Integer> cheapest(Map<Integer, Double> prices) {
    return prices.entrySet().stream()
        .sorted(
            Map.Entry.<Integer, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
        .limit(LOOKED_AT)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Writes the posterior of an outcome and returns the chance of the outcome. */
  static double posterior(double[] weights, double[] row, double[] into) {
    double chance = 0;
    for (int h = 0; h < into.length; h++) {
      into[h] = weights[h] * row[h];
      chance += into[h];
    }
    if (chance > 0) {
      for (int h = 0; h < into.length; h++) {
        into[h] /= chance;
      }
    }
    return chance;
  }

  double cost(int check, int state) {
    Scene.Look look = scene.checks().get(check);
    return scene.workshop().change(state, look.needs()) + price(look);
  }

  /** Sets the place of the round, so that its other looks follow the first at once; -1 for none. */
  void at(int place) {
    round = place;
  }

  /** The cost without changes of set-up; less for a look at the place of the round. */
  private double price(Scene.Look look) {
    return round >= 0 && look.place() == round ? look.cost() - look.along() : look.cost();
  }

  double asking(int check, double[] weights, int state, int depth, long path) {
    Scene.Look look = scene.checks().get(check);
    int after = scene.workshop().after(state, look.needs());
    double value = cost(check, state);
    double[] posterior = new double[weights.length];
    asked[check] = true;
    for (int y = 0; y < look.chances().length; y++) {
      double chance = posterior(weights, look.chances()[y], posterior);
      if (chance > EPSILON) {
        value += chance * best(posterior, after, depth, path + mix(check * 64L + y + 1));
      }
    }
    asked[check] = false;
    return value;
  }

  private double repairing(int repair, double[] weights, int state, int depth, long path) {
    int after = scene.afterTrying(repair, state);
    double value = scene.trying(repair, state);
    double[] left = aftermath.of(weights, repair);
    double fails = sum(left);
    if (fails > EPSILON) {
      for (int h = 0; h < left.length; h++) {
        left[h] /= fails;
      }
      tried[repair] = true;
      value += fails * best(left, after, depth, tried(path, repair));
      tried[repair] = false;
    }
    return value + (1 - fails) * scene.workshop().close(after);
  }

  /**
   * Adds a failed repair to the hash. With one fault at a time the order of repairs and answers
   * does not matter.
   */
  private long tried(long path, int repair) {
    long step = mix(-repair - 1L);
    return single ? path + step : mix(path ^ step);
  }

  /** Expected cost until the end, searching {@code depth} steps further. */
  private double best(double[] weights, int state, int depth, long path) {
    double order = order(weights, state, path);
    double least = outlook.atLeast(weights);
    if (!worthAsking(state, order - least)) {
      return order;
    }
    if (depth == 0) {
      cutShort = true;
      return order;
    }
    long detail = (long) state << 32 | depth << 16 | round + 1; // a round has a small number
    double known = values.get(path, detail);
    if (!Double.isNaN(known)) {
      return known;
    }
    double best = order;
    for (int check : inner) {
      if (!asked[check] && cost(check, state) + least < best - EPSILON) {
        best = Math.min(best, asking(check, weights, state, depth - 1, path));
      }
    }
    if (firsts.size() > 1) {
      for (int repair : firsts) {
        if (!tried[repair] && scene.trying(repair, state) < best - EPSILON) {
          best = Math.min(best, repairing(repair, weights, state, depth - 1, path));
        }
      }
    }
    values.put(path, detail, best);
    return best;
  }

  /** Whether some check costs less than the most that can be saved. */
  private boolean worthAsking(int state, double saving) {
    for (int check : checks) {
      if (!asked[check] && price(scene.checks().get(check)) < saving - EPSILON) {
        return true;
      }
    }
    return false;
  }

  double order(double[] weights, int state, long path) {
    double known = orders.get(path, state);
    if (!Double.isNaN(known)) {
      return known;
    }
    work += WORK_A_STATE + scene.hypotheses().length;
    if (work > WORK) {
      throw new TooMany();
    }
    double value = ahead.value(weights, state, tried);
    orders.put(path, state, value);
    return value;
  }

  /** Scatters the bits of a number (the finalizer of SplitMix64; Steele, Lea and Flood 2014). */
  static long mix(long z) {
    long a = (z ^ z >>> 30) * 0xbf58476d1ce4e5b9L;
    long b = (a ^ a >>> 27) * 0x94d049bb133111ebL;
    return b ^ b >>> 31;
  }
}
