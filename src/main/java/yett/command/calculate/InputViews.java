package yett.command.calculate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.console.Text;
import yett.wording.Wording;
import yett.worksheet.Choice;
import yett.worksheet.Input;

/** Shows one input of a calculation: what it is, what to type, and the question for it. */
final class InputViews {
  /** Lists of more choices than this are shown in one paragraph. */
  private static final int SHORT_LIST = 8;

  private InputViews() {}

  static String described(Input input) {
    String usual =
        input
            .usual()
            .map(u -> "; usually " + u)
            .orElse(input.optional() ? "; may be left out" : "");
    String choices =
        input.choices().isEmpty()
            ? ""
            : ": " + input.choices().stream().map(Choice::id).collect(Collectors.joining(", "));
    String range = input.inWords(input.possible()).map(r -> "; " + r).orElse("");
    return input.words() + inUnit(input) + choices + range + usual;
  }

  /** The unit, as {@code , in V}; empty if the input has none. */
  static String inUnit(Input input) {
    return input.unit().symbol().isEmpty() ? "" : ", in " + input.unit().symbol();
  }

  static String placeholder(Input input) {
    return switch (input.kind()) {
      case READING -> "\"… " + input.unit().symbol() + "\"";
      case WHOLE -> "…";
      case CHOICE -> input.choices().get(0).id();
      case FILE -> "curve.csv";
    };
  }

  static List<Block> question(Input input, int number, int of) {
    List<Block> blocks = new ArrayList<>();
    String usual =
        input
            .usual()
            .map(u -> " Usually " + u + ".")
            .orElse(input.optional() ? " Enter leaves it out." : "");
    String range = input.inWords(input.possible()).map(r -> " Possible: " + r + ".").orElse("");
    blocks.add(Block.blank());
    blocks.add(
        Block.paragraph(
            Text.strong(
                    number
                        + " of "
                        + of
                        + ": "
                        + Wording.capital(input.words())
                        + inUnit(input)
                        + ".")
                .and(range + usual)));
    if (!input.choices().isEmpty()) {
      blocks.add(choices(input));
    }
    return blocks;
  }

  private static Block choices(Input input) {
    return input.choices().size() <= SHORT_LIST
        ? new Block.Rows(input.choices().stream().map(c -> Block.row(c.id(), c.words())).toList())
        : Block.paragraph(
            input.choices().stream()
                .map(c -> c.words().replace(' ', '\u00a0'))
                .collect(Collectors.joining(", ")));
  }
}
