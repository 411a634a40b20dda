package yett.shell;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.ExitStatus;
import tools.jackson.core.JacksonException;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;
import yett.casebook.CaseId;
import yett.casebook.CasebookUnreachable;
import yett.casebook.SiteRecord;
import yett.console.Block;
import yett.console.Console;
import yett.console.Input;
import yett.interview.Event;
import yett.knowledge.Names;
import yett.knowledge.Role;

/** {@code diagnose} and {@code call}: a new case, from the first question on. */
final class DiagnoseVerb extends Verb {
  private static final JsonMapper JSON = JsonMapper.builder().build();

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
    Optional<String> gate = gate(String.join(" ", words(context)).strip(), console);
    if (gate.isEmpty()) {
      return OK;
    }
    String siteId = id(gate.get());
    Map<String, String> known =
        desk.casebook().site(siteId).map(DiagnoseVerb::answers).orElse(Map.of());
    CaseId id = desk.casebook().newCase(siteId, desk.clock().instant());
    try (OpenCase open = desk.open(id, role)) {
      open.record(new Event.Opened(gate.get(), role, desk.expertise().base().fingerprint()));
      console.show(
          Block.heading("Case " + id + " · " + gate.get()),
          Block.paragraph(
              "Every answer is saved at once. At every prompt: why, belief, back, correct, "
                  + "unknown, later, note, danger, hand over, save, help."));
      if (role == Role.TRAINEE) {
        console.show(Block.paragraph("A trainee works under the eyes of a technician."));
      }
      new Conversation(console, open, known).run();
      keepSite(siteId, gate.get(), open);
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
    if (!typed.isEmpty()) {
      return Optional.of(typed);
    }
    List<SiteRecord> sites = desk.casebook().sites();
    console.show(Block.heading("Which gate?"));
    if (!sites.isEmpty()) {
      console.show(Block.numbered(sites.stream().map(SiteRecord::name).toList()));
    }
    while (true) {
      Input input =
          console.ask(
              sites.isEmpty() ? "Name of the gate> " : "Number, or the name of another gate> ",
              sites.stream().map(SiteRecord::name).toList());
      if (!(input instanceof Input.Line line)) {
        return Optional.empty();
      }
      String text = line.text().strip();
      if (text.matches("\\d{1,3}") && Integer.parseInt(text) <= sites.size() && !text.equals("0")) {
        return Optional.of(sites.get(Integer.parseInt(text) - 1).name());
      }
      if (text.length() > 80) {
        console.show(Block.paragraph("A name of at most 80 letters, please."));
      } else if (!text.isEmpty()) {
        return Optional.of(text);
      }
    }
  }

  private static String id(String name) {
    String id = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    return id.replaceAll("^-|-$", "").isEmpty() ? "gate" : id.replaceAll("^-|-$", "");
  }

  static Map<String, String> answers(SiteRecord site) {
    try {
      return JSON.readValue(site.body(), new TypeReference<LinkedHashMap<String, String>>() {});
    } catch (JacksonException e) {
      return Map.of(); // written by another version: the questions are asked again
    }
  }

  private void keepSite(String id, String name, OpenCase open) {
    if (open.moment().state().siteTaken()) {
      // Only what somebody said of this gate; the usual stays the usual.
      Map<String, String> answers = open.moment().state().site();
      try {
        desk.casebook()
            .saveSite(
                new SiteRecord(id, name, JSON.writeValueAsString(answers), desk.clock().instant()));
      } catch (CasebookUnreachable e) {
        desk.console()
            .show(
                Block.paragraph(
                    "How this gate is built is kept with the case only; the next case asks again."));
      }
    }
  }
}
