package yett.command.diagnose;

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
import yett.command.common.GateNames;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Words;
import yett.command.common.Workplace;
import yett.console.Block;
import yett.console.Console;
import yett.console.Reply;
import yett.desk.GateMemory;
import yett.desk.OpenCase;
import yett.interview.Event;
import yett.knowledge.Names;
import yett.knowledge.Role;

/** {@code diagnose} and {@code call}: a new case, from the first question on. */
public final class DiagnoseVerb extends Verb {
  private final Workplace place;
  private final boolean call;

  private DiagnoseVerb(
      Workplace place,
      boolean call,
      String name,
      String description,
      String usage,
      CommandOption... o) {
    super(name, description, usage, o);
    this.place = place;
    this.call = call;
  }

  public static DiagnoseVerb diagnose(Workplace place) {
    return new DiagnoseVerb(
        place,
        false,
        "diagnose",
        "find out why a gate will not run",
        "Usage: diagnose [GATE] [--as caller|trainee|technician|electrician]. GATE is the name of "
            + "the gate; what is known of it from earlier cases is taken over.",
        value("as", "who answers; a technician if it is not said"));
  }

  public static DiagnoseVerb call(Workplace place) {
    return new DiagnoseVerb(
        place,
        true,
        "call",
        "lead somebody on the telephone, and send a technician if need be",
        "Usage: call [GATE]. GATE is the name of the gate; what is known of it from earlier cases "
            + "is taken over. What is on the screen is to be read out, one thing at a time.");
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    Role role = call ? Role.CALLER : role(option(context, "as", "technician"));
    place.desk().prepare();
    Console console = place.console();
    String typed = Normalizer.normalize(String.join(" ", words(context)), Normalizer.Form.NFC);
    Optional<String> gate = gate(typed.strip().replaceAll("\\s+", " "), console);
    if (gate.isEmpty()) {
      return OK;
    }
    String name = gate.get();
    Map<String, String> known =
        new GateMemory(place.desk().casebook(), place.desk().clock())
            .known(name, place.desk().base());
    place.tellClock();
    CaseId id = place.desk().casebook().newCase(name, place.desk().clock().instant());
    try (OpenCase open = place.desk().open(id, role)) {
      open.record(new Event.Opened(name, role, place.desk().expertise().base().fingerprint()));
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

  public static Role role(String word) {
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
    List<SiteRecord> sites = place.desk().casebook().sites();
    if (!typed.isEmpty()) {
      if (!GateNames.isName(typed)) {
        throw new UsageException(GateNames.NO_NAME);
      }
      return new GateNames(console, sites).meant(typed);
    }
    console.show(Block.heading("Which gate?"));
    if (!sites.isEmpty()) {
      console.show(Block.numbered(sites.stream().map(SiteRecord::id).toList()));
    }
    while (true) {
      Reply input =
          console.ask(
              sites.isEmpty() ? "Name of the gate> " : "Number, or the name of another gate> ",
              sites.stream().map(SiteRecord::id).toList());
      if (!(input instanceof Reply.Line line)) {
        return Optional.empty();
      }
      String text = line.text().strip().replaceAll("\\s+", " ");
      if (text.matches("\\d{1,3}") && Integer.parseInt(text) <= sites.size() && !text.equals("0")) {
        return Optional.of(sites.get(Integer.parseInt(text) - 1).id());
      }
      if (!text.isEmpty() && !GateNames.isName(text)) {
        console.show(Block.paragraph(GateNames.NO_NAME));
      } else if (!text.isEmpty()) {
        return new GateNames(console, sites).meant(text);
      }
    }
  }
}
