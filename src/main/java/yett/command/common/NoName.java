package yett.command.common;

import java.util.regex.Pattern;

/** Recognises what is typed for a name and is none: "nobody", "?", "n/a". */
public final class NoName {
  private static final Pattern NONE =
      Pattern.compile(
          "(?i)(?:nobody|no[ -]?one|none|nothing|nil|n/?a|tbd|tba|unknown|not known|anybody"
              + "|anyone|somebody|someone|[^\\p{L}\\p{N}]+)[?!.]*"
              + "(?:$|[,;].*|\\s+(?:yet|free|there|available|goes|can go|at the moment|for now)\\b.*)");

  private NoName() {}

  /** Whether the line, or what stands before its first comma, is no name. */
  public static boolean isIn(String line) {
    String text = line.strip();
    return !text.isEmpty()
        && (CannotTellWords.answer(text).isPresent() || NONE.matcher(text).matches());
  }
}
