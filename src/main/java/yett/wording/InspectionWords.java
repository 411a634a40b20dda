package yett.wording;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.course.Interview;
import yett.interview.course.Interview.RankedCause;
import yett.interview.event.Event;
import yett.interview.inspection.Inspection;
import yett.interview.inspection.Verdict;
import yett.interview.moment.Moment;
import yett.interview.site.Trends;
import yett.interview.state.Forces;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/** Says, on screens and on paper, what an inspection found. */
public final class InspectionWords {
  /** Heading for readings that are in order but have to be watched. */
  public static final String AHEAD = "Changed, or heading for a limit";

  private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE;

  private final RuleBase base;
  private final Moment moment;
  private final ZoneId zone;
  private final TrendWords trends;

  /**
   * @param zone time zone for the dates
   */
  public InspectionWords(RuleBase base, Moment moment, ZoneId zone) {
    this.base = base;
    this.moment = moment;
    this.zone = zone;
    this.trends = new TrendWords(Trends.of(base, moment), moment.judgement());
  }

  /** What was read or seen; empty if nobody could tell. */
  public String found(Inspection.Result result) {
    return forceOver(result).or(() -> told(result)).orElse("not made");
  }

  /** A proof that failed by the meter failed for its force, even if the leaf reversed. */
  private Optional<String> forceOver(Inspection.Result result) {
    return Optional.of(result)
        .filter(r -> r.verdict() == Verdict.FAIL && Forces.PROOFS.contains(r.check().id()))
        .flatMap(r -> ForceWords.over(Forces.of(moment.entries()), r.check().id()));
  }

  private Optional<String> told(Inspection.Result result) {
    return result
        .answer()
        .map(
            a ->
                a.answer()
                    .map(
                        chosen -> seen(result.check(), a.answer().choices()),
                        read ->
                            result
                                .check()
                                .measures()
                                .map(m -> m.asTold(read.typed(), read.value()))
                                .orElse(read.typed()),
                        () -> Wording.untold(a.answer(), "could not tell"),
                        () -> "not made"));
  }

  private static String seen(Check check, List<String> outcomes) {
    return Wording.together(
        outcomes.stream()
            .map(o -> check.indexOf(o) < 0 ? o : check.outcomes().get(check.indexOf(o)).text())
            .toList());
  }

  /** The baseline of a check, in words. */
  public Optional<String> baseline(Check check) {
    return moment.state().opened().flatMap(o -> o.baseline(check.id())).flatMap(e -> say(check, e));
  }

  /** The last reading, if it was taken after the baseline. */
  public Optional<String> sinceBaseline(Check check) {
    return moment
        .state()
        .opened()
        .flatMap(o -> o.last(check.id()).filter(l -> isNews(l, o.baseline(check.id()))))
        .flatMap(e -> say(check, e));
  }

  private static boolean isNews(Event.Earlier last, Optional<Event.Earlier> baseline) {
    return baseline.filter(b -> !b.at().isBefore(last.at())).isEmpty();
  }

  /** How the readings have changed since the baseline; empty if there are too few. */
  public Optional<String> trend(Check check) {
    return trends.of(check);
  }

  /**
   * Warnings about a reading that is in order: that it has changed, and when it will leave its
   * usual range.
   */
  public List<String> warnings(Inspection.Result result) {
    return Stream.concat(changed(result).stream(), trends.warning(result.check()).stream())
        .toList();
  }

  /** What has changed since the gate was in order, although it is usual for such gates. */
  private Optional<String> changed(Inspection.Result result) {
    return result
        .answer()
        .filter(a -> result.verdict() == Verdict.PASS)
        .flatMap(a -> moment.judgement().changed(a.event()))
        .map(
            e -> {
              Measures measures = result.check().measures().orElseThrow();
              return "it has changed: "
                  + measures.units().in(e.how())
                  + ", and "
                  + UsualRangeWords.words(measures, e.low(), e.high())
                  + " would mean no change";
            });
  }

  /**
   * Everything that has changed, or is moving towards the end of its usual range, but is still in
   * order.
   */
  public List<String> ahead(Inspection inspection) {
    return inspection.measured().stream()
        .filter(r -> !warnings(r).isEmpty())
        .map(
            r ->
                Stream.of(
                        Stream.of(r.check().name() + ": " + found(r)),
                        trends.sure(r.check()).stream(),
                        warnings(r).stream())
                    .flatMap(s -> s)
                    .collect(Collectors.joining("; ", "", ".")))
        .toList();
  }

  private Optional<String> say(Check check, Event.Earlier earlier) {
    return check.measures().map(m -> say(m, earlier));
  }

  private String say(Measures measures, Event.Earlier earlier) {
    return measures.showRead(earlier.value()) + " on " + DAY.format(earlier.at().atZone(zone));
  }

  /**
   * What to do about something that failed: the cause it points to, and the repair for that. Where
   * no cause is likelier than all others together, the two likeliest are named and nothing is to be
   * done before it is known which it is.
   */
  public Optional<String> whatToDo(Inspection.Result result) {
    List<RankedCause> causes = causes(result);
    double all = causes.stream().mapToDouble(RankedCause::chance).sum();
    return causes.stream()
        .findFirst()
        .map(
            first ->
                first.chance() * 2 > all
                    ? "points to: " + lower(first.cause().name()) + repair(first.cause())
                    : causes.stream()
                        .limit(2)
                        .map(c -> lower(c.cause().name()))
                        .collect(Collectors.joining(", or ", "may come from: ", "")));
  }

  private String repair(Cause cause) {
    return base.removing(cause.id()).stream()
        .findFirst()
        .map(r -> "; work: " + lower(r.name()))
        .orElse("");
  }

  /**
   * The causes that show in this way more often than a sound gate does, the likeliest by all
   * answers of the inspection first.
   */
  private List<RankedCause> causes(Inspection.Result result) {
    int outcome = result.outcome().map(result.check()::indexOf).orElse(-1);
    if (outcome <= 0) {
      return List.of();
    }
    Check check = result.check();
    return Interview.ranking(moment, base).stream()
        .filter(c -> !c.cause().id().equals(Cause.NOT_IN_RULE_BASE))
        .filter(c -> check.likelihood().containsKey(c.cause().id()))
        .filter(c -> check.likelihood().get(c.cause().id())[outcome] > check.otherwise()[outcome])
        .toList();
  }

  /** The verdict, what to do, and how soon. */
  public String toSeeTo(Inspection.Result result) {
    return result.check().name()
        + ": "
        + line(result)
        + ". "
        + seeToIt(result)
        + whatToDo(result).map(w -> "; " + w).orElse("")
        + ".";
  }

  /** The verdict in one line, with the reason. */
  public String line(Inspection.Result result) {
    List<String> parts = new ArrayList<>();
    UsualRangeWords.of(moment, result.check()).ifPresent(u -> parts.add("usual " + u));
    baseline(result.check()).ifPresent(b -> parts.add("baseline " + b));
    trends.sure(result.check()).ifPresent(parts::add);
    result.words().forEach(parts::add);
    return found(result) + (parts.isEmpty() ? "" : " (" + String.join("; ", parts) + ")");
  }

  /** Looks that passed, by place. */
  public List<String> passedLooks(Inspection inspection) {
    return byPlace(
        inspection.results(Verdict.PASS).stream()
            .filter(r -> !r.check().measured() && !r.isProof())
            .toList());
  }

  /**
   * What was not inspected, by place; last, what somebody better qualified has to inspect. Proofs
   * are left out, because they are listed with the safety tests.
   */
  public List<String> notInspected(Inspection inspection) {
    Map<Role, List<Inspection.Result>> open =
        inspection.results(Verdict.OPEN).stream()
            .filter(r -> !r.isProof())
            .collect(Collectors.groupingBy(r -> by(r.check()), TreeMap::new, Collectors.toList()));
    return open.entrySet().stream()
        .flatMap(e -> byPlace(e.getValue()).stream().map(line -> reserved(e.getKey()) + line))
        .toList();
  }

  /** Who may make a check: whoever inspects, or the least qualified of those who may. */
  private Role by(Check check) {
    Role role = moment.state().role();
    return role.may(check.who()) ? role : check.who();
  }

  private String reserved(Role role) {
    return role == moment.state().role() ? "" : "For " + Wording.aPerson(role) + ": ";
  }

  /** What an electrician still has to measure on a new gate; empty if nothing. */
  public static Optional<String> owedByElectrician(Inspection inspection) {
    return Optional.of(inspection.owedByElectrician())
        .filter(owed -> !owed.isEmpty())
        .map(
            owed ->
                "An electrician still has to measure on this new gate: "
                    + listed(owed.stream().map(r -> lower(r.check().name())).toList())
                    + ".");
  }

  /** A line for each place, with the names of what belongs there. */
  public static List<String> byPlace(List<Inspection.Result> results) {
    Map<String, List<String>> byPlace = new LinkedHashMap<>();
    results.forEach(
        r ->
            byPlace
                .computeIfAbsent(r.place().name(), p -> new ArrayList<>())
                .add(lower(r.check().name())));
    return byPlace.entrySet().stream().map(e -> e.getKey() + ": " + listed(e.getValue())).toList();
  }

  private static String listed(List<String> names) {
    return String.join(names.stream().anyMatch(n -> n.contains(",")) ? "; " : ", ", names);
  }

  /** The day of the visit, or the first and the last day. */
  public String days() {
    return moment.entries().stream()
        .map(e -> DAY.format(e.at().atZone(zone)))
        .sorted()
        .collect(
            Collectors.collectingAndThen(
                Collectors.toCollection(TreeSet::new),
                days ->
                    days.size() < 2 ? String.join("", days) : days.first() + " to " + days.last()));
  }

  /** How soon it has to be dealt with, and how the gate may be used until then. */
  public static String urgency(Inspection.Result result) {
    if (result.verdict() == Verdict.FAIL) {
      return result.isProof()
          ? "before anybody uses the gate"
          : "soon; until then check it at every visit";
    }
    return "by the next service";
  }

  /** What is asked of the owner. What is in order has only words to it: it may be dealt with. */
  public static String seeToIt(Inspection.Result result) {
    boolean inOrder = result.outcome().map(o -> result.check().indexOf(o) == 0).orElse(false);
    return inOrder ? "Look at it again at the next service" : "See to it " + urgency(result);
  }

  private static String lower(String name) {
    return name.isEmpty()
        ? name
        : name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }
}
