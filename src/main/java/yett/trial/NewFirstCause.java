package yett.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.knowledge.Mentions;

/**
 * Explains because of which new cause, check or rule a case has another first cause, in decibans.
 */
final class NewFirstCause {
  private static final int MOST = 5;

  private final Account before;
  private final Account now;
  private final Additions fresh;

  private NewFirstCause(Account before, Account now, Additions fresh) {
    this.before = before;
    this.now = now;
    this.fresh = fresh;
  }

  /** A sentence without a full stop for each reason; empty if the first cause is the same. */
  static List<String> words(Account before, Account now, Additions fresh) {
    if (before.first().equals(now.first())) {
      return List.of();
    }
    NewFirstCause taken = new NewFirstCause(before, now, fresh);
    List<String> words =
        Stream.of(taken.byCause(), taken.byChecks(), taken.byRules())
            .flatMap(List::stream)
            .toList();
    boolean indirect = words.isEmpty() && !fresh.isEmpty() && !before.path().equals(now.path());
    return indirect
        ? List.of("nothing new speaks for or against the two; other things were asked")
        : words;
  }

  private List<String> byCause() {
    return now
        .first()
        .filter(fresh.causes()::contains)
        .map(
            cause ->
                "taken over by "
                    + cause
                    + ", a cause that only the second has: "
                    + now.evidence().stream()
                        .filter(w -> weight(w, cause) != 0)
                        .sorted(Comparator.comparingDouble(w -> -Math.abs(weight(w, cause))))
                        .limit(MOST)
                        .map(w -> Weighed.words(weight(w, cause)) + " " + name(w))
                        .collect(Collectors.joining(", ")))
        .stream()
        .toList();
  }

  private List<String> byChecks() {
    return now.evidence().stream()
        .filter(w -> fresh.checks().contains(w.subject()))
        .filter(w -> !moves(w, Map.of()).isEmpty())
        .map(
            w ->
                "moved by the check "
                    + name(w)
                    + ", which only the second has: "
                    + moves(w, Map.of()))
        .toList();
  }

  /**
   * The effects of new rules, which change what an answer weighs or where a cause stands at the
   * outset.
   */
  private List<String> byRules() {
    List<String> words = new ArrayList<>();
    for (Map.Entry<String, String> file : fresh.rules().entrySet()) {
      for (Weighed weighed : now.evidence()) {
        Map<String, Double> then =
            before.evidence().stream()
                .filter(w -> w.subject().equals(weighed.subject()))
                .map(Weighed::decibans)
                .findFirst()
                .orElse(Map.of());
        Set<String> named =
            weighed.subject().equals(Weighed.OUTSET) ? rivals() : Set.of(weighed.subject());
        String moves = moves(weighed, then);
        if (!moves.isEmpty() && named.stream().anyMatch(id -> Mentions.of(file.getValue(), id))) {
          words.add(
              "moved by rules of "
                  + file.getKey()
                  + ", which only the second has: "
                  + name(weighed)
                  + " "
                  + moves);
        }
      }
    }
    return words;
  }

  /** The first causes, before and now. */
  private Set<String> rivals() {
    return Stream.of(before.first(), now.first())
        .flatMap(java.util.Optional::stream)
        .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
  }

  /**
   * How differently from before an answer moves the two first causes; empty if nobody would notice.
   */
  private String moves(Weighed weighed, Map<String, Double> then) {
    return rivals().stream()
        .filter(weighed.decibans()::containsKey)
        .filter(c -> then.isEmpty() || then.containsKey(c))
        .map(c -> Map.entry(c, weight(weighed, c) - then.getOrDefault(c, 0.0)))
        .filter(e -> Math.abs(e.getValue()) >= Difference.LEAST_DECIBANS)
        .map(e -> String.format(Locale.ROOT, "%s for %s", Weighed.words(e.getValue()), e.getKey()))
        .collect(Collectors.joining(", "));
  }

  private static double weight(Weighed weighed, String cause) {
    return weighed.decibans().getOrDefault(cause, 0.0);
  }

  private static String name(Weighed weighed) {
    return (weighed.subject() + " " + weighed.words()).strip();
  }
}
