package yett.command.calculate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.console.SignalWord;
import yett.console.Text;
import yett.wording.Wording;
import yett.worksheet.Input;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Solution;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;
import yett.worksheet.catalogue.Catalogue;

/** Shows calculations as text. */
public final class CalculationViews {
  private CalculationViews() {}

  public static List<Block> list() {
    List<Block> blocks = new ArrayList<>();
    for (Subject subject : Subject.values()) {
      List<Worksheet> sheets = Catalogue.about(subject);
      if (!sheets.isEmpty()) {
        blocks.add(Block.heading(subject.title()));
        blocks.add(new Block.Rows(sheets.stream().map(s -> Block.row(s.id(), s.title())).toList()));
      }
    }
    blocks.add(Block.blank());
    blocks.add(
        Block.paragraph(
            "calculate NAME asks for each input; help calculate NAME shows what it needs and"
                + " where it comes from."));
    return blocks;
  }

  /** Everything about a calculation except its result. */
  public static List<Block> about(Worksheet sheet) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading(Wording.capital(sheet.title())));
    sheet.notes().forEach(note -> blocks.add(signal(note)));
    blocks.add(
        new Block.Rows(
            sheet.inputs().stream().map(i -> Block.row(i.id(), InputViews.described(i))).toList()));
    blocks.add(Block.heading("Results"));
    blocks.add(
        new Block.Rows(
            sheet.outputs().stream().map(o -> Block.row(o.id(), described(o))).toList()));
    blocks.add(Block.heading("Method"));
    blocks.add(background(sheet));
    blocks.add(Block.paragraph("For example: " + example(sheet)));
    return blocks;
  }

  public static String described(Output output) {
    return output.words()
        + output.unit().map(u -> u.symbol().isEmpty() ? "" : ", in " + u.symbol()).orElse("");
  }

  private static String example(Worksheet sheet) {
    return "calculate "
        + sheet.id()
        + sheet.inputs().stream()
            .filter(Input::needed)
            .map(i -> " " + i.id() + "=" + InputViews.placeholder(i))
            .collect(Collectors.joining());
  }

  /** What to type in the command if the inputs cannot be asked for. */
  public static String missing(Worksheet sheet, List<Input> missing) {
    return sheet.id()
        + " needs "
        + missing.stream().map(Input::id).collect(Collectors.joining(", "))
        + ".\n"
        + missing.stream()
            .map(
                i ->
                    "  "
                        + i.id()
                        + "="
                        + InputViews.placeholder(i)
                        + "  "
                        + InputViews.described(i))
            .collect(Collectors.joining("\n"))
        + "\nhelp calculate "
        + sheet.id()
        + " lists all of its inputs.";
  }

  public static List<Block> beginning(Worksheet sheet) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading(Wording.capital(sheet.title())));
    sheet.notes().forEach(note -> blocks.add(signal(note)));
    blocks.add(
        Block.paragraph(
            "A number without a unit is taken in the unit asked for; limits of error may"
                + " follow, as in 24.3 V +- 0.2 V. Enter takes the usual value; back, ? and quit"
                + " work at every prompt."));
    return blocks;
  }

  public static List<Block> solution(Solution solution) {
    Worksheet sheet = solution.sheet();
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading(Wording.capital(sheet.title())));
    blocks.add(new Block.Rows(solution.inputs().stream().map(SolutionRows::row).toList()));
    blocks.add(Block.heading("Result"));
    blocks.add(new Block.Rows(solution.lines().stream().map(SolutionRows::row).toList()));
    solution.plot().ifPresent(plot -> blocks.add(SolutionRows.drawing(plot)));
    solution.remarks().forEach(r -> blocks.add(Block.paragraph("Note: " + r)));
    blocks.add(Block.heading("At the gate"));
    // Cautions come before anything that somebody may go and do.
    solution.meaning().notes().forEach(note -> blocks.add(signal(note)));
    sheet.notes().forEach(note -> blocks.add(signal(note)));
    blocks.add(Block.paragraph(Text.strong(String.join(" ", solution.meaning().sentences()))));
    sheet.lastWord().ifPresent(word -> blocks.add(Block.paragraph(word)));
    blocks.add(Block.heading("Method"));
    blocks.add(background(sheet));
    return blocks;
  }

  private static Block background(Worksheet sheet) {
    return Block.rows(
        Block.row("formula", sheet.formula()),
        Block.row("valid for", sheet.validity()),
        Block.row("source", sheet.source()));
  }

  private static Block signal(Note note) {
    return Block.signal(
        SignalWord.valueOf(note.word().name().toUpperCase(Locale.ROOT)), note.text());
  }
}
