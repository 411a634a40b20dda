package yett.record;

import java.util.ArrayList;
import java.util.List;

/** What has to fit on a page: the beginning, and what was left out. */
final class Shortened {
  /** A line and its second one; only what people said is ever cut. */
  private static final int LONGEST = 150;

  private Shortened() {}

  static String cut(String said) {
    return said.length() > LONGEST ? said.substring(0, LONGEST) + " …" : said;
  }

  /** The first of them, and how many more there are. */
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
