package yett.shell;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.CaseId;
import yett.casebook.SiteRecord;
import yett.console.Block;
import yett.console.Console;
import yett.console.Input;
import yett.interview.Event;
import yett.knowledge.Names;
import yett.knowledge.Role;

/** {@code diagnose} and {@code call}: a new case, from the first question on. */
final class DiagnoseVerb extends Verb {
  private final Desk desk;
  private final boolean call;

  private DiagnoseVerb(
      Desk desk, boolean call, String name, String description, String usage, CommandOption... o) {
    super(name, description, usage, o);
    this.desk = desk;
    this.call = call;
  }

  static DiagnoseVerb diagnose(Desk desk) {
    return new DiagnoseVerb(
        desk,
        false,
        "diagnose",
        "find out why a gate will not run",
        "Usage: diagnose [GATE] [--as caller|trainee|technician|electrician]. GATE is the name of "
            + "the gate; what is known of it from earlier cases is taken over.",
        value("as", "who answers; a technician if it is not said"));
  }

  static DiagnoseVerb call(Desk desk) {
    return new DiagnoseVerb(
        desk,
        true,
        "call",
        "lead somebody on the telephone, and send a technician if need be",
        "Usage: call [GATE]. GATE is the name of the gate; what is known of it from earlier cases "
            + "is taken over. What is on the screen is to be read out, one thing at a time.");
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    Role role = call ? Role.CALLER : role(option(context, "as", "technician"));
    desk.prepare();
    Console console = desk.console();
    String typed = Normalizer.normalize(String.join(" ", words(context)), Normalizer.Form.NFC);
    Optional<String> gate = gate(typed.strip().replaceAll("\\s+", " "), console);
    if (gate.isEmpty()) {
      return OK;
    }
    String name = gate.get();
    Map<String, String> known =
        new GateMemory(desk.casebook(), desk.clock()).known(name, desk.base());
    desk.tellClock();
    CaseId id = desk.casebook().newCase(name, desk.clock().instant());
    try (OpenCase open = desk.open(id, role)) {
      open.record(new Event.Opened(name, role, desk.expertise().base().fingerprint()));
      console.show(
          Block.heading("Case " + id + " · " + name),
          Block.paragraph(
              "Every answer is saved at once. At every prompt: why, belief, back, correct, "
                  + "unknown, later, note, danger, hand over, save, help."));
      if (role == Role.TRAINEE) {
        console.show(Block.paragraph("A trainee works under the eyes of a technician."));
      }
      new Conversation(console, open, known).run();
    }
    return OK;
  }

  static Role role(String word) {
    if (!Role.words().contains(word.toLowerCase(Locale.ROOT))) {
      throw new UsageException(
          "\""
              + Words.shortened(word)
              + "\" is nobody who can answer. "
              + Names.advice(word, Role.words()));
    }
    return Role.named(word);
  }

  /** The gate's name: from the command line, from those known, or typed. */
  private Optional<String> gate(String typed, Console console) {
    List<SiteRecord> sites = desk.casebook().sites();
    if (!typed.isEmpty()) {
      if (!Gates.isName(typed)) {
        throw new UsageException(Gates.NO_NAME);
      }
      return new Gates(console, sites).meant(typed);
    }
    console.show(Block.heading("Which gate?"));
    if (!sites.isEmpty()) {
      console.show(Block.numbered(sites.stream().map(SiteRecord::id).toList()));
    }
    while (true) {
      Input input =
          console.ask(
              sites.isEmpty() ? "Name of the gate> " : "Number, or the name of another gate> ",
              sites.stream().map(SiteRecord::id).toList());
      if (!(input instanceof Input.Line line)) {
        return Optional.empty();
      }
      String text = line.text().strip().replaceAll("\\s+", " ");
      if (text.matches("\\d{1,3}") && Integer.parseInt(text) <= sites.size() && !text.equals("0")) {
        return Optional.of(sites.get(Integer.parseInt(text) - 1).id());
      }
      if (!text.isEmpty() && !Gates.isName(text)) {
        console.show(Block.paragraph(Gates.NO_NAME));
      } else if (!text.isEmpty()) {
        return new Gates(console, sites).meant(text);
      }
    }
  }
}
