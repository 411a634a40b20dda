package yett.command.diagnose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CaseId;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.command.common.ClockNotice;
import yett.command.common.Completions;
import yett.command.common.RoleOption;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.interview.Ending;
import yett.interview.Event;
import yett.interview.Step;
import yett.knowledge.Role;

/** {@code diagnose} and {@code resume}: begin a new case, or continue one where it was left. */
public record DiagnoseCommands(Desk desk, Console console) {
  private static final String DIAGNOSE =
      "Usage: diagnose [GATE] [--as caller|trainee|technician|electrician]. GATE is the name of "
          + "the gate; what is known of it from earlier cases is taken over.";

  private static final String RESUME =
      "Usage: resume [CASE] [--as caller|trainee|technician|electrician]. CASE is its number, "
          + "such as 2026-0007 or 7; without it, the case that was left last.";

  @Command(
      name = "diagnose",
      description = "find out why a gate will not run",
      help = DIAGNOSE,
      completionProvider = Completions.GATES)
  public void diagnose(
      @Arguments List<String> words,
      @Option(
              longName = "as",
              description = "who answers; a technician unless given",
              defaultValue = "technician")
          String who) {
    new NewCase(desk, console).begin(words, RoleOption.of(who));
  }

  @Command(
      name = "resume",
      description = "go on with a case where it was left",
      help = RESUME,
      completionProvider = Completions.CASES)
  public void resume(
      @Arguments List<String> words,
      @Option(longName = "as", description = "who answers from now on; as before unless given")
          String who) {
    desk.prepare();
    CaseId id = id(words);
    Optional<Role> role =
        Optional.ofNullable(who).map(RoleOption::of).or(() -> new WhoAnswers(desk, console).of(id));
    if (role.isPresent()) {
      goOn(id, role.get());
    }
  }

  private void goOn(CaseId id, Role role) {
    try (OpenCase open = desk.open(id, role)) {
      open.nameIt(); // a program that was killed may have stored an answer and not said so
      var state = open.moment().state();
      String gate = state.opened().map(Event.Opened::site).orElse("");
      console.show(Block.heading("Case " + id + " · " + gate + " · " + WhoAnswers.words(role)));
      if (state.closed().filter(Ending::isDone).isPresent()) {
        console.say(
            "This case is closed: "
                + state.closed().get().words()
                + ". Its record: record "
                + id
                + ".");
        new AfterInspection(desk, console).offer(open);
        return;
      }
      if (state.isInspection() && state.closed().isPresent()) {
        console.say(
            "This inspection is closed: "
                + state.closed().get().words()
                + ". The gate may be used once it has passed every proof, in a case or in"
                + " another inspection.");
        new AfterInspection(desk, console).offer(open);
        return;
      }
      ResumeViews views = new ResumeViews(desk.base());
      console.show(views.left(open.moment()));
      if (state.closed().isPresent()) {
        takeUp(open, "was closed: " + state.closed().get().words(), new Event.TakenUp());
      } else if (open.moment().step() instanceof Step.HandOver h && h.staysOpen()) {
        takeUp(open, "was left open for an inquiry", new Event.Returned());
      }
      boolean sameRules =
          state
              .opened()
              .map(o -> o.ruleBase().equals(desk.expertise().base().fingerprint()))
              .orElse(true);
      if (!sameRules) {
        console.say("The rule base has changed since; the answers were weighed again.");
      }
      ClockNotice.show(desk, console);
      console.show(new UnusableEvents(desk.base()).blocks(open.moment()));
      console.say(views.summary(open));
      if (open.role() != Role.CALLER) {
        console.show(views.told(open, new Corrections(new Sitting(console, open))));
      }
      new Conversation(console, open, Map.of()).comesBack().run();
      new AfterInspection(desk, console).offer(open);
    }
  }

  private CaseId id(List<String> words) {
    if (!words.isEmpty()) {
      return desk.casebook().find(words.get(0));
    }
    return desk.casebook().cases(CaseStatus.OPEN).stream()
        .findFirst() // the one written to last
        .map(CaseSummary::id)
        .orElseThrow(() -> new UsageException("No case is open. Begin one with: diagnose."));
  }

  /**
   * Continues a case that was handed over or left: dangers are asked about first, then the state of
   * the gate.
   */
  private void takeUp(OpenCase open, String left, Event how) {
    console.say(
        "This case "
            + left
            + ". It is taken up again from where it was left; look for dangers first, then"
            + " check that the gate is as it was left.");
    open.record(how);
  }
}
