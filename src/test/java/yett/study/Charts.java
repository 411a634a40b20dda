package yett.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yett.calculation.Range;
import yett.calculation.SmallNumbers;

/** The figures of the study as SVG, in shades that also print in black and white. */
final class Charts {
  private static final List<String> SHADES = List.of("#1f4e79", "#c58b2a");

  private Charts() {}

  /**
   * Bars for the mean and a mark for the 90th percentile.
   *
   * @param kinds for each kind of simulated fault, minutes by policy
   */
  static String bars(String title, Map<String, Map<String, Sample>> kinds) {
    List<String> names = new ArrayList<>(kinds.values().iterator().next().keySet());
    double most =
        kinds.values().stream()
            .flatMap(m -> m.values().stream())
            .mapToDouble(Sample::ninetieth)
            .max()
            .orElse(1);
    double step = most > 1000 ? 200 : 100;
    int left = 290;
    int wide = 430;
    int rows = names.size() * kinds.size();
    int bottom = 70 + rows * 18 + names.size() * 12;
    StringBuilder svg = begin(left + wide + 40, bottom + 50, title);
    for (double x = 0; x <= most; x += step) {
      double at = left + wide * x / most;
      svg.append(line(at, 60, at, bottom, "#ddd", 1))
          .append(text(at, bottom + 16, "middle", Text.words("%.0f", x)));
    }
    svg.append(
        text(
            left + wide / 2.0,
            bottom + 36,
            "middle",
            "minutes, return visits and hand-overs charged; bar: mean, mark: nine in ten are below"));
    int y = 66;
    for (String name : names) {
      svg.append(text(left - 10, y + 9 * kinds.size() + 3, "end", name));
      int shade = 0;
      for (Map<String, Sample> kind : kinds.values()) {
        Sample sample = kind.get(name);
        double bar = wide * sample.mean() / most;
        double mark = left + wide * sample.ninetieth() / most;
        svg.append(
            Text.words(
                "<rect x='%d' y='%d' width='%.1f' height='14' fill='%s'/>%n",
                left, y, bar, SHADES.get(shade)));
        svg.append(line(mark, y - 1, mark, y + 15, SHADES.get(shade), 3));
        y += 18;
        shade++;
      }
      y += 12;
    }
    legend(svg, kinds.keySet().stream().toList(), left);
    return svg.append("</svg>\n").toString();
  }

  /** Share right over forecast, with 95 % intervals, and the diagonal of perfect calibration. */
  static String reliability(String title, Map<String, Scores> kinds) {
    int left = 80;
    int top = 70;
    int size = 400;
    StringBuilder svg = begin(left + size + 60, top + size + 60, title);
    for (int tick = 0; tick <= 100; tick += 20) {
      double x = left + size * tick / 100.0;
      double y = top + size - size * tick / 100.0;
      svg.append(line(x, top, x, top + size, "#ddd", 1))
          .append(line(left, y, left + size, y, "#ddd", 1));
      svg.append(text(x, top + size + 18, "middle", tick + " %"))
          .append(text(left - 8, y + 4, "end", tick + " %"));
    }
    svg.append(line(left, top + size, left + size, top, "#555", 1));
    svg.append(
        text(
            left + size / 2.0,
            top + size + 42,
            "middle",
            "chance given to the leading cause when the first repair is proposed"));
    svg.append(
        Text.words(
            "<text x='18' y='%d' transform='rotate(-90 18 %d)' text-anchor='middle'>share that was right</text>%n",
            top + size / 2, top + size / 2));
    int shade = 0;
    for (Scores scores : kinds.values()) {
      for (Scores.Group g : scores.groups()) {
        Range interval = SmallNumbers.share(g.hits(), g.count());
        double x = left + size * g.forecast() + (shade == 0 ? -2 : 2);
        svg.append(
            line(
                x,
                top + size * (1 - interval.low()),
                x,
                top + size * (1 - interval.high()),
                SHADES.get(shade),
                1.5));
        svg.append(
            Text.words(
                "<circle cx='%.1f' cy='%.1f' r='5' fill='%s'/>%n",
                x, top + size * (1 - g.right()), SHADES.get(shade)));
      }
      shade++;
    }
    legend(svg, kinds.keySet().stream().toList(), left);
    return svg.append("</svg>\n").toString();
  }

  /** The same numbers for another chart, under the same names. */
  static <A, B> Map<String, B> each(Map<String, A> all, java.util.function.Function<A, B> of) {
    Map<String, B> changed = new LinkedHashMap<>();
    all.forEach((name, value) -> changed.put(name, of.apply(value)));
    return changed;
  }

  private static StringBuilder begin(int width, int height, String title) {
    return new StringBuilder(
        Text.words(
            "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 %d %d' width='%d' height='%d' "
                + "font-family='sans-serif' font-size='12' role='img'>%n<title>%s</title>%n"
                + "<rect width='100%%' height='100%%' fill='white'/>%n"
                + "<text x='16' y='24' font-size='15' font-weight='bold'>%s</text>%n",
            width, height, width, height, title, title));
  }

  private static void legend(StringBuilder svg, List<String> names, int left) {
    int x = left;
    for (int i = 0; i < names.size(); i++) {
      svg.append(
          Text.words("<rect x='%d' y='36' width='12' height='12' fill='%s'/>%n", x, SHADES.get(i)));
      svg.append(text(x + 18, 46, "start", names.get(i)));
      x += 40 + 7 * names.get(i).length();
    }
  }

  private static String text(double x, double y, String anchor, String words) {
    return Text.words("<text x='%.1f' y='%.1f' text-anchor='%s'>%s</text>%n", x, y, anchor, words);
  }

  private static String line(
      double x1, double y1, double x2, double y2, String colour, double width) {
    return Text.words(
        "<line x1='%.1f' y1='%.1f' x2='%.1f' y2='%.1f' stroke='%s' stroke-width='%.1f'/>%n",
        x1, y1, x2, y2, colour, width);
  }
}
