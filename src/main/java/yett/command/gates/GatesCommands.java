package yett.command.gates;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.SiteRecord;
import yett.command.common.Completions;
import yett.command.common.GateNames;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Baselines;
import yett.desk.Desk;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Interview;
import yett.knowledge.Role;
import yett.rules.Judgement;

/** {@code gates}: the gates of the casebook listed, shown and renamed. */
public final class GatesCommands {
  private static final String GATES =
      "Usage: gates [--csv]. With --csv for a spreadsheet: gates --csv > gates.csv.";

  private static final String SHOW =
      "Usage: gates show GATE. What it is, what was done there and when, and its readings over"
          + " time: a line each, * the reading, [==] the usual range.";

  private static final String RENAME =
      "Usage: gates rename \"OLD NAME\" \"NEW NAME\". Cases and readings go with the gate, through"
          + " cases export and import too; what was written in its cases stays as it was written.";

  private final Desk desk;
  private final Console console;
  private final StandardStreams output;

  public GatesCommands(Desk desk, Console console, StandardStreams output) {
    this.desk = desk;
    this.console = console;
    this.output = output;
  }

  @Command(name = "gates", description = "list the gates of the casebook", help = GATES)
  public void gates(
      @Option(longName = "csv", description = "for a spreadsheet, on standard output")
          boolean csv) {
    List<Gates.Gate> gates = new Gates(desk, console).all();
    if (csv) {
      output.print(new GateSheet(desk.base()).csv(gates));
    } else if (gates.isEmpty()) {
      console.show(
          Block.paragraph(
              "The casebook knows no gate yet. A gate is known from its first case: diagnose."));
    } else {
      console.show(new GateViews(desk.base()).list(gates));
    }
  }

  @Command(
      name = {"gates", "show"},
      description = "what a gate is, what was done there, and its readings over time",
      help = SHOW,
      completionProvider = Completions.GATES)
  public void show(@Arguments List<String> words) {
    if (words.isEmpty()) {
      throw new UsageException(SHOW);
    }
    Gates gates = new Gates(desk, console);
    Gates.Gate gate = gates.named(gates.meant(String.join(" ", words)));
    List<String> formerly =
        desk.casebook().siteHistory(gate.name()).stream()
            .map(SiteRecord::name)
            .filter(name -> !name.equals(gate.name()))
            .distinct()
            .toList();
    List<Block> blocks = new ArrayList<>(new GateViews(desk.base()).page(gate, formerly));
    if (!gate.history().readings().isEmpty()) {
      blocks.add(Block.heading("Readings over time"));
      blocks.addAll(
          new ReadingViews(desk.base(), console.width())
              .blocks(
                  gate.history().readings(),
                  usual(gate.told().orElse(Map.of())),
                  new Baselines(desk.casebook(), desk.expertise()).of(gate.name())));
    }
    console.show(blocks);
  }

  /** What the rules expect at such a gate when nothing is complained of. */
  private Judgement usual(Map<String, String> told) {
    List<Event> events = new ArrayList<>();
    events.add(new Event.Opened("", Role.TECHNICIAN, ""));
    told.forEach((question, answer) -> events.add(new Event.SiteAnswered(question, answer)));
    List<Entry> entries = new ArrayList<>();
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, desk.clock().instant(), Role.TECHNICIAN, event));
    }
    try (Interview interview = desk.expertise().newInterview()) {
      return interview.judgement(entries);
    }
  }

  @Command(
      name = {"gates", "rename"},
      description = "give a gate another name",
      help = RENAME,
      completionProvider = Completions.GATES)
  public void rename(@Arguments List<String> words) {
    if (words.size() != 2) {
      throw new UsageException(RENAME);
    }
    String from = new Gates(desk, console).exactly(words.get(0));
    String to = words.get(1).strip();
    if (to.isEmpty() || !GateNames.isName(to)) {
      throw new UsageException(to.isEmpty() ? GateNames.NO_NAME : GateNames.refusal(to));
    }
    if (from.equals(to)) {
      throw new UsageException("The gate is called so already.");
    }
    desk.casebook().rename(from, to, desk.clock().instant());
    console.show(Block.paragraph("\"" + from + "\" is called \"" + to + "\" now."));
  }
}
