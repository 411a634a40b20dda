package yett.command.calculate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.command.common.CommandHelp;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.JsonErrors;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.knowledge.Names;
import yett.worksheet.Filling;
import yett.worksheet.Input;
import yett.worksheet.InputException;
import yett.worksheet.Solution;
import yett.worksheet.Worksheet;
import yett.worksheet.catalogue.Catalogue;

/** {@code calculate}: the usual calculations of the trade, with the numbers of one gate. */
public final class CalculateCommands implements JsonErrors {
  private static final String CALCULATE =
      "Usage: calculate [NAME [INPUT=VALUE ...]] [--json]. Without a name it lists the"
          + " calculations; with only a name it asks for each input. A VALUE carries its unit,"
          + " 24.3 V or 7 1/2 in, and may carry its limits of error: 24.3 V +- 0.2 V. help"
          + " calculate NAME shows what it needs and where it comes from.";

  private final Console console;
  private final StandardStreams output;

  public CalculateCommands(Console console, StandardStreams output) {
    this.console = console;
    this.output = output;
  }

  @Command(
      name = "calculate",
      description = "work out a trade figure: wire, battery, chain, leaf and more",
      help = CALCULATE,
      completionProvider = Completions.CALCULATIONS)
  public void calculate(
      @Arguments List<String> words,
      @Option(
              longName = "json",
              description =
                  "inputs, results, uncertainty, formula and source, or what is wrong, as JSON")
          boolean json) {
    try {
      calculate(CalculationOrder.of(words), json);
    } catch (CalculationRefused e) {
      if (!json) {
        throw e;
      }
      output.json(CalculationJson.of(e));
      throw new ExitException(Sysexits.USAGE);
    }
  }

  @Override
  public void tell(UsageException wrong) {
    output.json(CalculationJson.of(CalculationRefused.whole(Optional.empty(), wrong.getMessage())));
  }

  private void calculate(CalculationOrder order, boolean json) {
    if (order.name().isEmpty()) {
      if (!order.inputs().isEmpty()) {
        throw CalculationRefused.whole(Optional.empty(), "Which calculation? " + CALCULATE);
      }
      if (json) {
        output.json(CatalogueJson.list(Catalogue.all()));
      } else {
        console.show(CalculationViews.list());
      }
      return;
    }
    Optional<Solution> solution = solve(sheet(order.name()), order, json);
    if (json) {
      solution.map(CalculationJson::of).ifPresent(output::json);
    } else {
      solution.map(CalculationViews::solution).ifPresent(console::show);
    }
  }

  /** The solution; empty if the person left before all inputs were entered. */
  private Optional<Solution> solve(Worksheet sheet, CalculationOrder order, boolean json) {
    Filling filling = new Filling(sheet);
    List<CalculationRefused.Problem> problems = new ArrayList<>();
    for (CalculationOrder.Typed typed : order.inputs()) {
      try {
        filling.add(typed.name(), typed.value());
      } catch (InputException e) {
        problems.add(new CalculationRefused.Problem(Optional.of(typed.name()), e.getMessage()));
      }
    }
    Optional<String> name = Optional.of(sheet.id());
    if (!problems.isEmpty()) {
      String all =
          problems.stream().map(CalculationRefused.Problem::text).collect(Collectors.joining("\n"));
      throw new CalculationRefused(name, all, problems);
    }
    boolean asks = order.inputs().isEmpty() || !filling.missing().isEmpty();
    try {
      if (asks && console.interactive() && !json) {
        return new CalculationForm(console, sheet, filling).fill();
      }
      if (!filling.missing().isEmpty()) {
        throw new CalculationRefused(
            name,
            CalculationViews.missing(sheet, filling.missing()),
            filling.missing().stream().map(CalculateCommands::missing).toList());
      }
      return Optional.of(filling.solve());
    } catch (InputException e) {
      throw CalculationRefused.whole(name, e.getMessage());
    }
  }

  private static CalculationRefused.Problem missing(Input input) {
    return new CalculationRefused.Problem(
        Optional.of(input.id()), input.id() + " is missing: " + InputViews.described(input) + ".");
  }

  private static Worksheet sheet(String name) {
    return Catalogue.named(name)
        .orElseThrow(
            () ->
                CalculationRefused.whole(
                    Optional.empty(),
                    "There is no calculation "
                        + Words.quoted(name)
                        + ". "
                        + Names.advice(
                            name.replace(' ', '-'),
                            Catalogue.all().stream().map(Worksheet::id).toList())
                        + " All of them: calculate."));
  }

  /** {@code help calculate NAME}: explains what a calculation needs and its source. */
  @Command(
      name = {"help", "calculate"},
      description = "what a calculation needs, and where it comes from",
      help = "Usage: help calculate NAME",
      completionProvider = Completions.CALCULATIONS)
  public void help(CommandContext context, @Arguments List<String> about) {
    console.show(
        about.isEmpty()
            ? CommandHelp.of("calculate", about, context.commandRegistry())
            : CalculationViews.about(sheet(String.join(" ", about))));
  }
}
