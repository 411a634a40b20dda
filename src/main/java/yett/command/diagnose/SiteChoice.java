package yett.command.diagnose;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.command.diagnose.SiteLine.Match;
import yett.knowledge.SiteQuestion;

/** Finds which of the answers of one detail of the gate some words mean. */
record SiteChoice(SiteQuestion question) {
  private static final String ABSENT = "none";

  /** What is there, if there is only one way in which it can be. */
  Optional<Match> fitted(int named) {
    List<String> ways =
        question.choices().keySet().stream().filter(c -> !c.equals(ABSENT)).toList();
    return ways.size() == 1
        ? Optional.of(new Match(question, ways.get(0), 10 * named + 5))
        : Optional.empty();
  }

  /** The answer of a detail that the words name; its name says nothing of how it is. */
  Optional<Match> named(Set<String> words, Set<String> name) {
    int named = shared(words, name);
    Set<String> besides = new LinkedHashSet<>(SiteWords.countedOf(words));
    besides.removeAll(name);
    return besides.contains("yes") && fitted(named).isPresent()
        ? fitted(named)
        : choice(besides, named);
  }

  Optional<Match> choice(Set<String> words, int named) {
    Match best = null;
    boolean not = words.stream().anyMatch(SiteLine.NOT::contains);
    Set<String> said = words.size() == 1 ? words : SiteWords.counted(words); // not a bare number
    boolean bare = words.size() == 1 && words.iterator().next().matches("[0-9./]+");
    for (Map.Entry<String, String> choice : question.choices().entrySet()) {
      int shared = shared(said, SiteWords.of(choice.getKey() + " " + choice.getValue()));
      int score = named == 0 && shared == words.size() && !bare ? 5 * shared : 0;
      if (named > 0 && not) {
        score = choice.getKey().equals(ABSENT) ? 10 * named + 5 : 0;
      } else if (named > 0) {
        score = shared > 0 ? 10 * named + 5 * shared : 0; // a name alone asks for its question
      }
      if (score > 0 && (best == null || score > best.score())) {
        best = new Match(question, choice.getKey(), score);
      }
    }
    return Optional.ofNullable(best);
  }

  static int shared(Set<String> some, Set<String> others) {
    return (int) some.stream().filter(others::contains).count();
  }
}
