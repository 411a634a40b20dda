package yett.command.diagnose.danger;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.saying.DangerSayings.Danger;

/**
 * Reads a line that was typed at the list of dangers, as far as it is clear without asking.
 *
 * @param line as it was typed
 * @param text the same in small letters
 */
record DangerLine(String line, String text, List<Danger> dangers) {
  private static final String BETWEEN_NUMBERS = "([\\s,;]|\\band\\b)+";

  private static final Pattern NUMBERS =
      Pattern.compile("\\d{1,3}(" + BETWEEN_NUMBERS + "\\d{1,3})*[\\s,;]*");

  /** Says that nobody can tell about these dangers. */
  private static final Pattern UNKNOWN =
      Pattern.compile("(?:unknown|cannot tell)\\s+(" + NUMBERS + ")");

  private static final Pattern ALL_UNKNOWN = Pattern.compile("(?:unknown|cannot tell)\\s+all");

  /**
   * Words for "none of them". Only as the whole line; "no" is left out, because it may answer
   * another question.
   */
  private static final Set<String> NONE = Set.of("0", "none", "nothing");

  static DangerLine of(String line, List<Danger> dangers) {
    return new DangerLine(line.strip(), line.strip().toLowerCase(Locale.ROOT), dangers);
  }

  boolean is(String word) {
    return text.equals(word);
  }

  boolean isNone() {
    return NONE.contains(text);
  }

  /** The dangers about which nobody can tell; empty if the line does not say so. */
  Optional<Set<Danger>> unsure() {
    if (ALL_UNKNOWN.matcher(text).matches()) {
      return Optional.of(new LinkedHashSet<>(dangers));
    }
    Matcher unknown = UNKNOWN.matcher(text);
    return unknown.matches() ? numbered(unknown.group(1)) : Optional.empty();
  }

  boolean isNumbers() {
    return NUMBERS.matcher(text).matches();
  }

  /** The dangers whose numbers the line has; empty if one of the numbers is not on the list. */
  Optional<Set<Danger>> picked() {
    return numbered(text);
  }

  private Optional<Set<Danger>> numbered(String numbers) {
    Set<Danger> picked = new LinkedHashSet<>();
    for (String word : numbers.split(BETWEEN_NUMBERS)) {
      int number = Integer.parseInt(word);
      if (number < 1 || number > dangers.size()) {
        return Optional.empty();
      }
      picked.add(dangers.get(number - 1));
    }
    return Optional.of(picked);
  }
}
