package yett.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import yett.belief.Belief;
import yett.belief.LastFew;
import yett.belief.Support;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Place;
import yett.knowledge.Planning;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;

/**
 * Chooses the next step. The result depends only on the belief, the set-ups in force and the work
 * that is possible, not on a clock, so the same case always gets the same advice.
 */
public final class Planner {
  /**
   * Share of the probability that the hypotheses used for planning should cover; there are at most
   * {@link #MOST} of them.
   */
  static final double MASS = 0.995;

  static final int MOST = 160;

  /** Beliefs of which the numbers are kept for the next question about them. */
  private static final int VIEWS = 2;

  private static final double RETEST_MINUTES = 2;

  /**
   * Least chance for what a caller does, which costs no part and hardly any time (considered
   * judgement).
   */
  private static final double CALLER_TRIES = 0.3;

  /** Chance above which something counts as likely. */
  private static final double LIKELY = 0.5;

  private final RuleBase base;
  private final Workshop workshop;
  private final LastFew<Belief, View> views = new LastFew<>(VIEWS);

  /** By repair, its cost; see {@link #cost(Repair)}. */
  private final Map<String, Double> costs = new HashMap<>();

  /** By cause, the cost of its cheapest repair for somebody who begins with it. */
  private final Map<String, Double> cheapest = new HashMap<>();

  public Planner(RuleBase base) {
    this.base = base;
    this.workshop =
        new Workshop(
            base.setUps().values().stream()
                .map(
                    s ->
                        new Workshop.Stand(
                            s.id(),
                            s.enterMinutes() + dislike(s.hazards()),
                            s.leaveMinutes(),
                            s.within(),
                            s.excludes()))
                .toList());
    for (Repair repair : base.repairs().values()) {
      double cost = cost(repair);
      costs.put(repair.id(), cost);
      double begun = cost + workshop.change(0, workshop.state(repair.needs()));
      repair.removes().keySet().forEach(cause -> cheapest.merge(cause, begun, Math::min));
    }
  }

  /** The penalty (minutes) for hazards. */
  private double dislike(List<String> hazards) {
    Planning planning = base.planning();
    return hazards.stream().mapToDouble(h -> planning.hazards().getOrDefault(h, 0.0)).sum();
  }

  /**
   * The work that is possible.
   *
   * @param checks ids of checks that can still be made
   * @param repairs ids of repairs that can still be done
   * @param setUps set-ups in force
   * @param cured whether the gate runs again and only hidden causes are looked for
   * @param call whether a caller answers, so that handing over means sending a technician
   */
  public record Options(
      Set<String> checks, Set<String> repairs, Set<String> setUps, boolean cured, boolean call) {

    /** Options for somebody at the gate. */
    public Options(Set<String> checks, Set<String> repairs, Set<String> setUps, boolean cured) {
      this(checks, repairs, setUps, cured, false);
    }
  }

  /**
   * What a plan sees of a belief. A belief is often asked about twice: for another person, or when
   * a set-up was entered.
   *
   * @param present for each cause, whether it is in a set of the support
   * @param looked by check, the chances of its outcomes
   */
  private record View(
      Belief belief, Support support, boolean[] present, Map<String, double[][]> looked) {
    static View of(Belief belief) {
      Support support = belief.support(MASS, MOST);
      boolean[] present = support.present(belief.model().size());
      return new View(belief, support, present, new ConcurrentHashMap<>());
    }

    double[][] chances(String check) {
      return looked.computeIfAbsent(check, c -> belief.predict(c, support));
    }
  }

  public Advice advise(Belief belief, Options options) {
    View view = views.get(belief, View::of);
    Support support = view.support();
    Scene scene = scene(view, options);
    int state = workshop.state(options.setUps());
    Search.Result result = new Search(scene).run(support.weights(), state);
    List<Advice.Job> jobs = jobs(scene, result);
    List<Advice.Candidate> candidates = new ArrayList<>();
    for (Search.Ranked ranked : result.checks()) {
      Scene.Look look = scene.checks().get(ranked.check());
      candidates.add(
          new Advice.Candidate(
              look.id(), scene.asking(look, state), result.order().value() - ranked.value()));
    }
    double repairing = Math.min(result.order().value(), result.repairFirst());
    boolean ask = !result.checks().isEmpty() && result.checks().get(0).value() < repairing - 1e-9;
    double expected = ask ? result.checks().get(0).value() : repairing;
    Advice advice =
        new Advice(
            ask ? Advice.Kind.ASK : jobs.isEmpty() ? Advice.Kind.NOTHING_LEFT : Advice.Kind.REPAIR,
            candidates,
            jobs,
            expected,
            result.order().value(),
            result.findingOut());
    if (options.call() || jobs.isEmpty()) {
      return advice;
    }
    return ask ? lighter(advice, scene, state) : confirmed(advice, scene, support.weights(), state);
  }

  /**
   * The advice with the check that the card of the first repair wants, where the best check needs a
   * dearer set-up. It is made in any case, so nobody locks the gate off before it.
   */
  private Advice lighter(Advice advice, Scene scene, int state) {
    String best = advice.candidates().get(0).check();
    return wanted(advice.jobs().get(0).repair(), scene)
        .filter(look -> !advice.findingOut())
        .filter(
            look ->
                look(best, scene)
                    .filter(other -> change(look, state) < change(other, state))
                    .isPresent())
        .map(look -> confirming(advice, look, scene, state))
        .orElse(advice);
  }

  private double change(Scene.Look look, int state) {
    return workshop.change(state, look.needs());
  }

  /**
   * The advice with a check before the repair, if the repair's card wants one, or if the repair
   * rests on a suspicion that a check could confirm.
   */
  private Advice confirmed(Advice advice, Scene scene, double[] weights, int state) {
    String repair = advice.jobs().get(0).repair();
    return wanted(repair, scene)
        .or(
            () ->
                new Confirming(scene, weights, state)
                    .before(numberOf(repair, scene))
                    .map(scene.checks()::get))
        .map(look -> confirming(advice, look, scene, state))
        .orElse(advice);
  }

  private static Advice confirming(Advice advice, Scene.Look look, Scene scene, int state) {
    return advice.confirmingBy(
        advice
            .candidate(look.id())
            .orElse(new Advice.Candidate(look.id(), scene.asking(look, state), 0)));
  }

  /** The check that a repair's card wants first, if it can still be made. */
  private Optional<Scene.Look> wanted(String repair, Scene scene) {
    return base.repairs().get(repair).measureFirst().stream()
        .flatMap(id -> look(id, scene).stream())
        .findFirst();
  }

  private static Optional<Scene.Look> look(String check, Scene scene) {
    return scene.checks().stream().filter(look -> look.id().equals(check)).findFirst();
  }

  private static int numberOf(String repair, Scene scene) {
    int number = 0;
    while (!scene.repairs().get(number).id().equals(repair)) {
      number++;
    }
    return number;
  }

  /** The cost (minutes and penalty for hazards) of changing the set-ups for these needs. */
  public double changeOfSetUp(Set<String> inForce, Collection<String> needs) {
    return workshop.change(workshop.state(inForce), workshop.state(needs));
  }

  /** The set-ups to leave, then those to enter, until the needed ones are in force together. */
  public Change change(Set<String> inForce, Collection<String> needs) {
    int state = workshop.state(inForce);
    int wanted = workshop.state(needs);
    List<String> enter =
        workshop.names(wanted & ~state).stream()
            .filter(id -> !base.setUps().get(id).isCondition())
            .sorted(Comparator.comparingInt(this::depth))
            .toList();
    List<String> leave =
        workshop.names(workshop.leaving(state, wanted)).stream()
            .sorted(Comparator.comparingInt(this::depth).reversed())
            .toList();
    return new Change(leave, enter);
  }

  /** The number of set-ups that have to be entered before this one. */
  private int depth(String setUp) {
    return base.withOuter(List.of(setUp)).size();
  }

  /** A change of set-ups; each list is in the order of doing. */
  public record Change(List<String> leave, List<String> enter) {}

  /**
   * The numbers for the search. Only the causes in the support and the work that concerns them are
   * included, renumbered, because most of a large rule base is about other things.
   */
  private Scene scene(View view, Options options) {
    Belief belief = view.belief();
    Support support = view.support();
    boolean[] present = view.present();
    int[] places = new int[present.length];
    int causes = 0;
    for (int c = 0; c < present.length; c++) {
      places[c] = present[c] ? causes++ : -1;
    }
    int[][] hypotheses = new int[support.size()][];
    for (int h = 0; h < hypotheses.length; h++) {
      hypotheses[h] = Arrays.stream(support.causes(h)).map(c -> places[c]).toArray();
    }
    List<Scene.Look> checks =
        base.checks().values().stream()
            .filter(c -> options.checks().contains(c.id()))
            .filter(c -> belief.couldTell(c.id(), present))
            .map(c -> look(view, c, options.call()))
            .toList();
    int count = causes;
    List<Scene.Job> repairs =
        base.repairs().values().stream()
            .filter(r -> options.repairs().contains(r.id()))
            .filter(r -> r.removes().keySet().stream().anyMatch(c -> here(belief, present, c)))
            .map(r -> job(belief, r, places, count, options.call()))
            .toList();
    Planning planning = base.planning();
    return new Scene(
        hypotheses,
        count,
        checks,
        repairs,
        workshop,
        workshop.state(List.of(SetUp.GATE_RUNNING, SetUp.COVERS_ON)),
        RETEST_MINUTES,
        options.call() ? planning.visit() : planning.handOver(),
        planning.callBack(),
        cheapestRepairs(belief, places, causes),
        options.cured());
  }

  /**
   * For each cause, the cost of its cheapest repair for somebody who begins with it; 0 if there is
   * none.
   */
  private double[] cheapestRepairs(Belief belief, int[] places, int causes) {
    double[] due = new double[causes];
    List<String> ids = belief.model().causes();
    for (int c = 0; c < ids.size(); c++) {
      if (places[c] >= 0) {
        due[places[c]] = cheapest.getOrDefault(ids.get(c), 0.0);
      }
    }
    return due;
  }

  private static boolean here(Belief belief, boolean[] present, String cause) {
    return present[belief.model().indexOf(cause)];
  }

  /**
   * A check as numbers. On a call a look has no place: each is a separate question, answered from
   * where the caller is.
   */
  private Scene.Look look(View view, Check check, boolean call) {
    double question = base.planning().question();
    double cost = question + check.minutes() + dislike(check.hazards());
    double[][] chances = view.chances(check.id());
    Optional<Place> place = check.place().filter(p -> !call);
    return place.isEmpty()
        ? new Scene.Look(check.id(), cost, workshop.state(check.needs()), chances)
        : new Scene.Look(
            check.id(),
            cost,
            workshop.state(check.needs()) | workshop.state(place.get().needs()),
            chances,
            Place.all().indexOf(place.get()),
            question);
  }

  private Scene.Job job(Belief belief, Repair repair, int[] places, int causes, boolean call) {
    double[] removes = new double[causes];
    repair
        .removes()
        .forEach(
            (c, p) -> {
              int place = places[belief.model().indexOf(c)];
              if (place >= 0) {
                removes[place] = p;
              }
            });
    return new Scene.Job(
        repair.id(),
        costs.get(repair.id()),
        workshop.state(repair.needs()),
        removes,
        least(repair, call));
  }

  /**
   * The least chance for a repair. To conclude that nothing is wrong takes more than a suspicion.
   */
  private double least(Repair repair, boolean call) {
    double suspicion = base.planning().suspicion();
    double least = call ? Math.min(suspicion, CALLER_TRIES) : suspicion;
    return repair.removes().containsKey(Cause.NOTHING_WRONG) ? Math.max(least, LIKELY) : least;
  }

  /**
   * The cost of a repair. Each includes the penalty for needless repairs: a repair that is needed
   * is due in any case, so the penalty affects only needless ones.
   */
  private double cost(Repair repair) {
    return repair.minutes()
        + base.planning().needless()
        + repair.price() / base.planning().minute()
        + dislike(repair.hazards())
        + entailed(repair);
  }

  /** The cost of follow-up work, which is part of the repair's cost. */
  private double entailed(Repair repair) {
    Function<String, Double> minutes =
        id ->
            base.repairs().containsKey(id)
                ? base.repairs().get(id).minutes()
                : base.checks().containsKey(id) ? base.checks().get(id).minutes() : 0;
    return repair.entails().stream().collect(Collectors.summingDouble(minutes::apply));
  }

  /**
   * The order of repairs; it begins with another repair if that pays because checks can follow it.
   */
  private List<Advice.Job> jobs(Scene scene, Search.Result result) {
    List<Advice.Job> jobs = new ArrayList<>();
    if (result.first() >= 0) {
      jobs.add(new Advice.Job(scene.repairs().get(result.first()).id(), 1));
    }
    RepairOrder.Order order = result.order();
    for (int i = 0; i < order.repairs().size(); i++) {
      if (order.repairs().get(i) != result.first()) {
        String id = scene.repairs().get(order.repairs().get(i)).id();
        jobs.add(new Advice.Job(id, order.chances().get(i)));
      }
    }
    return List.copyOf(jobs);
  }
}
