package yett.study;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import yett.interview.course.Advised;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.search.Adviser;
import yett.interview.state.WorkTime;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.testing.Advices;
import yett.wording.StepWords;

/** Plays one simulated fault under one policy, in the interview that keeps everybody safe. */
final class Play {
  private static final int MOST_STEPS = 400;

  /** A gate that fails its proofs more often than this is left out of use. */
  private static final int MOST_FAILED_PROOFS = 2;

  private final RuleBase base;
  private final FaultyGate gate;
  private final Interview interview;
  private final Policy policy;
  private final List<Entry> entries = new ArrayList<>();
  private final Map<String, String> found = new HashMap<>();
  private double minutes;
  private double parts;
  private int fitted;
  private int needlessFitted;
  private int checks;
  private int checksFirst;
  private int readBefore;
  private int repairs;
  private int needless;
  private double needlessParts;
  private int failedProofs;
  private String why = "";
  private Optional<Played.Belief> first = Optional.empty();

  /** How many events there were when the first repair was proposed, and before the last one. */
  private int untilFirst;

  private int untilLast;

  /** The case before its last event. */
  private Moment before;

  private boolean closedRepaired;

  private Play(Seat seat, FaultyGate gate, Policy policy) {
    this.base = seat.interview.expertise().base();
    this.gate = gate;
    this.policy = policy;
    this.interview = seat.interview;
    seat.chooser = (belief, options) -> policy.advise(belief, options, Map.copyOf(found));
  }

  /** An interview that one case after another can use: what is kept in it only saves work. */
  static final class Seat implements AutoCloseable {
    private final Interview interview;
    private Adviser chooser = (belief, options) -> Advices.nothing();

    Seat(Expertise expertise) {
      interview = Advised.interview(expertise, (b, o) -> chooser.advise(b, o));
    }

    @Override
    public void close() {
      interview.close();
    }
  }

  static Played of(Seat seat, FaultyGate gate, Policy policy) {
    Play play = new Play(seat, gate, policy);
    play.run();
    return play.believed();
  }

  /** The same case under a policy, and what somebody with another rule base would have believed. */
  static List<Played> of(Seat seat, FaultyGate gate, Policy policy, Seat other) {
    Play play = new Play(seat, gate, policy);
    play.run();
    Moment last = other.interview.at(play.entries.subList(0, play.untilFirst));
    Moment end = other.interview.at(play.entries.subList(0, play.untilLast));
    RuleBase known = other.interview.expertise().base();
    return List.of(
        play.believed(),
        play.played(belief(last, known, false), belief(end, known, false), rest(end)));
  }

  private void run() {
    happen(
        new Event.Opened(
            "study", Role.ELECTRICIAN, base.fingerprint(), Optional.empty(), gate.earlier()));
    Moment moment = interview.at(entries);
    before = moment;
    for (int i = 0; i < MOST_STEPS && !(moment.step() instanceof Step.Finished); i++) {
      before = moment;
      untilLast = entries.size();
      take(moment);
      moment = interview.at(entries);
    }
    untilFirst = first.isPresent() ? untilFirst : untilLast;
    closedRepaired = moment.step() instanceof Step.Finished f && f.ending().isProved();
  }

  /** What became of it, with what was believed by whoever chose. */
  private Played believed() {
    Played.Belief end = belief(before, base, false);
    return played(first.orElse(end), end, rest(before));
  }

  private Played played(Played.Belief last, Played.Belief end, Played.Belief rest) {
    boolean cured = gate.remaining().isEmpty();
    return new Played(
        gate.truth(),
        minutes,
        parts,
        checks,
        repairs,
        needless,
        needlessParts,
        fitted,
        needlessFitted,
        cured && closedRepaired,
        !closedRepaired,
        closedRepaired && !cured,
        due(gate.remaining(), Repair::minutes),
        due(gate.remaining(), Repair::price),
        why,
        first.isPresent() ? checksFirst : checks,
        readBefore,
        first,
        last,
        end,
        rest);
  }

  /** What the cheapest repairs of some causes take. */
  private double due(Set<String> causes, ToDoubleFunction<Repair> what) {
    Comparator<Repair> cheapest =
        Comparator.comparingDouble(r -> r.minutes() + r.price() / base.planning().minute());
    return causes.stream()
        .flatMap(
            c ->
                base.repairs().values().stream()
                    .filter(r -> r.removes().getOrDefault(c, 0.0) >= 0.5)
                    .min(cheapest.thenComparing(Repair::id))
                    .stream())
        .distinct()
        .mapToDouble(what)
        .sum();
  }

  private void happen(Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.ELECTRICIAN, event));
  }

  private void work(Event event) {
    minutes += WorkTime.minutes(event, base);
    happen(event);
  }

  private void take(Moment moment) {
    Step step = moment.step();
    if (step instanceof Step.AskDangers s) {
      s.dangers()
          .forEach(c -> happen(new Event.Answered(c.id(), gate.answer(c, Optional.empty()))));
    } else if (step instanceof Step.AskSite) {
      gate.site().forEach((q, a) -> happen(new Event.SiteAnswered(q, a)));
      happen(new Event.SiteTaken());
    } else if (step instanceof Step.AskComplaints s) {
      List<String> known = s.complaints().stream().map(Check::id).toList();
      happen(new Event.Complained(gate.complaints().stream().filter(known::contains).toList()));
    } else if (step instanceof Step.AskHistory) {
      happen(new Event.Happened(List.of()));
      gate.readForNothing().forEach(this::read);
    } else if (step instanceof Step.Ask s) {
      ask(moment, s);
    } else if (step instanceof Step.LookRound s) {
      look(moment, s);
    } else if (step instanceof Step.Enter s) {
      work(s.done());
    } else if (step instanceof Step.Leave s) {
      work(s.done());
    } else if (step instanceof Step.Mend s) {
      mend(moment, s);
    } else {
      close(step);
    }
  }

  private void read(String check) {
    Check card = base.checks().get(check);
    Answer answer = gate.answer(card, interview.judgement(entries).expectation(check));
    answer.reading().ifPresent(r -> happen(new Event.Answered(check, answer)));
  }

  private void close(Step step) {
    if (step instanceof Step.Retest) {
      boolean runs = gate.runs();
      happen(new Event.Retested(runs, Optional.of(!runs && gate.sameTrouble())));
    } else if (step instanceof Step.Settle s) {
      happen(new Event.Kept(s.contradiction().first(), s.contradiction().second()));
    } else if (step instanceof Step.TakeStock) {
      boolean first = before.state().work().wentOn() == 0;
      happen(first ? new Event.WentOn() : new Event.GaveUp("the last checks changed no suspicion"));
    } else if (step instanceof Step.DecideFailedProof s) {
      boolean goOn = ++failedProofs <= MOST_FAILED_PROOFS;
      happen(goOn ? new Event.Reopened(s.proof().id()) : new Event.Closed(Ending.OUT_OF_SERVICE));
    } else if (step instanceof Step.MakeSafe s) {
      happen(s.done());
    } else if (step instanceof Step.HandOver s) {
      why = StepWords.because(s.because());
      happen(new Event.Closed(s.ending()));
    } else if (step instanceof Step.CloseRepaired c) {
      happen(new Event.Closed(c.ending()));
    } else {
      throw new IllegalStateException("no answer to " + step);
    }
  }

  /** One screen, and one way there. */
  private void look(Moment moment, Step.LookRound round) {
    checks++;
    minutes += base.planning().question();
    round.looks().forEach(l -> told(moment, l.check(), gate.answer(l.check(), l.expectation())));
  }

  private void ask(Moment moment, Step.Ask step) {
    Check check = step.check();
    Answer answer = gate.answer(check, step.expectation());
    if (check.kind() == Check.Kind.PROOF) {
      happen(new Event.Answered(check.id(), answer));
      return;
    }
    checks++;
    readBefore += gate.earlier().stream().anyMatch(e -> e.check().equals(check.id())) ? 1 : 0;
    minutes += base.planning().question();
    told(moment, check, answer);
  }

  private void told(Moment moment, Check check, Answer answer) {
    if (policy.followsAnswers()) {
      String outcome =
          interview.hear(moment, check, answer).map(h -> h.finding().outcome()).orElse("");
      found.put(check.id(), outcome);
    }
    work(new Event.Answered(check.id(), answer));
  }

  private void mend(Moment moment, Step.Mend step) {
    Repair repair = step.repair();
    Set<String> wrong = gate.remaining();
    boolean right = repair.removes().keySet().stream().anyMatch(wrong::contains);
    if (step.plan().isPresent()) {
      if (first.isEmpty()) {
        first = Optional.of(belief(moment, base, right));
        untilFirst = entries.size();
        checksFirst = checks;
      }
      repairs++;
      needless += right ? 0 : 1;
      needlessParts += right ? 0 : repair.price();
      fitted += repair.price() > 0 ? 1 : 0;
      needlessFitted += repair.price() > 0 && !right ? 1 : 0;
    }
    parts += repair.price();
    gate.repair(repair);
    found.clear();
    work(new Event.Repaired(repair.id(), true));
  }

  private static Played.Belief belief(Moment moment, RuleBase base, boolean right) {
    List<Interview.RankedCause> ranking = Interview.ranking(moment, base);
    return new Played.Belief(
        ranking.stream().map(r -> r.cause().id()).toList(),
        ranking.stream().map(Interview.RankedCause::chance).toList(),
        right);
  }

  private static Played.Belief rest(Moment moment) {
    double[] chances = moment.belief().remaining();
    List<String> causes = moment.belief().model().causes();
    List<Integer> ranked =
        IntStream.range(0, chances.length)
            .boxed()
            .sorted(Comparator.comparingDouble(c -> -chances[c]))
            .toList();
    return new Played.Belief(
        ranked.stream().map(causes::get).toList(),
        ranked.stream().map(c -> chances[c]).toList(),
        false);
  }
}
