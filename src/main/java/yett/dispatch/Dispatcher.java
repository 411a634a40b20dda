package yett.dispatch;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.dispatch.DispatchSheet.Asked;
import yett.dispatch.DispatchSheet.Believed;
import yett.dispatch.DispatchSheet.Cover;
import yett.dispatch.DispatchSheet.Item;
import yett.dispatch.Urgencies.Danger;
import yett.interview.course.Diagnosed;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.course.PutRight;
import yett.interview.danger.NotExcluded;
import yett.interview.danger.SaidOver;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.interview.evidence.Chance;
import yett.interview.moment.Moment;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.interview.state.CallLog;
import yett.interview.state.CaseState;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.Pressing;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.knowledge.Stop;
import yett.knowledge.VanStock;
import yett.plan.Advice;
import yett.plan.Planner;

/** Makes a dispatch sheet from the present state of a case. */
public final class Dispatcher {
  /** The share of what may be wrong that the parts in the van have to cover. */
  static final double ENOUGH = 0.9;

  /** Instruments that do not have to be taken along. */
  private static final Set<String> NO_TOOLS = Set.of("eye", "tally", "stopwatch", "label");

  /** What a caller does while a danger is not excluded. */
  private static final String UNSEEN =
      "Nobody runs the gate or goes near it until somebody has come and looked at it.";

  /** What a child does until somebody comes; it is told so on the telephone. */
  public static final String CHILD =
      "Fetch a grown-up to the telephone. Until then stay away from the gate: do not touch it, press"
          + " nothing for it, and keep other children away from it.";

  /** Said of a danger that a caller cannot end. */
  private static final String OVER =
      " (the caller says that it is over; somebody at the gate has to confirm it)";

  private static final Set<Ending> NOBODY_GOES =
      EnumSet.of(Ending.SOLVED, Ending.WORKS_AGAIN, Ending.CANCELLED, Ending.NOT_REACHED);

  private static final double NAMED = 0.05;

  /** Causes with a smaller chance are not worth a line. */
  private static final double BELIEVED = 0.07;

  private static final double WORTH_A_LINE = 0.02;
  private static final int FIRST = 3;

  /** How many causes are named at least, however little is known. */
  private static final int LEAST = 3;

  private final RuleBase base;
  private final Planner planner;
  private final ZoneId zone;
  private final Optional<VanStock> stock;

  /**
   * @param zone time zone of the site, to know the weekend
   */
  public Dispatcher(Expertise expertise, ZoneId zone) {
    this(expertise, zone, Optional.empty());
  }

  /**
   * @param zone time zone of the site, to know the weekend
   * @param stock the stock of the van, if there is a list
   */
  public Dispatcher(Expertise expertise, ZoneId zone, Optional<VanStock> stock) {
    this.base = expertise.base();
    this.planner = expertise.planner();
    this.zone = zone;
    this.stock = stock;
  }

  /**
   * @param caseId number of the case in the casebook
   * @param gate the gate's name as people say it
   */
  public DispatchSheet sheet(Moment moment, String caseId, String gate) {
    return sheet(moment, caseId, gate, Optional.empty(), Optional.empty());
  }

  /**
   * @param caller name of the caller, if it is known
   * @param phone the number to call back
   */
  public DispatchSheet sheet(
      Moment moment, String caseId, String gate, Optional<String> caller, Optional<String> phone) {
    CaseState state = moment.state();
    Site site = new SiteFacts(base).site(state.told().site());
    List<Scenario> scenarios = new Scenarios(base, site).of(moment.belief());
    List<String> stops = stops(moment);
    List<String> dangers = stops.stream().map(s -> base.stops().get(s).name()).toList();
    NotExcluded open = NotExcluded.of(base, state);
    Instant at = Urgencies.lastWord(moment.entries());
    boolean diagnosed = Diagnosed.is(moment, base);
    List<Check> first = diagnosed ? first(moment, site) : List.of();
    return new DispatchSheet(
        caseId,
        gate,
        at.toString(),
        state.closed().map(e -> e.words()).orElse("open"),
        call(moment, caller, phone),
        urgency(moment),
        siteKnown(state, site.answers()),
        dangers,
        open.words(),
        diagnosed
            ? PutRight.causes(moment, base).stream()
                .map(r -> believed(r.cause().id(), r.cause().name(), r.chance()))
                .toList()
            : List.of(),
        diagnosed ? believed(moment) : List.of(),
        first.stream().map(Check::ask).toList(),
        diagnosed
            ? Optional.of(new VisitTime(base, first, proofs(site)).of(scenarios))
            : Optional.empty(),
        diagnosed ? Optional.of(electrician(scenarios)) : Optional.empty(),
        diagnosed ? bring(scenarios, moment) : Cover.UNKNOWN,
        diagnosed ? instruments(moment, site) : List.of(),
        said(state),
        state.told().complaints().orElse(List.of()).stream().map(this::complaint).toList(),
        state.told().histories().orElse(List.of()).stream().map(this::history).toList(),
        asked(moment),
        notes(state).filter(n -> !n.startsWith(Event.Noted.HEARD)).toList(),
        Stream.concat(
                stops.stream()
                    .flatMap(
                        s ->
                            base
                                .stops()
                                .get(s)
                                .now(Role.TECHNICIAN, moment.judgement().withheld())
                                .stream()),
                diagnosed ? cautions(scenarios).stream() : Stream.<String>empty())
            .distinct()
            .toList(),
        moment.judgement().stands(),
        untilThen(moment, stops, open));
  }

  /** What the caller said, with what was taken up at once. */
  private static List<String> said(CaseState state) {
    Stream<String> heard =
        notes(state)
            .filter(n -> n.startsWith(Event.Noted.HEARD))
            .map(n -> n.substring(Event.Noted.HEARD.length()));
    return Stream.concat(state.told().said().stream(), heard).toList();
  }

  private static Stream<String> notes(CaseState state) {
    return state.notes().stream().map(e -> ((Event.Noted) e.event()).text());
  }

  /** The dangers in force, people first: the cards are in that order. */
  private List<String> stops(Moment moment) {
    Set<String> raised =
        moment.judgement().stops().stream().map(s -> s.stop()).collect(Collectors.toSet());
    return base.stops().keySet().stream().filter(raised::contains).toList();
  }

  /**
   * How soon somebody has to be there. Nobody is sent to a gate that runs, or if nobody is wanted.
   */
  public DispatchSheet.Urgency urgency(Moment moment) {
    CaseState state = moment.state();
    Set<String> over = SaidOver.stops(moment, base);
    List<Danger> all = new ArrayList<>();
    stops(moment)
        .forEach(
            s ->
                all.add(
                    new Danger(
                        base.stops().get(s).name() + (over.contains(s) ? OVER : ""),
                        urgency(s, moment))));
    all.addAll(Urgencies.complaints(base, state));
    NotExcluded.of(base, state).words().forEach(w -> all.add(Danger.atOnce(w)));
    Instant at = Urgencies.lastWord(moment.entries());
    return state
        .closed()
        .filter(NOBODY_GOES::contains)
        .map(e -> new DispatchSheet.Urgency(DispatchSheet.NOBODY, ended(e, moment)))
        .orElseGet(() -> Urgencies.of(all, pressing(state), Urgencies.Quiet.of(state), at, zone));
  }

  /** How soon somebody has to be there because of this stop, by the danger that raised it. */
  private Pressing.Urgency urgency(String stop, Moment moment) {
    CaseState state = moment.state();
    return moment.judgement().stops().stream()
        .filter(s -> s.stop().equals(stop))
        .map(
            s ->
                Stream.of(state.answers(), state.before())
                    .flatMap(List::stream)
                    .filter(a -> a.event() == s.event())
                    .findFirst()
                    .map(a -> base.telephone().urgency(a.check()))
                    .orElse(Pressing.Urgency.AT_ONCE))
        .max(Comparator.naturalOrder())
        .orElse(Pressing.Urgency.AT_ONCE);
  }

  /** How the call ended, and what the caller said of it. */
  private List<String> ended(Ending ending, Moment moment) {
    Optional<String> how =
        CallLog.of(moment.entries())
            .last(Tending.WORKS_AGAIN, Tending.CANCELLED, Tending.NOT_REACHED)
            .map(Event.Tended::words)
            .filter(w -> !w.isEmpty());
    Stream<String> done =
        ending == Ending.SOLVED
            ? moment.state().work().repairs().stream()
                .map(base.repairs()::get)
                .filter(r -> r != null)
                .map(Repair::name)
            : how.stream();
    return Stream.concat(Stream.of(ending.words()), done).toList();
  }

  private static DispatchSheet.Call call(
      Moment moment, Optional<String> caller, Optional<String> phone) {
    CallLog log = CallLog.of(moment.entries());
    Optional<Event.Tended> sent = log.last(Tending.SENT).filter(t -> !t.words().isEmpty());
    return new DispatchSheet.Call(
        caller.filter(c -> !c.isEmpty()),
        phone.filter(p -> !p.isEmpty()),
        log.where(),
        moment.state().gaveUp(),
        sent.map(Event.Tended::words),
        sent.map(Event.Tended::due).filter(d -> !d.isEmpty()),
        log.last(Tending.HELP_CALLED).map(Event.Tended::words).filter(w -> !w.isEmpty()));
  }

  private Cover bring(List<Scenario> scenarios, Moment moment) {
    Cover all = new Van(scenarios).cover(ENOUGH);
    List<Item> left = all.left().stream().filter(i -> i.chance() >= WORTH_A_LINE).toList();
    Sizes sizes = new Sizes(base, moment.state().told().site(), stock);
    return new Cover(
        all.parts().stream().map(sizes::of).toList(),
        all.without(),
        all.covers(),
        left,
        unknown(moment, all));
  }

  /**
   * The chance that the cause is not in the rule base. Taken from the belief where possible, so
   * that the sheet has the same figure everywhere.
   */
  private static double unknown(Moment moment, Cover cover) {
    int at = moment.belief().model().causes().indexOf(Cause.NOT_IN_RULE_BASE);
    return at < 0 ? cover.unknown() : Math.max(0, Math.min(1, chances(moment)[at]));
  }

  private List<Pressing> pressing(CaseState state) {
    return state.told().pressing().orElse(List.of()).stream()
        .map(base.telephone().pressing()::get)
        .filter(p -> p != null)
        .toList();
  }

  private Map<String, String> siteKnown(CaseState state, Map<String, String> site) {
    Map<String, String> known = new LinkedHashMap<>();
    site.forEach(
        (id, answer) -> {
          SiteQuestion question = base.siteQuestions().get(id);
          if (state.told().site().containsKey(id)) {
            known.put(question.name(), question.choices().getOrDefault(answer, answer));
          }
        });
    return known;
  }

  /** What is wrong, or what was wrong if the gate works again. */
  private static double[] chances(Moment moment) {
    boolean over = moment.state().closed().filter(Ending::isDone).isPresent();
    return over ? moment.belief().atCallOut() : moment.belief().remaining();
  }

  private List<Believed> believed(Moment moment) {
    double[] now = chances(moment);
    List<String> ids = moment.belief().model().causes();
    List<Believed> all =
        Interview.ranking(moment, base).stream()
            .map(r -> r.cause())
            .map(c -> believed(c.id(), c.name(), now[ids.indexOf(c.id())]))
            .sorted((a, b) -> Double.compare(b.chance(), a.chance()))
            .toList();
    long named = all.stream().filter(b -> b.chance() >= BELIEVED).count();
    return all.subList(0, (int) Math.min(all.size(), Math.max(LEAST, named)));
  }

  private static Believed believed(String id, String name, double chance) {
    double of = Math.max(0, Math.min(1, chance));
    return new Believed(id, name, of, Chance.of(of).words());
  }

  private List<Check> first(Moment moment, Site site) {
    CaseState state = moment.state();
    Set<String> checks =
        base.ordinaryChecks()
            .filter(c -> !c.danger() && site.allows(c))
            .filter(c -> state.latest(c.id()).map(a -> a.yieldsTo(Role.TECHNICIAN)).orElse(true))
            .map(Check::id)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    Set<String> repairs =
        base.repairs().values().stream()
            .filter(r -> site.allows(r))
            .map(Repair::id)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    Advice advice =
        planner.advise(
            moment.belief(), new Planner.Options(checks, repairs, Set.of(), state.work().cured()));
    return advice.candidates().stream()
        .filter(c -> c.saves() > 0)
        .limit(FIRST)
        .map(c -> base.checks().get(c.check()))
        .toList();
  }

  private List<Check> proofs(Site site) {
    return base.proofs().stream().filter(p -> site.allows(p)).toList();
  }

  private static double electrician(List<Scenario> scenarios) {
    return Math.min(
        1,
        scenarios.stream()
            .filter(s -> s.repairs().stream().anyMatch(r -> r.who() == Role.ELECTRICIAN))
            .mapToDouble(Scenario::chance)
            .sum());
  }

  /**
   * Instruments, each with the chance that a cause is present that a reading with it would show.
   */
  private List<Item> instruments(Moment moment, Site site) {
    List<String> ids = moment.belief().model().positions();
    Map<String, Set<String>> shown = new HashMap<>();
    base.ordinaryChecks()
        .filter(c -> c.measured() && site.allows(c))
        .forEach(
            c ->
                c.likelihood()
                    .forEach(
                        (cause, row) -> {
                          if (row[0] < 0.5) {
                            shown.computeIfAbsent(instrument(c), k -> new HashSet<>()).add(cause);
                          }
                        }));
    shown.keySet().removeAll(NO_TOOLS);
    Map<String, Double> chances = new HashMap<>();
    var support = moment.belief().support(0.995, 160);
    double sum = Arrays.stream(support.weights()).sum();
    for (int h = 0; h < support.size(); h++) {
      for (var e : shown.entrySet()) {
        for (int cause : support.causes(h)) {
          if (e.getValue().contains(ids.get(cause))) {
            chances.merge(e.getKey(), support.weights()[h] / sum, Double::sum);
            break;
          }
        }
      }
    }
    return Van.sorted(chances).stream().filter(i -> i.chance() >= NAMED).toList();
  }

  private static String instrument(Check check) {
    return check.measures().map(Measures::instrument).orElse("eye").replace('-', ' ');
  }

  private List<Asked> asked(Moment moment) {
    List<Asked> asked = new ArrayList<>();
    for (CaseState.Answered a : moment.state().answers()) {
      Check check = base.checks().get(a.check());
      if (check != null) {
        asked.add(
            new Asked(
                a.check(), check.ask(), answer(check, a.answer()), Optional.of(a.by().word())));
      }
    }
    return asked;
  }

  private static String answer(Check check, Answer answer) {
    return answer.map(
        chosen ->
            answer.choices().stream()
                .map(o -> outcome(check, o))
                .collect(Collectors.joining(", and also ")),
        Answer.Read::typed,
        () -> answer.senseless() ? "does not apply" : "could not tell",
        () -> "could not get there");
  }

  private static String outcome(Check check, String outcome) {
    int at = check.indexOf(outcome);
    return at < 0 ? outcome : check.outcomes().get(at).text();
  }

  private List<String> cautions(List<Scenario> scenarios) {
    Map<String, Double> done = new HashMap<>();
    scenarios.forEach(s -> s.repairs().forEach(r -> done.merge(r.id(), s.chance(), Double::sum)));
    List<String> hazards =
        base.repairs().values().stream()
            .filter(r -> done.getOrDefault(r.id(), 0.0) >= NAMED)
            .flatMap(
                r ->
                    Stream.concat(
                        r.hazards().stream(),
                        r.needs().stream().flatMap(n -> base.setUps().get(n).hazards().stream())))
            .distinct()
            .toList();
    return base.cautionsFor(hazards).stream().map(c -> c.text()).toList();
  }

  private List<String> untilThen(Moment moment, List<String> stops, NotExcluded open) {
    CaseState state = moment.state();
    Set<String> withheld = moment.judgement().withheld();
    List<String> lines = new ArrayList<>();
    CallLog log = CallLog.of(moment.entries());
    boolean child = log.isChild();
    if (child) {
      lines.add(CHILD);
    }
    lines.addAll(Stop.now(stops.stream().map(base.stops()::get).toList(), Role.CALLER, withheld));
    if (!open.isEmpty()) {
      lines.add(UNSEEN);
    }
    boolean grownUpWasTold =
        Entry.valid(moment.entries()).stream()
            .anyMatch(e -> e.event() instanceof Event.Complained && log.isBeforeChild(e));
    if (child && !grownUpWasTold) {
      return lines; // the rest is work for a grown-up
    }
    pressing(state).forEach(p -> lines.addAll(p.untilThen()));
    List<String> complaints =
        stops.isEmpty() ? state.told().complaints().orElse(List.of()) : List.of();
    for (String complaint : complaints) {
      lines.addAll(base.telephone().untilThen().getOrDefault(complaint, List.of()));
    }
    if (!state.work().cured()) {
      lines.add(
          stops.isEmpty()
              ? "Nobody pushes or pulls the gate, opens a cover or reaches into the chain."
              : "Nobody does more at the gate than was read out.");
      lines.add("Nobody stands or walks in the opening while the gate may move.");
    }
    return lines.stream().distinct().toList();
  }

  private String complaint(String id) {
    return base.checks().containsKey(id) ? base.checks().get(id).ask() : id.replace('-', ' ');
  }

  private String history(String id) {
    return base.histories().containsKey(id) ? base.histories().get(id).name() : id;
  }
}
