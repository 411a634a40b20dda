package yett.knowledge;

import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import yett.quantity.Units;

/**
 * The whole rule base: cards by kind and id in the order of the files, and the texts of rules and
 * tables.
 *
 * @param fingerprint changes with any change of content; identifies the version in cases and caches
 * @param edition name and version of the rule base, and the language of its texts
 * @param telephone what is said and asked on the telephone, in addition to the checks
 * @param mainsParts by check or repair, the mains part on which it works
 * @param rules rule files (DRL) by path
 * @param tables decision tables by path: text, or the bytes of a workbook as one character each
 * @param addOns the add-ons, with their changes
 * @param kept supplies the protections of people, add-ons included; needed only to compare two rule
 *     bases
 */
public record RuleBase(
    String fingerprint,
    Edition edition,
    Map<String, Cause> causes,
    Map<String, Effect> effects,
    Map<String, Check> checks,
    Map<String, History> histories,
    Map<String, Repair> repairs,
    Map<String, SetUp> setUps,
    Map<String, Caution> cautions,
    Map<String, Stop> stops,
    Map<String, SiteQuestion> siteQuestions,
    Planning planning,
    Telephone telephone,
    Map<String, MainsPart> mainsParts,
    SortedMap<String, String> rules,
    SortedMap<String, String> tables,
    List<AddOn> addOns,
    Supplier<Safeguards> kept) {

  /** Decides whether a cause brings about another one at a given gate. */
  @FunctionalInterface
  public interface Link {
    /**
     * Whether it does.
     *
     * @param chance the chance on the card
     */
    boolean happens(String from, String to, double chance);
  }

  /**
   * These causes and all that they bring about, directly or through others. Each link is asked
   * once.
   */
  public Set<String> withConsequences(Set<String> roots, Link link) {
    Set<String> all = new LinkedHashSet<>();
    Deque<String> open = new ArrayDeque<>(roots);
    while (!open.isEmpty()) {
      String cause = open.remove();
      if (all.add(cause)) {
        new TreeMap<>(causes.get(cause).consequences())
            .forEach(
                (to, chance) -> {
                  if (link.happens(cause, to, chance)) {
                    open.add(to);
                  }
                });
      }
    }
    return all;
  }

  /**
   * Whether a repair could have changed the result of a check: the check shows a cause that the
   * repair removes, or the repair makes it necessary to make the check again, directly or through
   * follow-up work. A repair that no longer exists could have changed anything.
   */
  public boolean changes(String repair, String check) {
    return changes(repair, check, new HashSet<>());
  }

  private boolean changes(String id, String checkId, Set<String> seen) {
    Repair repair = repairs.get(id);
    Check check = checks.get(checkId);
    if (repair == null || check == null) {
      return true;
    }
    return repair.removes().keySet().stream().anyMatch(check.likelihood()::containsKey)
        || repair.entails().contains(checkId)
        || repair.entails().stream()
            .filter(next -> repairs.containsKey(next) && seen.add(next))
            .anyMatch(next -> changes(next, checkId, seen));
  }

  /** A copy with another fingerprint. */
  public RuleBase named(String otherFingerprint) {
    return with(
        otherFingerprint, causes, checks, histories, repairs, siteQuestions, rules, tables, addOns);
  }

  /** A copy with other cards for the belief, with the same fingerprint. */
  public RuleBase withCards(
      Map<String, Cause> otherCauses,
      Map<String, Check> otherChecks,
      Map<String, History> otherHistories,
      Map<String, Repair> otherRepairs) {
    return with(
        fingerprint,
        otherCauses,
        otherChecks,
        otherHistories,
        otherRepairs,
        siteQuestions,
        rules,
        tables,
        addOns);
  }

  /** A copy with exactly these rules and tables, some of which come from add-ons. */
  public RuleBase ruledBy(
      SortedMap<String, String> otherRules,
      SortedMap<String, String> otherTables,
      List<AddOn> otherAddOns) {
    return with(
        fingerprint,
        causes,
        checks,
        histories,
        repairs,
        siteQuestions,
        otherRules,
        otherTables,
        otherAddOns);
  }

  /**
   * A copy with other usual answers to site questions and another fingerprint, so that a case begun
   * with others is told of the change.
   *
   * @param usual question to its usual answer; each has to be valid for its question
   */
  public RuleBase usually(Map<String, String> usual) {
    if (usual.isEmpty()) {
      return this;
    }
    Map<String, SiteQuestion> asked = new LinkedHashMap<>(siteQuestions);
    StringBuilder otherFingerprint = new StringBuilder(fingerprint);
    new TreeMap<>(usual)
        .forEach(
            (id, answer) -> {
              asked.computeIfPresent(id, (q, question) -> question.usually(answer));
              otherFingerprint.append('+').append(id).append('=').append(answer);
            });
    return with(
        otherFingerprint.toString(),
        causes,
        checks,
        histories,
        repairs,
        asked,
        rules,
        tables,
        addOns);
  }

  /** A copy with texts and readings in these units. */
  public RuleBase in(Units units) {
    CardsInUnits cards = new CardsInUnits(units);
    return new RuleBase(
        fingerprint,
        edition,
        cards.each(causes, cards::cause),
        effects,
        cards.each(checks, check -> check.in(units)),
        histories,
        cards.each(repairs, repair -> repair.in(units)),
        cards.each(setUps, cards::setUp),
        cards.each(cautions, cards::caution),
        cards.each(stops, cards::stop),
        cards.each(siteQuestions, question -> question.in(units)),
        planning,
        telephone,
        mainsParts,
        rules,
        tables,
        addOns,
        kept);
  }

  /** The units in which readings are shown. */
  public Units units() {
    return Stream.concat(
            checks.values().stream().flatMap(c -> c.measures().stream()),
            siteQuestions.values().stream().flatMap(q -> q.measures().stream()))
        .map(Measures::units)
        .findFirst()
        .orElse(Units.SI);
  }

  private RuleBase with(
      String otherFingerprint,
      Map<String, Cause> otherCauses,
      Map<String, Check> otherChecks,
      Map<String, History> otherHistories,
      Map<String, Repair> otherRepairs,
      Map<String, SiteQuestion> otherQuestions,
      SortedMap<String, String> otherRules,
      SortedMap<String, String> otherTables,
      List<AddOn> otherAddOns) {
    return new RuleBase(
        otherFingerprint,
        edition,
        otherCauses,
        effects,
        otherChecks,
        otherHistories,
        otherRepairs,
        setUps,
        cautions,
        stops,
        otherQuestions,
        planning,
        telephone,
        mainsParts,
        otherRules,
        otherTables,
        otherAddOns,
        kept);
  }

  /**
   * Reads and checks a rule base.
   *
   * @throws KnowledgeException with every problem found
   */
  public static RuleBase read(KnowledgeSource source) {
    return new RuleBaseReader(source.files(), source.language()).read();
  }

  /** Name and version of the rule base and of each add-on, as far as their cards give them. */
  public List<String> versions() {
    return Stream.concat(
            Stream.of(Edition.words(edition.name(), edition.version())),
            addOns.stream().map(a -> Edition.words(a.name(), a.version())))
        .filter(words -> !words.isEmpty())
        .toList();
  }

  /** Works out rows of causes from effects. */
  public EffectRows effectRows() {
    return new EffectRows(effects);
  }

  /** The protections of people, add-ons included. */
  public Safeguards safeguards() {
    return kept.get();
  }

  /** Whether an add-on switches off a card with this id. */
  public boolean switchedOff(String id) {
    return addOns.stream()
        .flatMap(a -> a.switchesOff().stream())
        .anyMatch(card -> card.endsWith(" " + id));
  }

  /**
   * Whether a card is among those that whoever works on this rule base can change: with add-ons,
   * those that they add or replace.
   *
   * @param card as {@code cause chain-slack}
   */
  public boolean isOwn(String card) {
    return addOns.isEmpty()
        || addOns.stream().anyMatch(a -> a.adds().contains(card) || a.replaces().contains(card));
  }

  public List<Check> complaints() {
    return ofKind(Check.Kind.COMPLAINT).toList();
  }

  public List<Check> proofs() {
    return ofKind(Check.Kind.PROOF).toList();
  }

  /**
   * For each part, by its trade description, what decides its size, as its repairs say ({@link
   * Repair.Part#size}).
   */
  public Map<String, String> parts() {
    Map<String, String> sizes = new TreeMap<>();
    repairs.values().stream()
        .flatMap(r -> r.parts().stream())
        .forEach(p -> sizes.merge(p.part(), p.size(), (a, b) -> a.isEmpty() ? b : a));
    return sizes;
  }

  /** Checks that can be chosen while looking for the fault. */
  public Stream<Check> ordinaryChecks() {
    return ofKind(Check.Kind.CHECK);
  }

  private Stream<Check> ofKind(Check.Kind kind) {
    return checks.values().stream().filter(c -> c.kind() == kind);
  }

  /** The repairs that remove a cause, the surest first. */
  public List<Repair> removing(String cause) {
    return repairs.values().stream()
        .filter(r -> r.removes().containsKey(cause))
        .sorted(Comparator.comparingDouble((Repair r) -> -r.removes().get(cause)))
        .toList();
  }

  /**
   * The cautions that belong to hazards at a gate of which this was told, the gravest first.
   *
   * @param told answers to site questions that somebody gave
   */
  public List<Caution> cautionsFor(List<String> hazards, Map<String, String> told) {
    return cautionsFor(hazards).stream().filter(c -> c.appliesTo(told)).toList();
  }

  /** The cautions that belong to hazards at any gate, the gravest first. */
  public List<Caution> cautionsFor(List<String> hazards) {
    return cautions.values().stream()
        .filter(c -> hazards.contains(c.hazard()))
        .sorted((a, b) -> a.word().compareTo(b.word()))
        .toList();
  }

  /** These set-ups and those within which they are entered, the outer ones first. */
  public List<String> withOuter(List<String> names) {
    Set<String> all = new LinkedHashSet<>();
    names.forEach(id -> addOuter(id, all, new HashSet<>()));
    return List.copyOf(all);
  }

  private void addOuter(String id, Set<String> all, Set<String> inner) {
    if (setUps.containsKey(id) && inner.add(id)) {
      setUps.get(id).within().forEach(outer -> addOuter(outer, all, inner));
    }
    all.add(id);
  }
}
