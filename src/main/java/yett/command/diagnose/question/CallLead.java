package yett.command.diagnose.question;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.casebook.CaseId;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.Step;

/**
 * Leads a call from the desk's side, within a conversation. The package of the calls does so; it
 * builds on this one, which therefore knows only this much of it.
 */
public interface CallLead {
  /**
   * Handles each kind of step on a call.
   *
   * @param otherwise handles the steps that a call does not treat differently
   */
  Step.Visitor<Runnable> turn(Moment moment, Step.Visitor<Runnable> otherwise);

  /**
   * Takes up what the caller says who rings again, before anything is asked.
   *
   * @param known whether who calls was told on this call
   * @param said what was said on it
   */
  void ringsAgain(boolean known, List<Event> said);

  /** The open case to which this call turned out to belong, and in which it continues. */
  Optional<CaseId> goesOnIn();

  /** Asks who goes, in an emergency also who was called for help, and stores it. */
  void send(boolean emergency, String level);

  /** Ends the call; the person who goes continues the case. */
  void leave();

  /** Makes the lead of one conversation. */
  @FunctionalInterface
  interface Maker {
    /**
     * @param knownSite answers about the gate from earlier cases
     */
    CallLead of(
        Sitting sitting, PromptRequests wishes, Questions questions, Map<String, String> knownSite);
  }
}
