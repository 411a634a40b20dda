package yett.console;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A piece of a screen. Blocks are shown one below the other, so that a screen reader reads them in
 * the intended order. All except headings are indented.
 */
public sealed interface Block {

  /** A heading, with an empty line above it. */
  record Heading(Text text) implements Block {}

  /** Running text. */
  record Paragraph(Text text) implements Block {}

  /** Entries to choose from or to do in order, each with a label to type or to refer to. */
  record Numbered(List<Item> items) implements Block {
    public Numbered {
      items = List.copyOf(items);
    }
  }

  /**
   * One line of a {@link Numbered} list.
   *
   * @param label usually a number, sometimes a word to type
   * @param hint a remark that follows the text
   */
  record Item(String label, Text text, Optional<Text> hint) {}

  /** Names and their values. */
  record Rows(List<Row> rows) implements Block {
    public Rows {
      rows = List.copyOf(rows);
    }
  }

  /** One line of {@link Rows}. */
  record Row(String name, Text value) {}

  /** A safety message under its signal word. */
  record Signal(SignalWord word, Text text) implements Block {}

  /** Shares of a whole, each given in words and, if there is room, drawn. */
  record Bars(List<Bar> bars) implements Block {
    public Bars {
      bars = List.copyOf(bars);
    }
  }

  /**
   * One line of {@link Bars}.
   *
   * @param fraction length of the bar, 0 to 1
   * @param inWords the same number in words ("62 in 100")
   * @throws IllegalArgumentException if the fraction is outside 0 to 1
   */
  record Bar(String label, double fraction, String inWords) {
    public Bar {
      if (!(fraction >= 0 && fraction <= 1)) {
        throw new IllegalArgumentException(
            "Bar '%s': fraction '%s' is not between 0 and 1".formatted(label, fraction));
      }
    }
  }

  /**
   * A curve, drawn as wide as the page allows. A screen reader cannot read it, so what matters in
   * it is said in words above it.
   *
   * @param points from left to right, two or more
   * @param levels horizontal lines across the drawing, each with its label
   * @param across the quantity from left to right, with its unit
   * @param up the quantity upwards, with its unit
   * @throws IllegalArgumentException if there are too few points, they do not run to the right, or
   *     a number is not finite
   */
  record Plot(List<Point> points, List<Level> levels, String across, String up) implements Block {
    public Plot {
      points = List.copyOf(points);
      levels = List.copyOf(levels);
      if (points.size() < 2) {
        throw new IllegalArgumentException("A plot needs two points, not " + points.size());
      }
      for (int i = 1; i < points.size(); i++) {
        if (!(points.get(i).across() > points.get(i - 1).across())) {
          throw new IllegalArgumentException("Point " + i + " does not lie to the right");
        }
      }
    }
  }

  /** A point of a {@link Plot}. */
  record Point(double across, double up) {
    public Point {
      if (!Double.isFinite(across) || !Double.isFinite(up)) {
        throw new IllegalArgumentException("A point must be finite, not " + across + ", " + up);
      }
    }
  }

  /** A horizontal line in a {@link Plot}; the label is a number or a short word. */
  record Level(String label, double up) {
    public Level {
      if (!Double.isFinite(up)) {
        throw new IllegalArgumentException("A level must be finite, not " + up);
      }
    }
  }

  /** A line across the page. */
  record Rule() implements Block {}

  /** One empty line; several in a row count as one. */
  record Blank() implements Block {}

  static Block heading(String text) {
    return new Heading(Text.of(text));
  }

  static Block paragraph(String text) {
    return new Paragraph(Text.of(text));
  }

  static Block paragraph(Text text) {
    return new Paragraph(text);
  }

  /** A list labelled 1, 2, 3 and so on. */
  static Block numbered(List<String> texts) {
    return new Numbered(
        IntStream.range(0, texts.size())
            .mapToObj(i -> item(Integer.toString(i + 1), texts.get(i)))
            .toList());
  }

  static Item item(String label, String text) {
    return new Item(label, Text.of(text), Optional.empty());
  }

  static Item item(String label, String text, String hint) {
    return hint.isEmpty()
        ? item(label, text)
        : new Item(label, Text.of(text), Optional.of(Text.of(hint)));
  }

  static Block rows(Row... rows) {
    return new Rows(List.of(rows));
  }

  static Row row(String name, String value) {
    return new Row(name, Text.of(value));
  }

  static Block signal(SignalWord word, String text) {
    return new Signal(word, Text.of(text));
  }

  static Block bars(Bar... bars) {
    return new Bars(List.of(bars));
  }

  static Block rule() {
    return new Rule();
  }

  static Block blank() {
    return new Blank();
  }
}
