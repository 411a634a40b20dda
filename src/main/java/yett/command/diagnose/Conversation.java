package yett.command.diagnose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.command.call.CallDeeds;
import yett.command.call.Calling;
import yett.console.Block;
import yett.console.Console;
import yett.desk.OpenCase;
import yett.interview.Answer;
import yett.interview.Ending;
import yett.interview.Event;
import yett.interview.Moment;
import yett.interview.Step;
import yett.interview.Trail;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.Role;
import yett.wording.StepWords;
import yett.wording.Wording;

/** Leads a person through a case at a console, until it is closed or put aside. */
public final class Conversation {
  private final Sitting sitting;
  private final Wishes wishes;
  private final Questions questions;
  private final DangerList dangers;
  private final LookList looks;
  private final SetUpScreens setUps;
  private final RetestList retest;
  private final Decisions decisions;
  private final SiteForm siteForm;
  private final Calling calling;
  private final Inspecting inspecting;

  /**
   * @param knownSite answers to site questions kept from an earlier case at this gate
   */
  public Conversation(Console console, OpenCase open, Map<String, String> knownSite) {
    this.sitting = new Sitting(console, open);
    this.wishes = new Wishes(sitting);
    this.questions = new Questions(sitting, wishes);
    this.dangers = new DangerList(sitting, wishes);
    this.looks = new LookList(sitting, wishes);
    this.setUps = new SetUpScreens(sitting, questions);
    this.retest = new RetestList(sitting, questions);
    this.decisions = new Decisions(sitting, questions);
    this.siteForm = new SiteForm(sitting, wishes, knownSite);
    this.inspecting = new Inspecting(sitting, wishes, questions);
    this.calling = new Calling(sitting, wishes, questions, knownSite);
  }

  /** Somebody calls once more about the same: their words are heard before anything is asked. */
  Conversation ringsAgain() {
    calling.ringsAgain();
    return this;
  }

  /** Goes on until the case is closed or the person leaves; every answer is stored at once. */
  public void run() {
    try {
      while (!(sitting.moment().step() instanceof Step.Finished)) {
        turn(sitting.moment());
      }
    } catch (CallDeeds.Dispatched e) {
      // Everything was said; whoever is sent goes on with the case.
    } catch (PutAside e) {
      sitting.show(
          Block.blank(),
          Block.paragraph(
              "Saved. Go on with: resume "
                  + sitting.open().id()
                  + ". Nothing that was answered is lost."
                  + (isCall()
                      ? " If they do not ring back: dispatch "
                          + sitting.open().id()
                          + " is the sheet for a technician."
                      : "")));
    }
    leave();
  }

  /** What still waits for the server has one more try; then the next start of the program has. */
  private void leave() {
    if (sitting.open().waiting() > 0) {
      try {
        sitting.sharing().tell(sitting.open().deliver());
      } catch (PutAside e) {
        // Nobody is there to settle two answers: both are in the record.
      }
    }
    if (sitting.open().waiting() > 0) {
      sitting.say(
          "They are delivered when Yett is started here and reaches the casebook again. Until then"
              + " nobody else sees them.");
    }
  }

  private void turn(Moment moment) {
    Step.Visitor<Runnable> turn = new Turn(moment);
    if (moment.state().isInspection()) {
      turn = inspecting.of(turn);
    }
    moment.step().accept(isCall() ? calling.turn(moment, turn) : turn).run();
  }

  /** What is done at each kind of step. */
  private final class Turn implements Step.Visitor<Runnable> {
    private final Moment moment;

    Turn(Moment moment) {
      this.moment = moment;
    }

    @Override
    public Runnable askDangers(Step.AskDangers step) {
      return () -> dangers.ask(step);
    }

    @Override
    public Runnable askSite(Step.AskSite step) {
      return () -> siteForm.fill();
    }

    @Override
    public Runnable askComplaints(Step.AskComplaints step) {
      return () -> Conversation.this.askComplaints(step);
    }

    @Override
    public Runnable askPressing(Step.AskPressing step) {
      throw onlyOnCalls(step);
    }

    @Override
    public Runnable askHistory(Step.AskHistory step) {
      return () -> Conversation.this.askHistory(step);
    }

    @Override
    public Runnable ask(Step.Ask step) {
      return () -> Conversation.this.ask(step, moment);
    }

    @Override
    public Runnable lookRound(Step.LookRound step) {
      return looks.asksSingly(step) ? ask(step.first()) : () -> looks.ask(step);
    }

    @Override
    public Runnable enter(Step.Enter step) {
      return () -> setUps.enter(step);
    }

    @Override
    public Runnable leave(Step.Leave step) {
      return () -> setUps.leave(step);
    }

    @Override
    public Runnable mend(Step.Mend step) {
      return () -> Conversation.this.mend(step, moment);
    }

    @Override
    public Runnable retest(Step.Retest step) {
      return () -> Conversation.this.retest();
    }

    @Override
    public Runnable settle(Step.Settle step) {
      return () -> decisions.settle(step);
    }

    @Override
    public Runnable takeStock(Step.TakeStock step) {
      return () -> decisions.takeStock(step);
    }

    @Override
    public Runnable decideFailedProof(Step.DecideFailedProof step) {
      return () -> decisions.failedProof(step);
    }

    @Override
    public Runnable makeSafe(Step.MakeSafe step) {
      return () -> Conversation.this.makeSafe(step);
    }

    @Override
    public Runnable handOver(Step.HandOver step) {
      return () -> Conversation.this.handOver(step);
    }

    @Override
    public Runnable closeSolved(Step.CloseSolved step) {
      throw onlyOnCalls(step);
    }

    @Override
    public Runnable closeRepaired(Step.CloseRepaired step) {
      return () -> Conversation.this.closeRepaired();
    }

    @Override
    public Runnable finished(Step.Finished step) {
      return () -> {};
    }

    private static IllegalStateException onlyOnCalls(Step step) {
      return new IllegalStateException("a step of calls only: " + step);
    }
  }

  private boolean isCall() {
    return sitting.moment().state().role() == Role.CALLER;
  }

  private void askComplaints(Step.AskComplaints step) {
    List<String> names = step.complaints().stream().map(Check::ask).toList();
    List<String> ids = step.complaints().stream().map(Check::id).toList();
    sitting.show(
        sitting
            .views()
            .picking("What is wrong with the gate?", "Pick all that were noticed.", names));
    Optional<List<Integer>> picked = questions.several("Numbers", ids, names);
    if (picked.isPresent() && picked.get().isEmpty()) {
      sitting.say("At least one; if nothing fits, take the nearest and add a note.");
    } else if (picked.isPresent()) {
      sitting.record(new Event.Complained(picked.get().stream().map(ids::get).toList()));
    }
  }

  private void askHistory(Step.AskHistory step) {
    List<String> names = step.histories().stream().map(History::name).toList();
    List<String> ids = step.histories().stream().map(History::id).toList();
    sitting.show(
        sitting
            .views()
            .picking("What happened lately?", "Pick all that apply in the last weeks.", names));
    questions
        .several("0 for none, or numbers", ids, names)
        .ifPresent(p -> sitting.record(new Event.Happened(p.stream().map(ids::get).toList())));
  }

  private void ask(Step.Ask step, Moment moment) {
    Check check = step.check();
    sitting.show(sitting.views().ask(step, moment, answered(moment) + 1));
    while (true) {
      String line = sitting.line(Sitting.prompt(check));
      Optional<Answer> answer = questions.answer(check, line);
      if (answer.isEmpty()) {
        if (sitting.moment() != moment) {
          return;
        }
        continue;
      }
      if (sitting.isSure(moment, check, answer.get())) {
        sitting.record(new Event.Answered(check.id(), answer.get()));
        if (Sharing.counts(sitting, check, answer.get())) {
          sitting.show(sitting.movements().taken(moment, sitting.moment(), check));
        }
        return;
      }
    }
  }

  private int answered(Moment moment) {
    return (int)
        moment.state().answers().stream().filter(a -> !sitting.isDanger(a.check())).count();
  }

  private void mend(Step.Mend step, Moment moment) {
    sitting.show(sitting.views().mend(step, moment));
    questions
        .word(
            "\"done\" when it is done, \"cannot\" if it cannot be done here",
            List.of("done", "cannot", "not possible", "unknown", "later"),
            "Type done, or cannot if the part, the time or the permission is missing.")
        .ifPresent(i -> sitting.record(new Event.Repaired(step.repair().id(), i == 0)));
  }

  private void retest() {
    retest.ask(
        List.of(
            Block.heading("Retest"),
            Block.paragraph(
                "Give a command and watch a whole run in both directions. Does the gate run as it "
                    + "should?")),
        "");
    List<Trail.Move> moves = sitting.moment().trail().moves();
    boolean failed = !sitting.moment().state().work().cured();
    if (failed && !sitting.moment().state().work().retestDue() && !moves.isEmpty()) {
      sitting.say(
          "Not cured. That is evidence too: "
              + sitting.movements().movement(moves.get(moves.size() - 1), sitting.moment()));
    }
  }

  private void makeSafe(Step.MakeSafe step) {
    sitting.show(sitting.views().stop(step));
    questions.madeSafe(step);
  }

  private void handOver(Step.HandOver step) {
    sitting.show(
        Block.heading("Hand over"),
        Block.paragraph(Wording.capital(StepWords.because(step.because())) + "."));
    if (step.staysOpen()) {
      keepOpen();
      return;
    }
    if (step.ending() != Ending.MADE_SAFE) {
      sitting.show(sitting.beliefs().bars(sitting.moment(), 4));
    }
    sitting.say("The gate stays out of service until every proof has passed.");
    close(step.ending());
  }

  /**
   * Nobody looks for the fault where somebody was hurt, before whoever leads the inquiry allows.
   */
  private void keepOpen() {
    sitting.say(
        "Nothing is looked for or mended here. The gate stays as it is, apart from what freed"
            + " whoever was hurt and what isolates it. The case stays open for the inquiry; go on"
            + " with it when the scene is released.");
    questions
        .word(
            "\"leave\" to leave it so, or back",
            List.of("leave"),
            "Type leave, or back to take the last answer back.")
        .ifPresent(
            i -> {
              throw new PutAside();
            });
  }

  private void closeRepaired() {
    sitting.show(
        Block.heading("Back in service"),
        Block.paragraph("Every proof that this gate needs passed."));
    close(Ending.REPAIRED);
  }

  private void close(Ending ending) {
    if (!questions.close("case", ending)) {
      return;
    }
    if (sitting.moment().state().closed().isEmpty()) {
      return; // somebody else had gone on with it
    }
    String id = sitting.open().id().toString();
    String sheet =
        ending == Ending.REPAIRED
            ? ""
            : " The sheet for the next level: record " + id + " --hand-over.";
    sitting.say("Closed. The record: record " + id + "." + sheet);
  }
}
