package yett.command.diagnose.sitting;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A prompt that leaves too little of its line to type in, divided so that what is typed follows
 * words that ask for it.
 *
 * @param said shown before, in lines of its own
 * @param asked the prompt itself
 */
record LongPrompt(String said, String asked) {
  /** The end of a sentence, before the rest of it that asks. */
  private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?;:])\\s+");

  private static final Pattern CLAUSE = Pattern.compile("(?<=,)\\s+");

  /**
   * Divides at the end of a sentence, else at a comma.
   *
   * @param most columns that the prompt itself may take
   */
  static LongPrompt of(String prompt, int most) {
    return divided(prompt, SENTENCE, most)
        .or(() -> divided(prompt, CLAUSE, most))
        .orElse(new LongPrompt(prompt + ":", ""));
  }

  /** The longest end of the prompt that fits. */
  private static Optional<LongPrompt> divided(String prompt, Pattern between, int most) {
    Matcher place = between.matcher(prompt);
    while (place.find()) {
      if (prompt.length() - place.end() <= most) {
        return Optional.of(
            new LongPrompt(prompt.substring(0, place.start()), prompt.substring(place.end())));
      }
    }
    return Optional.empty();
  }
}
