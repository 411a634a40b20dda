package yett.interview.state;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.state.CaseState.Answered;
import yett.knowledge.Check;
import yett.knowledge.Role;

/**
 * Works out the state of a case from its events. Each method returns the change that one kind of
 * event makes.
 */
final class CaseFold implements Event.Visitor<Runnable> {
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
  private final Map<String, Answered> latest = new HashMap<>();
  private final List<Answered> before = new ArrayList<>();
  private final List<Entry> deeds = new ArrayList<>();
  private final Set<String> setUps = new LinkedHashSet<>();
  private final Set<String> unseen = new LinkedHashSet<>();
  private Optional<String> intent = Optional.empty();
  private Optional<String> askedFor = Optional.empty();
  private long wentOn;
  private final Map<String, CaseState.Declined> declined = new LinkedHashMap<>();
  private boolean retestDue;
  private boolean cured;
  private int epoch;
  private long lookAgain;
  private final Set<List<Long>> kept = new HashSet<>();
  private final Map<String, Entry> madeSafe = new LinkedHashMap<>();
  private Optional<Entry> gaveUp = Optional.empty();
  private Optional<String> failedProof = Optional.empty();
  private final List<Entry> notes = new ArrayList<>();
  private Optional<Ending> closed = Optional.empty();
  private final Map<Long, Entry> corrections = new HashMap<>();

  /** The entry whose event is being applied. */
  private Entry entry;

  /**
   * Applies the events in order.
   *
   * @param present who is at the keyboard now; empty for whoever was there last
   */
  CaseState read(List<Entry> entries, Optional<Role> present) {
    List<Entry> valid = Entry.valid(entries);
    for (Entry each : valid) {
      if (each.event() instanceof Event.Corrected c) {
        corrections.put(c.event(), each);
      }
    }
    Set<Long> gone = Entry.takenBack(entries);
    for (Entry each : entries) {
      entry = each;
      if (!gone.contains(each.number())) {
        each.event().accept(this).run();
      } else if (each.event() instanceof Event.MadeSafe safe) {
        inForceFrom(safe); // what was switched off at the gate is not on again
      }
    }
    Role now = present.orElse(role);
    return new CaseState(
        opened,
        now,
        told(now),
        List.copyOf(answers),
        Map.copyOf(latest),
        List.copyOf(before),
        work(),
        Set.copyOf(kept),
        Map.copyOf(madeSafe),
        gaveUp
            .filter(g -> g.by() != Role.CALLER || now == Role.CALLER)
            .map(g -> ((Event.GaveUp) g.event()).why()),
        List.copyOf(notes),
        closed);
  }

  private CaseState.Told told(Role now) {
    return new CaseState.Told(
        Map.copyOf(site),
        siteTaken || siteTakenByCaller && now == Role.CALLER,
        List.copyOf(said),
        pressing,
        complaints,
        histories);
  }

  private CaseState.Work work() {
    return new CaseState.Work(
        List.copyOf(deeds),
        epoch,
        Collections.unmodifiableMap(new LinkedHashMap<>(declined)),
        new LinkedHashSet<>(setUps),
        Set.copyOf(unseen),
        intent,
        askedFor,
        retestDue,
        cured,
        failedProof,
        lookAgain,
        wentOn);
  }

  /** A change that does not alter what comes next. */
  private Runnable noting(Runnable then) {
    return () -> {
      role = entry.by();
      then.run();
    };
  }

  /**
   * A change to an earlier answer. Stops count as not made safe afterwards, so a danger that the
   * change brings back is made safe again.
   */
  private Runnable revising(Runnable then) {
    return noting(
        () -> {
          madeSafe.clear();
          then.run();
        });
  }

  /**
   * A step forward in the case: the check or repair for which a set-up was entered or left, and the
   * one asked for, are done with.
   */
  private Runnable advancing(Runnable then) {
    return noting(
        () -> {
          intent = Optional.empty();
          askedFor = Optional.empty();
          then.run();
        });
  }

  /**
   * A step towards a check or repair: a set-up was entered or left for it.
   *
   * @param next id of the check or repair; null in events from before this was recorded
   */
  private Runnable headingFor(String next, Runnable then) {
    return noting(
        () -> {
          intent = Optional.ofNullable(next);
          askedFor = askedFor.filter(check -> check.equals(next));
          then.run();
        });
  }

  @Override
  public Runnable opened(Event.Opened event) {
    return advancing(
        () -> {
          opened = Optional.of(event);
          role = event.role();
        });
  }

  @Override
  public Runnable siteAnswered(Event.SiteAnswered event) {
    return noting(
        () -> site.put(event.question(), event.answer())); // asked on the way to the next step
  }

  @Override
  public Runnable siteTaken(Event.SiteTaken event) {
    return advancing(
        () -> {
          siteTaken |= entry.by() != Role.CALLER;
          siteTakenByCaller = true;
        });
  }

  @Override
  public Runnable said(Event.Said event) {
    return noting(
        () -> {
          if (!event.words().isEmpty()) { // empty once deleted to forget personal data
            said.add(event.words());
          }
        });
  }

  @Override
  public Runnable complained(Event.Complained event) {
    return advancing(() -> complaints = Optional.of(event.complaints()));
  }

  @Override
  public Runnable pressed(Event.Pressed event) {
    return advancing(() -> pressing = Optional.of(event.pressing()));
  }

  @Override
  public Runnable happened(Event.Happened event) {
    return advancing(() -> histories = Optional.of(event.histories()));
  }

  @Override
  public Runnable answered(Event.Answered event) {
    return advancing(() -> answer(event));
  }

  private void answer(Event.Answered event) {
    Entry last = corrections.getOrDefault(entry.number(), entry);
    Answer given = last.event() instanceof Event.Corrected c ? c.answer() : event.answer();
    Answered same = latest.get(event.check());
    boolean again = same != null && same.epoch() == epoch;
    if (again) {
      before.add(same);
      answers.remove(same);
    }
    Answer answer =
        again && same.answer().putOff() && !same.yieldsTo(role) && given.putOff()
            ? new Answer.CannotTell() // put off twice counts as cannot tell
            : given;
    boolean corrected = last.event() instanceof Event.Corrected;
    Answered answered =
        new Answered(
            entry.number(),
            epoch,
            last.by(),
            event.check(),
            answer,
            corrected ? Optional.empty() : event.taken());
    answers.add(answered);
    latest.put(event.check(), answered);
    if (answer.is(Check.FAIL) && cured) {
      failedProof = Optional.of(event.check());
    }
  }

  @Override
  public Runnable setUpEntered(Event.SetUpEntered event) {
    return headingFor(
        event.next(),
        () -> {
          event.instead().forEach(setUps::remove);
          event.instead().forEach(unseen::remove);
          setUps.add(event.setUp());
          unseen.remove(event.setUp());
        });
  }

  @Override
  public Runnable setUpLeft(Event.SetUpLeft event) {
    return headingFor(
        event.next(),
        () -> {
          setUps.remove(event.setUp());
          unseen.remove(event.setUp());
        });
  }

  @Override
  public Runnable repaired(Event.Repaired event) {
    return advancing(() -> repair(event));
  }

  private void repair(Event.Repaired event) {
    if (!event.done()) {
      declined.put(event.repair(), new CaseState.Declined(entry.number(), epoch, event.why()));
      return;
    }
    deeds.add(entry);
    epoch++;
    retestDue = !cured;
    // Follow-up work after the cure keeps the cure, but not the proofs.
  }

  @Override
  public Runnable retested(Event.Retested event) {
    return advancing(
        () -> {
          deeds.add(entry);
          retestDue = false;
          cured = event.cured();
          if (cured) { // now that it runs, more may be possible
            declined.values().removeIf(d -> d.epoch() == epoch);
          }
        });
  }

  @Override
  public Runnable reopened(Event.Reopened event) {
    return advancing(
        () -> {
          cured = false;
          failedProof = Optional.empty();
        });
  }

  @Override
  public Runnable kept(Event.Kept event) {
    return advancing(() -> kept.add(List.of(event.first(), event.second())));
  }

  @Override
  public Runnable noted(Event.Noted event) {
    return noting(() -> notes.add(entry));
  }

  @Override
  public Runnable retracted(Event.Retracted event) {
    return noting(() -> {});
  }

  @Override
  public Runnable corrected(Event.Corrected event) {
    return revising(() -> kept.removeIf(pair -> pair.contains(event.event())));
  }

  @Override
  public Runnable madeSafe(Event.MadeSafe event) {
    return advancing(
        () -> {
          madeSafe.put(event.stop(), entry);
          inForceFrom(event);
        });
  }

  private void inForceFrom(Event.MadeSafe event) {
    event
        .setUps()
        .ifPresent(
            now -> {
              setUps.clear();
              setUps.addAll(now);
              unseen.retainAll(now);
              now.stream().reduce((a, b) -> b).ifPresent(unseen::remove);
            });
  }

  @Override
  public Runnable gaveUp(Event.GaveUp event) {
    return advancing(() -> gaveUp = Optional.of(entry));
  }

  @Override
  public Runnable takenUp(Event.TakenUp event) {
    return advancing(
        () -> {
          closed = Optional.empty();
          gaveUp = Optional.empty();
          comeAnew();
        });
  }

  @Override
  public Runnable returned(Event.Returned event) {
    return noting(this::comeAnew);
  }

  /** Whoever comes anew has seen nothing yet, and may have the part that was missing. */
  private void comeAnew() {
    lookAgain = entry.number();
    unseen.addAll(setUps);
    declined.clear();
  }

  @Override
  public Runnable dangersAgain(Event.DangersAgain event) {
    return advancing(() -> lookAgain = entry.number());
  }

  @Override
  public Runnable askedFor(Event.AskedFor event) {
    return advancing(
        () -> {
          intent = Optional.of(event.check());
          askedFor = intent;
        });
  }

  @Override
  public Runnable wentOn(Event.WentOn event) {
    return advancing(() -> wentOn = entry.number());
  }

  @Override
  public Runnable closed(Event.Closed event) {
    return advancing(() -> closed = Optional.of(event.ending()));
  }

  /** Does not change who answers or what was answered. */
  @Override
  public Runnable tended(Event.Tended event) {
    return () -> {};
  }

  /** {@link Forces} works out what the forces mean; the result of the proof is another event. */
  @Override
  public Runnable forceTaken(Event.ForceTaken event) {
    return noting(() -> {});
  }

  /** Changes nothing; not even the author of such an event is certain. */
  @Override
  public Runnable unread(Event.Unread event) {
    return () -> {};
  }
}
