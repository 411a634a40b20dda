package yett.interview.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.proof.FailedProofs;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion;
import yett.rules.Judge;
import yett.rules.Judgement;

/**
 * What the rules make of a case, asked once for each set of answers and repairs that they could
 * tell apart. What they cannot tell apart, or heed no longer, is left out before they are asked;
 * what no rule names together ({@link NamedTogether}) is asked apart and put together again.
 */
final class Concluding implements AutoCloseable {
  /** One in so many judgements that were put together is held against the rules' on the whole. */
  private static final int SAMPLE = 23;

  private static final int MOST_KEPT = 5_000;

  private final Representatives few;
  private final RuleBase base;
  private final Map<Role, Judge> judges = new EnumMap<>(Role.class);
  private final Map<String, Set<String>> pointedTo = new HashMap<>();
  private final Map<List<Object>, Known> known = new HashMap<>();
  private final Map<List<Object>, Judgement> judgements = new HashMap<>();
  private final NamedTogether together;
  private final Set<String> entailed;
  private int asked;

  Concluding(Representatives few) {
    this.few = few;
    this.base = few.base();
    this.together = new NamedTogether(few.whole().base());
    this.entailed =
        base.repairs().values().stream()
            .flatMap(r -> r.entails().stream())
            .collect(Collectors.toSet());
  }

  /**
   * What some answers and repairs make come and go, with the rank of the answer in place of its
   * number; of none, all that there is without them.
   */
  private record Known(Set<Conclusion> come, Set<Conclusion> gone, Set<Object> effect) {}

  /**
   * An answer that rules heed, or a repair that ends or entails something.
   *
   * @param epoch how many repairs had been done before an answer, or with a repair
   * @param replaced whether a later answer took its place; the rules see those on dangers
   */
  record Mark(long number, int epoch, String card, Answer answer, Role by, boolean replaced) {
    boolean isRepair() {
      return answer == null;
    }

    Object alike() {
      return isRepair() ? card : List.of(card, answer, by, replaced);
    }
  }

  /**
   * @param live answers that stop or forbid something now
   */
  record Concluded(Judgement judgement, List<Mark> live, List<Mark> marks) {}

  int asked() {
    return asked;
  }

  Concluded of(CaseState state) {
    List<Mark> marks = marks(state);
    List<Mark> live = new ArrayList<>();
    for (Mark mark : List.copyOf(marks)) {
      if (tells(mark)) {
        if (isNothing(mark, state, marks) && isNothing(mark, state, alone(mark, marks))) {
          marks.remove(mark);
          marks = needed(marks);
        } else {
          live.add(mark);
        }
      }
    }
    return new Concluded(judgement(state.role(), state, marks), live, marks);
  }

  /** It and what could end it: another danger that forbids the same does not end it. */
  private List<Mark> alone(Mark mark, List<Mark> marks) {
    return marks.stream()
        .filter(m -> !tells(m) || m.card().equals(mark.card()))
        .collect(Collectors.toCollection(ArrayList::new));
  }

  /** Whether an answer has no effect, now or with a person from whom nothing is kept. */
  private boolean isNothing(Mark mark, CaseState state, List<Mark> all) {
    List<Mark> marks = together.partOf(mark, all);
    List<Mark> without = new ArrayList<>(marks);
    without.remove(mark);
    return isNothingTo(state.role(), state, marks, without)
        && isNothingTo(Role.ELECTRICIAN, state, marks, without);
  }

  private boolean isNothingTo(Role role, CaseState state, List<Mark> marks, List<Mark> without) {
    return ofSome(role, state, without).effect().equals(ofSome(role, state, marks).effect());
  }

  /** What stops or forbids alike is of one kind. */
  Object kind(Mark mark) {
    Object kind =
        few.heeded(mark.card())
            .filter(h -> h.answer().equals(mark.answer()))
            .findFirst()
            .orElseThrow()
            .kind();
    boolean danger = base.checks().get(mark.card()).danger(); // whose word it is, lifts it at most
    return List.of(few.numberOf(kind), !danger && mark.by() == Role.CALLER);
  }

  /** Whether it counts for what this one stops that something was mended since. */
  boolean isEndedByMending(Mark mark) {
    return few.isEndedByMending(mark.card(), mark.answer());
  }

  /** The repairs to which a proof points that failed. */
  Set<String> pointedTo(String proof) {
    return pointedTo.computeIfAbsent(
        proof,
        p ->
            FailedProofs.pointsTo(base, base.checks().get(p))
                .map(Repair::id)
                .collect(Collectors.toSet()));
  }

  private boolean tells(Mark mark) {
    return !mark.isRepair()
        && few.heeded(mark.card()).anyMatch(h -> h.answer().equals(mark.answer()));
  }

  /** Whether it was a failed proof that any repair ends, and something was repaired since. */
  private boolean isOver(Mark mark, CaseState state) {
    return base.checks().get(mark.card()).kind() == Check.Kind.PROOF
        && few.isEndedByMending(mark.card(), mark.answer())
        && mark.epoch() < state.work().epoch();
  }

  /** What rules could heed, in order. */
  private List<Mark> marks(CaseState state) {
    List<Mark> marks = new ArrayList<>();
    for (CaseState.Answered a : state.answers()) {
      Mark mark = new Mark(a.event(), a.epoch(), a.check(), a.answer(), a.by(), false);
      boolean proof = base.checks().get(a.check()).kind() == Check.Kind.PROOF;
      if (few.isHeeded(a.check()) && (a.answer().tells() || tells(mark)) && !isOver(mark, state)
          || entailed.contains(a.check())
          || proof && few.lifts(a.check()) && a.answer().is(Check.PASS)) {
        marks.add(mark);
      }
    }
    for (CaseState.Answered a : state.before()) { // whose word it was counts
      if (few.isHeeded(a.check()) && a.answer().tells()) {
        marks.add(new Mark(a.event(), a.epoch(), a.check(), a.answer(), a.by(), true));
      }
    }
    int epoch = 0;
    for (Entry deed : state.work().deeds()) {
      if (deed.event() instanceof Event.Repaired r) {
        epoch++;
        Repair repair = base.repairs().get(r.repair());
        if (few.ends(r.repair()) || !repair.entails().isEmpty() || entailed.contains(r.repair())) {
          marks.add(new Mark(deed.number(), epoch, r.repair(), null, deed.by(), false));
        }
      }
    }
    marks.sort((a, b) -> Long.compare(a.number(), b.number()));
    return needed(marks);
  }

  /** Without what ends nothing that was told before it, and what was entailed and done. */
  private List<Mark> needed(List<Mark> marks) {
    List<Mark> needed = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      Mark mark = marks.get(i);
      List<Mark> before = needed;
      boolean ends =
          before.stream()
                  .anyMatch(
                      b -> tells(b) && (!few.isHeeded(mark.card()) || b.card().equals(mark.card())))
              && (!mark.isRepair() || few.ends(mark.card()));
      boolean answers =
          before.stream().anyMatch(b -> b.isRepair() && entails(b.card()).contains(mark.card()));
      boolean open = mark.isRepair() && isOpen(mark, marks.subList(i + 1, marks.size()));
      if (tells(mark) || ends || answers || open) {
        needed.add(mark);
      }
    }
    return needed;
  }

  private boolean isOpen(Mark repair, List<Mark> after) {
    Set<String> left = new HashSet<>(entails(repair.card()));
    after.forEach(m -> left.remove(m.card()));
    return !left.isEmpty();
  }

  private List<String> entails(String repair) {
    return base.repairs().get(repair).entails();
  }

  /** What the rules make of the whole, put together from what is named together. */
  private Judgement judgement(Role role, CaseState state, List<Mark> marks) {
    List<Object> key = key(role, state, marks);
    marks.stream().filter(this::tells).forEach(m -> key.add(m.number()));
    Judgement found = judgements.get(key);
    if (found == null) {
      if (judgements.size() >= MOST_KEPT) {
        judgements.clear(); // they hold numbers of events, of which there is no end
      }
      found = putTogether(role, state, marks);
      judgements.put(key, found);
    }
    return found;
  }

  private Judgement putTogether(Role role, CaseState state, List<Mark> marks) {
    Set<Conclusion> gone = new HashSet<>();
    Set<Conclusion> come = new LinkedHashSet<>();
    for (List<Mark> some : together.parts(marks)) {
      Known known = ofSome(role, state, some);
      gone.addAll(known.gone());
      come.addAll(numbered(known.come(), some));
    }
    List<Conclusion> all = new ArrayList<>(ofSome(role, state, List.of()).come());
    if (!gone.isEmpty()) {
      all.removeIf(gone::contains);
    }
    all.addAll(come);
    Judgement together = Judgement.of(all);
    if (judgements.size() % SAMPLE == 0) {
      Set<Conclusion> asWhole = ask(role, state, complaints(role, state), marks).come();
      assertThat(together).isEqualTo(Judgement.of(List.copyOf(numbered(asWhole, marks))));
    }
    return together;
  }

  /** What the rules make of answers and repairs that they may name together. */
  private Known ofSome(Role role, CaseState state, List<Mark> marks) {
    List<Object> key = key(role, state, marks);
    Known found = known.get(key);
    if (found == null) {
      Known asked = ask(role, state, complaints(role, state), marks);
      found = marks.isEmpty() ? asked : beside(ofSome(role, state, List.of()), asked);
      known.put(key, found);
    }
    return found;
  }

  private static List<Object> key(Role role, CaseState state, List<Mark> marks) {
    List<Object> key = new ArrayList<>();
    key.add(role);
    key.add(complaints(role, state));
    int before = marks.isEmpty() ? 0 : marks.get(0).epoch();
    for (Mark mark : marks) {
      key.add(mark.alike());
      key.add(mark.epoch() > before); // something was mended between
      before = mark.epoch();
    }
    return key;
  }

  private static List<String> complaints(Role role, CaseState state) {
    return role == Role.CALLER ? state.told().complaints().orElse(List.of()) : List.of();
  }

  private static Known beside(Known ground, Known known) {
    return new Known(
        without(known.come(), ground.come()), without(ground.come(), known.come()), known.effect());
  }

  private static Set<Conclusion> without(Set<Conclusion> some, Set<Conclusion> others) {
    Set<Conclusion> left = new LinkedHashSet<>(some);
    left.removeAll(others);
    return left;
  }

  private Known ask(Role role, CaseState state, List<String> complaints, List<Mark> marks) {
    asked++;
    List<CaseState.Answered> answers = new ArrayList<>();
    List<CaseState.Answered> replaced = new ArrayList<>();
    List<Entry> deeds = new ArrayList<>();
    int before = marks.isEmpty() ? 0 : marks.get(0).epoch();
    for (int rank = 0; rank < marks.size(); rank++) {
      Mark mark = marks.get(rank);
      if (mark.isRepair()) {
        deeds.add(done(rank, mark.card(), mark.by()));
      } else {
        if (mark.epoch() > before && !marks.get(rank - 1).isRepair()) {
          deeds.add(done(rank, Representatives.DONE, mark.by())); // whatever it was
        }
        (mark.replaced() ? replaced : answers)
            .add(new CaseState.Answered(rank, deeds.size(), mark.by(), mark.card(), mark.answer()));
      }
      before = mark.epoch();
    }
    CaseState.Told told = state.told();
    CaseState.Work work = state.work();
    CaseState pure =
        new CaseState(
            state.opened(),
            role,
            new CaseState.Told(
                few.site(),
                true,
                List.of(),
                told.pressing(),
                java.util.Optional.of(complaints),
                told.histories()),
            answers,
            answers.stream()
                .collect(Collectors.toMap(CaseState.Answered::check, a -> a, (a, b) -> b)),
            replaced,
            new CaseState.Work(
                deeds,
                deeds.size(),
                Map.of(),
                work.setUps(),
                work.unseen(),
                work.intent(),
                java.util.Optional.empty(), // why a check comes is no part of the state
                false,
                false,
                work.failedProof(),
                0,
                0),
            Set.of(),
            Map.of(),
            state.gaveUp(),
            List.of(),
            state.closed());
    Judgement judgement =
        judges
            .computeIfAbsent(role, r -> few.whole().rules().newJudge())
            .judge(new CaseFacts(base).of(pure, List.of()));
    Set<Conclusion> kept = new LinkedHashSet<>();
    for (Conclusion c : judgement.conclusions()) {
      if (c instanceof Conclusion.Unavailable u) {
        if (base.checks().containsKey(u.card()) || base.repairs().containsKey(u.card())) {
          kept.add(c);
        }
      } else if (c instanceof Conclusion.StopNow
          || c instanceof Conclusion.Forbidden
          || c instanceof Conclusion.FollowUp f && entailed.contains(f.card())) {
        kept.add(c);
      }
    }
    return new Known(kept, Set.of(), few.effect(judgement));
  }

  private static Entry done(int number, String repair, Role by) {
    return new Entry(number, java.time.Instant.EPOCH, by, new Event.Repaired(repair, true));
  }

  private static Set<Conclusion> numbered(Set<Conclusion> conclusions, List<Mark> marks) {
    if (conclusions.stream().noneMatch(Conclusion.StopNow.class::isInstance)) {
      return conclusions;
    }
    return conclusions.stream()
        .map(
            c ->
                c instanceof Conclusion.StopNow s
                    ? new Conclusion.StopNow(
                        s.stop(), marks.get((int) s.event()).number(), s.reason())
                    : c)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  @Override
  public void close() {
    judges.values().forEach(Judge::close);
  }
}
