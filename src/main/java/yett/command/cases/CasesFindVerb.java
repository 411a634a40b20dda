package yett.command.cases;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.CaseSummary;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.console.Block;

/** {@code cases find}: the cases at a gate, of a cause, with a word in them, of a time. */
public final class CasesFindVerb extends Verb {
  private final Workplace place;

  public CasesFindVerb(Workplace place) {
    super(
        "cases find",
        "find cases by gate, cause, text, day and state",
        "Usage: cases find [TEXT] "
            + CaseSearchOptions.WORDS
            + " TEXT stands somewhere in the case.",
        CaseSearchOptions.options());
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    String text = String.join(" ", words(context)).strip();
    if (text.isEmpty() && context.parsedInput().options().isEmpty()) {
      throw new UsageException(getHelp());
    }
    List<CaseSummary> found =
        place
            .desk()
            .casebook()
            .search(
                new CaseSearchOptions(context, ZoneId.systemDefault())
                    .search(place.desk().base(), Optional.of(text).filter(t -> !t.isEmpty())));
    if (found.isEmpty()) {
      place.console().show(Block.paragraph("There is no such case."));
      return OK;
    }
    place
        .console()
        .show(
            new Block.Rows(found.stream().map(CasesVerb::row).toList()),
            Block.paragraph(found.size() == 1 ? "1 case." : found.size() + " cases."));
    return OK;
  }
}
