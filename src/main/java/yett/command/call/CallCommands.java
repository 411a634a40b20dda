package yett.command.call;

import java.time.ZoneId;
import java.util.List;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CaseId;
import yett.command.common.Completions;
import yett.command.common.PrintedFiles;
import yett.command.common.UsageException;
import yett.command.diagnose.opening.NewCase;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.dispatch.DispatchJson;
import yett.dispatch.DispatchSheet;
import yett.dispatch.Dispatcher;
import yett.knowledge.Role;
import yett.record.DispatchPage;
import yett.record.handout.DispatchPaper;

/**
 * {@code call} and {@code dispatch}: take a telephone call, and prepare the sheet for the person
 * who is sent.
 */
public record CallCommands(Desk desk, Console console, StandardStreams output) {
  private static final String CALL =
      "Usage: call [GATE]. GATE is the name of the gate; what is known of it from earlier cases "
          + "is taken over. Read out what is on the screen, one thing at a time.";

  private static final String DISPATCH =
      "Usage: dispatch CASE [--json], or dispatch CASE --pdf FILE | --html FILE. CASE is its"
          + " number, such as 2026-0007 or 7. Without a file the sheet goes to standard output as"
          + " Markdown; its JSON follows shared/dispatch.schema.json.";

  @Command(
      name = "call",
      description = "guide a caller on the telephone, and send a technician if needed",
      help = CALL,
      completionProvider = Completions.GATES)
  public void call(@Arguments List<String> words) {
    desk.lead(() -> new NewCase(desk, console, Calling::new).begin(words, Role.CALLER));
  }

  @Command(
      name = "dispatch",
      description = "the dispatch sheet for whoever is sent to a gate",
      help = DISPATCH,
      completionProvider = Completions.CASES)
  public void dispatch(
      @Arguments List<String> words,
      @Option(longName = "json", description = "JSON instead of Markdown") boolean json,
      @Option(longName = "html", description = "write a page to this file, to look at and print")
          String html,
      @Option(longName = "pdf", description = "write the same page to this file as PDF")
          String pdf) {
    PrintedFiles files = new PrintedFiles(output, html, pdf);
    UsageException.when(words.size() != 1 || json && files.isAny(), DISPATCH);
    desk.tend(() -> print(words.get(0), json, files));
  }

  private void print(String typed, boolean json, PrintedFiles files) {
    CaseId id = desk.casebook().find(typed);
    try (OpenCase open = desk.open(id, Role.CALLER)) {
      DispatchSheet sheet =
          SendScreen.sheet(
              new Dispatcher(desk.expertise(), ZoneId.systemDefault(), desk.van()),
              open,
              open.moment(),
              desk.isAway() ? id + " of this computer" : id.toString());
      if (files.isAny()) {
        files.write(DispatchPaper.html(sheet, desk.firm().letterhead()));
      } else if (json) {
        output.json(DispatchJson.write(sheet));
      } else {
        output.print(DispatchPage.markdown(sheet, desk.firm().letterhead().currency()));
      }
    }
  }
}
