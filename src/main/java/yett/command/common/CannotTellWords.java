package yett.command.common;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import yett.interview.event.Answer;

/** Recognises the ways in which people say that they cannot tell. Only a whole line counts. */
public final class CannotTellWords {
  private static final String WHO = "(?:i|we|they|he|she|you)";

  /**
   * "Did not hear" and "cannot hear" are left out, because they may be the answer to the question.
   */
  private static final String ANSWERS =
      "cannot tell|unknown|not know|no know|dunno|idk|beats me|who knows|no one knows|nobody knows|(?:have"
          + " )?(?:no|not an?|not any|not got an?) (?:idea|clue)|(?:am |are |is )?(?:unsure|not"
          + " (?:really |too |so |quite |entirely )?(?:sure|certain))|(?:hard|difficult|impossible)"
          + " to (?:say|tell|see)|(?:do|does|did|could|would) not (?:really |honestly |even"
          + " )?(?:know|tell|say|remember|recall|look|check)|cannot (?:really"
          + " )?(?:tell|say|see|remember|recall|look|check)|have not"
          + " (?:looked|checked|tried)|(?:could not|cannot) get (?:there|near it|to it|near)";

  /** Said of a person who is not there, never of a part of the gate. */
  private static final String AWAY =
      WHO
          + " (?:am|are|is) (?:not (?:there|here|at the gate|on site|at the site|near it|near the gate)"
          + "|at home|at work|away|elsewhere|abroad|in the office|miles away|somewhere else)";

  private static final String AFTER =
      "(?: (?:it|that|this|them|any of it|about it|about that|from here|at the moment|right now|now"
          + "|yet|sorry|really|to be honest|for sure|exactly|either|at all|mate|love|dear|sir|madam|ma am|i am afraid|any more|i have never been here|before))*"
          + "(?: (?:you(?: will| ll)? (?:have to|need to|should|would have to) )?ask (?:him|her|them"
          + "|my \\w+|the \\w+|\\w+))?";

  private static final Pattern LINE =
      Pattern.compile(
          "(?:(?:sorry|well|er|erm|um|uh|oh|no) )*(?:"
              + AWAY
              + "|(?:"
              + WHO
              + " )?(?:really |just |honestly )?(?:"
              + ANSWERS
              + "))"
              + AFTER);

  private CannotTellWords() {}

  /**
   * The answer if the line says that it cannot be told at all, does not apply, or not now; empty
   * for any other line.
   */
  public static Optional<Answer> answer(String line) {
    return Words.wish(line)
        .map(
            wish ->
                switch (wish) {
                  case UNKNOWN -> new Answer.CannotTell();
                  case SENSELESS -> new Answer.DoesNotApply();
                  case LATER -> new Answer.NotNow();
                  default -> null;
                });
  }

  static boolean isSaid(String line) {
    return LINE.matcher(plain(line)).matches();
  }

  /** The line without punctuation and with contractions written out. */
  private static String plain(String line) {
    return line.toLowerCase(Locale.ROOT)
        .replace('\u2019', '\'')
        .replaceAll("\\b(do|does|did|is|are|was|could|would|has|have)n'?t\\b", "$1 not")
        .replaceAll("\\b(?:can'?t|can not)\\b", "cannot")
        .replaceAll("\\bi'?m\\b", "i am")
        .replaceAll("\\b(we|they|you)'re\\b", "$1 are")
        .replaceAll("\\b(he|she)'s\\b", "$1 is")
        .replaceAll("\\bi'?ve\\b", "i have")
        .replaceAll("\\bhave no (idea|clue)\\b", "no $1")
        .replaceAll("[^\\p{L}\\p{N}]+", " ")
        .strip();
  }
}
