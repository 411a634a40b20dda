package yett.bench;

import java.util.List;
import java.util.regex.Pattern;

/** Builds the text of a card (YAML), line by line. */
final class CardLines {
  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}(][^\\x00-\\x1f]*", Pattern.UNICODE_CHARACTER_CLASS);
  private static final Pattern OTHER_THAN_TEXT =
      Pattern.compile("(?i)(true|false|yes|no|on|off|null|y|n)");

  private final StringBuilder text = new StringBuilder();

  CardLines line(String field, String value) {
    text.append(field).append(": ").append(value).append('\n');
    return this;
  }

  /** Adds a field of words, unless there are none. */
  CardLines words(String field, String words) {
    return words.isBlank() ? this : line(field, quoted(words));
  }

  /** Adds a field of ids on one line, unless there are none. */
  CardLines ids(String field, List<String> ids) {
    return ids.isEmpty() ? this : line(field, "[" + String.join(", ", ids) + "]");
  }

  /** Adds a field with a line for each entry, unless there are none. */
  CardLines lines(String field, List<String> lines) {
    if (!lines.isEmpty()) {
      text.append(field).append(":\n");
      lines.forEach(l -> text.append("  - ").append(quoted(l)).append('\n'));
    }
    return this;
  }

  CardLines raw(String lines) {
    text.append(lines);
    return this;
  }

  CardLines divider() {
    text.append("---\n");
    return this;
  }

  /** The words, in quotes if YAML could take them for something else. */
  static String quoted(String words) {
    boolean plain =
        PLAIN.matcher(words).matches()
            && !OTHER_THAN_TEXT.matcher(words).matches()
            && !words.contains(": ")
            && !words.contains(" #")
            && !words.endsWith(":");
    return plain ? words : "\"" + words.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
