package yett.command.calculate;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.command.common.Prompt;
import yett.console.Console;
import yett.worksheet.Choice;
import yett.worksheet.Filling;
import yett.worksheet.Input;
import yett.worksheet.InputException;
import yett.worksheet.Solution;
import yett.worksheet.Worksheet;

/** Asks for the inputs of a calculation, one after the other. */
public final class CalculationForm {
  private final Console console;
  private final Worksheet sheet;
  private final Filling filling;
  private final List<Input> open;

  public CalculationForm(Console console, Worksheet sheet, Filling filling) {
    this.console = console;
    this.sheet = sheet;
    this.filling = filling;
    this.open = sheet.inputs().stream().filter(i -> !filling.has(i)).toList();
  }

  /** Asks for all inputs and calculates; empty if the person left. */
  public Optional<Solution> fill() {
    console.show(CalculationViews.beginning(sheet));
    int at = 0;
    while (at < open.size()) {
      Optional<Integer> next = ask(at);
      if (next.isEmpty()) {
        console.say("Nothing was calculated.");
        return Optional.empty();
      }
      at = next.get();
      if (at == open.size()) {
        Optional<Solution> solution = solve();
        if (solution.isPresent()) {
          return solution;
        }
        at = 0;
      }
    }
    return solve();
  }

  private Optional<Solution> solve() {
    try {
      return Optional.of(filling.solve());
    } catch (InputException e) {
      console.say(e.getMessage() + " Give the inputs again.");
      return Optional.empty();
    }
  }

  /** Asks for the input at a position. Returns the position to continue with; empty to leave. */
  private Optional<Integer> ask(int at) {
    Input input = open.get(at);
    console.show(InputViews.question(input, at + 1, open.size()));
    while (true) {
      Optional<String> line =
          Prompt.withLeave(console)
              .line(input.id() + "> ", input.choices().stream().map(Choice::id).toList());
      if (line.isEmpty()) {
        return Optional.empty();
      }
      String text = line.get();
      switch (text.toLowerCase(Locale.ROOT)) {
        case "back" -> {
          return Optional.of(Math.max(0, at - 1));
        }
        case "?", "help" -> console.show(CalculationViews.about(sheet));
        case "" -> {
          if (!input.needed()) {
            filling.clear(input);
            return Optional.of(at + 1);
          }
          console.say("This input has no usual value. " + hint(input));
        }
        default -> {
          try {
            filling.put(input, text);
            return Optional.of(at + 1);
          } catch (InputException e) {
            console.say(e.getMessage());
          }
        }
      }
    }
  }

  private static String hint(Input input) {
    return switch (input.kind()) {
      case READING -> "Type a number" + InputViews.inUnit(input) + ".";
      case WHOLE -> "Type a whole number.";
      case CHOICE -> "Type one of the choices.";
      case FILE -> "Type the name of a file.";
    };
  }
}
