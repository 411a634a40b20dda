package yett.command.diagnose.site;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.knowledge.SiteQuestion;

/** Finds which of the answers of one detail of the gate some words mean. */
record SiteChoice(SiteQuestion question) {
  static final Set<String> NOT = Set.of("no", "none", "without", "not");
  private static final String ABSENT = "none";
  private static final String NUMBER = "[0-9./]*\\d[0-9./]*";

  /** Whether the words are exactly those of an answer. */
  boolean is(Set<String> words) {
    return question.choices().values().stream().anyMatch(c -> SiteWords.of(c).equals(words));
  }

  /** What is there, if there is only one way in which it can be. */
  Optional<SiteMatch> fitted(int named) {
    List<String> ways =
        question.choices().keySet().stream().filter(c -> !c.equals(ABSENT)).toList();
    return ways.size() == 1
        ? Optional.of(new SiteMatch(question, ways.get(0), 10 * named + 5))
        : Optional.empty();
  }

  /** The answer of a detail that the words name; its name says nothing of how it is. */
  Optional<SiteMatch> named(Set<String> words, Set<String> name) {
    int named = SiteWords.shared(words, name);
    Set<String> besides = new LinkedHashSet<>(words);
    besides.removeAll(name);
    return besides.contains("yes") && fitted(named).isPresent()
        ? fitted(named)
        : best(besides, SiteWords.countedOf(besides), named);
  }

  Optional<SiteMatch> choice(Set<String> words, int named) {
    return best(words, words.size() == 1 ? words : SiteWords.counted(words), named);
  }

  /**
   * The answer that the words fit best.
   *
   * @param counted the same words with small numbers in letters, if that is how they may be meant
   * @param named how many of the words name the question
   */
  private Optional<SiteMatch> best(Set<String> words, Set<String> counted, int named) {
    SiteMatch best = null;
    boolean not = words.stream().anyMatch(NOT::contains);
    boolean bare = words.size() == 1 && words.iterator().next().matches("[0-9./]+");
    for (Map.Entry<String, String> choice : question.choices().entrySet()) {
      Set<String> its = SiteWords.of(choice.getKey() + " " + choice.getValue());
      int shared =
          hasNumbers(words, its)
              ? Math.max(SiteWords.shared(words, its), SiteWords.shared(counted, its))
              : 0;
      int score = named == 0 && shared == words.size() && !bare ? 5 * shared : 0;
      if (named > 0 && not) {
        score = choice.getKey().equals(ABSENT) ? 10 * named + 5 : 0;
      } else if (named > 0) {
        score = shared > 0 ? 10 * named + 5 * shared : 0; // a name alone asks for its question
      }
      if (score > 0 && (best == null || score > best.score())) {
        best = new SiteMatch(question, choice.getKey(), score);
      }
    }
    return Optional.ofNullable(best);
  }

  /** Whether an answer has each number of the words, because 4 mm2 is not 1.5 mm2. */
  private static boolean hasNumbers(Set<String> words, Set<String> its) {
    return words.stream()
        .filter(w -> w.matches(NUMBER))
        .allMatch(
            w -> its.contains(w) || SiteWords.shared(SiteWords.countedOf(Set.of(w)), its) > 0);
  }
}
