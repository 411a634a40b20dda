package yett.saying;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * Finds the dangers that somebody's words tell of, by the words of the danger cards and their
 * examples. Only what to ask back: words never count as an answer by themselves, and words that
 * tell of no danger here are no sign that there is none. May be used by several threads.
 */
public final class DangerSayings {
  /** A further danger is asked about too if it is nearly as probable as the first. */
  private static final double NEARLY = 0.4;

  private static final int MOST = 3;

  private final Map<String, Danger> dangers = new LinkedHashMap<>();
  private final Phrases phrases;

  /** An outcome of a danger check that is not the ordinary one. */
  public record Danger(Check check, Check.Outcome outcome) {}

  public DangerSayings(RuleBase base) {
    Map<String, List<String>> ways = new LinkedHashMap<>();
    for (Check check : base.checks().values()) {
      if (check.danger()) {
        check.outcomes().stream().skip(1).forEach(o -> add(base, new Danger(check, o), ways));
      }
    }
    phrases = new Phrases(ways, base.telephone().synonyms());
  }

  private void add(RuleBase base, Danger danger, Map<String, List<String>> ways) {
    String id = danger.check().id() + "/" + danger.outcome().id();
    dangers.put(id, danger);
    ways.put(id, ways(base, danger.check(), danger.outcome()));
  }

  /** How people tell of an outcome of a danger check. */
  static List<String> ways(RuleBase base, Check check, Check.Outcome outcome) {
    List<String> ways = new ArrayList<>(List.of(outcome.text()));
    ways.addAll(
        base.telephone()
            .dangerSayings()
            .getOrDefault(check.id(), Map.of())
            .getOrDefault(outcome.id(), List.of()));
    return ways;
  }

  /**
   * The dangers that may be meant, the most probable first; none if no word is known.
   *
   * @param asked those that are in question
   */
  public List<Danger> hear(String words, Collection<Danger> asked) {
    List<Phrases.Heard> heard =
        phrases.hear(words, dangers.size()).stream()
            .filter(h -> asked.contains(dangers.get(h.id())))
            .limit(MOST)
            .toList();
    return heard.stream()
        .filter(h -> h.share() >= NEARLY * heard.get(0).share())
        .map(h -> dangers.get(h.id()))
        .toList();
  }
}
