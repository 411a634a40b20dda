package yett.command.gates;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.SiteRecord;
import yett.command.common.Completions;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Baselines;
import yett.desk.Desk;
import yett.interview.course.Interview;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.site.Trends;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.rules.Judgement;
import yett.wording.TrendWords;

/** {@code gates}: lists and shows the gates of the casebook. */
public record GatesCommands(Desk desk, Console console, StandardStreams output) {
  private static final String GATES =
      "Usage: gates [--retired] [--csv]. --retired lists the gates no longer looked"
          + " after; --csv writes all gates for a spreadsheet to standard output: gates --csv"
          + " > gates.csv.";

  private static final String SHOW =
      "Usage: gates show GATE. What it is, what was done there and when, and its"
          + " readings over time, one line each: * is the reading, [==] the usual range.";

  @Command(name = "gates", description = "list the gates of the casebook", help = GATES)
  public void gates(
      @Option(longName = "csv", description = "for a spreadsheet, on standard output") boolean csv,
      @Option(longName = "retired", description = "the gates no longer looked after")
          boolean retired) {
    List<Gates.Gate> all = new Gates(desk, console).all();
    List<Gates.Gate> gates = all.stream().filter(g -> g.retired().isPresent() == retired).toList();
    if (csv) {
      output.print(GateSheet.toRead(desk.base()).csv(all));
    } else if (retired && gates.isEmpty()) {
      console.say("No gate is retired.");
    } else if (!all.isEmpty() && gates.isEmpty()) {
      console.say("Every gate is retired: gates --retired.");
    } else if (gates.isEmpty()) {
      console.say("The casebook has no gates yet. A gate is added with its first case: diagnose.");
    } else {
      console.show(new GateViews(desk.base()).list(gates));
      if (!retired && gates.size() < all.size()) {
        console.say("Retired: " + (all.size() - gates.size()) + " (gates --retired).");
      }
    }
  }

  @Command(
      name = {"gates", "show"},
      description = "what a gate is, what was done there, and its readings over time",
      help = SHOW,
      completionProvider = Completions.GATES)
  public void show(@Arguments List<String> words) {
    UsageException.when(words.isEmpty(), SHOW);
    Gates gates = new Gates(desk, console);
    Gates.Gate gate = gates.named(gates.meant(String.join(" ", words)));
    List<String> formerly =
        desk.casebook().siteHistory(gate.name()).stream()
            .map(SiteRecord::name)
            .filter(name -> !name.equals(gate.name()))
            .distinct()
            .toList();
    List<Block> blocks =
        new ArrayList<>(
            new GateViews(desk.base())
                .page(gate, formerly, InspectionResults.of(desk, gate.history())));
    blocks.add(Block.paragraph(new DueWords(desk).line(gate)));
    if (!gate.history().readings().isEmpty()) {
      blocks.add(Block.heading("Readings over time"));
      blocks.addAll(readings(gate));
    }
    console.show(blocks);
  }

  private List<Block> readings(Gates.Gate gate) {
    List<Event.Earlier> earlier = new Baselines(desk.casebook(), desk.expertise()).of(gate.name());
    List<Entry> entries = inspectionEntries(gate.told().orElse(Map.of()), earlier);
    try (Interview interview = desk.expertise().newInterview()) {
      Judgement usual = interview.judgement(entries);
      return new ReadingViews(desk.base(), console.width())
          .blocks(
              gate.history().readings(),
              usual,
              earlier,
              new TrendWords(Trends.of(desk.base(), entries), usual));
    }
  }

  /**
   * Entries of an inspection at this gate. In an inspection, baselines are shown next to the usual
   * range and do not narrow it.
   */
  private List<Entry> inspectionEntries(Map<String, String> told, List<Event.Earlier> earlier) {
    List<Event> events = new ArrayList<>();
    events.add(
        new Event.Opened("", Role.TECHNICIAN, "", Optional.of(InspectionKind.SERVICE), earlier));
    told.forEach((question, answer) -> events.add(new Event.SiteAnswered(question, answer)));
    List<Entry> entries = new ArrayList<>();
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, desk.clock().instant(), Role.TECHNICIAN, event));
    }
    return entries;
  }
}
