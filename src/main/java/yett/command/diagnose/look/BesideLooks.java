package yett.command.diagnose.look;

import java.util.List;
import yett.command.diagnose.question.PromptRequests;
import yett.knowledge.Check;

/** Finds out whether a line at a round of looks is about something else. */
record BesideLooks(PromptRequests wishes) {
  /** Whether a line begins with the number of a look. */
  static boolean isNumbered(String line) {
    return line.strip().matches("[?-]?\\s*\\d.*");
  }

  /** Hears words that answer no look, or share only one word with an outcome; false if none fit. */
  boolean isHeard(List<Check> looks, String line, RoundLine.Heard heard) {
    boolean numbered = isNumbered(line);
    String words =
        numbered ? line.replaceAll("[?-]?\\d+[a-z]?\\b|[,;]", " ").strip() : line.strip();
    boolean answers = numbered && heard.complaints().isEmpty();
    boolean elsewhere =
        words.contains(" ")
            && (!answers || wishes.volunteered().isDanger(words))
            && looks.stream().allMatch(c -> wishes.volunteered().isElsewhere(c, words));
    boolean unknown =
        !numbered && !words.isEmpty() && RoundLine.read(looks, words).said().isEmpty();
    return (elsewhere || unknown) && wishes.volunteered().hear(words);
  }
}
