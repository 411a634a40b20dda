package yett.command.call;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.casebook.CaseId;
import yett.command.common.Completions;
import yett.command.common.NoName;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.interview.state.CallLog;
import yett.wording.CallWords;

/** {@code calls}: shows and works on the queue, for a desk with many calls and several agents. */
public record QueueCommands(Desk desk, Console console) {
  private static final String CALLS =
      "Usage: calls. Lists the open calls: how urgent, which gate, how old, why, how"
          + " far along, and who has it.";

  private static final String AGENT = "Usage: calls agent NAME. Sets who works at this computer.";
  private static final String TAKE = "Usage: calls take CASE. The call is then yours.";
  private static final String GIVE = "Usage: calls give CASE NAME. The call then belongs to NAME.";
  private static final String NOTE = "Usage: calls note CASE WORDS... Adds a remark to the call.";
  private static final String BACK =
      "Usage: calls back CASE WHEN. WHEN is a time: 14:30, in an hour, tomorrow at 9,"
          + " 2026-12-01 8:30.";
  private static final String SENT =
      "Usage: calls sent CASE WHO [WHEN]. Such as: calls sent 7 Tom, 14:30.";
  private static final String WAY =
      "Usage: calls way CASE [WORDS]. Notes that the person sent is on the way.";
  private static final String GATE =
      "Usage: calls there CASE [WORDS]. Notes that the person sent is at the gate.";

  @Command(name = "calls", description = "the open calls, most urgent first", help = CALLS)
  public void calls() {
    desk.tend(this::show);
  }

  private void show() {
    Instant now = desk.clock().instant();
    List<CallQueue.Call> calls =
        CallQueue.of(desk.casebook(), desk.base(), ZoneId.systemDefault(), new SheetUrgency(desk));
    if (calls.isEmpty()) {
      console.say("No call is open.");
      return;
    }
    console.show(
        new Block.Rows(
            calls.stream().map(c -> Block.row(c.line().id().toString(), c.words(now))).toList()),
        Block.paragraph(calls.size() == 1 ? "1 call is open." : calls.size() + " calls are open."));
  }

  @Command(
      name = {"calls", "agent"},
      description = "set who works at this computer",
      help = AGENT)
  public void agent(@Arguments List<String> words) {
    if (!words.isEmpty()) {
      refuseNoName(String.join(" ", words), AGENT);
      desk.callAgent(names().meant(String.join(" ", words).strip()));
    }
    console.say(
        desk.agent()
            .map(a -> "At this computer: " + a + ".")
            .orElse("Nobody has said who works here. " + AGENT));
  }

  @Command(
      name = {"calls", "take"},
      description = "take a call",
      help = TAKE,
      completionProvider = Completions.CASES)
  public void take(@Arguments List<String> words) {
    String agent =
        desk.agent()
            .orElseThrow(() -> new UsageException("Say first who works here: calls agent NAME."));
    tend(words, TAKE, Tending.TAKEN, Optional.of(agent), false);
  }

  @Command(
      name = {"calls", "give"},
      description = "give a call to somebody else",
      help = GIVE,
      completionProvider = Completions.CASES)
  public void give(@Arguments List<String> words) {
    UsageException.when(words.size() < 2, GIVE);
    refuseNoName(rest(words), GIVE);
    tend(words, GIVE, Tending.GIVEN, Optional.of(names().meant(rest(words))), true);
  }

  @Command(
      name = {"calls", "note"},
      description = "add a remark to a call",
      help = NOTE,
      completionProvider = Completions.CASES)
  public void note(@Arguments List<String> words) {
    UsageException.when(words.size() < 2, NOTE);
    record(words.get(0), new Event.Noted(rest(words)), "noted");
  }

  @Command(
      name = {"calls", "back"},
      description = "note when to call back",
      help = BACK,
      completionProvider = Completions.CASES)
  public void back(@Arguments List<String> words) {
    UsageException.when(words.size() < 2, BACK);
    if (due(rest(words)).isEmpty()) {
      throw new UsageException("No time could be found in \"" + rest(words) + "\". " + BACK);
    }
    tend(words, BACK, Tending.CALL_BACK, Optional.empty(), true);
  }

  @Command(
      name = {"calls", "sent"},
      description = "note who was sent to a gate",
      help = SENT,
      completionProvider = Completions.CASES)
  public void sent(@Arguments List<String> words) {
    refuseNoName(words.isEmpty() ? "" : rest(words), SENT);
    tend(words, SENT, Tending.SENT, Optional.empty(), true);
    if (due(rest(words)).isEmpty()) {
      console.say("No time could be found in it. " + SENT);
    }
  }

  @Command(
      name = {"calls", "way"},
      description = "note that the person sent is on the way",
      help = WAY,
      completionProvider = Completions.CASES)
  public void way(@Arguments List<String> words) {
    tend(words, WAY, Tending.ON_THE_WAY, Optional.empty(), false);
  }

  @Command(
      name = {"calls", "there"},
      description = "note that the person sent is at the gate",
      help = GATE,
      completionProvider = Completions.CASES)
  public void there(@Arguments List<String> words) {
    tend(words, GATE, Tending.AT_THE_GATE, Optional.empty(), false);
  }

  private static void refuseNoName(String typed, String usage) {
    if (NoName.isIn(typed)) {
      throw new UsageException("\"" + typed.strip() + "\" is no name. " + usage);
    }
  }

  private AgentNames names() {
    return new AgentNames(desk, console);
  }

  private void tend(
      List<String> words, String usage, Tending what, Optional<String> agent, boolean needsWords) {
    UsageException.when(words.isEmpty() || needsWords && words.size() < 2, usage);
    String said = agent.orElseGet(() -> rest(words));
    String due = due(said).map(Instant::toString).orElse("");
    Event.Tended tended = new Event.Tended(what, said, due);
    record(words.get(0), tended, CallWords.of(tended));
  }

  private Optional<Instant> due(String words) {
    return Due.in(words, desk.clock().instant(), ZoneId.systemDefault());
  }

  private static String rest(List<String> words) {
    return String.join(" ", words.subList(1, words.size())).strip();
  }

  /**
   * Stores an event in a case from the queue under the role that answered last. A closed case is
   * refused.
   */
  private void record(String typed, Event event, String words) {
    desk.tend(() -> keep(typed, event, words));
  }

  private void keep(String typed, Event event, String words) {
    CaseId id = desk.casebook().find(typed);
    try (OpenCase open = desk.open(id, Optional.empty())) {
      if (open.moment().state().closed().isPresent()) {
        throw new UsageException(
            "Case " + id + " is closed: " + open.moment().state().closed().get().words() + ".");
      }
      Optional<String> before = CallLog.of(open.moment().entries()).holder();
      open.record(event);
      Optional<String> now = CallLog.of(open.moment().entries()).holder();
      console.say(
          "Case "
              + id
              + ": "
              + words
              + "."
              + before
                  .filter(b -> !now.equals(before))
                  .map(b -> " It was with " + b + ".")
                  .orElse(""));
    }
  }
}
