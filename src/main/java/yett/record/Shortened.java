package yett.record;

import java.util.ArrayList;
import java.util.List;

/** Shortens text and lists to fit on a page, and says what was left out. */
final class Shortened {
  /** In characters, about two lines. Only people's own words are ever cut. */
  private static final int LONGEST = 150;

  private Shortened() {}

  static String cut(String said) {
    return said.length() > LONGEST ? said.substring(0, LONGEST) + " …" : said;
  }

  /** The first of these lines, and a line that says how many more there are. */
  static List<String> some(List<String> lines, int most) {
    List<String> some = new ArrayList<>();
    if (lines.isEmpty() || most == 0) {
      return some;
    }
    lines.stream().limit(lines.size() > most ? most - 1L : most).forEach(some::add);
    if (lines.size() > some.size()) {
      some.add((lines.size() - some.size()) + " more: dispatch CASE --json");
    }
    return some;
  }
}
