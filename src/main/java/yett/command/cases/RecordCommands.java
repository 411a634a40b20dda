package yett.command.cases;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CaseId;
import yett.command.common.Completions;
import yett.command.common.NewFile;
import yett.command.common.UsageException;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.interview.moment.Moment;
import yett.knowledge.Role;
import yett.record.CaseRecord;
import yett.record.HandOverSheet;
import yett.record.InspectionSheet;

/**
 * {@code record}: writes the record of a case for the file, the customer or the next technician.
 */
public record RecordCommands(Desk desk, StandardStreams output) {
  private static final String RECORD =
      "Usage: record CASE [--hand-over] [--md FILE], or record CASE --pdf FILE | --html FILE [--for"
          + " customer | technician] [--log]. CASE is its number, such as 2026-0007 or 7. Without a"
          + " file the record goes to standard output as Markdown; --md writes it to a file. PDF and"
          + " HTML have a page for the customer and one for the next technician; --for leaves the"
          + " other out, --log appends all that was said and done.";

  @Command(
      name = "record",
      description = "the record of a case, as Markdown, or as a page to hand out",
      help = RECORD,
      completionProvider = Completions.CASES)
  public void record(
      @Arguments List<String> words,
      @Option(
              longName = "hand-over",
              description = "the hand-over sheet for the next level instead of the record")
          boolean handOver,
      @Option(longName = "md", description = "write the record to this file as Markdown") String md,
      @Option(longName = "html", description = "write a page to this file, to look at and print")
          String html,
      @Option(longName = "pdf", description = "write the same page to this file as PDF") String pdf,
      @Option(longName = "for", description = "only the page for customer or technician")
          String reader,
      @Option(longName = "log", description = "append all that was said and done") boolean log) {
    boolean page = html != null || pdf != null;
    UsageException.when(words.size() != 1 || (page ? handOver : reader != null || log), RECORD);
    Optional<Path> markdown = Optional.ofNullable(md).map(NewFile::named);
    CaseId id = desk.casebook().find(words.get(0));
    RecordFiles files = new RecordFiles(desk, output, html, pdf, RecordFiles.parts(reader, log));
    try (OpenCase open = desk.open(id, Role.TECHNICIAN)) {
      Moment moment = open.moment();
      String gate = open.gate();
      if (page) {
        files.write(moment, id.toString(), gate);
      }
      if (markdown.isPresent()) {
        NewFile.write(markdown.get(), markdown(moment, id, gate, handOver), output);
      } else if (!page) {
        output.print(markdown(moment, id, gate, handOver));
      }
    }
  }

  private String markdown(Moment moment, CaseId id, String gate, boolean handOver) {
    if (handOver) {
      return new HandOverSheet(desk.expertise()).markdown(moment, id.toString(), gate);
    }
    return moment.state().isInspection()
        ? new InspectionSheet(desk.base(), moment, ZoneId.systemDefault())
            .markdown(id.toString(), gate)
        : new CaseRecord(desk.expertise().base()).markdown(moment, id.toString(), gate);
  }
}
