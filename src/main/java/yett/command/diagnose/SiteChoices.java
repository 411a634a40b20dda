package yett.command.diagnose;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.knowledge.SiteQuestion;

/** Finds the choice of a question about the gate that some words mean. */
final class SiteChoices {
  static final Set<String> NOT = Set.of("no", "none", "without", "not");
  private static final String ABSENT = "none";

  private SiteChoices() {}

  /**
   * The choice that the words fit best.
   *
   * @param named how many of the words name the question
   */
  static Optional<SiteMatch> best(SiteQuestion question, Set<String> words, int named) {
    SiteMatch best = null;
    boolean not = words.stream().anyMatch(NOT::contains);
    boolean bare = words.size() == 1 && words.iterator().next().matches("[0-9./]+");
    for (Map.Entry<String, String> choice : question.choices().entrySet()) {
      Set<String> its = SiteWords.of(choice.getKey() + " " + choice.getValue());
      int shared =
          Math.max(
              sharedWithNumbers(words, words, its),
              words.size() == 1 ? 0 : sharedWithNumbers(words, SiteWords.counted(words), its));
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

  /** Whether the words are exactly those of a choice. */
  static boolean isOne(SiteQuestion question, Set<String> words) {
    return question.choices().values().stream().anyMatch(c -> SiteWords.of(c).equals(words));
  }

  /**
   * How many words are those of a choice; none if a number is not, because 4 mm2 is not 1.5 mm2.
   *
   * @param said the same words, perhaps with small numbers in letters
   */
  private static int sharedWithNumbers(Set<String> words, Set<String> said, Set<String> its) {
    Set<String> numbers = new LinkedHashSet<>(said);
    numbers.removeIf(w -> words.contains(w) && !w.matches("[0-9./]*\\d[0-9./]*"));
    return its.containsAll(numbers) ? SiteWords.shared(said, its) : 0;
  }
}
