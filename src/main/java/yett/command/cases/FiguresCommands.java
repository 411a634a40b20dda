package yett.command.cases;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.calculation.Range;
import yett.casebook.CaseSummary;
import yett.casebook.StoredEvent;
import yett.console.Block;
import yett.console.Console;
import yett.console.Progress;
import yett.desk.Desk;
import yett.desk.StoredEntries;
import yett.figures.CaseFigures;
import yett.figures.PastCase;

/** {@code cases figures}: what fails, where, how often, and how the work went. */
public final class FiguresCommands {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE;

  private static final String FIGURES =
      "Usage: cases figures " + CaseSearch.WORDS + " Every figure comes with its range.";

  private final Desk desk;
  private final Console console;

  public FiguresCommands(Desk desk, Console console) {
    this.desk = desk;
    this.console = console;
  }

  @Command(
      name = {"cases", "figures"},
      description = "what fails, where, how often, and how the work went",
      help = FIGURES)
  public void figures(
      @Option(longName = "site", description = CaseSearch.SITE) String site,
      @Option(longName = "cause", description = CaseSearch.CAUSE) String cause,
      @Option(longName = "since", description = CaseSearch.SINCE) String since,
      @Option(longName = "until", description = CaseSearch.UNTIL) String until,
      @Option(longName = "state", description = CaseSearch.STATE) String state) {
    var search = new CaseSearch(site, cause, since, until, state).in(desk.base(), Optional.empty());
    List<CaseSummary> lines = desk.casebook().search(search);
    if (lines.isEmpty()) {
      console.show(Block.paragraph("There is no such case, so there are no figures."));
      return;
    }
    Instant first = lines.stream().map(CaseSummary::opened).min(Instant::compareTo).get();
    Instant now = desk.clock().instant();
    Instant end = search.until().filter(u -> u.isBefore(now)).orElse(now);
    Instant start = search.since().orElse(first);
    List<PastCase> cases = new ArrayList<>();
    int unread = read(lines, cases);
    console.show(blocks(CaseFigures.of(cases, start, end), unread));
  }

  /**
   * @return how many cannot be read
   */
  private int read(List<CaseSummary> lines, List<PastCase> cases) {
    try (Progress progress = console.start("cases", lines.size())) {
      desk.casebook()
          .forEach(
              lines,
              (line, events) -> {
                try {
                  cases.add(past(line, events));
                } catch (IllegalArgumentException e) {
                  // written by a newer program
                }
                progress.step();
              });
    }
    return lines.size() - cases.size();
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

  private List<Block> blocks(CaseFigures figures, int unread) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.heading(
            count(figures.cases(), "case")
                + ", "
                + DAY.format(figures.from().atZone(ZoneId.systemDefault()))
                + " to "
                + DAY.format(figures.until().atZone(ZoneId.systemDefault()))));
    blocks.add(
        Block.paragraph(
            "Behind each figure, in brackets, the range that holds the true one in 95 of 100 such"
                + " casebooks. A wide range says: too few cases to tell."));
    part(blocks, "What was wrong, of the cured cases", causes(figures));
    part(blocks, "Where, and how many in a year", sites(figures));
    part(blocks, "How the work went", work(figures));
    part(blocks, "Came back within 90 days: same gate, same cause", repeats(figures));
    if (unread > 0) {
      blocks.add(
          Block.paragraph(
              count(unread, "case") + " of a newer Yett could not be read and is left out."));
    }
    return blocks;
  }

  private static void part(List<Block> blocks, String heading, List<Block.Row> rows) {
    blocks.add(Block.heading(heading));
    blocks.add(rows.isEmpty() ? Block.paragraph("None.") : new Block.Rows(rows));
  }

  private List<Block.Row> causes(CaseFigures figures) {
    return figures.causes().stream()
        .map(share -> Block.row(cause(share.name()), words(share)))
        .toList();
  }

  private static List<Block.Row> sites(CaseFigures figures) {
    List<Block.Row> rows = new ArrayList<>();
    figures.sites().forEach(rate -> rows.add(Block.row(rate.name(), words(rate))));
    if (rows.size() > 1) {
      rows.add(Block.row("all gates", words(figures.all())));
    }
    return rows;
  }

  private static List<Block.Row> work(CaseFigures figures) {
    List<Block.Row> rows = new ArrayList<>();
    rows.add(Block.row("cured by the first visit", words(figures.atOnce())));
    rows.add(Block.row("cured on the telephone", words(figures.onTelephone())));
    rows.add(Block.row("came back within 90 days", words(figures.repeated())));
    var minutes = figures.minutes();
    rows.add(
        Block.row(
            "minutes, spent to expected",
            minutes.cases() == 0
                ? "no cured visit yet"
                : String.format(Locale.ROOT, "median %.2f", minutes.median())
                    + (Double.isFinite(minutes.range().low())
                        ? String.format(
                            Locale.ROOT,
                            " (%.2f to %.2f), ",
                            minutes.range().low(),
                            minutes.range().high())
                        : " (too few to give a range), ")
                    + count(minutes.cases(), "case")));
    return rows;
  }

  private List<Block.Row> repeats(CaseFigures figures) {
    return figures.repeats().stream()
        .map(
            r ->
                Block.row(
                    r.site(),
                    cause(r.cause())
                        + ": "
                        + r.cases().stream().map(PastCase::id).collect(Collectors.joining(", "))))
        .toList();
  }

  private String cause(String id) {
    var card = desk.base().causes().get(id);
    return card != null ? card.name() : id.isEmpty() ? "not told" : id;
  }

  private static String words(CaseFigures.Share share) {
    if (share.all() == 0) {
      return "no such case yet";
    }
    Range range = share.range();
    return String.format(
        Locale.ROOT,
        "%d of %d, %.0f %% (%.0f to %.0f %%)",
        share.hits(),
        share.all(),
        100.0 * share.hits() / share.all(),
        100 * range.low(),
        100 * range.high());
  }

  private static String words(CaseFigures.Rate rate) {
    return String.format(
        Locale.ROOT,
        "%s, %.1f a year (%.1f to %.1f)",
        count(rate.count(), "case"),
        rate.aYear(),
        rate.range().low(),
        rate.range().high());
  }

  private static String count(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }
}
