package yett.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import yett.belief.CausalModel;
import yett.interview.event.Answer;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion.Expectation;

/**
 * A gate drawn from the cards themselves: causes by their chances and links, answers by the tables
 * of the causes that are present. What each check shows is drawn when it is first asked; after a
 * repair that has changed something again, after one without success one time in ten. Over such
 * gates the belief ought to be calibrated, whatever is asked.
 */
final class DrawnGate implements FaultyGate {
  private static final double RETEST_SLIP = 0.005;

  /** How often a gate that no repair has changed shows and does the same once more. */
  private static final double AGAIN = 0.9;

  private final RuleBase base;
  private final CausalModel model;
  private final long seed;
  private final Map<String, String> site;
  private final Set<String> truth;
  private final Set<String> present;
  private final List<String> complaints = new ArrayList<>();
  private final Map<String, Integer> shown = new HashMap<>();

  /** What each check showed when it was first made. */
  private final Map<String, Integer> first = new HashMap<>();

  /** Whether no repair has changed anything. */
  private boolean untouched = true;

  private int repairs;
  private int retests;

  /**
   * @param model of the whole rule base on this site
   * @param site answers that differ from the usual ones
   * @param seed the same seed gives the same gate, whoever looks at it in whatever order
   */
  DrawnGate(
      RuleBase base, CausalModel model, Map<String, String> site, Set<String> truth, long seed) {
    this.base = base;
    this.model = model;
    this.site = site;
    this.seed = seed;
    this.truth = told(model, truth);
    this.present = new TreeSet<>(truth);
    for (Check complaint : base.complaints()) {
      boolean said = random(complaint.id()).nextDouble() >= complaint.unmentioned();
      if (shows(complaint) == 1 && said) {
        complaints.add(complaint.id());
      }
    }
  }

  /** Draws what is wrong: at least one cause, with what it brings about. */
  static Set<String> draw(
      RuleBase base, CausalModel model, Map<String, Double> odds, Random random) {
    while (true) {
      Set<String> roots = new LinkedHashSet<>();
      for (String cause : model.positions()) {
        if (random.nextDouble() < model.prior(model.indexOf(cause))) {
          roots.add(cause);
        }
      }
      if (!roots.isEmpty()) {
        return withConsequences(base, roots, odds, random);
      }
    }
  }

  /** Causes with those that they bring about, each link drawn once. */
  static Set<String> withConsequences(
      RuleBase base, Set<String> roots, Map<String, Double> odds, Random random) {
    Set<String> cards = new LinkedHashSet<>(roots);
    cards.retainAll(base.causes().keySet()); // kinds of the unknown bring about nothing
    Set<String> all =
        new LinkedHashSet<>(
            base.withConsequences(
                cards,
                (cause, to, chance) ->
                    odds.getOrDefault(to, 1.0) > 0 && random.nextDouble() < chance));
    all.addAll(roots);
    return all;
  }

  /** Causes as they are told: kinds of the unknown as the unknown. */
  private static Set<String> told(CausalModel model, Set<String> positions) {
    return positions.stream()
        .map(p -> model.causes().get(model.told(model.indexOf(p))))
        .collect(Collectors.toUnmodifiableSet());
  }

  /** One stream of chance for each thing at each time, so that the order of asking is the same. */
  private Random random(String what) {
    long mixed = seed * 0x9E3779B97F4A7C15L + 31L * what.hashCode() + 1_000_003L * repairs;
    Random random = new Random(mixed);
    random.nextInt();
    return random;
  }

  @Override
  public Map<String, String> site() {
    return site;
  }

  @Override
  public List<String> complaints() {
    return List.copyOf(complaints);
  }

  @Override
  public Set<String> truth() {
    return truth;
  }

  @Override
  public Set<String> remaining() {
    return told(model, present);
  }

  /** Position of the outcome that is so, whether or not somebody reports it. */
  private int shows(Check check) {
    Integer before = shown.get(check.id());
    if (before != null) {
      return before;
    }
    int outcome =
        asAtFirst(check).or(() -> copied(check)).orElseGet(() -> drawn(check, check.id()));
    shown.put(check.id(), outcome);
    first.putIfAbsent(check.id(), outcome);
    return outcome;
  }

  private Optional<Integer> asAtFirst(Check check) {
    return Optional.ofNullable(first.get(check.id()))
        .filter(o -> check.repeats().isEmpty() && untouched)
        .filter(o -> random(check.id() + " again").nextDouble() < AGAIN);
  }

  private Optional<Integer> copied(Check check) {
    return check
        .repeats()
        .filter(r -> random(check.id() + " repeats").nextDouble() < r.share())
        .map(r -> base.checks().get(r.check()))
        .map(original -> check.indexOf(original.outcomes().get(shows(original)).id()))
        .filter(i -> i >= 0);
  }

  private int drawn(Check check, String stream) {
    int[] causes = present.stream().mapToInt(model::indexOf).toArray();
    double[] chances = model.table(check.id()).outcomeChances(causes);
    double at = random(stream).nextDouble();
    int outcome = 0;
    while (outcome < chances.length - 1 && (at -= chances[outcome]) >= 0) {
      outcome++;
    }
    return outcome;
  }

  @Override
  public Answer answer(Check check, Optional<Expectation> usual) {
    if (check.danger()) {
      return new Answer.Chosen(check.outcomes().get(0).id());
    }
    int outcome = shows(check);
    if (check.measures().isEmpty()) {
      return new Answer.Chosen(check.outcomes().get(outcome).id());
    }
    return BandReading.of(check, outcome, usual, random(check.id() + " reading"));
  }

  @Override
  public void repair(Repair repair) {
    repairs++;
    shown.clear();
    new TreeMap<>(base.repairs().get(repair.id()).removes())
        .forEach(
            (cause, chance) -> {
              if (random(repair.id() + cause).nextDouble() < chance) {
                untouched &= !present.remove(cause);
              }
            });
  }

  @Override
  public boolean runs() {
    double works = 1 - RETEST_SLIP;
    for (String cause : present) {
      Cause card = base.causes().get(model.causes().get(model.told(model.indexOf(cause))));
      works *= 1 - card.retestFails();
    }
    return random("retest " + retests++).nextDouble() < works;
  }

  @Override
  public boolean sameTrouble() {
    String look = "trouble " + retests;
    boolean asBefore = untouched && random(look).nextDouble() < AGAIN;
    return asBefore
        || complaints.stream().allMatch(c -> drawn(base.checks().get(c), look + c) == 1);
  }
}
