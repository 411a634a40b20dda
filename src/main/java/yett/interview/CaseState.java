package yett.interview;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/**
 * What the events of a case add up to, before any reasoning. What was retracted is not in it.
 *
 * @param opened the first event, if there is one
 * @param role who answers now: the last person at the keyboard
 * @param answers all answers to checks, in order, also those before a repair
 * @param latest the last answer to each check
 * @param before answers in whose place another one was given since, with no repair between
 * @param kept confirmed contradictions as pairs of event numbers
 * @param madeSafe stops that were made safe, each with the last event that says so
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
   * What was told before any search.
   *
   * @param site answers to site questions that differ from the usual
   * @param siteTaken whether the site details are complete for whoever answers now: a caller's word
   *     on them is enough for a caller only
   * @param said what a caller said, in their own words
   * @param pressing what makes it urgent, once it was asked
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
   * What was done, and how the work stands.
   *
   * @param deeds repairs done and retests, in order with the answers by their number
   * @param epoch how many repairs were done
   * @param declined repairs that could not be done, with the epoch in which they were declined
   * @param setUps set-ups in force, in the order of entering
   * @param unseen those of them that nobody has seen to since somebody came to the case anew
   * @param intent id of the check or repair for which a set-up was just entered or left
   * @param askedFor id of the check that the person asked for and that is still to come
   * @param lookAgain number of the event since which dangers are to be looked at again; 0 if there
   *     is none
   * @param wentOn number of the last event by which the person went on though asking had stopped
   *     paying; 0 if there is none
   * @param cured whether the last retest succeeded and nothing was repaired or reopened since
   */
  public record Work(
      List<Entry> deeds,
      int epoch,
      Map<String, Integer> declined,
      Set<String> setUps,
      Set<String> unseen,
      Optional<String> intent,
      Optional<String> askedFor,
      boolean retestDue,
      boolean cured,
      Optional<String> failedProof,
      long lookAgain,
      long wentOn) {

    /** Whether a repair after this event could have changed what a check reads. */
    public boolean changedSince(long event, String check, RuleBase base) {
      return deeds.stream().anyMatch(d -> d.number() > event && changes(d, check, base));
    }

    /** The same of a repair before it. */
    boolean changedBefore(long event, String check, RuleBase base) {
      return deeds.stream().anyMatch(d -> d.number() < event && changes(d, check, base));
    }

    private static boolean changes(Entry deed, String check, RuleBase base) {
      return deed.event() instanceof Event.Repaired done && base.changes(done.repair(), check);
    }
  }

  /**
   * An answer in its place.
   *
   * @param epoch how many repairs had been done before it
   * @param by who gave it, or corrected it
   */
  public record Answered(long event, int epoch, Role by, String check, Answer answer) {
    /**
     * Whether somebody of this role is asked as if nothing had been said: what a caller could not
     * tell or not reach, somebody at the gate may.
     */
    public boolean yieldsTo(Role role) {
      return !answer.tells() && by == Role.CALLER && role != Role.CALLER;
    }
  }

  /** What is inspected; empty where a fault is looked for. */
  public Optional<InspectionKind> inspection() {
    return opened.flatMap(Event.Opened::inspection);
  }

  public boolean isInspection() {
    return inspection().isPresent();
  }

  /** Follows the events of a case. */
  public static CaseState of(List<Entry> entries) {
    return new CaseFold().read(entries, Optional.empty());
  }

  /** The same when somebody of this role is at the keyboard, who may not have said anything yet. */
  static CaseState of(List<Entry> entries, Role present) {
    return new CaseFold().read(entries, Optional.of(present));
  }

  /** The answer to a check in the present epoch, if it was given. */
  public Optional<Answered> answer(String check) {
    return latest(check).filter(a -> a.epoch() == work.epoch());
  }

  /** The latest answer to a check in any epoch. */
  public Optional<Answered> latest(String check) {
    return Optional.ofNullable(latest.get(check));
  }
}
