package yett.console;

import static org.jline.utils.AttributedStyle.BLACK;
import static org.jline.utils.AttributedStyle.BLUE;
import static org.jline.utils.AttributedStyle.BOLD;
import static org.jline.utils.AttributedStyle.BRIGHT;
import static org.jline.utils.AttributedStyle.DEFAULT;
import static org.jline.utils.AttributedStyle.RED;
import static org.jline.utils.AttributedStyle.WHITE;
import static org.jline.utils.AttributedStyle.YELLOW;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jline.utils.AttributedCharSequence.ForceMode;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.jline.utils.AttributedStyle;

/**
 * Writes blocks as text. The characters are the same with and without colour, so that nothing is
 * lost without it. Only the sixteen basic colours are used, and a coloured background always has
 * its own foreground colour, so that it can be read on light and dark screens.
 */
public final class Renderer {
  private static final int BASIC_COLOURS = 16;
  private static final String MARGIN = "  ";
  private static final int LONGEST_BAR = 24;
  private static final int SHORTEST_BAR = 8;
  private static final int ROOM_FOR_COLUMNS = 60;
  private static final AttributedStyle GREY = DEFAULT.foreground(BRIGHT + BLACK);

  private final Layout layout;
  private final List<AttributedString> lines = new ArrayList<>();

  private Renderer(Layout layout) {
    this.layout = layout;
  }

  /** The blocks as lines, each ended by a line feed, none wider than the layout. */
  public static String render(List<Block> blocks, Layout layout) {
    Renderer renderer = new Renderer(layout);
    blocks.forEach(renderer::add);
    return renderer.lines.stream()
        .map(line -> layout.colour() ? line.toAnsi(BASIC_COLOURS, ForceMode.None) : line.toString())
        .map(line -> line.replace('\u00A0', ' ') + "\n")
        .collect(Collectors.joining());
  }

  /** Words that share a line with others, such as a prompt: made safe to show, but not broken. */
  static String inline(String words, Layout layout) {
    return new Renderer(layout).forScreen(words).replace('\u00A0', ' ');
  }

  /** A prompt, broken at spaces if it is wider than the screen; what is typed follows it. */
  static String prompt(String words, Layout layout) {
    String inline = inline(words, layout);
    String asked = inline.stripTrailing();
    return String.join("\n", Wrapping.folded(asked, layout.width()))
        + inline.substring(asked.length());
  }

  private void add(Block block) {
    if (block instanceof Block.Heading heading) {
      add(heading);
    } else if (block instanceof Block.Paragraph paragraph) {
      add(plain(MARGIN), styled(paragraph.text(), DEFAULT));
    } else if (block instanceof Block.Numbered numbered) {
      add(numbered);
    } else if (block instanceof Block.Rows rows) {
      add(rows);
    } else if (block instanceof Block.Signal signal) {
      add(signal);
    } else if (block instanceof Block.Bars bars) {
      add(bars);
    } else if (block instanceof Block.Plot plot) {
      new PlotDrawing(plot, layout.width() - MARGIN.length(), this::label)
          .lines()
          .forEach(line -> lines.add(plain(MARGIN + line)));
    } else if (block instanceof Block.Rule) {
      String stroke = layout.unicode() ? "─" : "-";
      lines.add(plain(MARGIN + stroke.repeat(layout.width() - MARGIN.length())));
    } else if (block instanceof Block.Blank) {
      addBlank();
    }
  }

  private void addBlank() {
    if (lines.isEmpty() || lines.get(lines.size() - 1).length() > 0) {
      lines.add(AttributedString.EMPTY);
    }
  }

  private void add(Block.Heading heading) {
    if (!lines.isEmpty()) {
      addBlank();
    }
    add(AttributedString.EMPTY, styled(heading.text(), BOLD));
  }

  private void add(Block.Numbered numbered) {
    int widest = widest(numbered.items().stream().map(Block.Item::label));
    for (Block.Item item : numbered.items()) {
      String label = label(item.label());
      String pad = " ".repeat(widest - Wrapping.columns(label));
      boolean number = label.chars().allMatch(Character::isDigit);
      AttributedStringBuilder first = new AttributedStringBuilder().append(MARGIN);
      first.append(number ? pad : "").styled(BOLD, label).append(number ? "" : pad).append("  ");
      AttributedStringBuilder text = new AttributedStringBuilder();
      text.append(styled(item.text(), DEFAULT));
      item.hint()
          .ifPresent(
              hint ->
                  text.styled(GREY, layout.unicode() ? " – " : " - ").append(styled(hint, GREY)));
      add(first.toAttributedString(), text.toAttributedString());
    }
  }

  private void add(Block.Rows rows) {
    int widest = widest(rows.rows().stream().map(Block.Row::name));
    boolean aligned = layout.width() >= ROOM_FOR_COLUMNS && widest <= layout.width() / 3;
    for (Block.Row row : rows.rows()) {
      String name = label(row.name()) + ":";
      AttributedString value = styled(row.value(), DEFAULT);
      if (aligned) {
        String pad = " ".repeat(widest + 2 - Wrapping.columns(name) + 1);
        add(plain(MARGIN + name + pad), value);
      } else {
        add(MARGIN.length() * 2, plain(MARGIN), joined(plain(name + " "), value));
      }
    }
  }

  private void add(Block.Signal signal) {
    String word = signal.word().name();
    int widest = widest(Stream.of(SignalWord.values()).map(Enum::name));
    AttributedStringBuilder first = new AttributedStringBuilder().append(MARGIN);
    first.styled(panel(signal.word()), word).append(":");
    first.append(" ".repeat(widest - word.length() + 1));
    add(first.toAttributedString(), styled(signal.text(), DEFAULT));
  }

  /**
   * The colours of ANSI Z535.1, as near as sixteen allow. There is no orange; the darker yellow is
   * the one that most screens show as orange or amber. Black is not bold, because some terminals
   * would turn it grey.
   */
  private static AttributedStyle panel(SignalWord word) {
    return switch (word) {
      case DANGER -> BOLD.foreground(BRIGHT + WHITE).background(RED);
      case WARNING -> DEFAULT.foreground(BLACK).background(YELLOW);
      case CAUTION -> DEFAULT.foreground(BLACK).background(BRIGHT + YELLOW);
      case NOTICE -> BOLD.foreground(BRIGHT + WHITE).background(BLUE);
    };
  }

  /**
   * Adds label, number and drawing in this order, so that each line makes sense before the drawing
   * is reached.
   */
  private void add(Block.Bars bars) {
    int words = widest(bars.bars().stream().map(Block.Bar::inWords));
    int half = (layout.width() - MARGIN.length()) / 2;
    int label = Math.min(half, widest(bars.bars().stream().map(Block.Bar::label)));
    int room = layout.width() - MARGIN.length() - label - 2 - words - 2;
    for (Block.Bar bar : bars.bars()) {
      if (room < SHORTEST_BAR) {
        String whole = label(bar.label()) + ": " + label(bar.inWords());
        add(MARGIN.length() * 2, plain(MARGIN), plain(whole));
      } else {
        add(bar, label, words, Math.min(LONGEST_BAR, room));
      }
    }
  }

  private void add(Block.Bar bar, int labelColumns, int wordColumns, int barColumns) {
    List<AttributedString> label = Wrapping.lines(plain(label(bar.label())), labelColumns);
    for (int i = 0; i < label.size() - 1; i++) {
      lines.add(joined(plain(MARGIN), label.get(i)));
    }
    String last = label.isEmpty() ? "" : label.get(label.size() - 1).toString();
    String words = label(bar.inWords());
    String line =
        MARGIN
            + padded(last, labelColumns)
            + "  "
            + " ".repeat(wordColumns - Wrapping.columns(words))
            + words
            + "  "
            + drawn(bar.fraction(), barColumns);
    lines.add(plain(line.stripTrailing()));
  }

  private String drawn(double fraction, int columns) {
    if (!layout.unicode()) {
      return "#".repeat((int) Math.round(fraction * columns));
    }
    int halves = (int) Math.round(fraction * columns * 2);
    return "█".repeat(halves / 2) + "▌".repeat(halves % 2);
  }

  private static String padded(String text, int columns) {
    return text + " ".repeat(Math.max(0, columns - Wrapping.columns(text)));
  }

  private void add(AttributedString first, AttributedString text) {
    add(Wrapping.columns(first), first, text);
  }

  /** Adds text after {@code first}; its further lines are indented. */
  private void add(int indent, AttributedString first, AttributedString text) {
    // A label may be as long as the longest word to type, but has to leave some room for the text.
    int room = Math.max(layout.width() / 3, layout.width() - indent);
    if (Wrapping.columns(first) > layout.width() - room) {
      Wrapping.lines(joined(first, text), layout.width() - MARGIN.length())
          .forEach(line -> lines.add(joined(plain(MARGIN), line)));
      return;
    }
    List<AttributedString> wrapped = Wrapping.lines(text, room);
    if (wrapped.isEmpty()) {
      addUnlessBlank(first);
    }
    AttributedString head = first;
    for (AttributedString line : wrapped) {
      lines.add(joined(head, line));
      head = plain(" ".repeat(indent));
    }
  }

  /** Adds a label even if no text follows it. */
  private void addUnlessBlank(AttributedString label) {
    int end = label.toString().stripTrailing().length();
    if (end > 0) {
      lines.add(label.subSequence(0, end));
    }
  }

  private static AttributedString joined(AttributedString left, AttributedString right) {
    return new AttributedStringBuilder().append(left).append(right).toAttributedString();
  }

  private static AttributedString plain(String text) {
    return new AttributedString(text);
  }

  private AttributedString styled(Text text, AttributedStyle base) {
    AttributedStringBuilder out = new AttributedStringBuilder();
    for (Text.Span span : text.spans()) {
      AttributedStyle style =
          switch (span.emphasis()) {
            case PLAIN -> base;
            case STRONG -> base.bold();
            case DIM -> GREY;
          };
      for (char c : forScreen(span.words()).toCharArray()) {
        if (c != ' ' || out.length() == 0 || out.charAt(out.length() - 1) != ' ') {
          out.styled(style, String.valueOf(c));
        }
      }
    }
    return out.toAttributedString();
  }

  private String forScreen(String text) {
    String safe = Characters.forScreen(text);
    return layout.unicode() ? safe : Characters.toAscii(safe);
  }

  /**
   * A name or a number without blanks at its ends, because it is shown in a column and they would
   * shift it.
   */
  private String label(String text) {
    return forScreen(text).replaceAll(" +", " ").replaceAll("^[ \u00A0]+|[ \u00A0]+$", "");
  }

  private int widest(Stream<String> texts) {
    return texts.map(this::label).mapToInt(Wrapping::columns).max().orElse(0);
  }
}
