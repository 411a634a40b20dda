package yett.command.cases;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CaseSummary;
import yett.casebook.StoredEvent;
import yett.console.Console;
import yett.console.Progress;
import yett.desk.Desk;
import yett.desk.StoredEntries;
import yett.figures.CaseFigures;
import yett.figures.PastCase;
import yett.interview.event.Entry;
import yett.interview.event.Event;

/** {@code cases figures}: statistics of what fails, where and how often, and of the work itself. */
public record FiguresCommands(Desk desk, Console console) {

  private static final String FIGURES =
      "Usage: cases figures " + CaseSearchOptions.WORDS + " Every figure comes with its range.";

  @Command(
      name = {"cases", "figures"},
      description = "what fails, where, how often, and how the work went",
      help = FIGURES)
  public void figures(
      @Option(longName = "site", description = CaseSearchOptions.SITE) String site,
      @Option(longName = "cause", description = CaseSearchOptions.CAUSE) String cause,
      @Option(longName = "since", description = CaseSearchOptions.SINCE) String since,
      @Option(longName = "until", description = CaseSearchOptions.UNTIL) String until,
      @Option(longName = "state", description = CaseSearchOptions.STATE) String state) {
    var search =
        new CaseSearchOptions(site, cause, since, until, state).in(desk.base(), Optional.empty());
    List<CaseSummary> lines = desk.casebook().search(search);
    if (lines.isEmpty()) {
      console.say("No such case, so no figures.");
      return;
    }
    Instant first = lines.stream().map(CaseSummary::opened).min(Instant::compareTo).get();
    Instant now = desk.clock().instant();
    Instant end = search.until().filter(u -> u.isBefore(now)).orElse(now);
    Instant start = search.since().orElse(first);
    List<PastCase> cases = new ArrayList<>();
    int unread = read(lines, cases);
    console.show(new FiguresViews(desk.base()).blocks(CaseFigures.of(cases, start, end), unread));
  }

  /**
   * Reads the cases.
   *
   * @return how many cannot be read
   */
  private int read(List<CaseSummary> lines, List<PastCase> cases) {
    AtomicInteger inspections = new AtomicInteger();
    try (Progress progress = console.start("cases", lines.size())) {
      desk.casebook()
          .forEach(
              lines,
              (line, events) -> {
                try {
                  if (isInspection(StoredEntries.whole(events))) {
                    inspections.incrementAndGet(); // inspections are only counted
                  } else {
                    cases.add(past(line, events));
                  }
                } catch (IllegalArgumentException e) {
                  // written by a newer program
                }
                progress.step();
              });
    }
    return lines.size() - cases.size() - inspections.get();
  }

  private static boolean isInspection(List<Entry> entries) {
    return !entries.isEmpty()
        && entries.get(0).event() instanceof Event.Opened opened
        && opened.inspection().isPresent();
  }

  private PastCase past(CaseSummary line, List<StoredEvent> events) {
    return PastCase.of(
        line.id().toString(),
        line.siteId(),
        line.opened(),
        line.summary().cause(),
        StoredEntries.whole(events),
        desk.base());
  }
}
