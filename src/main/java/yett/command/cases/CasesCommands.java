package yett.command.cases;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.casebook.Unreadable;
import yett.command.common.Completions;
import yett.command.common.UsageException;
import yett.command.diagnose.screen.BeliefViews;
import yett.command.diagnose.screen.UnusableEvents;
import yett.console.Block;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.knowledge.Role;

/** {@code cases}: lists, shows and searches the cases of the casebook. */
public record CasesCommands(Desk desk, Console console) {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

  private static final String CASES = "Usage: cases [--open]. Latest first.";

  private static final String SHOW =
      "Usage: cases show CASE. CASE is its number, such as 2026-0007 or 7.";

  private static final String FIND =
      "Usage: cases find [TEXT] " + CaseSearchOptions.WORDS + " TEXT may be anywhere in the case.";

  @Command(name = "cases", description = "list the cases of the casebook", help = CASES)
  public void cases(
      @Option(longName = "open", description = "only those that are not closed") boolean open) {
    List<CaseSummary> cases =
        open ? desk.casebook().cases(CaseStatus.OPEN) : desk.casebook().cases();
    List<Unreadable> unreadable = desk.casebook().unreadable();
    if (cases.isEmpty() && unreadable.isEmpty()) {
      console.say("The casebook has no cases yet. Start one with: diagnose.");
      return;
    }
    console.show(new Block.Rows(cases.stream().map(CasesCommands::row).toList()));
    if (!unreadable.isEmpty()) {
      console.show(
          Block.heading("Cannot be read"),
          new Block.Rows(unreadable.stream().map(u -> Block.row(u.id(), u.why())).toList()),
          Block.paragraph(
              "Another program changed these, or they were imported with something this one"
                  + " cannot read. cases verify says more; cases repair fixes what can be fixed."));
    }
  }

  @Command(
      name = {"cases", "show"},
      description = "where a case stands, and how it got there",
      help = SHOW,
      completionProvider = Completions.CASES)
  public void show(@Arguments List<String> words) {
    UsageException.when(words.size() != 1, SHOW);
    var id = desk.casebook().find(words.get(0));
    try (OpenCase open = desk.open(id, Role.TECHNICIAN)) {
      var state = open.moment().state();
      console.show(
          Block.heading("Case " + id + " · " + open.gate()),
          Block.paragraph(state.closed().map(e -> "Closed: " + e.words() + ".").orElse("Open.")));
      console.show(new UnusableEvents(desk.base()).blocks(open.moment()));
      console.show(new BeliefViews(desk.base()).accounts(open.moment()));
    }
  }

  @Command(
      name = {"cases", "find"},
      description = "find cases by gate, cause, text, day and state",
      help = FIND)
  public void find(
      @Arguments List<String> words,
      @Option(longName = "site", description = CaseSearchOptions.SITE) String site,
      @Option(longName = "cause", description = CaseSearchOptions.CAUSE) String cause,
      @Option(longName = "since", description = CaseSearchOptions.SINCE) String since,
      @Option(longName = "until", description = CaseSearchOptions.UNTIL) String until,
      @Option(longName = "state", description = CaseSearchOptions.STATE) String state) {
    CaseSearchOptions search = new CaseSearchOptions(site, cause, since, until, state);
    String text = String.join(" ", words).strip();
    UsageException.when(text.isEmpty() && search.isEmpty(), FIND);
    List<CaseSummary> found =
        desk.casebook().search(search.in(desk.base(), Optional.of(text).filter(t -> !t.isEmpty())));
    if (found.isEmpty()) {
      console.say("There is no such case.");
      return;
    }
    console.show(
        new Block.Rows(found.stream().map(CasesCommands::row).toList()),
        Block.paragraph(found.size() == 1 ? "1 case." : found.size() + " cases."));
  }

  /** A case as a line of a list. */
  private static Block.Row row(CaseSummary line) {
    return Block.row(
        line.id().toString(),
        DAY.format(line.opened().atZone(ZoneId.systemDefault()))
            + "  "
            + line.siteId()
            + "  "
            + line.summary().title());
  }
}
