package yett.interview.course;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.belief.Belief;
import yett.desk.Undo;
import yett.interview.course.Concluding.Concluded;
import yett.interview.course.Concluding.Mark;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.evidence.Believed;
import yett.interview.evidence.Trail;
import yett.interview.search.Adviser;
import yett.interview.state.CaseState;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.plan.Advice;
import yett.plan.Planner;
import yett.plan.Telling;

/**
 * Goes through every state of the work that can be reached, breadth first, over the real rules and
 * the real interview, and looks at each for what must never be. What is believed plays no part:
 * whatever the rules permit is chosen once, one of each kind of needs.
 *
 * <p>What makes it come to an end:
 *
 * <ul>
 *   <li>Cards that are alike are one, and are never used up ({@link Representatives}).
 *   <li>Moments that agree in what bears on safety are one state ({@link StateOfWork}). Of the
 *       moments that fall together a sample is held against the first, and must go on alike.
 *   <li>Where only one step can come, and nothing that was repaired or proved bears on it (a danger
 *       is made safe, a state is seen to anew, a case is closed and taken up), the first moment of
 *       each kind and a sample of the others are followed in full. The others are looked at and led
 *       on to where there is a choice: whoever comes or whatever happens on the way comes or
 *       happens before and after it too.
 *   <li>What a set-up was entered for is forgotten: in each state everything is tried that may be
 *       done there, so that more comes up than can in truth.
 *   <li>Of proofs, one that failed or could not be made stands for several: the interview asks
 *       whether there is one, and of several the one that passes last does what it alone would do.
 *   <li>What does not bear on each other is explored apart: what a repair entails waits for the
 *       cure and is then done, one after the other; proofs fail where no danger comes up; two
 *       dangers at once take away what either takes away, so that they are explored with little
 *       work beside them.
 *   <li>A caller begins a case and never takes one over; somebody at the gate takes over from a
 *       caller at any moment, and the site is what it is for both.
 * </ul>
 *
 * <p>The first path to a state is kept, so that a violation is told with a short story.
 */
public final class SafeStates implements AutoCloseable {
  private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
  private static final int THREADS = 2;

  /** Of one in so many states the moments that fall together are compared. */
  private static final int SAMPLE = 199;

  /** So many at most: it takes as long as following them. */
  private static final int MOST_COMPARED = 2_000;

  private final Representatives few;

  /** What is believed names at most who is sent for; it decides nothing here. */
  private final Belief anything;

  private final RuleBase base;
  private final int atOnce;
  private final BiFunction<CaseState, Step, Step> defect;
  private final AtomicInteger next = new AtomicInteger();
  private final Map<Object, Integer> numbers = new ConcurrentHashMap<>();
  private final Set<List<Integer>> seen = ConcurrentHashMap.newKeySet();
  private final Map<List<Integer>, Node> sample = new HashMap<>();
  private final Map<List<Integer>, List<Integer>> ways = new ConcurrentHashMap<>();
  private final Set<List<Integer>> ledOn = ConcurrentHashMap.newKeySet();
  private final List<String> violations = new ArrayList<>();
  private final Map<Object, Boolean> ready = new ConcurrentHashMap<>();
  private final List<Worker> workers = new ArrayList<>();
  private int compared;
  private boolean whole;

  SafeStates(Representatives few) {
    this(few, (state, step) -> step);
  }

  /**
   * @param defect what an interview with a defect makes of a step
   */
  SafeStates(Representatives few, BiFunction<CaseState, Step, Step> defect) {
    this.few = few;
    this.anything = few.whole().outset().belief(Map.of());
    this.base = few.base();
    this.atOnce = few.atOnce();
    this.defect = defect;
    for (int i = 0; i < THREADS; i++) {
      workers.add(new Worker());
    }
  }

  /**
   * A moment, and what counts of it.
   *
   * @param key what counts, each part by a number: there are many states and few different parts
   */
  private record Node(
      List<Entry> entries,
      CaseState state,
      Concluded concluded,
      StateOfWork counts,
      List<Integer> key) {
    boolean isSample() {
      return Math.floorMod(key.hashCode(), SAMPLE) == 0;
    }
  }

  private List<Integer> numbered(List<?> parts) {
    return parts.stream()
        .map(p -> numbers.computeIfAbsent(p, n -> next.getAndIncrement()))
        .toList();
  }

  private record Followed(List<Node> next, Optional<String> wrong) {}

  /** Different states met so far. */
  int states() {
    return seen.size();
  }

  /** Of these, moments with one way on that were looked at and led on. */
  int ledOn() {
    return ledOn.size();
  }

  /** Whether every state that can be reached was met. */
  boolean isWhole() {
    return whole;
  }

  /**
   * Explores from a case's opening; returns what was found wrong, each with its story.
   *
   * @param most after so many states it is given up
   */
  List<String> explore(Collection<Role> roles, int most) {
    List<Node> level = new ArrayList<>();
    for (Role role : roles) {
      Event opened = new Event.Opened("Harrow Quay, north gate", role, "any");
      meet(workers.get(0).node(List.of(), role, List.of(opened)), level);
    }
    while (!level.isEmpty() && violations.isEmpty() && seen.size() < most) {
      List<Followed> followed = follow(level);
      level = new ArrayList<>();
      for (Followed each : followed) {
        each.wrong().ifPresent(violations::add);
        for (Node node : each.next()) {
          meet(node, level);
        }
      }
    }
    whole = level.isEmpty() && violations.isEmpty();
    return violations;
  }

  private void meet(Node node, List<Node> level) {
    if (seen.add(node.key())) {
      level.add(node);
      if (node.isSample()) {
        sample.put(node.key(), node);
      }
    } else if (node.isSample() && ++compared <= MOST_COMPARED) {
      compare(sample.get(node.key()), node);
    }
  }

  /** The same may come next, and nothing of it is wrong. */
  private void compare(Node one, Node other) {
    Worker worker = workers.get(0);
    worker.steps(other).forEach(s -> worker.wrong(other, s).ifPresent(violations::add));
    Set<Object> steps = workers.get(0).kinds(one);
    Set<Object> others = workers.get(0).kinds(other);
    if (!steps.equals(others)) {
      violations.add(
          "taken for one state, and they go on differently: %s\n%sand: %s\n%s"
              .formatted(steps, Story.of(one.entries()), others, Story.of(other.entries())));
    }
  }

  private List<Followed> follow(List<Node> level) {
    Followed[] followed = new Followed[level.size()];
    IntStream.range(0, THREADS)
        .parallel()
        .forEach(
            w -> {
              for (int i = w; i < followed.length; i += THREADS) {
                followed[i] = workers.get(w).follow(level.get(i));
              }
            });
    return List.of(followed);
  }

  @Override
  public void close() {
    workers.forEach(w -> w.concluding.close());
  }

  /** What one thread needs. */
  private final class Worker {
    private final Concluding concluding = new Concluding(few);
    private Adviser adviser;
    private final NextStep next =
        new NextStep(
            few.expertise(),
            new Adviser() {
              @Override
              public Advice advise(Belief belief, Planner.Options options) {
                return adviser.advise(belief, options);
              }

              /** Any look may be worth making with others. */
              @Override
              public List<Telling.Told> tells(Belief belief, Collection<String> checks) {
                return checks.stream()
                    .filter(few::isOffered)
                    .map(c -> new Telling.Told(c, 1))
                    .toList();
              }
            });

    private Node node(List<Entry> before, Role role, List<Event> events) {
      List<Entry> entries = new ArrayList<>(before);
      for (Event event : events) {
        entries.add(new Entry(entries.size() + 1L, NOW, role, event));
      }
      CaseState state = forgetful(CaseState.of(entries));
      Concluded concluded = concluding.of(state);
      StateOfWork counts = StateOfWork.of(concluding, base, state, concluded);
      return new Node(entries, state, concluded, counts, numbered(counts.parts()));
    }

    /**
     * What a set-up was entered for is forgotten: whatever else may be done there is tried as well,
     * so that more comes up than can in truth, and the states are fewer.
     */
    private CaseState forgetful(CaseState state) {
      CaseState.Work work = state.work();
      return state.work().intent().isEmpty()
          ? state
          : new CaseState(
              state.opened(),
              state.role(),
              state.told(),
              state.answers(),
              state.latest(),
              state.before(),
              new CaseState.Work(
                  work.deeds(),
                  work.epoch(),
                  work.declined(),
                  work.setUps(),
                  work.unseen(),
                  Optional.empty(),
                  Optional.empty(),
                  work.retestDue(),
                  work.cured(),
                  work.failedProof(),
                  work.lookAgain(),
                  work.wentOn()),
              state.kept(),
              state.madeSafe(),
              state.gaveUp(),
              state.notes(),
              state.closed());
    }

    /** A moment is looked at once for every choice that the plan might make in it. */
    private Collection<Step> steps(Node node) {
      Kinds kinds = new Kinds(node.state().role());
      adviser = kinds;
      Map<Object, Step> steps = new LinkedHashMap<>();
      Step planned = after(node);
      steps.put(name(planned), planned);
      for (Advice choice : kinds.choices()) {
        adviser = (b, options) -> kinds.in(choice, options);
        Step step = after(node);
        steps.putIfAbsent(name(step), step);
      }
      return steps.values();
    }

    /** What makes steps of one moment differ: a step as a whole holds whole cards. */
    private static Object name(Step step) {
      if (step instanceof Step.LookRound round) {
        return round.looks().stream().map(l -> l.check().id()).toList();
      } else if (step instanceof Step.AskDangers ask) {
        return ask.dangers().stream().map(Check::id).toList();
      } else if (step instanceof Step.MakeSafe safe) {
        return List.of("make safe", safe.stop().id());
      } else if (step instanceof Step.Ask ask) {
        return List.of("ask", ask.check().id(), ask.occasion().kind());
      }
      return step instanceof Step.Mend mend
          ? List.of("mend", mend.repair().id(), mend.occasion().kind())
          : Story.of(step);
    }

    private Step after(Node node) {
      Trail nothing = new Trail(anything.atCallOut(), List.of());
      Step step =
          next.after(node.state(), node.concluded().judgement(), Believed.of(anything, nothing));
      return defect.apply(node.state(), step);
    }

    /** What comes next, as far as it is told apart. */
    private Set<Object> kinds(Node node) {
      return steps(node).stream().map(this::kind).collect(Collectors.toSet());
    }

    private Object kind(Step step) {
      if (step instanceof Step.Mend) {
        return "mend";
      } else if (step instanceof Step.LookRound
          || step instanceof Step.Ask a && a.check().kind() == Check.Kind.CHECK) {
        return "ask";
      }
      return step instanceof Step.HandOver h ? h.ending() : Story.of(step);
    }

    private Followed follow(Node node) {
      Answers answers = new Answers(few, node.state(), node.concluded(), atOnce);
      Set<List<Event>> moves = new LinkedHashSet<>();
      for (Step step : steps(node)) {
        Optional<String> wrong = wrong(node, step);
        if (wrong.isPresent()) {
          return new Followed(List.of(), wrong);
        }
        moves.addAll(step.accept(answers));
      }
      List<Node> found = new ArrayList<>();
      moves.forEach(m -> found.add(node(node.entries(), node.state().role(), m)));
      if (node.state().closed().isEmpty()) {
        meanwhile(node, found);
      } else {
        takenUp(node, found);
      }
      List<Node> open = new ArrayList<>();
      Optional<String> wrong = found.stream().flatMap(f -> leadOn(f, open).stream()).findFirst();
      return new Followed(open, wrong);
    }

    private void takenUp(Node node, List<Node> found) {
      if (node.state().closed().filter(c -> !c.isDone()).isPresent()) {
        others(node, new Event.TakenUp(), found);
      }
    }

    /**
     * Where only one step can come, and nothing that was repaired or proved bears on it, whatever
     * may come between is tried for the first moment of that kind. The others are looked at too,
     * and led on to where there is a choice again.
     *
     * @return what is wrong
     */
    private Optional<String> leadOn(Node node, List<Node> open) {
      if (seen.contains(node.key()) || ledOn.contains(node.key())) {
        return Optional.empty();
      }
      Kinds kinds = new Kinds(node.state().role());
      adviser = kinds;
      Step step = after(node);
      if (!isOnTheWay(node, step, kinds) || isFollowed(node)) {
        open.add(node);
        return Optional.empty();
      }
      if (!ledOn.add(node.key())) {
        return Optional.empty();
      }
      Optional<String> wrong = wrong(node, step);
      if (wrong.isPresent()) {
        return wrong;
      }
      List<Node> next = new ArrayList<>();
      step.accept(new Answers(few, node.state(), node.concluded(), 0))
          .forEach(m -> next.add(node(node.entries(), node.state().role(), m)));
      takenUp(node, next);
      return next.stream().flatMap(n -> leadOn(n, open).stream()).findFirst();
    }

    /** The first of its kind, and a sample of the others. */
    private boolean isFollowed(Node node) {
      List<Integer> way = numbered(node.counts().onTheWay());
      List<Integer> first = ways.putIfAbsent(way, node.key());
      return first == null || first.equals(node.key()) || node.isSample();
    }

    private boolean isOnTheWay(Node node, Step step, Kinds kinds) {
      boolean led =
          node.state().gaveUp().isPresent()
              || step instanceof Step.AskDangers
              || step instanceof Step.MakeSafe
              || step instanceof Step.HandOver
              || step instanceof Step.Finished
              || step instanceof Step.Enter e && e.again();
      return led && kinds.choices().isEmpty() && node.state().told().histories().isPresent();
    }

    private Optional<String> wrong(Node node, Step step) {
      return new Invariants(base, node.entries(), node.state(), node.concluded().judgement())
          .of(step)
          .map(w -> w + "\n" + Story.of(node.entries()) + "  then: " + Story.of(step));
    }

    private void others(Node node, Event event, List<Node> found) {
      for (Role comes : List.of(Role.TRAINEE, Role.TECHNICIAN, Role.ELECTRICIAN)) {
        found.add(node(node.entries(), comes, List.of(event)));
      }
    }

    /**
     * What people do whatever is asked: give the case away, take a repair or the making safe back,
     * take a danger back, leave it to somebody else, meet a danger.
     */
    private void meanwhile(Node node, List<Node> found) {
      List<Entry> entries = node.entries();
      Role role = node.state().role();
      if (node.state().gaveUp().isEmpty()) {
        found.add(node(entries, role, List.of(new Event.GaveUp("called away"))));
      }
      List<Long> last = Undo.last(entries, base);
      if (last.stream()
          .map(n -> entries.get((int) (n - 1)).event())
          .anyMatch(e -> e instanceof Event.Repaired || e instanceof Event.MadeSafe)) {
        found.add(node(entries, role, last.stream().<Event>map(Event.Retracted::new).toList()));
      }
      for (Mark mark : node.concluded().live()) {
        Check check = base.checks().get(mark.card());
        if (check.measures().isEmpty()) {
          Answer no = new Answer.Chosen(check.outcomes().get(0).id());
          found.add(node(entries, role, List.of(new Event.Corrected(mark.number(), no))));
        }
      }
      boolean begun = node.state().told().histories().isPresent();
      if (begun || role == Role.CALLER) { // a call is taken over at any moment
        others(node, new Event.Returned(), found);
      }
      if (begun) {
        if (node.concluded().live().size() < atOnce && node.counts().nothingDue()) {
          base.ordinaryChecks()
              .filter(Check::danger)
              .flatMap(c -> few.heeded(c.id()))
              .filter(h -> h.answer().tells())
              .map(h -> List.<Event>of(new Event.Answered(h.check(), h.answer())))
              .forEach(danger -> found.add(node(entries, role, danger)));
        }
      }
    }
  }

  /** Takes down what the plan may choose among, one of each kind of needs, and asks for none. */
  private final class Kinds implements Adviser {
    private final Map<Object, Advice> kinds = new LinkedHashMap<>();
    private final Role role;

    Kinds(Role role) {
      this.role = role;
    }

    @Override
    public Advice advise(Belief belief, Planner.Options options) {
      for (String id : options.checks()) {
        Check check = base.checks().get(id);
        if (few.isOffered(id)) {
          Object kind =
              kind(
                  check.place().isPresent() ? "look" : "check",
                  id,
                  Representatives.needs(check),
                  check.who(),
                  options);
          kinds.putIfAbsent(kind, nothing().asking(id));
        }
      }
      for (String id : options.repairs()) {
        Repair repair = base.repairs().get(id);
        if (few.isOffered(id)) {
          Object kind = kind("repair", id, repair.needs(), repair.who(), options);
          kinds.putIfAbsent(kind, nothing().repairing(id));
        }
      }
      return nothing();
    }

    /**
     * On the way to a set-up only the needs count; in it whether rules heed the card. One that this
     * person may not do is told apart, to be found.
     */
    private Object kind(
        String what, String id, List<String> needs, Role who, Planner.Options options) {
      boolean ready = ready(options.setUps(), needs);
      boolean may = role.may(who);
      return ready && few.isSpecial(id) ? id : List.of(what, ready ? "ready" : needs, may);
    }

    private boolean ready(Set<String> setUps, List<String> needs) {
      return ready.computeIfAbsent(
          List.of(setUps, needs),
          key -> {
            Planner.Change change = few.expertise().planner().change(setUps, needs);
            return change.enter().isEmpty() && change.leave().isEmpty();
          });
    }

    private List<Advice> choices() {
      return List.copyOf(kinds.values());
    }

    /** The choice, where it is among what may be done. */
    private Advice in(Advice choice, Planner.Options options) {
      boolean may =
          choice.kind() == Advice.Kind.ASK
              ? options.checks().contains(choice.candidates().get(0).check())
              : options.repairs().contains(choice.jobs().get(0).repair());
      return may ? choice : nothing();
    }

    private Advice nothing() {
      return new Advice(Advice.Kind.NOTHING_LEFT, List.of(), List.of(), 0, 0, false);
    }
  }

  /** Whether a card with these needs makes the gate run. */
  public static boolean runs(List<String> needs) {
    return needs.contains(SetUp.GATE_RUNNING) || needs.contains(SetUp.ABLE_TO_RUN);
  }
}
