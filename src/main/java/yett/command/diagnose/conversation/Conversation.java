package yett.command.diagnose.conversation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.casebook.CaseId;
import yett.command.diagnose.intake.SiteAsNeeded;
import yett.command.diagnose.question.CallLead;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.CaseLeftException;
import yett.command.diagnose.sitting.MovedOnException;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.Console;
import yett.desk.OpenCase;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.Role;

/** Leads a person through a case at a console, until it is closed or put aside. */
public final class Conversation {
  private final Sitting sitting;
  private final AtTheGate atTheGate;
  private final SiteAsNeeded asNeeded;
  private final CallLead calling;
  private final Inspecting inspecting;
  private final ComingBack back;
  private Runnable first = () -> {};

  /**
   * @param knownSite answers to site questions kept from an earlier case at this gate
   * @param calls leads it if it is a call
   */
  public Conversation(
      Console console, OpenCase open, Map<String, String> knownSite, CallLead.Maker calls) {
    this.sitting = new Sitting(console, open);
    PromptRequests wishes = new PromptRequests(sitting);
    Questions questions = new Questions(sitting, wishes);
    this.atTheGate = new AtTheGate(sitting, wishes, questions, knownSite);
    this.asNeeded = new SiteAsNeeded(sitting, wishes);
    this.back = new ComingBack(sitting, questions);
    this.inspecting = new Inspecting(sitting, wishes, questions);
    this.calling = calls.of(sitting, wishes, questions, knownSite);
    wishes.ledBy(calling);
  }

  /**
   * Continues the case because the caller rings again. Their words are taken up before anything is
   * asked.
   *
   * @param known whether who calls was told on this call
   * @param said what they have already said
   */
  public Conversation ringsAgain(boolean known, List<Event> said) {
    calling.ringsAgain(known, said);
    return this;
  }

  /**
   * Says at the end that this case is stored on this computer because the server is away, and will
   * get another number there.
   */
  public Conversation keptHere() {
    sitting.keepHere();
    return this;
  }

  /** The open case to which this call turned out to belong, and in which it continues. */
  public Optional<CaseId> goesOnIn() {
    return calling.goesOnIn();
  }

  /** Resumes a case that was left. The state of the gate is checked first. */
  public Conversation comesBack() {
    first = back::ask;
    return this;
  }

  /** The same, and the dangers are asked about although nobody went away. */
  public Conversation comesBackAndLooksAgain() {
    first = back::askAndLookAgain;
    return this;
  }

  /** Runs until the case is closed or the person leaves. Every answer is stored at once. */
  public void run() {
    try {
      begin();
      while (!(sitting.moment().step() instanceof Step.Finished)) {
        try {
          turn(sitting.moment());
        } catch (MovedOnException e) {
          // The loop looks at the case again.
        }
      }
    } catch (DispatchedException e) {
      sitting.say(sitting.isKeptHere() ? sentFromHere() : sent());
    } catch (CaseLeftException e) {
      sitting.show(Block.blank(), Block.paragraph(sitting.isKeptHere() ? savedHere() : saved()));
      new LeftBehind(sitting.base()).of(sitting.moment()).ifPresent(sitting::show);
    }
    leave();
  }

  private void begin() {
    try {
      first.run();
    } catch (MovedOnException e) {
      // What was typed comes first.
    }
  }

  private String sent() {
    return "The sheet for whoever goes: dispatch "
        + sitting.open().id()
        + ". They go on with: resume "
        + sitting.open().id()
        + " --as technician.";
  }

  /** The same for a case stored on this computer, whose number is another case on the server. */
  private String sentFromHere() {
    return "Until the server answers, the sheet for whoever goes is: dispatch "
        + sitting.open().id()
        + ". Do not give them this number to go on with: on the server it is another case. They get"
        + " the number that Yett shows when the call is delivered.";
  }

  private String saved() {
    boolean waits = sitting.open().waiting() > 0;
    return "Saved. Go on with: resume "
        + sitting.open().id()
        + (waits ? ", once the server answers" : "")
        + ". Nothing that was answered is lost."
        + (!isCall()
            ? ""
            : waits
                ? " If they ring back before that, call takes it down as a new call."
                : " If they do not ring back: dispatch "
                    + sitting.open().id()
                    + " is the sheet for a technician.");
  }

  /**
   * The closing words for a case stored on this computer. They do not name it for resuming, because
   * on the server its number belongs to another case.
   */
  private String savedHere() {
    return "Saved on this computer. Nothing that was answered is lost. When the server"
        + " answers, go on with it under the number that it gets there; calls shows it."
        + " Until then dispatch "
        + sitting.open().id()
        + " is the sheet for a technician.";
  }

  /**
   * Tries once more to deliver what waits for the server; otherwise the next start of the program
   * does.
   */
  private void leave() {
    if (sitting.open().waiting() > 0) {
      try {
        sitting.sharing().tell(sitting.open().deliver());
      } catch (CaseLeftException e) {
        // Nobody is there to decide between two answers; both are in the record.
      }
    }
    if (sitting.open().waiting() > 0) {
      sitting.say(
          "They are delivered when Yett is started here and reaches the casebook again. Until then"
              + " nobody else sees them.");
    }
  }

  private void turn(Moment moment) {
    sitting.cautions().begin();
    if (!isCall() && !moment.state().isInspection() && asNeeded.asked()) {
      return; // the answers may have changed the step
    }
    Step.Visitor<Runnable> turn = atTheGate;
    if (moment.state().isInspection()) {
      turn = inspecting.of(turn);
    }
    moment.step().accept(isCall() ? calling.turn(moment, turn) : turn).run();
  }

  private boolean isCall() {
    return sitting.moment().state().role() == Role.CALLER;
  }
}
