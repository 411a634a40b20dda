package yett.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static yett.console.Block.bars;
import static yett.console.Block.blank;
import static yett.console.Block.heading;
import static yett.console.Block.item;
import static yett.console.Block.numbered;
import static yett.console.Block.paragraph;
import static yett.console.Block.row;
import static yett.console.Block.rows;
import static yett.console.Block.rule;
import static yett.console.Block.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class RendererTest {
  private static final String ESCAPES = "\u001b\\[[0-9;]*m";

  private static final List<Block> PAGE =
      List.of(
          heading("Chain sag, upper run"),
          paragraph(
              Text.of(
                      "How far does the upper run of the chain hang below a straight line between"
                          + " its brackets? On this gate ")
                  .and(Text.strong("38\u00a0mm to 64\u00a0mm"))
                  .and(" is usual ")
                  .and(Text.dim("(span 6.4\u00a0m)"))
                  .and(".")),
          signal(
              SignalWord.WARNING,
              "The leaf can move by itself. Open the isolator, lock it and keep the key."),
          signal(SignalWord.NOTICE, "Do not kink the chain."),
          blank(),
          new Block.Numbered(
              List.of(
                  item("1", "Within the usual range"),
                  item(
                      "2",
                      "More than usual",
                      "the chain is slack, or worn so far that it has grown"),
                  item("10", "Less than usual"),
                  item("why", "Why this question"))),
          blank(),
          rows(
              row("Gate", "North Basin, leaf 2"),
              row("Instrument", "tape, read to the nearest 1\u00a0mm"),
              row(
                  "Usual range from",
                  "span and chain mass, by the parabola for a shallow hanging chain")),
          rule(),
          bars(
              new Block.Bar("Chain slack", 0.62, "62 in 100"),
              new Block.Bar("Chain worn", 0.29, "29 in 100"),
              new Block.Bar("Not in this rule base", 0.02, "2 in 100")));

  private static String render(int width, Block... blocks) {
    return Renderer.render(List.of(blocks), new Layout(width, false, true));
  }

  @Test
  void a_prompt_that_is_wider_than_the_screen_is_broken_between_words() {
    Layout narrow = new Layout(40, false, true);
    assertThat(Renderer.prompt("Can it be at some gates only, not all? (Enter: none)> ", narrow))
        .isEqualTo("Can it be at some gates only, not all?\n(Enter: none)> ");
    assertThat(Renderer.prompt("Id> ", narrow)).isEqualTo("Id> ");
  }

  @Test
  void a_page_of_80_columns() {
    assertThat(Renderer.render(PAGE, new Layout(80, false, true)))
        .isEqualTo(
            """
            Chain sag, upper run
              How far does the upper run of the chain hang below a straight line between its
              brackets? On this gate 38 mm to 64 mm is usual (span 6.4 m).
              WARNING: The leaf can move by itself. Open the isolator, lock it and keep the
                       key.
              NOTICE:  Do not kink the chain.

                1  Within the usual range
                2  More than usual – the chain is slack, or worn so far that it has grown
               10  Less than usual
              why  Why this question

              Gate:              North Basin, leaf 2
              Instrument:        tape, read to the nearest 1 mm
              Usual range from:  span and chain mass, by the parabola for a shallow hanging
                                 chain
              ──────────────────────────────────────────────────────────────────────────────
              Chain slack            62 in 100  ███████████████
              Chain worn             29 in 100  ███████
              Not in this rule base   2 in 100  ▌
            """);
  }

  @Test
  void a_page_of_120_columns() {
    assertThat(Renderer.render(PAGE, new Layout(120, false, true)))
        .isEqualTo(
            """
            Chain sag, upper run
              How far does the upper run of the chain hang below a straight line between its brackets? On this gate 38 mm to 64 mm
              is usual (span 6.4 m).
              WARNING: The leaf can move by itself. Open the isolator, lock it and keep the key.
              NOTICE:  Do not kink the chain.

                1  Within the usual range
                2  More than usual – the chain is slack, or worn so far that it has grown
               10  Less than usual
              why  Why this question

              Gate:              North Basin, leaf 2
              Instrument:        tape, read to the nearest 1 mm
              Usual range from:  span and chain mass, by the parabola for a shallow hanging chain
              ──────────────────────────────────────────────────────────────────────────────────────────────────────────────────────
              Chain slack            62 in 100  ███████████████
              Chain worn             29 in 100  ███████
              Not in this rule base   2 in 100  ▌
            """);
  }

  @Test
  void a_page_of_40_columns() {
    assertThat(Renderer.render(PAGE, new Layout(40, false, true)))
        .isEqualTo(
            """
            Chain sag, upper run
              How far does the upper run of the
              chain hang below a straight line
              between its brackets? On this gate
              38 mm to 64 mm is usual (span 6.4 m).
              WARNING: The leaf can move by itself.
                       Open the isolator, lock it
                       and keep the key.
              NOTICE:  Do not kink the chain.

                1  Within the usual range
                2  More than usual – the chain is
                   slack, or worn so far that it has
                   grown
               10  Less than usual
              why  Why this question

              Gate: North Basin, leaf 2
              Instrument: tape, read to the
                nearest 1 mm
              Usual range from: span and chain
                mass, by the parabola for a shallow
                hanging chain
              ──────────────────────────────────────
              Chain slack: 62 in 100
              Chain worn: 29 in 100
              Not in this rule base: 2 in 100
            """);
  }

  @Test
  void a_page_of_80_columns_in_colour() {
    assertThat(Renderer.render(PAGE, new Layout(80, true, true)).replace('\u001b', '^'))
        .isEqualTo(
            """
            ^[1mChain sag, upper run^[0m
              How far does the upper run of the chain hang below a straight line between its
              brackets? On this gate ^[1m38 mm to 64 mm^[0m is usual ^[90m(span 6.4 m)^[0m.
              ^[30;43mWARNING^[0m: The leaf can move by itself. Open the isolator, lock it and keep the
                       key.
              ^[97;44;1mNOTICE^[0m:  Do not kink the chain.

                ^[1m1^[0m  Within the usual range
                ^[1m2^[0m  More than usual^[90m – the chain is slack, or worn so far that it has grown^[0m
               ^[1m10^[0m  Less than usual
              ^[1mwhy^[0m  Why this question

              Gate:              North Basin, leaf 2
              Instrument:        tape, read to the nearest 1 mm
              Usual range from:  span and chain mass, by the parabola for a shallow hanging
                                 chain
              ──────────────────────────────────────────────────────────────────────────────
              Chain slack            62 in 100  ███████████████
              Chain worn             29 in 100  ███████
              Not in this rule base   2 in 100  ▌
            """);
  }

  @Test
  void a_page_in_ascii() {
    assertThat(Renderer.render(PAGE, new Layout(80, false, false)))
        .isEqualTo(
            """
            Chain sag, upper run
              How far does the upper run of the chain hang below a straight line between its
              brackets? On this gate 38 mm to 64 mm is usual (span 6.4 m).
              WARNING: The leaf can move by itself. Open the isolator, lock it and keep the
                       key.
              NOTICE:  Do not kink the chain.

                1  Within the usual range
                2  More than usual - the chain is slack, or worn so far that it has grown
               10  Less than usual
              why  Why this question

              Gate:              North Basin, leaf 2
              Instrument:        tape, read to the nearest 1 mm
              Usual range from:  span and chain mass, by the parabola for a shallow hanging
                                 chain
              ------------------------------------------------------------------------------
              Chain slack            62 in 100  ###############
              Chain worn             29 in 100  #######
              Not in this rule base   2 in 100
            """);
  }

  @ParameterizedTest
  @EnumSource(SignalWord.class)
  void a_signal_word_says_the_same_with_and_without_colour(SignalWord word) {
    List<Block> signal = List.of(signal(word, "Stand clear."));

    String coloured = Renderer.render(signal, new Layout(80, true, true));

    assertThat(coloured).containsPattern(ESCAPES + word);
    assertThat(coloured.replaceAll(ESCAPES, ""))
        .isEqualTo(Renderer.render(signal, new Layout(80, false, true)));
  }

  @Test
  void a_number_and_its_unit_stay_on_one_line() {
    String tenLetters = "0123456789 ";
    assertThat(render(40, paragraph(tenLetters.repeat(3) + "24.3\u00a0V or 5.8\u202fA")))
        .isEqualTo(
            """
              0123456789 0123456789 0123456789
              24.3 V or 5.8 A
            """);
  }

  @Test
  void wide_and_combining_characters_count_by_the_columns_they_take() {
    assertThat(render(40, paragraph("門".repeat(20)), paragraph("e\u0301".repeat(39))))
        .isEqualTo("  %s\n  門\n  %s\n  e\u0301\n".formatted("門".repeat(19), "e\u0301".repeat(38)));
  }

  @Test
  void text_from_elsewhere_cannot_steer_the_terminal() {
    assertThat(
            render(
                80,
                heading("a\u001b[2Jb\u009b31mc"),
                paragraph("back\bspace \u202Eturned\u202C bell\u0007\nnext\tline"),
                rows(row("na\u001bme", "va\rlue"))))
        .isEqualTo(
            """
            a[2Jb31mc
              backspace turned bell next line
              name:  va lue
            """);
  }

  @Test
  void ascii_keeps_the_words_of_the_trade() {
    assertThat(
            Renderer.render(
                List.of(paragraph("0.4 Ω ± 5 µA → ≥ 20 °C, 7½ in, ½ in, 10⁻³ m² “ok” … Zoë 門")),
                new Layout(80, false, false)))
        .isEqualTo(
            "  0.4 ohm +/- 5 uA -> >= 20 degC, 7 1/2 in, 1/2 in, 10^-3 m^2 \"ok\" ... Zoe ?\n");
  }

  @Test
  void a_list_without_labels_of_its_own_counts() {
    assertThat(render(80, numbered(List.of("Isolate", "Lock", "Prove dead"))))
        .isEqualTo(
            """
              1  Isolate
              2  Lock
              3  Prove dead
            """);
  }

  @Test
  void empty_lines_do_not_add_up() {
    assertThat(render(80, heading("A"), blank(), blank(), heading("B"), paragraph(" ")))
        .isEqualTo("A\n\nB\n");
  }

  @Test
  void a_long_label_of_a_bar_comes_before_its_number() {
    Block.Bar bar =
        new Block.Bar("The charger delivers nothing although its supply is there", 1, "certain");

    assertThat(render(80, bars(bar)))
        .isEqualTo(
            """
              The charger delivers nothing although
              its supply is there                      certain  ████████████████████████
            """);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
  void a_bar_is_a_fraction(double fraction) {
    assertThatThrownBy(() -> new Block.Bar("Chain worn", fraction, "x"))
        .hasMessage("Bar 'Chain worn': fraction '" + fraction + "' is not between 0 and 1");
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void no_line_is_too_wide_or_ends_in_blanks_and_colour_changes_no_character(long seed) {
    Random random = new Random(seed);
    for (int page = 0; page < 100; page++) {
      List<Block> blocks = randomPage(random);
      Layout plain = new Layout(40 + random.nextInt(81), false, random.nextBoolean());
      String text = Renderer.render(blocks, plain);

      assertThat(text.lines())
          .allMatch(line -> Wrapping.columns(line) <= plain.width())
          .noneMatch(line -> line.endsWith(" "));
      assertThat(
              Renderer.render(blocks, new Layout(plain.width(), true, plain.unicode()))
                  .replaceAll(ESCAPES, ""))
          .isEqualTo(text);
    }
  }

  private static List<Block> randomPage(Random random) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      blocks.add(
          switch (random.nextInt(8)) {
            case 0 -> heading(words(random, 20));
            case 1 ->
                paragraph(
                    Text.of(words(random, 40))
                        .and(Text.strong(words(random, 9)))
                        .and(Text.dim(words(random, 9))));
            case 2 ->
                new Block.Numbered(
                    List.of(
                        item(words(random, 2), words(random, 20)),
                        item("2", words(random, 20), words(random, 20))));
            case 3 ->
                rows(
                    row(words(random, 3), words(random, 20)),
                    row(words(random, 9), words(random, 20)));
            case 4 -> signal(SignalWord.values()[random.nextInt(4)], words(random, 20));
            case 5 ->
                bars(
                    new Block.Bar(words(random, 5), random.nextDouble(), words(random, 3)),
                    new Block.Bar(words(random, 9), random.nextDouble(), words(random, 3)));
            case 6 -> rule();
            default -> blank();
          });
    }
    return blocks;
  }

  private static String words(Random random, int most) {
    List<String> pieces =
        List.of(
            " ",
            " ",
            " ",
            "\u00a0",
            "\n",
            "V",
            "chain",
            "24.3\u00a0V",
            "門",
            "e\u0301",
            "Ω",
            "½",
            "🚪",
            "x".repeat(50),
            "\u001b[1m",
            "-");
    StringBuilder words = new StringBuilder();
    for (int i = random.nextInt(most + 1); i > 0; i--) {
      words.append(pieces.get(random.nextInt(pieces.size())));
    }
    return words.toString();
  }
}
