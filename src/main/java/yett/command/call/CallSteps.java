package yett.command.call;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import yett.casebook.Person;
import yett.command.diagnose.Questions;
import yett.command.diagnose.RetestList;
import yett.command.diagnose.Sitting;
import yett.console.Block;
import yett.console.SignalWord;
import yett.console.Text;
import yett.dispatch.DispatchSheet;
import yett.dispatch.Dispatcher;
import yett.interview.Chance;
import yett.interview.Ending;
import yett.interview.Event;
import yett.interview.Moment;
import yett.interview.Step;
import yett.wording.StepWords;
import yett.wording.Wording;

/** What a caller does, told to them step by step, and how a call ends. */
public final class CallSteps {
  /** So many parts are named on the screen; the sheet has all. */
  private static final int SHORT = 6;

  /** A part that is needed less often is not read out of a list of many. */
  private static final double WORTH = 0.05;

  private final Sitting sitting;
  private final Questions questions;
  private final WhoCalls whoCalls;
  private final Sending sending;

  CallSteps(Sitting sitting, Questions questions, WhoCalls whoCalls) {
    this.sitting = sitting;
    this.questions = questions;
    this.whoCalls = whoCalls;
    this.sending = new Sending(sitting);
  }

  void makeSafe(Step.MakeSafe step) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.rule());
    blocks.add(Block.signal(SignalWord.DANGER, step.stop().name() + "."));
    blocks.add(Block.paragraph(Text.strong("Read out, in this order:")));
    blocks.add(Block.numbered(step.now()));
    List<String> desk = sitting.base().telephone().desk().getOrDefault(step.stop().id(), List.of());
    if (!desk.isEmpty()) {
      blocks.add(Block.paragraph(Text.strong("You at the desk:")));
      blocks.add(Block.numbered(desk));
    }
    sitting.show(blocks);
    questions.madeSafe(step);
  }

  /** One step at a time: the next is read out when the caller says that the last one is done. */
  void mend(Step.Mend step) {
    List<String> steps = step.repair().steps();
    sitting.show(Block.heading("What the caller can do: " + step.repair().name()));
    sitting.show(sitting.cautions().spoken(step.cautions()));
    for (int i = 0; i < steps.size(); i++) {
      sitting.show(
          Block.paragraph(
              Text.of("Step " + (i + 1) + " of " + steps.size() + ", read out: ")
                  .and(Text.strong(steps.get(i)))));
      OptionalInt done =
          questions.word(
              "Enter when it is done, \"g\" if they can't",
              List.of("", "done", "g", "d", "cannot", "not possible", "unknown", "later"),
              "Press Enter when it is done; g if they cannot or will not get there; x if the"
                  + " call dropped.");
      if (done.isEmpty()) {
        return;
      }
      if (done.getAsInt() > 1) {
        sitting.record(new Event.Repaired(step.repair().id(), false));
        return;
      }
    }
    sitting.record(new Event.Repaired(step.repair().id(), true));
  }

  void retest() {
    new RetestList(sitting, questions)
        .ask(
            List.of(
                Block.heading("Does it run now?"),
                Block.paragraph(Text.of("Read out: ").and(Text.strong(RetestList.TO_TRY)))),
            " Type hand over if nobody can try it.");
  }

  void failedProof(Step.DecideFailedProof step) {
    sitting.say("Then something is still wrong.");
    sitting.record(new Event.Reopened(step.proof().id()));
  }

  void solved(Step.CloseSolved step) {
    List<String> watch = new ArrayList<>(step.watch());
    watch.add("Watch the next runs from the side, with nobody in the opening.");
    watch.add(
        "Call again at once if it does the same again, or anything new, or makes a new noise.");
    sitting.show(
        Block.heading("Solved on the telephone"),
        Block.paragraph(Text.strong("Read out:")),
        Block.numbered(watch));
    OptionalInt closed =
        questions.word(
            "\"close\" to close the case, or back",
            List.of("close"),
            "Type close, or back to take the last answer back.");
    if (closed.isPresent()) {
      sitting.record(new Event.Closed(Ending.SOLVED));
      sitting.say("Closed. The record: record " + sitting.open().id() + ".");
    }
  }

  /** The case stays open: whoever is sent goes on with it. */
  void dispatch(Step.HandOver step, Moment moment) {
    String id = sitting.open().id().toString();
    String gate = sitting.open().gate();
    DispatchSheet sheet =
        new Dispatcher(sitting.open().interview().expertise(), ZoneId.systemDefault())
            .sheet(
                moment,
                id,
                gate,
                sitting.open().caller().map(Person::name),
                sitting.open().caller().map(Person::phone));
    List<Block> blocks = new ArrayList<>();
    boolean emergency = step.ending() == Ending.MADE_SAFE;
    blocks.add(Block.heading(emergency ? "Emergency" : "Send somebody"));
    String urgency =
        Wording.capital(sheet.urgency().level())
            + ": "
            + String.join("; ", sheet.urgency().reasons())
            + ".";
    blocks.add(
        emergency
            ? Block.signal(SignalWord.DANGER, urgency)
            : Block.paragraph(Text.strong(urgency)));
    if (!emergency) {
      blocks.add(Block.paragraph(Wording.capital(StepWords.because(step.because())) + "."));
      blocks.add(sitting.beliefs().bars(moment, 4));
      blocks.add(
          Block.rows(
              Block.row("On site", "about " + sheet.minutesOnSite().likely() + " min"),
              Block.row("Bring", bring(sheet.bring().parts()))));
    }
    blocks.add(Block.paragraph(Text.strong("Read out, until somebody comes:")));
    blocks.add(Block.numbered(sheet.untilThen()));
    sitting.show(blocks);
    whoCalls.ask();
    if (whoCalls.isLeft()) {
      return;
    }
    Optional<String> before = sending.before();
    before.ifPresent(b -> sitting.say("Already " + b + "."));
    OptionalInt sent =
        questions.word(
            before.isPresent()
                ? "\"send\" if somebody else goes, \"leave\" to leave it so, or back"
                : "\"send\" when somebody is told, or back",
            before.isPresent() ? List.of("send", "leave") : List.of("send"),
            "Type send, or back to take the last answer back.");
    if (sent.isPresent()) {
      if (sent.getAsInt() == 0) {
        sending.ask(emergency, sheet.urgency().level());
      }
      sitting.say(
          "The sheet for whoever goes: dispatch "
              + id
              + ". They go on with: resume "
              + id
              + " --as technician.");
      throw new Dispatched();
    }
  }

  private static String bring(List<DispatchSheet.Packed> parts) {
    List<String> worth =
        parts.stream()
            .filter(p -> p.chance() >= WORTH)
            .limit(SHORT)
            .map(DispatchSheet.Packed::name)
            .toList();
    List<DispatchSheet.Packed> others = parts.subList(worth.size(), parts.size());
    if (others.isEmpty()) {
      return parts.isEmpty() ? "no part" : String.join("; ", worth);
    }
    double most = others.stream().mapToDouble(DispatchSheet.Packed::chance).max().orElse(0);
    return (worth.isEmpty() ? "no part in particular" : String.join("; ", worth))
        + "; "
        + others.size()
        + (worth.isEmpty() ? "" : " more")
        + " on the sheet, each needed in at most "
        + Chance.of(most).percent();
  }

  /** The call is over and the case goes on elsewhere. */
  public static final class Dispatched extends RuntimeException {
    Dispatched() {
      super("dispatched", null, false, false);
    }
  }
}
