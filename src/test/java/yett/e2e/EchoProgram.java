package yett.e2e;

import static yett.console.Block.paragraph;
import static yett.console.Block.rule;
import static yett.console.Block.signal;

import java.util.List;
import yett.console.Console;
import yett.console.Consoles;
import yett.console.Progress;
import yett.console.Reply;
import yett.console.SignalWord;

/** Repeats what it is told, for testing the consoles. */
final class EchoProgram {
  private EchoProgram() {}

  public static void main(String[] arguments) {
    Console console = Consoles.choose(System.getenv());
    console.show(
        signal(SignalWord.CAUTION, "The gate may move by itself."),
        paragraph(
            "width " + console.width() + (console.interactive() ? ", a person" : ", no person")),
        rule());
    while (true) {
      Reply input = console.ask("Say: ", List.of("cannot tell", "not now"));
      if (input instanceof Reply.Line line) {
        switch (line.text()) {
          case "quit" -> System.exit(0);
          case "work" -> work(console);
          case "width" -> console.show(paragraph("width " + console.width()));
          default -> console.show(paragraph("Heard [" + line.text() + "]"));
        }
      } else if (input instanceof Reply.Interrupted) {
        console.show(paragraph("Interrupted."));
      } else {
        console.show(paragraph("End of input."));
        return;
      }
    }
  }

  private static void work(Console console) {
    try (Progress progress = console.start("Replaying", 20)) {
      for (int i = 0; i < 20; i++) {
        progress.step();
      }
    }
  }
}
