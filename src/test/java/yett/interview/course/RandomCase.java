package yett.interview.course;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.site.SiteFacts;
import yett.interview.state.CaseState;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.InspectionKind;
import yett.knowledge.Measures;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.rules.Interpretation;

/**
 * Somebody who answers at random, changes their mind, takes answers back, hands the keyboard on.
 * The same seed gives the same case.
 */
public final class RandomCase {
  /**
   * More steps than this for each check and repair, with the set-ups around them, and the interview
   * is taken to run in a circle.
   */
  private static final int MOST_STEPS_A_CARD = 5;

  private static final int MOST_WHIMS = 8;

  private final Interview interview;
  private final RuleBase base;
  private final Random random;
  private final List<Entry> entries = new ArrayList<>();
  private final List<Role> roles;
  private final Check wanted;
  private boolean wished;
  private int whims;
  private Role role;

  /** When the next entry is made; the time of all of them plays no part in one case alone. */
  private Instant at = Instant.EPOCH;

  /** A search for a fault with anybody at the keyboard. */
  public RandomCase(Interview interview, long seed) {
    this(interview, seed, List.of(Role.values()));
  }

  /**
   * @param roles who may be at the keyboard
   */
  public RandomCase(Interview interview, long seed, List<Role> roles) {
    this(interview, seed, roles, Optional.empty());
  }

  /**
   * @param inspection what is inspected; empty for a search for a fault
   */
  public RandomCase(
      Interview interview, long seed, List<Role> roles, Optional<InspectionKind> inspection) {
    this(seed, interview, roles);
    record(new Event.Opened("Harrow Quay, gate " + seed % 12, role, "any", inspection, List.of()));
  }

  /** Somebody who goes on with a case at a later time. */
  public RandomCase(
      Interview interview, long seed, List<Role> roles, List<Entry> before, Instant at) {
    this(seed, interview, roles);
    this.at = at;
    entries.addAll(before);
  }

  /** Somebody before whom nothing has been entered yet. */
  private RandomCase(long seed, Interview interview, List<Role> roles) {
    this.interview = interview;
    this.base = interview.expertise().base();
    this.random = new Random(seed * 0x9E3779B97F4A7C15L);
    this.roles = roles;
    this.wanted = seldom(base, seed);
    this.role = oneOf(roles);
  }

  /** Plays some steps; returns the entries made, each at a time of its own. */
  public List<Entry> goOn(int steps) {
    int before = entries.size();
    for (int step = 0; step < steps; step++) {
      Moment moment = interview.at(entries, role);
      if (moment.step() instanceof Step.Finished) {
        break;
      }
      if (!wish(moment) && !whim(moment)) {
        record(respond(moment));
      }
      at = at.plusSeconds(1);
    }
    return List.copyOf(entries.subList(before, entries.size()));
  }

  /** Reports any danger that somebody of this role may be asked about; returns the entry. */
  public Entry meetDanger() {
    Check danger =
        oneOf(base.ordinaryChecks().filter(c -> c.danger() && role.may(c.who())).toList());
    int outcome = 1 + random.nextInt(danger.outcomes().size() - 1);
    record(new Event.Answered(danger.id(), new Answer.Chosen(danger.outcomes().get(outcome).id())));
    return entries.get(entries.size() - 1);
  }

  /** Plays until the case is closed, showing every moment to a watcher. */
  public List<Entry> play(BiConsumer<Moment, Role> watcher) {
    RuleBase base = interview.expertise().base();
    int most = MOST_STEPS_A_CARD * (base.checks().size() + base.repairs().size());
    for (int steps = 0; steps < most; steps++) {
      Moment moment = interview.at(entries, role);
      watcher.accept(moment, role);
      if (moment.step() instanceof Step.Finished) {
        return List.copyOf(entries);
      }
      if (!wish(moment) && !whim(moment)) {
        record(respond(moment));
      }
    }
    throw new AssertionError("no end after " + most + " steps");
  }

  /** What was entered so far. */
  public List<Entry> entries() {
    return List.copyOf(entries);
  }

  /** The events, one on a line, for repeating a failure by hand. */
  public static String told(List<Entry> entries) {
    return entries.stream()
        .map(e -> e.number() + " " + e.by().word() + " " + e.event())
        .collect(Collectors.joining("\n"));
  }

  /** What this person may say to a step: one event, or several that belong together. */
  List<Event> respond(Moment moment) {
    Step step = moment.step();
    if (step instanceof Step.AskDangers s) {
      return s.dangers().stream()
          .<Event>map(c -> new Event.Answered(c.id(), new Answer.Chosen(outcome(c, chance(0.98)))))
          .toList();
    } else if (step instanceof Step.AskSite) {
      return site();
    } else if (step instanceof Step.AskComplaints s) {
      return List.of(
          new Event.Complained(some(s.complaints(), 1, 3).stream().map(Check::id).toList()));
    } else if (step instanceof Step.AskPressing s) {
      return List.of(
          new Event.Pressed(some(s.pressing(), 0, 2).stream().map(p -> p.id()).toList()));
    } else if (step instanceof Step.AskHistory s) {
      return List.of(
          new Event.Happened(some(s.histories(), 0, 2).stream().map(h -> h.id()).toList()));
    } else if (step instanceof Step.Ask s) {
      return List.of(new Event.Answered(s.check().id(), answer(s.check(), moment)));
    } else if (step instanceof Step.LookRound s) {
      return s.looks().stream()
          .<Event>map(l -> new Event.Answered(l.card(), answer(l.check(), moment)))
          .toList();
    } else if (step instanceof Step.Enter s) {
      return List.of(s.done());
    } else if (step instanceof Step.Leave s) {
      return List.of(s.done());
    } else if (step instanceof Step.Mend s) {
      return List.of(new Event.Repaired(s.repair().id(), chance(0.8)));
    } else if (step instanceof Step.Retest) {
      return List.of(new Event.Retested(chance(0.5)));
    }
    return List.of(settleOrClose(moment));
  }

  private Event settleOrClose(Moment moment) {
    Step step = moment.step();
    if (step instanceof Step.Settle s) {
      CaseState.Answered again = chance(0.5) ? s.first() : s.second();
      return chance(0.4)
          ? new Event.Kept(s.contradiction().first(), s.contradiction().second())
          : new Event.Corrected(again.event(), answer(base.checks().get(again.check()), moment));
    } else if (step instanceof Step.DecideFailedProof s) {
      return role == Role.CALLER || chance(0.7) // a call always goes on
          ? new Event.Reopened(s.proof().id())
          : new Event.Closed(Ending.OUT_OF_SERVICE);
    } else if (step instanceof Step.TakeStock s) {
      return stock(s);
    } else if (step instanceof Step.MakeSafe s) {
      return s.done();
    } else if (step instanceof Step.HandOver s) {
      return new Event.Closed(s.ending());
    } else if (step instanceof Step.CloseSolved) {
      return new Event.Closed(Ending.SOLVED);
    } else if (step instanceof Step.CloseRepaired s) {
      return new Event.Closed(s.ending());
    }
    throw new AssertionError("no answer to " + step);
  }

  /** Most go on; some repair on suspicion, few hand over. */
  private Event stock(Step.TakeStock step) {
    List<Repair> repairs = step.suspects().stream().flatMap(s -> s.repair().stream()).toList();
    if (!repairs.isEmpty() && chance(0.2)) {
      return new Event.AskedFor(oneOf(repairs).id());
    }
    return chance(0.9)
        ? new Event.WentOn()
        : new Event.GaveUp("the last checks changed no suspicion");
  }

  /** Now and then a person does something else than what is asked. */
  private boolean whim(Moment moment) {
    if (whims >= MOST_WHIMS || !chance(atEnd(moment.step()) ? 0.35 : 0.07)) {
      return false;
    }
    List<CaseState.Answered> answers = moment.state().answers();
    whims++;
    switch (random.nextInt(10)) {
      case 0 -> record(new Event.Noted("The call dropped."));
      case 1 -> role = oneOf(roles);
      case 2, 3 -> back(1 + random.nextInt(4));
      case 4, 5 -> {
        if (answers.isEmpty()) {
          return false;
        }
        CaseState.Answered again = oneOf(answers);
        Check check = base.checks().get(again.check());
        record(new Event.Corrected(again.event(), answer(check, moment)));
      }
      case 6 ->
          answers.stream()
              .filter(a -> base.checks().get(a.check()).danger())
              .forEach(a -> record(new Event.Retracted(a.event())));
      case 7 -> record(new Event.AskedFor(oneOf(openTo(role, moment)).id()));
      case 8 -> {
        Check told = oneOf(openTo(role, moment));
        record(new Event.Answered(told.id(), answer(told, moment)));
      }
      default -> {
        if (chance(0.7)) {
          return false;
        }
        record(new Event.GaveUp("had enough"));
      }
    }
    return true;
  }

  /** One that few sites have or few people may make, because it comes up seldom otherwise. */
  private static Check seldom(RuleBase base, long seed) {
    List<Check> seldom =
        base.ordinaryChecks()
            .filter(c -> !c.danger())
            .filter(c -> !c.onlyIf().isEmpty() || c.who() == Role.ELECTRICIAN)
            .toList();
    return seldom.get((int) (seed % seldom.size()));
  }

  /** Asks, once, for the check that this person has in mind, as soon as it is open to them. */
  private boolean wish(Moment moment) {
    boolean working = moment.step() instanceof Step.Ask || moment.step() instanceof Step.Mend;
    if (wished || !working || !openTo(role, moment).contains(wanted)) {
      return false;
    }
    wished = true;
    record(new Event.AskedFor(wanted.id()));
    return true;
  }

  /** What somebody may tell, or want next, whatever is asked of them. */
  private List<Check> openTo(Role role, Moment moment) {
    return base.ordinaryChecks()
        .filter(c -> role.may(c.who()) && !moment.judgement().unavailable().contains(c.id()))
        .toList();
  }

  private static boolean atEnd(Step step) {
    return step instanceof Step.MakeSafe
        || step instanceof Step.HandOver
        || step instanceof Step.CloseRepaired;
  }

  /** Takes back the last answers, as far back as the keyboard goes; set-ups stay as they are. */
  private void back(int many) {
    Set<Long> gone = new HashSet<>();
    entries.forEach(
        e -> {
          if (e.event() instanceof Event.Retracted r) {
            gone.add(r.event());
          }
        });
    List<Long> last = new ArrayList<>();
    for (int i = entries.size() - 1; i >= 0 && last.size() < many; i--) {
      Entry entry = entries.get(i);
      if (!gone.contains(entry.number()) && canBeTakenBack(entry.event())) {
        last.add(entry.number());
      }
    }
    last.forEach(number -> record(new Event.Retracted(number)));
  }

  private static boolean canBeTakenBack(Event event) {
    return !(event instanceof Event.Opened
        || event instanceof Event.SetUpEntered
        || event instanceof Event.SetUpLeft
        || event instanceof Event.Noted
        || event instanceof Event.Retracted
        || event instanceof Event.Closed);
  }

  private List<Event> site() {
    Map<String, String> answers = new LinkedHashMap<>();
    for (SiteQuestion question : base.siteQuestions().values()) {
      if (chance(0.5) && new SiteFacts(base).questions(answers).contains(question)) {
        answers.put(
            question.id(),
            question
                .measures()
                .map(this::typed)
                .orElseGet(() -> oneOf(List.copyOf(question.choices().keySet()))));
      }
    }
    List<Event> events = new ArrayList<>();
    answers.forEach((q, a) -> events.add(new Event.SiteAnswered(q, a)));
    events.add(new Event.SiteTaken());
    return events;
  }

  private String typed(Measures measures) {
    return measures.show(between(measures.least(), measures.most()));
  }

  /** Any answer that the prompt would take. */
  Answer answer(Check check, Moment moment) {
    double unsure = role == Role.CALLER ? 0.15 : 0.05;
    if (chance(unsure)) {
      return new Answer.CannotTell();
    }
    if (chance(unsure)) {
      return new Answer.NotNow();
    }
    if (check.measured()) {
      double value = reading(check, moment);
      return new Answer.Read(check.measures().get().show(value), value);
    }
    double ordinary = check.kind() == Check.Kind.PROOF ? 0.98 : check.danger() ? 0.9 : 0.4;
    return new Answer.Chosen(outcome(check, chance(ordinary)));
  }

  private String outcome(Check check, boolean ordinary) {
    int index = ordinary ? 0 : random.nextInt(check.outcomes().size());
    return check.outcomes().get(index).id();
  }

  /** A possible reading: anywhere in the range, or close to the limit of a band. */
  private double reading(Check check, Moment moment) {
    Measures measures = check.measures().orElseThrow();
    var expectation = moment.judgement().expectation(check.id());
    if (chance(0.5) && (expectation.isPresent() || !Interpretation.relative(check))) {
      double[] ends =
          Interpretation.range(check, random.nextInt(check.outcomes().size()), expectation);
      double limit = Double.isInfinite(ends[0]) ? ends[1] : ends[0];
      double near = limit * (1 + 0.02 * random.nextGaussian());
      if (measures.possible(near)) {
        return near;
      }
    }
    return between(measures.least(), measures.most());
  }

  private double between(double least, double most) {
    double low = Double.isFinite(least) ? least : -100;
    double high = Double.isFinite(most) ? most : 1000;
    return low + random.nextDouble() * (high - low);
  }

  private <T> List<T> some(List<T> all, int least, int most) {
    int many = Math.min(all.size(), least + random.nextInt(most - least + 1));
    List<T> rest = new ArrayList<>(all);
    List<T> picked = new ArrayList<>();
    while (picked.size() < many) {
      picked.add(rest.remove(random.nextInt(rest.size())));
    }
    return picked;
  }

  private <T> T oneOf(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  private boolean chance(double chance) {
    return random.nextDouble() < chance;
  }

  private void record(List<Event> events) {
    events.forEach(this::record);
  }

  private void record(Event event) {
    entries.add(new Entry(entries.size() + 1L, at, role, event));
  }
}
