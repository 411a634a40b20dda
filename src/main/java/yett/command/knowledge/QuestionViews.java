package yett.command.knowledge;

import java.util.List;
import java.util.Optional;
import yett.bench.Candidate;
import yett.bench.Question;
import yett.command.common.Words;
import yett.console.Block;

/** Shows a question about a new card. */
final class QuestionViews {
  private QuestionViews() {}

  static String prompt(Question question, Optional<String> enter) {
    String nothing = question.mayBeNothing() ? "none" : "";
    String words = enter.map(e -> e.isEmpty() ? nothing : e).orElse("");
    String usual = question.usual().map(u -> u.isEmpty() ? nothing : u).orElse("");
    boolean other = !usual.isEmpty() && !words.equals(usual);
    return question.ask()
        + (words.isEmpty() ? "" : " (Enter: " + words + (other ? "; - for " + usual : "") + ")")
        + "> ";
  }

  /** The possible answers with their words: all of them, or those that contain the typed words. */
  static List<Block> known(Question question, String words) {
    if (question.known().isEmpty()) {
      return List.of(
          Block.paragraph(
              "There is no list to choose from: answer in your own words, or with a number."));
    }
    int all = question.known().size();
    List<Candidate> found =
        words.isEmpty() ? question.known() : Candidate.with(words, question.known());
    return List.of(
        KnownViews.rows(found),
        Block.paragraph(
            found.isEmpty()
                ? "Nothing has " + Words.quoted(words) + "; ? lists all " + all + "."
                : found.size() == all
                    ? things(question) + " in all. ? WORD looks for a word."
                    : found.size() + " of " + all + "; ? lists all."));
  }

  /** How many things there are to name; the words for how often are none. */
  private static long things(Question question) {
    return question.known().stream().filter(k -> !k.isChance()).count();
  }
}
