package yett.interview.course;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.event.Answer;
import yett.interview.proof.FailedProofs;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.Stop;
import yett.plan.Planner;
import yett.rules.Fact;
import yett.rules.Judge;
import yett.rules.Judgement;
import yett.rules.RuleCache;
import yett.rules.RuleEngine;
import yett.testing.Repairs;

/**
 * The cards that stand for all others where safety is concerned. Two checks, two repairs or two
 * proofs are alike if they need the same set-ups, the same person, have the same hazards, entail
 * the same, and no rule that stops or forbids anything heeds them: whatever the interview does with
 * one it does with the other, so one is kept.
 *
 * <p>Beside each that is kept lies its double, which is never offered. What was asked or done is
 * written down of the double: a gate has many bolts, and having tightened one uses up nothing. That
 * makes more possible, never less; running out of work is looked at from every state anyway.
 */
final class Representatives {
  static final Pattern FORBIDS = Pattern.compile("\\bnew (StopNow|Forbidden|Unavailable)\\(");

  private static final String DOUBLE = "-done";
  static final String DONE = "something-done";
  private static final String LOOKED = "something-looked-at";

  /**
   * An answer that rules heed: it stops, forbids, or keeps a proof from being made.
   *
   * @param kind the same for all that stop and forbid alike and are ended alike
   * @param mended whether it counts for what ends it that something was mended
   */
  record Heeded(String check, Answer answer, Object kind, boolean mended) {}

  /** What the same rules made of the same facts for other representatives. */
  private static final Map<RuleEngine, Map<Set<Fact>, Set<Object>>> EFFECTS =
      new ConcurrentHashMap<>();

  private final RuleEngine rules;
  private final RuleBase all;
  private final Site here;
  private final Predicate<Check> proved;
  private final int atOnce;
  private final boolean failing;
  private final boolean each;
  private final Predicate<List<String>> work;
  private final Map<String, String> site;
  private final List<Fact> ground = new ArrayList<>();
  private final Set<Heeded> heeded = new LinkedHashSet<>();
  private final Map<String, List<Heeded>> byCheck;
  private final List<String> forbidding;
  private final Map<String, Boolean> named = new ConcurrentHashMap<>();
  private final Map<Object, Integer> numbers = new HashMap<>();
  private final Set<String> ending = new HashSet<>();
  private final Set<String> complaints = new LinkedHashSet<>();
  private final Map<Object, Set<String>> entailed;
  private final Set<String> doubles = new HashSet<>();
  private final Set<String> lifting;
  private final RuleBase whole;
  private final Expertise reduced;

  /**
   * @param atOnce so many dangers and known faults may stand together; if none may, no card is told
   *     apart for their sake
   * @param site answers that differ from the usual
   * @param work needs of the checks and repairs that there are, beside dangers, proofs and what
   *     they point to
   * @param failing whether a proof may fail; else what it points to is not there for its sake
   * @param each whether every danger and known fault is there; else one danger of those that leave
   *     the gate in the same state with the same people, and no fault
   */
  Representatives(
      Expertise expertise,
      int atOnce,
      Map<String, String> site,
      Predicate<Check> proved,
      boolean failing,
      boolean entailing,
      Predicate<List<String>> work,
      boolean each) {
    this.atOnce = atOnce;
    this.failing = failing;
    this.each = each;
    this.proved = proved;
    this.work = work;
    this.site = site;
    SiteFacts sites = new SiteFacts(expertise.base());
    this.here = sites.site(site);
    this.all = expertise.base();
    this.rules = expertise.rules();
    this.forbidding =
        all.rules().values().stream().filter(text -> FORBIDS.matcher(text).find()).toList();
    this.entailed = entailing ? entailed(all) : Map.of();
    this.lifting =
        all.proofs().stream()
            .map(Check::id)
            .filter(
                id ->
                    atOnce > 0
                        && all.rules().values().stream()
                            .anyMatch(t -> t.contains("StopNow") && t.contains('"' + id + '"')))
            .collect(Collectors.toSet());
    ground.addAll(sites.facts(site));
    ground.add(new Fact.ComplaintsTaken());
    try (Judge judge = expertise.rules().newJudge()) {
      heed(judge);
      complain(judge);
    }
    this.byCheck = heeded.stream().collect(Collectors.groupingBy(Heeded::check));
    RuleBase few = few();
    Map<String, Repair> repairs = new LinkedHashMap<>();
    all.repairs().values().forEach(r -> repairs.put(r.id(), copy(r, r.id(), List.of())));
    repairs.putAll(few.repairs());
    Map<String, Check> checks = new LinkedHashMap<>(all.checks());
    this.whole = all.withCards(all.causes(), checks, all.histories(), repairs);
    RuleEngine rules = RuleEngine.of(whole, new RuleCache(Path.of("target/rule-cache")));
    this.reduced = new Expertise(few, rules, expertise.model(), new Planner(few));
  }

  /** With all cards, and the few with their doubles: for what the rules make of a case. */
  Expertise whole() {
    return new Expertise(whole, reduced.rules(), reduced.model(), reduced.planner());
  }

  /** With few cards, all of which are on this site, and the rules of the whole rule base. */
  Expertise expertise() {
    return reduced;
  }

  RuleBase base() {
    return reduced.base();
  }

  int atOnce() {
    return atOnce;
  }

  boolean failing() {
    return failing;
  }

  /** Whether it counts, for a danger that was told so, that something was mended since. */
  boolean isEndedByMending(String check, Answer answer) {
    return heeded(check).anyMatch(h -> h.answer().equals(answer) && h.mended());
  }

  Map<String, String> site() {
    return site;
  }

  Stream<Heeded> heeded(String check) {
    return byCheck.getOrDefault(check, List.of()).stream();
  }

  /** A short name for a kind. */
  synchronized int numberOf(Object kind) {
    Integer number = numbers.putIfAbsent(kind, numbers.size());
    return number == null ? numbers.size() - 1 : number;
  }

  boolean isHeeded(String check) {
    return byCheck.containsKey(check);
  }

  /** Complaints that keep a caller from something, one of each kind, after one that does not. */
  Set<String> complaints() {
    return complaints;
  }

  boolean isOffered(String card) {
    return !doubles.contains(card);
  }

  /** Whether rules heed it, so that no other stands for it. */
  boolean isSpecial(String card) {
    return isHeeded(card) || ends(card);
  }

  /** The card that is written down in its place. */
  String doubleOf(String card) {
    Repair repair = all.repairs().get(card);
    return repair == null ? LOOKED : done(repair);
  }

  private static String done(Repair repair) {
    return repair.who() == Role.CALLER ? repair.id() + DOUBLE : DONE;
  }

  /** The same, once for each kind of work that repairs of its kind entail. */
  Stream<String> doublesBefore(String repair) {
    return entails(all.repairs().get(repair)).stream().map(Representatives::before);
  }

  /** Whether a repair ends something that is forbidden; it is done only where there is that. */
  boolean ends(String repair) {
    return ending.contains(repair);
  }

  /** Seen by a caller and by somebody at the gate: what is not alike to both is not alike. */
  private void heed(Judge judge) {
    Set<Object> seen = new HashSet<>();
    Map<Role, Set<Object>> before = new HashMap<>();
    SEEN_BY.forEach(role -> before.put(role, effect(judge, role)));
    for (Check check : heedable().filter(here::allows).toList()) {
      boolean proof = check.kind() == Check.Kind.PROOF;
      boolean fault = each && isNamed(check.id()) && work.test(needs(check));
      if (!check.danger() && !fault && !proof) {
        continue;
      }
      for (Answer answer : answers(check)) {
        List<Set<Object>> effects = new ArrayList<>();
        for (Role role : SEEN_BY) {
          Role by = role.may(check.who()) ? role : Role.ELECTRICIAN;
          Set<Object> effect = new HashSet<>(effect(judge, role, fact(check, answer, by, 1)));
          effect.removeAll(before.get(role));
          effects.add(effect);
        }
        if (effects.stream().allMatch(Set::isEmpty)) {
          continue;
        }
        Set<Object> ends = proof ? Set.of() : ends(judge, check, answer);
        List<Object> unmended = check.danger() ? lifted(judge, check, answer, 0) : List.of();
        List<Object> mended =
            check.danger()
                ? lifted(judge, check, answer, 1)
                : proof ? mended(judge, check, answer, effects.get(1)) : List.of();
        Object lifted = List.of(unmended, mended);
        Object kind =
            List.of(effects.stream().map(this::alike).toList(), ends, endedBy(effects), lifted);
        Object own = List.of(check.danger(), check.needs(), check.who(), effects, ends, lifted);
        if (seen.add(each ? own : stopsAlike(effects))) {
          heeded.add(new Heeded(check.id(), answer, kind, !unmended.equals(mended)));
        }
      }
    }
  }

  /** What may be told: dangers and faults, if any may; and a proof that fails and is heeded. */
  private Stream<Check> heedable() {
    return Stream.concat(
        all.ordinaryChecks().filter(c -> atOnce > 0),
        all.proofs().stream().filter(p -> failing && proved.test(p) && isNamed(p.id())));
  }

  /** What is left of the effect of a failed proof after any repair; nothing if it stays. */
  private List<Object> mended(Judge judge, Check proof, Answer answer, Set<Object> before) {
    Fact given = fact(proof, answer, Role.ELECTRICIAN, 1);
    Set<Object> after =
        new HashSet<>(effect(judge, Role.ELECTRICIAN, given, new Fact.Done(DONE, 1)));
    return after.containsAll(before) ? List.of() : List.of(after);
  }

  private static final List<Role> SEEN_BY = List.of(Role.CALLER, Role.ELECTRICIAN);

  /**
   * Whose later word ends it, and what then stands.
   *
   * @param epoch how many repairs were done in between
   */
  private List<Object> lifted(Judge judge, Check check, Answer answer, int epoch) {
    List<Object> lifted = new ArrayList<>();
    Fact first = fact(check, answer, Role.CALLER, 1);
    String none = check.outcomes().get(0).id();
    for (Role by : Role.values()) {
      if (by.may(check.who())) {
        Fact later = new Fact.Given(check.id(), none, Double.NaN, false, by, 2, epoch);
        lifted.add(alike(effect(judge, Role.ELECTRICIAN, first, later)));
      }
    }
    return lifted;
  }

  /** Stops are alike if they leave the gate in the same state and the same people go on. */
  private Set<Object> alike(Set<Object> effect) {
    Set<Object> alike = new HashSet<>();
    for (Object each : effect) {
      Stop stop = all.stops().get(each);
      alike.add(stop == null ? each : List.of(stop.leaves(), stop.goesOn()));
    }
    return alike;
  }

  private Object stopsAlike(List<Set<Object>> effects) {
    return alike(effects.get(1)).stream()
        .filter(List.class::isInstance)
        .collect(Collectors.toSet());
  }

  /** Proofs named by a rule that raises a stop may end it. */
  private Set<String> endedBy(List<Set<Object>> effects) {
    Set<String> proofs = new HashSet<>();
    for (String text : all.rules().values()) {
      for (String rule : text.split("(?m)^rule ")) {
        if (effects.stream()
            .flatMap(Set::stream)
            .anyMatch(e -> rule.contains("StopNow(\"" + e + '"'))) {
          lifting.stream().filter(p -> rule.contains('"' + p + '"')).forEach(proofs::add);
        }
      }
    }
    return proofs;
  }

  /** What an answer could be, as far as rules may tell answers apart. */
  static List<Answer> answers(Check check) {
    List<Answer> answers = new ArrayList<>();
    if (check.measures().isPresent()) {
      Measures measures = check.measures().get();
      double low = Double.isFinite(measures.least()) ? measures.least() : -1000;
      double high = Double.isFinite(measures.most()) ? measures.most() : 1000;
      for (double share : new double[] {0, 0.001, 0.1, 0.5, 0.9, 1}) {
        double value = low + share * (high - low);
        answers.add(new Answer.Read(measures.show(value), value));
      }
    } else {
      check.outcomes().forEach(o -> answers.add(new Answer.Chosen(o.id())));
    }
    if (check.danger()) {
      answers.add(new Answer.CannotTell());
    }
    return answers;
  }

  static Fact fact(Check check, Answer answer, Role by, long event) {
    return answer.map(
        c -> new Fact.Given(check.id(), c.outcome(), Double.NaN, false, by, event, 0),
        r -> new Fact.Given(check.id(), "", r.value(), true, by, event, 0),
        () -> new Fact.Untold(check.id(), event),
        () -> new Fact.Untold(check.id(), event));
  }

  private Set<Fact> with(Role role, Fact... facts) {
    Set<Fact> with = new HashSet<>(ground);
    with.add(new Fact.Person(role));
    with.addAll(List.of(facts));
    return with;
  }

  private Set<Object> effect(Judge judge, Role role, Fact... facts) {
    Set<Fact> all = with(role, facts);
    return EFFECTS
        .computeIfAbsent(rules, r -> new ConcurrentHashMap<>())
        .computeIfAbsent(all, a -> effect(judge.judge(a)));
  }

  /** What of a judgement makes steps differ: the rest only takes away what could be chosen. */
  Set<Object> effect(Judgement judgement) {
    Set<Object> effect = new HashSet<>(judgement.forbidden());
    judgement.stops().forEach(s -> effect.add(s.stop()));
    all.proofs().stream()
        .map(Check::id)
        .filter(judgement.unavailable()::contains)
        .forEach(effect::add);
    return effect;
  }

  /** The kinds of repair that end what an answer stops or forbids. */
  private Set<Object> ends(Judge judge, Check check, Answer answer) {
    Fact given = fact(check, answer, Role.ELECTRICIAN, 1);
    Set<Object> before = effect(judge, Role.ELECTRICIAN, given);
    Set<Object> kinds = new HashSet<>();
    for (Repair repair : all.repairs().values()) {
      Fact done = new Fact.Done(repair.id(), 1);
      if (here.allows(repair)
          && isNamed(repair.id())
          && !effect(judge, Role.ELECTRICIAN, given, done).equals(before)
          && kinds.add(kind(repair))) {
        ending.add(repair.id());
      }
    }
    return kinds;
  }

  private void complain(Judge judge) {
    Map<Object, String> kinds = new LinkedHashMap<>();
    for (Check complaint : all.complaints()) {
      Judgement of = judge.judge(with(Role.CALLER, new Fact.Complained(complaint.id())));
      String named = isNamed(complaint.id()) ? complaint.id() : "";
      kinds.putIfAbsent(List.of(of.forbidden(), of.unavailable(), named), complaint.id());
    }
    complaints.addAll(kinds.values());
  }

  /** The first card of each kind that a repair of each kind entails. */
  private Map<Object, Set<String>> entailed(RuleBase base) {
    Map<Object, String> first = new HashMap<>();
    Map<Object, Set<String>> entailed = new HashMap<>();
    for (Repair repair : base.repairs().values()) {
      Set<String> cards = entailed.computeIfAbsent(kind(repair), k -> new LinkedHashSet<>());
      for (String id : repair.entails()) {
        Repair next = base.repairs().get(id);
        Check check = base.checks().get(id);
        if (here.allows(repair) && here.allows(next == null ? check : next)) {
          Object kind = next == null ? List.of(check.needs(), check.who()) : kind(next);
          cards.add(first.computeIfAbsent(kind, k -> id));
        }
      }
    }
    return entailed;
  }

  /** Whether a rule that stops or keeps something from being done names it, in force or not. */
  private boolean isNamed(String card) {
    return named.computeIfAbsent(
        card, id -> forbidding.stream().anyMatch(file -> file.contains('"' + id + '"')));
  }

  private RuleBase few() {
    Map<String, Check> checks = new LinkedHashMap<>();
    Map<String, Repair> repairs = new LinkedHashMap<>();
    Set<Object> kinds = new HashSet<>();
    Set<String> own = new HashSet<>(ending);
    proofs()
        .forEach(
            proof -> {
              checks.put(proof.id(), proof);
              if (failing) {
                pointsTo(proof).forEach(r -> own.add(r.id()));
              }
            });
    entailed.values().forEach(own::addAll);
    for (Check check : all.checks().values()) {
      boolean kept =
          switch (check.kind()) {
            case COMPLAINT -> complaints.contains(check.id());
            case PROOF -> false;
            case CHECK ->
                here.allows(check)
                    && (check.danger()
                        || isHeeded(check.id())
                        || own.contains(check.id())
                        || work.test(needs(check))
                            && (kinds.add(kind(check))
                                || check.place().isPresent() // two for a round
                                    && kinds.add(List.of(kind(check), check.place().get().id()))));
          };
      if (kept) {
        checks.put(check.id(), copy(check, check.id()));
      }
    }
    all.repairs().values().stream()
        .filter(r -> own.contains(r.id()))
        .forEach(r -> kinds.add(kind(r)));
    for (Repair repair : all.repairs().values()) {
      if (here.allows(repair)
          && (own.contains(repair.id()) || work.test(repair.needs()) && kinds.add(kind(repair)))) {
        repairs.put(repair.id(), copy(repair, repair.id(), List.of()));
        putDone(repair, done(repair), List.of(), repairs);
        entails(repair).forEach(e -> putDone(repair, before(e), List.of(e), repairs));
      }
    }
    Check any = all.ordinaryChecks().findFirst().orElseThrow();
    checks.put(LOOKED, copy(any, LOOKED, Map.of()));
    repairs.replaceAll(
        (id, repair) ->
            Repairs.measuredBy(
                repair, repair.measureFirst().stream().filter(checks::containsKey).toList()));
    doubles.add(LOOKED);
    RuleBase kept = all.withCards(all.causes(), checks, all.histories(), repairs);
    return new RuleBase(
        kept.fingerprint(),
        kept.edition(),
        kept.causes(),
        kept.effects(),
        kept.checks(),
        kept.histories(),
        kept.repairs(),
        kept.setUps(),
        kept.cautions(),
        kept.stops(),
        Map.of(), // the site is what it is; all that is kept is there
        kept.planning(),
        kept.telephone(),
        kept.mainsParts(),
        kept.rules(),
        kept.tables(),
        kept.addOns(),
        kept.kept()::get);
  }

  private void putDone(
      Repair repair, String id, List<String> entails, Map<String, Repair> repairs) {
    Repair done = copy(repair, id, entails);
    repairs.put(id, done.withRemoves(Map.of())); // no failed proof points to it
    doubles.add(id);
  }

  /** A caller changes no set-up, so that the hazards of what is asked of one count too. */
  private static Object kind(Check check) {
    List<String> hazards = check.who() == Role.CALLER ? check.hazards() : List.of();
    return List.of("check", needs(check), check.place().isPresent(), check.who(), hazards);
  }

  /** With those of the place where it is made together with others. */
  static List<String> needs(Check check) {
    Set<String> needs = new TreeSet<>(check.needs());
    check.place().ifPresent(p -> needs.addAll(p.needs()));
    return List.copyOf(needs);
  }

  private static Object kind(Repair repair) {
    boolean caller = repair.who() == Role.CALLER;
    Object more = caller ? List.of(repair.hazards(), repair.proofs()) : "";
    return List.of("repair", repair.needs(), repair.who(), more);
  }

  /** What repairs of its kind entail, one of each kind: they are done one after the other. */
  private Set<String> entails(Repair repair) {
    return entailed.getOrDefault(kind(repair), Set.of());
  }

  private static String before(String entailed) {
    return DONE + "-before-" + entailed;
  }

  /** The first proof of each kind; it points to whatever one of that kind points to. */
  private Collection<Check> proofs() {
    Map<Object, Check> proofs = new LinkedHashMap<>();
    for (Check proof : all.proofs()) {
      if (here.allows(proof) && proved.test(proof)) {
        boolean own = lifts(proof.id()) || isHeeded(proof.id());
        Object kind = List.of(proof.needs(), proof.who(), own ? proof.id() : "");
        Check first = proofs.getOrDefault(kind, proof);
        Map<String, double[]> rows = new LinkedHashMap<>(proof.likelihood());
        rows.putAll(first.likelihood());
        proofs.put(kind, copy(first, first.id(), rows));
      }
    }
    return proofs.values();
  }

  /** Whether the passing of a proof may end a danger; such proofs are told apart. */
  boolean lifts(String proof) {
    return lifting.contains(proof);
  }

  /** The first of each kind that a failed proof points to, the likeliest first. */
  private Collection<Repair> pointsTo(Check proof) {
    Map<Object, Repair> to = new LinkedHashMap<>();
    FailedProofs.pointsTo(all, proof)
        .filter(here::allows)
        .forEach(r -> to.putIfAbsent(List.of(r.needs(), r.who()), r));
    return to.values();
  }

  private static Check copy(Check c, String id) {
    return copy(c, id, c.likelihood());
  }

  private static Check copy(Check c, String id, Map<String, double[]> rows) {
    return new Check(
        id,
        c.kind(),
        c.question(),
        new Check.Evidence(rows, c.otherwise(), c.reliability(), Optional.empty(), c.unmentioned()),
        new Check.Work(
            c.who(),
            c.minutes(),
            c.needs(),
            c.hazards(),
            id.equals(c.id()) ? c.place() : Optional.empty()),
        c.area(),
        Map.of(),
        c.danger(),
        c.inspected(),
        c.source());
  }

  private static Repair copy(Repair r, String id, List<String> entails) {
    return Repairs.like(r, id, entails, Map.of());
  }

  @Override
  public String toString() {
    Map<Object, Long> counts = new HashMap<>();
    base().checks().values().forEach(c -> counts.merge(c.kind(), 1L, Long::sum));
    return counts
        + ", repairs "
        + base().repairs().size()
        + ", heeded "
        + heeded
        + ", ending "
        + ending
        + ", complaints "
        + complaints
        + Objects.toString(site);
  }
}
