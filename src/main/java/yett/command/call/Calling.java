package yett.command.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.casebook.CaseId;
import yett.command.diagnose.question.CallLead;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.ChildRings;
import yett.command.diagnose.sitting.Sitting;
import yett.command.diagnose.told.WorksAgain;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.SomeSteps;
import yett.interview.step.Step;

/**
 * Leads a call from the desk's side. Everything is worded to be read out, one thing at a time, and
 * no question asks for something that a person on the telephone cannot know.
 */
public final class Calling implements CallLead {
  private final Sitting sitting;
  private final CallSteps deeds;
  private final SendScreen send;
  private final WhoCalls whoCalls;
  private final SaidSince since;
  private final OpeningWords words;
  private final ComplaintChoice complaints;
  private final Circumstances circumstances;
  private final CallQuestion question;
  private final SaidBesides besides;
  private final Map<String, String> knownSite;

  /**
   * @param knownSite answers about the gate from earlier cases
   */
  public Calling(
      Sitting sitting, PromptRequests wishes, Questions questions, Map<String, String> knownSite) {
    this.sitting = sitting;
    this.whoCalls = new WhoCalls(sitting, wishes);
    ReadOut readOut = new ReadOut();
    this.deeds = new CallSteps(sitting, questions, new StepsDone(sitting, wishes), readOut);
    this.send = new SendScreen(sitting, questions, whoCalls, readOut);
    this.since = new SaidSince(sitting, wishes);
    this.words = new OpeningWords(sitting, wishes, since);
    this.complaints = new ComplaintChoice(sitting, wishes, questions);
    this.circumstances = new Circumstances(sitting, questions);
    this.question = new CallQuestion(sitting, wishes);
    this.besides = new SaidBesides(sitting, questions, new WorksAgain(sitting)::tellsOfIt);
    this.knownSite = knownSite;
  }

  @Override
  public Step.Visitor<Runnable> turn(Moment moment, Step.Visitor<Runnable> otherwise) {
    return new Turn(moment, otherwise);
  }

  private final class Turn implements SomeSteps<Runnable> {
    private final Moment moment;
    private final Step.Visitor<Runnable> otherwise;

    Turn(Moment moment, Step.Visitor<Runnable> otherwise) {
      this.moment = moment;
      this.otherwise = otherwise;
    }

    @Override
    public Runnable askDangers(Step.AskDangers step) {
      return words.areDue(moment) ? words::ask : other(step);
    }

    @Override
    public Runnable askSite(Step.AskSite step) {
      return () -> takeSite();
    }

    @Override
    public Runnable askComplaints(Step.AskComplaints step) {
      return () -> {
        if (knowsWhoRings() && !since.endsIt()) {
          complaints.ask(step);
        }
      };
    }

    @Override
    public Runnable askPressing(Step.AskPressing step) {
      return () -> {
        if (goesOn()) {
          circumstances.askPressing(step);
        }
      };
    }

    @Override
    public Runnable askHistory(Step.AskHistory step) {
      return () -> {
        if (goesOn()) {
          circumstances.askHistory(step, moment);
        }
      };
    }

    @Override
    public Runnable ask(Step.Ask step) {
      return () -> {
        if (goesOn()) {
          question.ask(step.check(), step.cautions(), moment);
        }
      };
    }

    @Override
    public Runnable makeSafe(Step.MakeSafe step) {
      return () -> deeds.makeSafe(step);
    }

    @Override
    public Runnable mend(Step.Mend step) {
      return () -> {
        if (goesOnToWork()) {
          deeds.mend(step);
        }
      };
    }

    @Override
    public Runnable retest(Step.Retest step) {
      return () -> deeds.retest();
    }

    @Override
    public Runnable decideFailedProof(Step.DecideFailedProof step) {
      return () -> deeds.failedProof(step);
    }

    @Override
    public Runnable closeSolved(Step.CloseSolved step) {
      return () -> deeds.solved(step);
    }

    @Override
    public Runnable handOver(Step.HandOver step) {
      return () -> {
        boolean danger = step.ending() == Ending.MADE_SAFE; // with most it is urgent anyway
        if (danger ? !since.endsItAnew() && !circumstances.askOfDanger() : goesOnToWork()) {
          send.show(step, moment);
        }
      };
    }

    @Override
    public Runnable other(Step step) {
      return step.accept(otherwise);
    }
  }

  @Override
  public void ringsAgain(boolean known, List<Event> said) {
    since.ringsAgain();
    besides.ringsAgain();
    new ChildRings(sitting).askAnew();
    if (!known) {
      whoCalls.ringsAgain();
    }
    new StillUntold(sitting).reopen();
    words.take(said);
  }

  @Override
  public Optional<CaseId> goesOnIn() {
    return whoCalls.goesOnIn();
  }

  @Override
  public void send(boolean emergency, String level) {
    new Sending(sitting).ask(emergency, level);
  }

  @Override
  public void leave() {
    new Sending(sitting).leave();
  }

  /**
   * The same before a repair, and before somebody is sent. On the first call, what was said was
   * read back by then.
   */
  private boolean goesOnToWork() {
    return since.isAnotherCall() ? goesOn() : knowsWhoRings() && !circumstances.askBesides();
  }

  /** Whether what was said since the last time neither ended the call nor answered something. */
  private boolean goesOn() {
    return knowsWhoRings()
        && !since.endsItAnew()
        && !besides.ask()
        && !circumstances.askAnew(since)
        && !circumstances.askBesides();
  }

  /** Asks who rings about a case of an earlier call; false if something else comes first now. */
  private boolean knowsWhoRings() {
    if (!since.isAnotherCall() || !whoCalls.isLeft()) {
      return true;
    }
    whoCalls.ask();
    return !whoCalls.isLeft() && sitting.moment().state().closed().isEmpty();
  }

  /** Takes over what is known of the gate. A caller is not asked for feeders and classes. */
  private void takeSite() {
    whoCalls.ask();
    if (whoCalls.isLeft() || sitting.moment().state().closed().isPresent()) {
      return;
    }
    List<Event> events = new ArrayList<>();
    knownSite.forEach(
        (question, answer) -> {
          if (sitting.base().siteQuestions().containsKey(question)) {
            events.add(new Event.SiteAnswered(question, answer));
          }
        });
    events.add(new Event.SiteTaken());
    sitting.record(events.toArray(Event[]::new));
  }
}
