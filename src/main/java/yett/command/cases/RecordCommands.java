package yett.command.cases;

import java.util.List;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CaseId;
import yett.command.common.Completions;
import yett.command.common.UsageException;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.interview.Moment;
import yett.knowledge.Role;
import yett.record.CaseRecord;
import yett.record.HandOverSheet;

/** {@code record}: a case as Markdown, for the file or for the next level. */
public final class RecordCommands {
  private static final String RECORD =
      "Usage: record CASE [--hand-over]. CASE is its number, such as 2026-0007 or 7. The text "
          + "goes to standard output: record 7 > case.md keeps it in a file.";

  private final Desk desk;
  private final StandardStreams output;

  public RecordCommands(Desk desk, StandardStreams output) {
    this.desk = desk;
    this.output = output;
  }

  @Command(
      name = "record",
      description = "the record of a case, as Markdown",
      help = RECORD,
      completionProvider = Completions.CASES)
  public void record(
      @Arguments List<String> words,
      @Option(
              longName = "hand-over",
              description = "the hand-over sheet for the next level instead of the record")
          boolean handOver) {
    if (words.size() != 1) {
      throw new UsageException(RECORD);
    }
    CaseId id = desk.casebook().find(words.get(0));
    try (OpenCase open = desk.open(id, Role.TECHNICIAN)) {
      Moment moment = open.moment();
      String gate = open.gate();
      output.print(
          handOver
              ? new HandOverSheet(desk.expertise()).markdown(moment, id.toString(), gate)
              : new CaseRecord(desk.expertise().base()).markdown(moment, id.toString(), gate));
    }
  }
}
