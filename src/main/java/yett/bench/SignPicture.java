package yett.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import yett.knowledge.Check;
import yett.paper.Markup;
import yett.paper.Svg;
import yett.paper.Svg.Pen;
import yett.wording.Figures;

/**
 * Draws the strongest signs of a cause: a bar for how often each is seen with it, and a mark for
 * how often on a sound gate.
 *
 * @param signs in the order in which they are drawn, at least one
 */
record SignPicture(String cause, List<Sign> signs) {
  private static final double WIDTH = 168;
  private static final double LEFT = 88;
  private static final double RIGHT = 148;
  private static final double TOP = 6;
  private static final double ROW = 8.4;
  private static final double SIZE = 2.9;
  private static final int LONGEST = 52;
  private static final String INK = "#1a1a1a";
  private static final String BAR = "#c4d3e6";
  private static final String EDGE = "#1b4f8a";
  private static final String MARK = "#a3221b";

  void draw(Markup page) {
    double bottom = TOP + ROW * signs.size();
    Svg svg = new Svg(page, WIDTH, bottom + 9, said());
    for (int percent = 0; percent <= 100; percent += 25) {
      double x = x(percent / 100.0);
      svg.line(x, TOP - 1, x, bottom, new Pen("#bdbdbd", 0.15));
      svg.words(percent + " %", x, TOP - 2.2, SIZE, "middle", INK);
    }
    for (int i = 0; i < signs.size(); i++) {
      row(svg, signs.get(i), TOP + ROW * i);
    }
    legend(svg, bottom + 5.5);
    svg.close();
  }

  private static void row(Svg svg, Sign sign, double y) {
    List<String> lines = lines(sign);
    for (int i = 0; i < lines.size(); i++) {
      svg.words(lines.get(i), 0, y + 3.2 + 3.5 * i, SIZE, "start", INK);
    }
    double end = Math.max(0.3, x(sign.with()) - LEFT);
    svg.box("with", LEFT, y + 1.4, end, 4.6, BAR, new Pen(EDGE, 0.2));
    mark(svg, x(sign.sound()), y + 0.7);
    svg.words(Figures.decibans(sign.decibans()), WIDTH - 4, y + 4.7, SIZE, "end", INK);
  }

  private static void mark(Svg svg, double x, double y) {
    svg.line(x, y, x, y + 6, new Pen(MARK, 0.7));
  }

  /** The question, and the answer below it. */
  private static List<String> lines(Sign sign) {
    List<String> lines = new ArrayList<>();
    String ask = sign.check().ask();
    lines.add(cut(sign.check().kind() == Check.Kind.COMPLAINT ? "Said: " + ask : ask));
    if (!sign.words().isEmpty()) {
      lines.add(cut("  " + sign.words()));
    }
    return lines;
  }

  private static String cut(String words) {
    return words.length() > LONGEST ? words.substring(0, LONGEST - 1) + "…" : words;
  }

  private static void legend(Svg svg, double y) {
    svg.box("with", LEFT, y - 2.6, 6, 3, BAR, new Pen(EDGE, 0.2));
    svg.words("with this cause", LEFT + 8, y, SIZE, "start", INK);
    svg.line(LEFT + 34, y - 3.2, LEFT + 34, y + 1, new Pen(MARK, 0.7));
    svg.words("on a sound gate", LEFT + 36, y, SIZE, "start", INK);
  }

  private String said() {
    StringBuilder words = new StringBuilder("How often its strongest signs are seen: " + cause);
    for (Sign sign : signs) {
      words.append(
          String.format(
              Locale.ROOT,
              "; %s %s: %.0f of a hundred, on a sound gate %.0f",
              sign.check().ask(),
              sign.words(),
              100 * sign.with(),
              100 * sign.sound()));
    }
    return words.toString();
  }

  private static double x(double chance) {
    return LEFT + (RIGHT - LEFT) * chance;
  }
}
