package yett.command.cases;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import yett.calculation.Range;
import yett.console.Block;
import yett.figures.CaseFigures;
import yett.figures.PastCase;
import yett.knowledge.RuleBase;

/** Shows statistics over many cases, each figure with its range. */
record FiguresViews(RuleBase base) {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE;

  List<Block> blocks(CaseFigures figures, int unread) {
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
            "In brackets after each figure: the range that holds the true value in 95 of 100"
                + " such casebooks. A wide range means too few cases to tell."));
    part(blocks, "What was wrong, in the cases that were fixed", causes(figures));
    part(
        blocks,
        figures.isShort()
            ? "Where; the time is too short for a number a year"
            : "Where, and how many in a year",
        sites(figures));
    part(blocks, "How the work went", work(figures));
    part(
        blocks,
        "Who took the call, and how many of those that are over ended well on the telephone",
        desks(figures),
        "No call yet that is over and was somebody's: of the agent at the computer (calls agent"
            + " NAME), or taken or given (calls take, calls give).");
    part(blocks, "Came back within 90 days: same gate, same cause", repeats(figures));
    if (unread > 0) {
      blocks.add(
          Block.paragraph(
              count(unread, "case") + " of a newer Yett could not be read and is left out."));
    }
    return blocks;
  }

  private static void part(List<Block> blocks, String heading, List<Block.Row> rows) {
    part(blocks, heading, rows, "None.");
  }

  /** Adds a part of the figures; {@code none} is said if there are no rows. */
  private static void part(List<Block> blocks, String heading, List<Block.Row> rows, String none) {
    blocks.add(Block.heading(heading));
    blocks.add(rows.isEmpty() ? Block.paragraph(none) : new Block.Rows(rows));
  }

  private List<Block.Row> causes(CaseFigures figures) {
    return figures.causes().stream()
        .map(share -> Block.row(cause(share.name()), words(share)))
        .toList();
  }

  private static List<Block.Row> sites(CaseFigures figures) {
    boolean brief = figures.isShort();
    List<Block.Row> rows = new ArrayList<>();
    figures.sites().forEach(rate -> rows.add(Block.row(rate.name(), words(rate, brief))));
    if (rows.size() > 1) {
      rows.add(Block.row("all gates", words(figures.all(), brief)));
    }
    return rows;
  }

  private static List<Block.Row> desks(CaseFigures figures) {
    return figures.desks().stream().map(share -> Block.row(share.name(), words(share))).toList();
  }

  private static List<Block.Row> work(CaseFigures figures) {
    List<Block.Row> rows = new ArrayList<>();
    rows.add(Block.row("fixed on the first visit", words(figures.atOnce())));
    rows.add(Block.row("closed cases fixed without a visit", words(figures.onTelephone())));
    rows.add(Block.row("came back within 90 days", words(figures.repeated())));
    var minutes = figures.minutes();
    rows.add(
        Block.row(
            "minutes spent, against expected",
            minutes.cases() == 0
                ? "no visit has fixed a fault yet"
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
    var card = base.causes().get(id);
    return card != null ? card.name() : id.isEmpty() ? "not known" : id;
  }

  private static String words(CaseFigures.Share share) {
    if (share.all() == 0) {
      return "no such case yet";
    }
    if (share.isFew()) {
      return share.hits() + " of " + share.all() + ", too few for a share";
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

  private static String words(CaseFigures.Rate rate, boolean brief) {
    if (brief) {
      return count(rate.count(), "case");
    }
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
