package yett.knowledge;

import java.util.List;

/** The text of a file of cards, in which values of fields can be replaced in place. */
final class CardText {
  private final StringBuilder text;

  CardText(String text) {
    this.text = new StringBuilder(text);
  }

  /** The offset of a position; lines and columns count from 1, columns in code points. */
  int offset(int line, int column) {
    int at = 0;
    for (int i = 1; i < line; i++) {
      at = text.indexOf("\n", at) + 1;
    }
    return text.offsetByCodePoints(at, column - 1);
  }

  /**
   * Replaces the plain value of a field.
   *
   * @param key offset of the field's key
   */
  void replaceValue(int key, String value) {
    int start = valueStart(key);
    text.replace(start, valueEnd(start), value);
  }

  /**
   * Adds fields after another one in the same style: on its line within braces, or on lines of
   * their own.
   *
   * @param key offset of that field's key
   */
  void addBehind(int key, List<String> fields) {
    if (fields.isEmpty()) {
      return;
    }
    int end = valueEnd(valueStart(key));
    if (inBraces(key)) {
      text.insert(end, ", " + String.join(", ", fields));
      return;
    }
    int lineStart = text.lastIndexOf("\n", key) + 1;
    String newLine = (text.indexOf("\r\n") >= 0 ? "\r\n" : "\n") + text.substring(lineStart, key);
    int lineEnd = lineEnd(end);
    text.insert(lineEnd, newLine + String.join(newLine, fields));
  }

  /** Whether a field is one of several in braces, not on a line of its own. */
  private boolean inBraces(int key) {
    int lineStart = text.lastIndexOf("\n", key) + 1;
    int next = valueEnd(valueStart(key));
    while (next < text.length() && Character.isWhitespace(text.charAt(next))) {
      next++;
    }
    boolean more = next < text.length() && ",}".indexOf(text.charAt(next)) >= 0;
    return more || !text.substring(lineStart, key).isBlank();
  }

  private int valueStart(int key) {
    int at = key;
    if (text.charAt(key) == '"' || text.charAt(key) == '\'') {
      at = text.indexOf(String.valueOf(text.charAt(key)), key + 1) + 1;
    }
    at = text.indexOf(":", at) + 1;
    while (Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    return at;
  }

  /** The end of a plain value: at the end of its line, a comment, a comma or a brace. */
  private int valueEnd(int start) {
    char first = text.charAt(start);
    if (first == '"' || first == '\'') {
      return text.indexOf(String.valueOf(first), start + 1) + 1;
    }
    int end = start;
    while (end < text.length() && ",}\r\n".indexOf(text.charAt(end)) < 0 && !comment(end)) {
      end++;
    }
    while (end > start && Character.isWhitespace(text.charAt(end - 1))) {
      end--;
    }
    return end;
  }

  private boolean comment(int at) {
    return text.charAt(at) == '#' && Character.isWhitespace(text.charAt(at - 1));
  }

  private int lineEnd(int from) {
    int end = from;
    while (end < text.length() && "\r\n".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    return end;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
