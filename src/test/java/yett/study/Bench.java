package yett.study;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import yett.belief.CausalModel;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.site.SiteFacts;
import yett.knowledge.Cause;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.rules.RuleCache;
import yett.study.gate.SimulatedGate;

/** Plays the same simulated faults under every policy. */
final class Bench {
  /** How often a drawn gate differs in a thing from the usual. */
  private static final double UNUSUAL = 0.3;

  /** One who knows the missing card, but expects it as little as Yett does. */
  static final String AS_RARE = "card there, as rare as the unknown";

  private final Expertise expertise;
  private final RuleBase base;
  private final RuleCache cache;
  private final SiteFacts sites;

  Bench(Expertise expertise, RuleCache cache) {
    this.expertise = expertise;
    this.base = expertise.base();
    this.cache = cache;
    this.sites = new SiteFacts(base);
  }

  /** The policies, made anew for every case. */
  List<Policy> policies(long seed) {
    List<Policy> all = new ArrayList<>();
    all.add(new Yett(expertise.planner()));
    all.add(new FlowChart());
    for (RuleOfThumb.Order order : RuleOfThumb.Order.values()) {
      all.add(new RuleOfThumb(base, expertise.planner(), order, seed));
    }
    return all;
  }

  /** Makes a gate drawn from the model, the same each time. */
  Supplier<FaultyGate> drawn(long seed) {
    Random random = new Random(31 * seed + 7);
    Map<String, String> site = site(random);
    Map<String, Double> odds = odds(site);
    CausalModel model = expertise.model().withOdds(odds);
    Set<String> truth = DrawnGate.draw(base, model, odds, random);
    return () -> new DrawnGate(base, model, site, truth, seed);
  }

  /** Makes a gate of physics, the same each time; faults occur as often as the cards say. */
  Supplier<FaultyGate> physical(long seed) {
    return () -> machine(seed);
  }

  private SimulatedGate machine(long seed) {
    Map<String, Double> often = new LinkedHashMap<>();
    base.causes().forEach((id, cause) -> often.put(id, cause.prior()));
    return SimulatedGate.of(seed, often);
  }

  /**
   * What Yett makes of a gate of physics, of the same gate with its first inspection known, and
   * what more than that no baseline can be worth: all of it read again for nothing.
   */
  Map<String, Played> handedOver(long seed) {
    try (Play.Seat seat = new Play.Seat(expertise)) {
      Policy yett = new Yett(expertise.planner());
      return Map.of(
          HandedOver.WITHOUT, Play.of(seat, machine(seed), yett),
          HandedOver.WITH, Play.of(seat, known(seed), yett),
          HandedOver.FOR_NOTHING, Play.of(seat, known(seed).readForNothing(true), yett));
    }
  }

  private SimulatedGate known(long seed) {
    SimulatedGate gate = machine(seed);
    return gate.knownFrom(new HandedOver(expertise).readings(gate, new Random(17 * seed + 3)));
  }

  /** Makes a gate with a cause and what that brings about, on a site where it can be. */
  private Supplier<FaultyGate> with(String cause, long seed) {
    Random random = new Random(31 * seed + 7);
    Map<String, String> site = sites.allowing(base.causes().get(cause).onlyIf(), site(random));
    Map<String, Double> odds = odds(site);
    CausalModel model = expertise.model().withOdds(odds);
    Set<String> truth = DrawnGate.withConsequences(base, Set.of(cause), odds, random);
    return () -> new DrawnGate(base, model, site, truth, seed);
  }

  private Map<String, String> site(Random random) {
    Map<String, String> site = new LinkedHashMap<>();
    for (SiteQuestion question : base.siteQuestions().values()) {
      List<String> choices = List.copyOf(question.choices().keySet());
      if (choices.size() > 1 && random.nextDouble() < UNUSUAL) {
        site.put(question.id(), choices.get(random.nextInt(choices.size())));
      }
    }
    site.keySet().retainAll(sites.answers(site).keySet());
    return site;
  }

  /** By cause, what the rules make of its odds on such a site. */
  private Map<String, Double> odds(Map<String, String> site) {
    List<Event> events = new ArrayList<>();
    events.add(new Event.Opened("study", Role.ELECTRICIAN, base.fingerprint()));
    site.forEach((question, answer) -> events.add(new Event.SiteAnswered(question, answer)));
    events.add(new Event.SiteTaken());
    List<Entry> entries = new ArrayList<>();
    events.forEach(
        e -> entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.ELECTRICIAN, e)));
    try (Interview interview = expertise.newInterview()) {
      return interview.judgement(entries).oddsFactors();
    }
  }

  /** What becomes of a gate under each of these policies. */
  Map<String, Played> play(Supplier<FaultyGate> gate, List<Policy> policies) {
    Map<String, Played> played = new LinkedHashMap<>();
    try (Play.Seat seat = new Play.Seat(expertise)) {
      policies.forEach(p -> played.put(p.name(), Play.of(seat, gate.get(), p)));
    }
    return played;
  }

  /** The cause whose card is missing in a case of this number: all but the two special ones. */
  String missing(long number) {
    List<String> all =
        new ArrayList<>(
            base.causes().keySet().stream()
                .filter(c -> !c.equals(Cause.NOT_IN_RULE_BASE) && !c.equals(Cause.NOTHING_WRONG))
                .toList());
    Collections.shuffle(all, new Random(1));
    return all.get((int) Math.floorMod(number, (long) all.size()));
  }

  /**
   * What Yett makes of a gate whose cause has no card; and, with the same answers, what could be
   * known of it at all: by one who has the card, and takes its cause to be as rare as what is
   * unknown and looks like it.
   */
  Map<String, Played> withoutCard(long number) {
    String cause = missing(number);
    Expertise less = Expertise.of(Reduced.without(base, cause), cache);
    Expertise rare = Expertise.of(Reduced.asRareAsUnknown(base, cause), cache);
    Policy yett = new Yett(less.planner());
    try (Play.Seat seat = new Play.Seat(less);
        Play.Seat other = new Play.Seat(rare)) {
      List<Played> played = Play.of(seat, with(cause, number).get(), yett, other);
      return Map.of(yett.name(), played.get(0), AS_RARE, played.get(1));
    }
  }
}
