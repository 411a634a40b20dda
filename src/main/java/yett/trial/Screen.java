package yett.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Expertise;
import yett.interview.Interview;
import yett.interview.Trail;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.replay.AsTold;
import yett.replay.RecordedCase;

/**
 * Which cases a change of the cards can touch, without replaying them: the answers of the file are
 * given one after the other, and each alone, under both rule bases, and nothing is planned. A case
 * is left out only if at no time any chance differs, and no cause of which a new or changed card
 * speaks stands out.
 */
final class Screen {
  /** A chance that differs by this much may turn a plan; considered judgement. */
  static final double SHIFT = 0.03;

  /** From here on a cause has a say in what is asked; considered judgement. */
  private static final double STANDS_OUT = 0.05;

  private final Expertise first;
  private final Expertise second;
  private final Set<String> touched;

  Screen(Expertise first, Expertise second) {
    this.first = first.rough();
    this.second = second.rough();
    this.touched = touched(first.base(), second.base());
  }

  /**
   * Whether the two differ in nothing but what it can weigh: causes, checks, repairs, histories.
   */
  static boolean canTell(RuleBase a, RuleBase b) {
    return a.rules().equals(b.rules())
        && a.tables().equals(b.tables())
        && a.setUps().equals(b.setUps())
        && a.stops().equals(b.stops())
        && a.cautions().keySet().equals(b.cautions().keySet())
        && a.siteQuestions().equals(b.siteQuestions())
        && a.planning().equals(b.planning());
  }

  /** Causes of which cards speak otherwise in the one than in the other. */
  private static Set<String> touched(RuleBase a, RuleBase b) {
    Set<String> touched = new HashSet<>(differing(a.causes(), b.causes()));
    for (String id : differing(a.repairs(), b.repairs())) {
      touched.addAll(removed(a.repairs().get(id), b.repairs().get(id)));
    }
    Set<String> checks = union(a.checks().keySet(), b.checks().keySet());
    checks.forEach(id -> touched.addAll(rows(a.checks().get(id), b.checks().get(id))));
    return touched;
  }

  /** Causes that a repair removes otherwise; all of them where more of it differs, or all of it. */
  private static Set<String> removed(Repair a, Repair b) {
    Map<String, Double> before = a == null ? Map.of() : a.removes();
    Map<String, Double> now = b == null ? Map.of() : b.removes();
    Set<String> causes = union(before.keySet(), now.keySet());
    if (a != null && b != null && a.withRemoves(Map.of()).equals(b.withRemoves(Map.of()))) {
      causes.removeIf(c -> before.getOrDefault(c, 0.0).equals(now.getOrDefault(c, 0.0)));
    }
    return causes;
  }

  private static <C> List<String> differing(Map<String, C> a, Map<String, C> b) {
    Set<String> ids = union(a.keySet(), b.keySet());
    return ids.stream().filter(id -> !a.containsKey(id) || !a.get(id).equals(b.get(id))).toList();
  }

  private static Set<String> union(Set<String> a, Set<String> b) {
    Set<String> union = new HashSet<>(a);
    union.addAll(b);
    return union;
  }

  /** Causes whose row on a check differs; all of them where the check is only in one. */
  private static Set<String> rows(Check a, Check b) {
    if (a == null || b == null) {
      return (a == null ? b : a).likelihood().keySet();
    }
    Set<String> causes = union(a.likelihood().keySet(), b.likelihood().keySet());
    causes.removeIf(c -> Arrays.equals(a.likelihood().get(c), b.likelihood().get(c)));
    return causes;
  }

  /** Whether a case may come out otherwise under the two. */
  boolean mayDiffer(RecordedCase recorded) {
    Map<String, Map<String, Double>> before = standings(first, recorded);
    Map<String, Map<String, Double>> now = standings(second, recorded);
    Set<String> moments = union(before.keySet(), now.keySet());
    return moments.stream()
        .anyMatch(m -> differ(before.getOrDefault(m, Map.of()), now.getOrDefault(m, Map.of())));
  }

  private boolean differ(Map<String, Double> before, Map<String, Double> now) {
    Set<String> causes = union(before.keySet(), now.keySet());
    return causes.stream()
        .anyMatch(
            cause -> {
              double was = before.getOrDefault(cause, 0.0);
              double is = now.getOrDefault(cause, 0.0);
              return Math.abs(was - is) >= SHIFT
                  || touched.contains(cause) && Math.max(was, is) >= STANDS_OUT;
            });
  }

  /**
   * Chances of the causes that have any to speak of: after the complaints, and after each answer.
   */
  private static Map<String, Map<String, Double>> standings(
      Expertise expertise, RecordedCase recorded) {
    List<Entry> entries = AsTold.entries(recorded, expertise.base());
    try (Interview interview = expertise.newInterview()) {
      Trail trail = interview.believed(entries);
      List<String> causes = expertise.model().causes();
      Map<String, Map<String, Double>> standings = new LinkedHashMap<>();
      standings.put("told", chances(causes, trail.prior()));
      for (Trail.Move move : trail.moves()) {
        String moment = move.event() == 0 ? "told" : move.event() + " " + move.subject();
        standings.put(moment, chances(causes, move.after()));
      }
      alone(interview, entries, expertise).forEach(standings::put);
      return standings;
    }
  }

  /**
   * Each answer as if it had been asked for first: what the answers of the whole file rule out may
   * stand out while only some of them are known.
   */
  private static Map<String, Map<String, Double>> alone(
      Interview interview, List<Entry> entries, Expertise expertise) {
    List<Entry> told =
        entries.stream().filter(e -> !(e.event() instanceof Event.Answered)).toList();
    Map<String, Map<String, Double>> standings = new LinkedHashMap<>();
    for (Entry entry : entries) {
      if (entry.event() instanceof Event.Answered answered) {
        List<Entry> some = new ArrayList<>(told);
        some.add(entry);
        List<Trail.Move> moves = interview.believed(some).moves();
        if (!moves.isEmpty()) {
          standings.put(
              "alone " + answered.check(),
              chances(expertise.model().causes(), moves.get(moves.size() - 1).after()));
        }
      }
    }
    return standings;
  }

  private static Map<String, Double> chances(List<String> causes, double[] chances) {
    Map<String, Double> by = new LinkedHashMap<>();
    for (int c = 0; c < chances.length; c++) {
      if (chances[c] >= 0.005) {
        by.put(causes.get(c), chances[c]);
      }
    }
    return by;
  }
}
