package yett.trial;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.Function;
import yett.interview.course.Expertise;
import yett.knowledge.LeftOut;
import yett.knowledge.RuleBase;
import yett.replay.InOrder;
import yett.replay.RecordedCase;
import yett.replay.Replayer;
import yett.replay.Score;

/**
 * Finds the new cards because of which cases went wrong. Each such case is run again with new cards
 * left out, one at a time and, if no single one is the reason, in halves. The card that came first
 * in the ranking is not always the reason; without the right one the case is right again.
 */
public final class Culprits {
  /** If a change breaks more cases than this, only the first ones are examined. */
  private static final int MOST_CASES = 20;

  /** More cards than this are not tried one by one. */
  private static final int FEW = 6;

  private final RuleBase base;
  private final Optional<RuleBase> before;
  private final Function<RuleBase, Expertise> ready;
  private final Runnable progress;
  private final Map<Set<String>, Expertise> without = new HashMap<>();
  private final Map<Set<String>, Expertise> earlierWithout = new HashMap<>();

  /**
   * @param base with the new cards
   * @param before the earlier rule base, in which cards may be that are gone now; empty if unknown
   * @param ready prepares a rule base for reasoning
   * @param progress called after each case
   */
  Culprits(
      RuleBase base,
      Optional<RuleBase> before,
      Function<RuleBase, Expertise> ready,
      Runnable progress) {
    this.base = base;
    this.before = before;
    this.ready = ready;
    this.progress = progress;
  }

  /**
   * The reasons why cases of a comparison went wrong; empty if none did.
   *
   * @param of the cases of the later rule base
   */
  public static List<String> of(
      Comparison comparison,
      RuleBase before,
      RuleBase now,
      CasesBeside of,
      Function<RuleBase, Expertise> ready,
      Runnable progress) {
    List<RecordedCase> wrong =
        of.cases().stream()
            .filter(
                c ->
                    comparison.differences().stream()
                        .filter(d -> d.turn() == Difference.Turn.WORSE)
                        .anyMatch(d -> d.file().equals(c.file()) && d.name().equals(c.name())))
            .toList();
    return new Culprits(now, Optional.of(before), ready, progress)
        .words(wrong, newCards(before, now));
  }

  /** Cards that only the later of two rule bases has and that can be left out. */
  static List<String> newCards(RuleBase before, RuleBase now) {
    List<String> cards = new ArrayList<>();
    add(cards, "cause", before.causes().keySet(), now.causes().keySet());
    add(cards, "check", before.checks().keySet(), now.checks().keySet());
    add(cards, "repair", before.repairs().keySet(), now.repairs().keySet());
    add(cards, "history", before.histories().keySet(), now.histories().keySet());
    return cards;
  }

  private static void add(
      List<String> cards, String kind, Set<String> before, Collection<String> now) {
    now.stream().filter(id -> !before.contains(id)).forEach(id -> cards.add(kind + " " + id));
  }

  /**
   * One sentence for each set of cards, with the cases that went wrong because of it.
   *
   * @param wrong cases that are right without any of the cards
   */
  List<String> words(List<RecordedCase> wrong, List<String> cards) {
    Map<String, List<String>> costs = new TreeMap<>();
    List<Callable<Map.Entry<String, String>>> tasks = new ArrayList<>();
    for (RecordedCase recorded : wrong.stream().limit(MOST_CASES).toList()) {
      tasks.add(() -> Map.entry(behind(recorded, cards), recorded.name()));
    }
    InOrder.run(
        tasks,
        InOrder.threads(),
        found -> {
          costs.computeIfAbsent(found.getKey(), key -> new ArrayList<>()).add(found.getValue());
          progress.run();
        });
    List<String> words = new ArrayList<>();
    costs.forEach((cards2, cases) -> words.add(cards2 + ": " + String.join(", ", cases)));
    if (wrong.size() > MOST_CASES) {
      words.add("not looked into: " + (wrong.size() - MOST_CASES) + " more");
    }
    return words;
  }

  private String behind(RecordedCase recorded, List<String> cards) {
    Set<String> all = new LinkedHashSet<>(cards);
    if (all.isEmpty() || !rightWithout(recorded, all)) {
      return gone(recorded).orElse("no new card, but one that was changed, costs");
    }
    if (all.size() <= FEW) {
      List<String> single =
          all.stream().filter(card -> rightWithout(recorded, Set.of(card))).toList();
      if (!single.isEmpty()) {
        return (single.size() == 1 ? single.get(0) : "each of " + String.join(", ", single))
            + " costs";
      }
    }
    Set<String> few = new LeastSet(left -> rightWithout(recorded, left)).of(all);
    return few.size() == 1
        ? List.copyOf(few).get(0) + " costs"
        : String.join(", ", few) + " together cost";
  }

  /**
   * The cards that only the earlier rule base has and without which the case is wrong there too;
   * empty if it is right without all of them. An add-on may have switched them off.
   */
  private Optional<String> gone(RecordedCase recorded) {
    Set<String> all =
        before.map(b -> new LinkedHashSet<>(newCards(base, b))).orElseGet(LinkedHashSet::new);
    if (all.isEmpty() || rightBefore(recorded, all)) {
      return Optional.empty();
    }
    Set<String> few = new LeastSet(left -> !rightBefore(recorded, left)).of(all);
    return Optional.of(
        "without " + String.join(", ", few) + ", which only the first has, it goes wrong");
  }

  private boolean rightBefore(RecordedCase recorded, Set<String> cards) {
    Expertise earlier;
    synchronized (earlierWithout) {
      earlier =
          earlierWithout.computeIfAbsent(
              cards, left -> ready.apply(LeftOut.of(before.orElseThrow(), left)));
    }
    return Score.right(new Replayer(earlier).withoutBeliefs().run(recorded)).orElse(true);
  }

  private boolean rightWithout(RecordedCase recorded, Set<String> cards) {
    Replayer replayer = new Replayer(without(cards)).withoutBeliefs();
    return Score.right(replayer.run(recorded)).orElse(true);
  }

  private Expertise without(Set<String> cards) {
    synchronized (without) {
      return without.computeIfAbsent(cards, left -> ready.apply(LeftOut.of(base, left)));
    }
  }
}
