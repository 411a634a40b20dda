package yett.command.diagnose;

import java.text.Normalizer;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.casebook.CaseId;
import yett.casebook.SiteRecord;
import yett.command.common.ClockNotice;
import yett.command.common.GateNames;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.console.Input;
import yett.desk.Desk;
import yett.desk.GateMemory;
import yett.desk.OpenCase;
import yett.interview.Event;
import yett.knowledge.Role;

/** A new case, from the name of the gate on. */
public final class NewCase {
  private final Desk desk;
  private final Console console;

  public NewCase(Desk desk, Console console) {
    this.desk = desk;
    this.console = console;
  }

  /**
   * Opens a case and leads through it, unless the person leaves before the gate has a name.
   *
   * @param words the name of the gate, if it was said with the command
   */
  public void begin(List<String> words, Role role) {
    desk.prepare();
    String typed = Normalizer.normalize(String.join(" ", words), Normalizer.Form.NFC);
    gate(typed.strip().replaceAll("\\s+", " ")).ifPresent(gate -> begin(gate, role));
  }

  private void begin(String gate, Role role) {
    Map<String, String> known =
        new GateMemory(desk.casebook(), desk.clock()).known(gate, desk.base());
    ClockNotice.show(desk, console);
    CaseId id = desk.casebook().newCase(gate, desk.clock().instant());
    try (OpenCase open = desk.open(id, role)) {
      open.record(new Event.Opened(gate, role, desk.expertise().base().fingerprint()));
      console.show(
          Block.heading("Case " + id + " · " + gate),
          Block.paragraph(
              "Every answer is saved at once. At every prompt: why, belief, back, correct, "
                  + "unknown, later, note, danger, hand over, save, help."));
      if (role == Role.TRAINEE) {
        console.show(Block.paragraph("A trainee works under the eyes of a technician."));
      }
      new Conversation(console, open, known).run();
    }
  }

  /** The gate's name: from the command line, from those known, or typed. */
  private Optional<String> gate(String typed) {
    List<SiteRecord> sites = desk.casebook().sites();
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
      if (!text.isEmpty() && !GateNames.isName(text)) {
        console.show(Block.paragraph(GateNames.NO_NAME));
      } else if (!text.isEmpty()) {
        return new GateNames(console, sites).meant(text);
      }
    }
  }
}
