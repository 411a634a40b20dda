package yett.interview;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yett.belief.Belief;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.plan.Advice;
import yett.plan.Planner;
import yett.rules.Judgement;

/**
 * Goes through every state of the work that can be reached from a beginning, breadth first, over
 * the real rules, and looks at each for what must never be. What is believed plays no part: every
 * check and every repair that the rules permit is chosen once, one of each kind of needs.
 *
 * <p>Two moments count as one state if they agree in set-ups, person, dangers and what was done
 * about them, proofs, and how far the work is. The first path to a state is kept, so that a
 * violation is told with the shortest story that leads to it.
 */
final class SafeStates {
  private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");

  private final Expertise expertise;
  private final RuleBase base;
  private final Interview rules;
  private final Belief belief;
  private final Set<List<Object>> seen = new HashSet<>();
  private final Deque<Node> open = new ArrayDeque<>();
  private final NextStep next;
  private NextStep.Adviser adviser;
  private final List<String> violations = new ArrayList<>();

  SafeStates(Expertise expertise) {
    this.expertise = expertise;
    this.base = expertise.base();
    this.rules = expertise.newInterview();
    this.next = new NextStep(expertise, (b, options) -> adviser.advise(b, options));
    this.belief = rules.at(List.of(entry(List.of(), Role.TECHNICIAN, opened()))).belief();
  }

  /** A moment before its next step is known. */
  private record Node(List<Entry> entries, CaseState state) {}

  private static Event opened() {
    return new Event.Opened("Harrow Quay, north gate", Role.TECHNICIAN, "any");
  }

  /** Different states met so far. */
  int states() {
    return seen.size();
  }

  /**
   * Explores from a beginning; returns what was found wrong, each with its story.
   *
   * @param most so many states are followed, the nearest first
   */
  List<String> explore(Role role, List<Event> beginning, int most) {
    List<Entry> entries = new ArrayList<>();
    entries.add(entry(entries, role, new Event.Opened("Harrow Quay, north gate", role, "any")));
    beginning.forEach(e -> entries.add(entry(entries, role, e)));
    meet(entries);
    for (int i = 0; i < most && !open.isEmpty() && violations.isEmpty(); i++) {
      follow(open.removeFirst());
    }
    open.clear();
    return violations;
  }

  private static Entry entry(List<Entry> before, Role role, Event event) {
    return new Entry(before.size() + 1L, NOW, role, event);
  }

  /** A moment is looked at once for every choice that the plan might make in it. */
  private void follow(Node node) {
    List<Entry> entries = node.entries();
    CaseState state = node.state();
    Judgement judgement = rules.judgement(entries);
    Kinds kinds = new Kinds();
    adviser = kinds;
    Set<Step> steps = new LinkedHashSet<>();
    steps.add(next.after(state, judgement, belief));
    for (Advice choice : kinds.choices()) {
      adviser = (b, options) -> kinds.in(choice, options);
      steps.add(next.after(state, judgement, belief));
    }
    for (Step step : steps) {
      Optional<String> wrong = new Invariants(base, entries, state, judgement).of(step);
      wrong.ifPresent(w -> violations.add(w + "\n" + story(entries, step)));
      for (Event event : step.accept(new Answers(base, state))) {
        go(entries, state.role(), event);
      }
    }
    if (state.closed().isEmpty()) {
      meanwhile(entries, state, judgement);
    } else if (!state.closed().get().isDone() && state.work().lookAgain() == 0) {
      for (Role comes : List.of(Role.TRAINEE, Role.TECHNICIAN, Role.ELECTRICIAN)) {
        go(entries, comes, new Event.TakenUp());
      }
    }
  }

  /** What people do whatever is asked: give the case away, meet a danger. */
  private void meanwhile(List<Entry> entries, CaseState state, Judgement judgement) {
    if (state.gaveUp().isEmpty()) {
      go(entries, state.role(), new Event.GaveUp("called away"));
    }
    if (state.told().histories().isPresent()) {
      for (String danger : List.of("danger-burning", "danger-movement")) {
        String bad = base.checks().get(danger).outcomes().get(1).id();
        if (judgement.stops().isEmpty() && !hasMetDanger(entries)) {
          go(entries, state.role(), new Event.Answered(danger, new Answer.Chosen(bad)));
        }
      }
    }
  }

  private boolean hasMetDanger(List<Entry> entries) {
    return entries.stream()
        .anyMatch(
            e ->
                e.event() instanceof Event.Answered a
                    && base.checks().get(a.check()).danger()
                    && a.answer().choice().map(c -> !isHarmless(a.check(), c)).orElse(true));
  }

  private void go(List<Entry> entries, Role role, Event event) {
    List<Entry> next = new ArrayList<>(entries);
    next.add(entry(entries, role, event));
    meet(next);
  }

  private void meet(List<Entry> entries) {
    CaseState state = CaseState.of(entries);
    if (seen.add(key(entries, state))) {
      open.add(new Node(List.copyOf(entries), state));
    }
  }

  private List<Object> key(List<Entry> entries, CaseState state) {
    Map<String, String> proofs = new LinkedHashMap<>();
    Set<String> failed = new TreeSet<>();
    Set<String> dangers = new TreeSet<>();
    for (CaseState.Answered a : state.answers()) {
      Check check = base.checks().get(a.check());
      if (check.kind() == Check.Kind.PROOF) {
        boolean fails = a.answer().is(Check.FAIL);
        if (fails) {
          failed.add(check.id());
        } else if (a.answer().is(Check.PASS)) {
          failed.remove(check.id());
        }
        if (a.epoch() == state.work().epoch()) {
          proofs.put(check.id(), a.answer().toString());
        }
      } else if (check.danger()) {
        boolean mended =
            state.work().deeds().stream()
                .anyMatch(d -> d.number() > a.event() && d.event() instanceof Event.Repaired);
        dangers.removeIf(d -> d.startsWith(check.id() + " "));
        boolean before = a.event() < state.work().lookAgain();
        dangers.add(check.id() + " " + a.answer() + " " + mended + " " + before);
      }
    }
    for (CaseState.Answered a : state.before()) {
      if (base.checks().get(a.check()).danger()) {
        dangers.add("before " + a.check() + " " + a.answer() + " " + a.by() + " " + a.epoch());
      }
    }
    long bad =
        state.answers().stream()
            .filter(a -> base.checks().get(a.check()).danger())
            .filter(a -> !a.answer().choice().map(c -> isHarmless(a.check(), c)).orElse(false))
            .mapToLong(CaseState.Answered::event)
            .max()
            .orElse(0);
    Set<String> safe = new TreeSet<>();
    state
        .madeSafe()
        .forEach((stop, done) -> safe.add(stop + (done.number() > bad) + isCaller(done)));
    return List.of(
        state.role(),
        Set.copyOf(state.work().setUps()),
        dangers,
        safe,
        proofs,
        failed,
        state.work().cured(),
        state.work().retestDue(),
        state.work().epoch() > 0,
        state.work().lookAgain() > 0,
        state.work().failedProof(),
        state.gaveUp().isPresent(),
        state.closed(),
        hasMetDanger(entries),
        List.of(
            state.told().siteTaken(),
            state.told().complaints().isPresent(),
            state.told().pressing().isPresent(),
            state.told().histories().isPresent()));
  }

  private boolean isHarmless(String check, String outcome) {
    return base.checks().get(check).indexOf(outcome) == 0;
  }

  private static boolean isCaller(Entry done) {
    return done != null && done.by() == Role.CALLER;
  }

  private static String story(List<Entry> entries, Step step) {
    StringBuilder story = new StringBuilder();
    entries.forEach(
        e -> story.append("  ").append(e.by()).append(": ").append(e.event()).append('\n'));
    return story.append("  then ").append(step).toString();
  }

  /** Takes down what the plan may choose among, one of each kind of needs, and asks for none. */
  private final class Kinds implements NextStep.Adviser {
    private final Map<Object, Advice> kinds = new LinkedHashMap<>();

    @Override
    public Advice advise(Belief belief, Planner.Options options) {
      for (String id : options.checks()) {
        Check check = base.checks().get(id);
        kinds.putIfAbsent(List.of("check", check.needs(), check.who()), asking(id));
      }
      for (String id : options.repairs()) {
        Repair repair = base.repairs().get(id);
        kinds.putIfAbsent(List.of("repair", repair.needs(), repair.who()), repairing(id));
      }
      return nothing();
    }

    List<Advice> choices() {
      return List.copyOf(kinds.values());
    }

    /** The choice, where it is among what may be done. */
    Advice in(Advice choice, Planner.Options options) {
      boolean may =
          choice.kind() == Advice.Kind.ASK
              ? options.checks().contains(choice.candidates().get(0).check())
              : options.repairs().contains(choice.jobs().get(0).repair());
      return may ? choice : nothing();
    }

    private Advice asking(String check) {
      return nothing().asking(check);
    }

    private Advice repairing(String repair) {
      return nothing().repairing(repair);
    }

    private Advice nothing() {
      return new Advice(Advice.Kind.NOTHING_LEFT, List.of(), List.of(), 0, 0, false);
    }
  }

  /** Whether a card with these needs makes the gate run. */
  static boolean runs(List<String> needs) {
    return needs.contains(SetUp.GATE_RUNNING) || needs.contains(SetUp.ABLE_TO_RUN);
  }
}
