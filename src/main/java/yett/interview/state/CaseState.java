package yett.interview.state;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/**
 * The state of a case after its events, before any reasoning. Retracted events are not in it.
 *
 * @param opened the first event, if there is one
 * @param role who answers now: the last person at the keyboard
 * @param answers all answers to checks, in order, also those before a repair
 * @param latest the last answer to each check
 * @param before answers that were replaced by a later one with no repair between
 * @param kept confirmed contradictions as pairs of event numbers
 * @param madeSafe stops that were made safe, each with the number of the last event that says so
 */
public record CaseState(
    Optional<Event.Opened> opened,
    Role role,
    Told told,
    List<Answered> answers,
    Map<String, Answered> latest,
    List<Answered> before,
    Work work,
    Set<List<Long>> kept,
    Map<String, Entry> madeSafe,
    Optional<String> gaveUp,
    List<Entry> notes,
    Optional<Ending> closed) {

  /**
   * What was told before the search for the fault.
   *
   * @param site answers to site questions that differ from the usual
   * @param siteTaken whether the site details are complete for whoever answers now: details
   *     completed by a caller count as complete only while a caller answers
   * @param said what a caller said, in their own words
   * @param pressing what makes the call urgent, once it was asked
   * @param complaints picked complaints, once they were asked
   * @param histories picked histories, once they were asked
   */
  public record Told(
      Map<String, String> site,
      boolean siteTaken,
      List<String> said,
      Optional<List<String>> pressing,
      Optional<List<String>> complaints,
      Optional<List<String>> histories) {}

  /**
   * The work that was done and its present state.
   *
   * @param deeds repairs done and retests, in order with the answers by their number
   * @param epoch how many repairs were done
   * @param declined repairs that could not be done, in order; whoever comes anew may try them again
   * @param setUps set-ups in force, in the order of entering
   * @param unseen set-ups in force that nobody has confirmed since the case was taken up again
   * @param intent id of the check or repair for which a set-up was just entered or left
   * @param askedFor id of the check that the person asked for and that has not come yet
   * @param lookAgain number of the event after which dangers have to be asked again; 0 if there is
   *     none
   * @param wentOn number of the last event in which the person chose to go on although further
   *     questions gained little; 0 if there is none
   * @param cured whether the last retest succeeded and nothing was repaired or reopened since
   */
  public record Work(
      List<Entry> deeds,
      int epoch,
      Map<String, Declined> declined,
      Set<String> setUps,
      Set<String> unseen,
      Optional<String> intent,
      Optional<String> askedFor,
      boolean retestDue,
      boolean cured,
      Optional<String> failedProof,
      long lookAgain,
      long wentOn) {

    /** The repairs that were done, in order; one that was done twice is there twice. */
    public List<String> repairs() {
      return deeds.stream()
          .map(Entry::event)
          .flatMap(e -> e instanceof Event.Repaired r ? Stream.of(r.repair()) : null)
          .toList();
    }

    /** Whether a repair after this event could have changed the result of a check. */
    public boolean changedSince(long event, String check, RuleBase base) {
      return deeds.stream().anyMatch(d -> d.number() > event && changes(d, check, base));
    }

    /** Whether a repair before this event could have changed the result of a check. */
    public boolean changedBefore(long event, String check, RuleBase base) {
      return deeds.stream().anyMatch(d -> d.number() < event && changes(d, check, base));
    }

    private static boolean changes(Entry deed, String check, RuleBase base) {
      return deed.event() instanceof Event.Repaired done && base.changes(done.repair(), check);
    }
  }

  /**
   * A repair that could not be done.
   *
   * @param event number of the event that says so
   * @param epoch how many repairs were done before it
   * @param why as typed; may be empty
   */
  public record Declined(long event, int epoch, String why) {}

  /**
   * An answer to a check, with its place in the case.
   *
   * @param epoch number of repairs done before it
   * @param by who gave or corrected it
   * @param taken when it was given in the inspection from which the case was begun; empty for an
   *     answer of this case
   */
  public record Answered(
      long event, int epoch, Role by, String check, Answer answer, Optional<Instant> taken) {
    public Answered(long event, int epoch, Role by, String check, Answer answer) {
      this(event, epoch, by, check, answer, Optional.empty());
    }

    /**
     * Whether the check is asked again if somebody of this role is there: somebody at the gate may
     * find out what a caller could not tell or reach.
     */
    public boolean yieldsTo(Role role) {
      return !answer.tells() && by == Role.CALLER && role != Role.CALLER;
    }
  }

  /** The kind of inspection; empty where a fault is looked for. */
  public Optional<InspectionKind> inspection() {
    return opened.flatMap(Event.Opened::inspection);
  }

  public boolean isInspection() {
    return inspection().isPresent();
  }

  /** The state after these events. */
  public static CaseState of(List<Entry> entries) {
    return new CaseFold().read(entries, Optional.empty());
  }

  /**
   * The state after these events with somebody of this role at the keyboard, who may not have
   * entered anything yet.
   */
  public static CaseState of(List<Entry> entries, Role present) {
    return new CaseFold().read(entries, Optional.of(present));
  }

  /** The answer to a check since the last repair, if there is one. */
  public Optional<Answered> answer(String check) {
    return latest(check).filter(a -> a.epoch() == work.epoch());
  }

  /** The answer that an event gave; empty if it was taken back. */
  public Optional<Answered> given(long event) {
    return answers.stream().filter(a -> a.event() == event).findFirst();
  }

  /** The latest answer to a check, also from before a repair. */
  public Optional<Answered> latest(String check) {
    return Optional.ofNullable(latest.get(check));
  }
}
