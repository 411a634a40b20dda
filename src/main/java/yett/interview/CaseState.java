package yett.interview;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import yett.knowledge.Check;
import yett.knowledge.Role;

/**
 * What the events of a case add up to, before any reasoning. What was retracted is not in it.
 *
 * @param opened the first event, if there is one
 * @param role who answers now: the last person at the keyboard
 * @param site answers to site questions that differ from the usual
 * @param siteTaken whether the site details are complete for whoever answers now: a caller's word
 *     on them is enough for a caller only
 * @param said what a caller said, in their own words
 * @param pressing what makes it urgent, once it was asked
 * @param complaints picked complaints, once they were asked
 * @param histories picked histories, once they were asked
 * @param answers all answers to checks, in order, also those before a repair
 * @param deeds repairs done and retests, in order with the answers by their number
 * @param setUps set-ups in force, in the order of entering
 * @param intent id of the check or repair for which a set-up was just entered or left
 * @param declined repairs that could not be done, with the epoch in which they were declined
 * @param cured whether the last retest succeeded and nothing was repaired or reopened since
 * @param kept confirmed contradictions as pairs of event numbers
 * @param madeSafe stops that were made safe since the last thing that was said or done
 */
public record CaseState(
    Optional<Event.Opened> opened,
    Role role,
    Map<String, String> site,
    boolean siteTaken,
    List<String> said,
    Optional<List<String>> pressing,
    Optional<List<String>> complaints,
    Optional<List<String>> histories,
    List<Answered> answers,
    List<Entry> deeds,
    Set<String> setUps,
    Optional<String> intent,
    Map<String, Integer> declined,
    boolean retestDue,
    boolean cured,
    int epoch,
    Set<List<Long>> kept,
    Set<String> madeSafe,
    Optional<String> gaveUp,
    Optional<String> failedProof,
    List<Entry> notes,
    Optional<Ending> closed) {

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

  /** Follows the events of a case. */
  public static CaseState of(List<Entry> entries) {
    return new Reader().read(entries, Optional.empty());
  }

  /** The same when somebody of this role is at the keyboard, who may not have said anything yet. */
  static CaseState of(List<Entry> entries, Role present) {
    return new Reader().read(entries, Optional.of(present));
  }

  /** The answer to a check in the present epoch, if it was given. */
  public Optional<Answered> answer(String check) {
    return answers.stream()
        .filter(a -> a.check().equals(check) && a.epoch() == epoch)
        .reduce((a, b) -> b);
  }

  /** The latest answer to a check in any epoch. */
  public Optional<Answered> latest(String check) {
    return answers.stream().filter(a -> a.check().equals(check)).reduce((a, b) -> b);
  }

  private static final class Reader {
    private Optional<Event.Opened> opened = Optional.empty();
    private Role role = Role.TECHNICIAN;
    private final Map<String, String> site = new LinkedHashMap<>();
    private boolean siteTaken;
    private boolean siteTakenByCaller;
    private final List<String> said = new ArrayList<>();
    private Optional<List<String>> pressing = Optional.empty();
    private Optional<List<String>> complaints = Optional.empty();
    private Optional<List<String>> histories = Optional.empty();
    private final List<Answered> answers = new ArrayList<>();
    private final List<Entry> deeds = new ArrayList<>();
    private final Set<String> setUps = new LinkedHashSet<>();
    private Optional<String> intent = Optional.empty();
    private final Map<String, Integer> declined = new LinkedHashMap<>();
    private boolean retestDue;
    private boolean cured;
    private int epoch;
    private final Set<List<Long>> kept = new HashSet<>();
    private final Set<String> madeSafe = new LinkedHashSet<>();
    private Optional<Entry> gaveUp = Optional.empty();
    private Optional<String> failedProof = Optional.empty();
    private final List<Entry> notes = new ArrayList<>();
    private Optional<Ending> closed = Optional.empty();
    private final Map<Long, Entry> corrections = new HashMap<>();

    CaseState read(List<Entry> entries, Optional<Role> present) {
      Set<Long> retracted = retracted(entries);
      for (Entry entry : entries) {
        if (entry.event() instanceof Event.Corrected c && !retracted.contains(entry.number())) {
          corrections.put(c.event(), entry);
        }
      }
      for (Entry entry : entries) {
        if (!retracted.contains(entry.number()) && !(entry.event() instanceof Event.Unread)) {
          role = entry.by();
          follow(entry);
        }
      }
      return new CaseState(
          opened,
          present.orElse(role),
          Map.copyOf(site),
          siteTaken || siteTakenByCaller && present.orElse(role) == Role.CALLER,
          List.copyOf(said),
          pressing,
          complaints,
          histories,
          List.copyOf(answers),
          List.copyOf(deeds),
          new LinkedHashSet<>(setUps),
          intent,
          Map.copyOf(declined),
          retestDue,
          cured,
          epoch,
          Set.copyOf(kept),
          Set.copyOf(madeSafe),
          gaveUp
              .filter(g -> g.by() != Role.CALLER || present.orElse(role) == Role.CALLER)
              .map(g -> ((Event.GaveUp) g.event()).why()),
          failedProof,
          List.copyOf(notes),
          closed);
    }

    private static Set<Long> retracted(List<Entry> entries) {
      Set<Long> retracted = new HashSet<>();
      for (Entry entry : entries) {
        if (entry.event() instanceof Event.Retracted r) {
          retracted.add(r.event());
        }
      }
      return retracted;
    }

    private void follow(Entry entry) {
      Event event = entry.event();
      boolean aboutEarlier =
          event instanceof Event.Noted
              || event instanceof Event.Said
              || event instanceof Event.Retracted
              || event instanceof Event.Corrected;
      if (!aboutEarlier) {
        intent = Optional.empty();
      }
      if (!(event instanceof Event.MadeSafe
          || event instanceof Event.Noted
          || event instanceof Event.Said
          || event instanceof Event.Closed)) {
        madeSafe.clear(); // a stop that applies after new word is made safe again
      }
      if (event instanceof Event.Opened e) {
        opened = Optional.of(e);
        role = e.role();
      } else if (event instanceof Event.SiteAnswered e) {
        site.put(e.question(), e.answer());
      } else if (event instanceof Event.SiteTaken) {
        siteTaken |= entry.by() != Role.CALLER;
        siteTakenByCaller = true;
      } else if (event instanceof Event.Complained e) {
        complaints = Optional.of(e.complaints());
      } else if (event instanceof Event.Pressed e) {
        pressing = Optional.of(e.pressing());
      } else if (event instanceof Event.Said e) {
        if (!e.words().isEmpty()) { // they may have been forgotten
          said.add(e.words());
        }
      } else if (event instanceof Event.Happened e) {
        histories = Optional.of(e.histories());
      } else if (event instanceof Event.Answered e) {
        answer(entry, e);
      } else if (event instanceof Event.SetUpEntered e) {
        setUps.add(e.setUp());
        intent = Optional.ofNullable(e.next()); // events before this was kept have none
      } else if (event instanceof Event.SetUpLeft e) {
        setUps.remove(e.setUp());
        intent = Optional.ofNullable(e.next()); // events before this was kept have none
      } else if (event instanceof Event.Repaired e) {
        repair(entry, e);
      } else if (event instanceof Event.Retested e) {
        deeds.add(entry);
        retestDue = false;
        cured = e.cured();
      } else {
        followRest(entry);
      }
    }

    private void followRest(Entry entry) {
      Event event = entry.event();
      if (event instanceof Event.Reopened) {
        cured = false;
        failedProof = Optional.empty();
      } else if (event instanceof Event.Corrected e) {
        kept.removeIf(pair -> pair.contains(e.event()));
      } else if (event instanceof Event.Kept e) {
        kept.add(List.of(e.first(), e.second()));
      } else if (event instanceof Event.Noted) {
        notes.add(entry);
      } else if (event instanceof Event.MadeSafe e) {
        madeSafe.add(e.stop());
      } else if (event instanceof Event.GaveUp) {
        gaveUp = Optional.of(entry);
      } else if (event instanceof Event.Closed e) {
        closed = Optional.of(e.ending());
      }
    }

    private void answer(Entry entry, Event.Answered e) {
      Predicate<Answered> same = a -> a.check().equals(e.check()) && a.epoch() == epoch;
      Entry last = corrections.getOrDefault(entry.number(), entry);
      Answer given = last.event() instanceof Event.Corrected c ? c.answer() : e.answer();
      boolean putOffBefore =
          answers.stream().anyMatch(same.and(a -> a.answer().putOff() && !a.yieldsTo(role)));
      answers.removeIf(same);
      Answer answer =
          putOffBefore && given.putOff()
              ? new Answer.CannotTell() // put off twice: it will not be had
              : given;
      answers.add(new Answered(entry.number(), epoch, last.by(), e.check(), answer));
      if (answer.is(Check.FAIL) && cured) {
        failedProof = Optional.of(e.check());
      }
    }

    private void repair(Entry entry, Event.Repaired e) {
      if (!e.done()) {
        declined.put(e.repair(), epoch);
        return;
      }
      deeds.add(entry);
      epoch++;
      retestDue = !cured;
      // A repair after the cure (work that the first one entailed) keeps the cure, but not the
      // proofs.
    }
  }
}
