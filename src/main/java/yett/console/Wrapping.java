package yett.console;

import java.util.ArrayList;
import java.util.List;
import org.jline.utils.AttributedString;
import org.jline.utils.WCWidth;

/** Breaks text into lines by the columns that its characters take on a screen. */
final class Wrapping {
  private Wrapping() {}

  /**
   * Lines no wider than {@code width}, broken at ordinary spaces. Only a run that is wider than a
   * whole line is broken elsewhere: at a no-break space or, if it has none, anywhere but before a
   * combining mark.
   */
  static List<AttributedString> lines(AttributedString text, int width) {
    List<AttributedString> lines = new ArrayList<>();
    int from = skipBlanks(text, 0);
    while (from < text.length()) {
      int end = breakPoint(text, from, furthest(text, from, width));
      lines.add(text.subSequence(from, trimmed(text, from, end)));
      from = skipBlanks(text, end);
    }
    return lines;
  }

  /** The same for text without style. */
  static List<String> folded(String text, int width) {
    return lines(new AttributedString(text), width).stream()
        .map(AttributedString::toString)
        .toList();
  }

  static int columns(CharSequence text) {
    return text.codePoints().map(Wrapping::columns).sum();
  }

  private static int columns(int c) {
    return Math.max(0, WCWidth.wcwidth(c));
  }

  private static int furthest(CharSequence text, int from, int width) {
    int end = from;
    int used = 0;
    while (end < text.length()) {
      int c = Character.codePointAt(text, end);
      used += columns(c);
      if (used > width && end > from) {
        return end;
      }
      end += Character.charCount(c);
    }
    return end;
  }

  private static int breakPoint(CharSequence text, int from, int furthest) {
    if (furthest == text.length()) {
      return furthest;
    }
    for (int i = furthest; i > from; i--) {
      if (text.charAt(i) == ' ') {
        return i;
      }
    }
    for (int i = furthest; i > from; i--) {
      if (Characters.isNoBreakSpace(text.charAt(i))) {
        return i;
      }
    }
    return furthest;
  }

  private static int skipBlanks(CharSequence text, int from) {
    int i = from;
    while (i < text.length() && isBlank(text.charAt(i))) {
      i++;
    }
    return i;
  }

  private static int trimmed(CharSequence text, int from, int end) {
    int i = end;
    while (i > from && isBlank(text.charAt(i - 1))) {
      i--;
    }
    return i;
  }

  private static boolean isBlank(char c) {
    return c == ' ' || Characters.isNoBreakSpace(c);
  }
}
