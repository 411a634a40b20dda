package yett.interview.intake;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import yett.calculation.ObstructionForce;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.site.SiteFacts;
import yett.interview.state.CallLog;
import yett.interview.state.CaseState;
import yett.interview.state.Forces;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.quantity.ReadingException;

/**
 * Checks whether the events of a case could have been entered by somebody: outcomes that the check
 * has, possible readings, existing repairs, a closing with its proofs. Events from a file have to
 * meet the same conditions as typed ones.
 *
 * <p>A case made with other cards may refer to checks and questions that do not exist here; these
 * are ignored, as in the interview.
 */
public final class Sense {
  private static final int LONGEST = 10_000;
  private static final int MOST_VERSIONS = 100;

  /**
   * Largest relative difference by rounding between the typed and the stored value of a reading.
   */
  private static final double SAME = 1e-6;

  private final RuleBase base;
  private final SiteFacts sites;

  public Sense(RuleBase base) {
    this.base = base;
    this.sites = new SiteFacts(base);
  }

  /**
   * An event that nobody can have entered.
   *
   * @param event its number
   * @param words a sentence without full stop, with nothing from the event in it but known ids
   */
  public record Doubt(long event, String words) {}

  public List<Doubt> doubts(List<Entry> entries) {
    return new Reading(entries).doubts();
  }

  private final class Reading {
    private final List<Entry> entries;
    private final boolean ourCards;
    private final List<Doubt> doubts = new ArrayList<>();
    private long at;

    Reading(List<Entry> entries) {
      this.entries = entries;
      this.ourCards =
          entries.stream()
              .anyMatch(
                  e ->
                      e.event() instanceof Event.Opened o
                          && base.fingerprint().equals(o.ruleBase()));
    }

    List<Doubt> doubts() {
      boolean closed = false;
      for (int i = 0; i < entries.size(); i++) {
        Entry entry = entries.get(i);
        at = entry.number();
        Event event = entry.event();
        doubt(i == 0 != event instanceof Event.Opened, "a case begins by being opened, and once");
        boolean beside =
            event instanceof Event.Noted
                || event instanceof Event.Said
                || event instanceof Event.Tended
                || event instanceof Event.Unread;
        boolean again = event instanceof Event.TakenUp;
        doubt(closed && !beside && !again, "the case was closed before it");
        doubt(again && !closed, "the case was not closed before it");
        closed &= !again;
        event.accept(new Look(entry.by(), entry.at())).run();
        if (event instanceof Event.Closed c) {
          closed = true;
          if (doubts.isEmpty()) {
            closing(c.ending(), entries.subList(0, i));
          }
        }
      }
      return List.copyOf(doubts);
    }

    private void doubt(boolean doubtful, String words) {
      if (doubtful) {
        doubts.add(new Doubt(at, words));
      }
    }

    /** Checks one event. */
    private final class Look implements Event.Visitor<Runnable> {
      private final Role by;
      private final Instant entered;

      Look(Role by, Instant entered) {
        this.by = by;
        this.entered = entered;
      }

      @Override
      public Runnable opened(Event.Opened event) {
        return () -> {
          text(event.site());
          doubt(event.site().isBlank(), "the gate has no name");
          event.earlier().forEach(this::was);
          event.versions().forEach(Reading.this::text);
          doubt(event.versions().size() > MOST_VERSIONS, "no rule base has so many add-ons");
        };
      }

      private void was(Event.Earlier reading) {
        Check check = base.checks().get(reading.check());
        doubt(
            check != null && !check.measures().map(m -> m.possible(reading.value())).orElse(false),
            "it is not a reading that " + reading.check() + " can have");
        doubt(ourCards && check == null, "there is no such check");
      }

      @Override
      public Runnable siteAnswered(Event.SiteAnswered event) {
        return () -> siteAnswer(event);
      }

      @Override
      public Runnable siteTaken(Event.SiteTaken event) {
        return () -> {};
      }

      @Override
      public Runnable said(Event.Said event) {
        return () -> text(event.words());
      }

      @Override
      public Runnable complained(Event.Complained event) {
        return () ->
            known(
                event.complaints(),
                base.complaints().stream().map(Check::id).toList(),
                "complaint");
      }

      @Override
      public Runnable pressed(Event.Pressed event) {
        return () ->
            known(event.pressing(), base.telephone().pressing().keySet(), "reason to hurry");
      }

      @Override
      public Runnable happened(Event.Happened event) {
        return () -> known(event.histories(), base.histories().keySet(), "history");
      }

      @Override
      public Runnable answered(Event.Answered event) {
        return () -> {
          // Whoever begins a case from an inspection takes over what an electrician measured there.
          Role gave = event.taken().isPresent() ? Role.ELECTRICIAN : by;
          answer(event.check(), event.answer(), gave);
          doubt(
              event.taken().filter(t -> t.isAfter(entered)).isPresent(),
              "it was given before it was taken");
        };
      }

      @Override
      public Runnable setUpEntered(Event.SetUpEntered event) {
        return () -> {
          known(List.of(event.setUp()), base.setUps().keySet(), "set-up");
          known(event.instead(), base.setUps().keySet(), "set-up");
        };
      }

      @Override
      public Runnable setUpLeft(Event.SetUpLeft event) {
        return () -> known(List.of(event.setUp()), base.setUps().keySet(), "set-up");
      }

      @Override
      public Runnable repaired(Event.Repaired event) {
        return () -> repair(event, by);
      }

      @Override
      public Runnable retested(Event.Retested event) {
        return () -> {
          List<String> complaints = base.complaints().stream().map(Check::id).toList();
          known(event.left(), complaints, "complaint");
          known(event.anew(), complaints, "complaint");
        };
      }

      @Override
      public Runnable reopened(Event.Reopened event) {
        return () ->
            known(List.of(event.proof()), base.proofs().stream().map(Check::id).toList(), "proof");
      }

      @Override
      public Runnable kept(Event.Kept event) {
        return () ->
            doubt(
                earlier(event.first()).isEmpty() || earlier(event.second()).isEmpty(),
                "it is about what is not an earlier answer");
      }

      @Override
      public Runnable noted(Event.Noted event) {
        return () -> {
          text(event.text());
          event
              .about()
              .ifPresent(
                  id ->
                      doubt(ourCards && !base.checks().containsKey(id), "there is no such check"));
        };
      }

      @Override
      public Runnable retracted(Event.Retracted event) {
        return () ->
            doubt(
                event.event() < 1 || event.event() >= at,
                "it takes back what was not entered before it");
      }

      @Override
      public Runnable corrected(Event.Corrected event) {
        return () ->
            earlier(event.event())
                .ifPresentOrElse(
                    // The person who corrects may know a value that somebody else measured.
                    a -> answer(a.check(), event.answer(), Role.ELECTRICIAN),
                    () -> doubt(true, "it corrects what is not an earlier answer"));
      }

      @Override
      public Runnable madeSafe(Event.MadeSafe event) {
        return () -> known(List.of(event.stop()), base.stops().keySet(), "stop");
      }

      @Override
      public Runnable gaveUp(Event.GaveUp event) {
        return () -> text(event.why());
      }

      @Override
      public Runnable askedFor(Event.AskedFor event) {
        boolean known =
            base.checks().containsKey(event.check()) || base.repairs().containsKey(event.check());
        return () -> doubt(ourCards && !known, "there is no such check or repair");
      }

      @Override
      public Runnable wentOn(Event.WentOn event) {
        return () -> {};
      }

      @Override
      public Runnable dangersAgain(Event.DangersAgain event) {
        return () -> {};
      }

      @Override
      public Runnable returned(Event.Returned event) {
        return () -> {};
      }

      @Override
      public Runnable takenUp(Event.TakenUp event) {
        return () -> {};
      }

      @Override
      public Runnable closed(Event.Closed event) {
        return () -> {};
      }

      @Override
      public Runnable tended(Event.Tended event) {
        return () -> {
          text(event.words());
          doubt(!event.due().isEmpty() && !CallLog.isTime(event.due()), "its time is no time");
        };
      }

      @Override
      public Runnable forceTaken(Event.ForceTaken event) {
        return () -> {
          doubt(!Forces.PROOFS.contains(event.proof()), "in that proof no force is measured");
          doubt(!Event.ForceTaken.GAPS.contains(event.gap()), "nobody measures at such a gap");
          doubt(
              !(event.peak() >= 0 && event.peak() <= ObstructionForce.METER_RANGE)
                  || !(event.above() >= 0)
                  || event.left().filter(f -> !(f >= 0)).isPresent(),
              "it is no force that a meter can show");
          doubt(
              event.curve().size() % 2 != 0
                  || event.curve().size() > 2 * Event.ForceTaken.MOST_POINTS
                  || event.curve().stream().anyMatch(d -> !Double.isFinite(d)),
              "its curve is none");
        };
      }

      @Override
      public Runnable unread(Event.Unread event) {
        return () -> {};
      }
    }

    private void text(String text) {
      doubt(text.length() > LONGEST, "nobody can type so long a text");
      doubt(
          text.codePoints().anyMatch(c -> Character.isISOControl(c) && c != '\n'),
          "nobody can type what is in its text");
    }

    private void known(List<String> ids, Collection<String> cards, String what) {
      doubt(!List.copyOf(cards).containsAll(ids), "there is no such " + what);
    }

    private void siteAnswer(Event.SiteAnswered e) {
      SiteQuestion question = base.siteQuestions().get(e.question());
      if (question == null) {
        doubt(ourCards, "there is no such question on the site");
      } else {
        doubt(!SiteFacts.canBe(question, e.answer()), question.id() + " has no such answer");
      }
    }

    private void answer(String id, Answer answer, Role by) {
      Check check = base.checks().get(id);
      if (check == null) {
        doubt(ourCards, "there is no such check");
        return;
      }
      doubt(ourCards && !by.may(check.who()), id + " is not for a " + by.word());
      List<String> chosen = answer.choices();
      doubt(chosen.stream().anyMatch(c -> check.indexOf(c) < 0), id + " has no such outcome");
      doubt(
          !chosen.isEmpty() && !Answer.Chosen.canBe(check, chosen),
          id + " has no such outcomes at once");
      answer
          .reading()
          .ifPresent(
              r -> doubt(!isReading(check, r), "it is not a reading that " + id + " can have"));
    }

    private void repair(Event.Repaired e, Role by) {
      Repair repair = base.repairs().get(e.repair());
      doubt(repair == null, "there is no such repair");
      text(e.why());
      if (repair != null && e.done()) {
        doubt(ourCards && !by.may(repair.who()), repair.id() + " is not for a " + by.word());
      }
    }

    private Optional<Event.Answered> earlier(long number) {
      return entries.stream()
          .filter(e -> e.number() == number && number < at)
          .map(Entry::event)
          .filter(Event.Answered.class::isInstance)
          .map(Event.Answered.class::cast)
          .findFirst();
    }

    private void closing(Ending ending, List<Entry> before) {
      if (!ending.isProved() && ending != Ending.SOLVED
          || ending == Ending.INSPECTED && FromPaper.is(before)) {
        return;
      }
      CaseState state = CaseState.of(before);
      boolean inspected = ending == Ending.INSPECTED;
      doubt(
          inspected && !state.isInspection(),
          "it is closed as " + ending.words() + ", and nothing was inspected");
      doubt(
          !inspected && !state.work().cured(),
          "it is closed as " + ending.words() + ", and the gate never ran");
      List<String> proofs =
          ending.isProved()
              ? sites.proofs(state.told().site()).stream().map(Check::id).toList()
              : proofsOfRepairs(state);
      for (String proof : proofs) {
        doubt(
            !state
                .answer(proof)
                .map(CaseState.Answered::answer)
                .equals(Optional.of(new Answer.Chosen(Check.PASS))),
            "it is closed as " + ending.words() + ", and " + proof + " is not passed");
      }
    }

    /**
     * Proofs that the completed repairs need. On the telephone, a repair that was not done needs no
     * proof.
     */
    private List<String> proofsOfRepairs(CaseState state) {
      List<String> here = sites.proofs(state.told().site()).stream().map(Check::id).toList();
      return state.work().deeds().stream()
          .flatMap(d -> d.event() instanceof Event.Repaired r ? repair(r).stream() : null)
          .flatMap(r -> r.proofs().stream())
          .filter(here::contains)
          .distinct()
          .toList();
    }

    private Optional<Repair> repair(Event.Repaired e) {
      return Optional.ofNullable(base.repairs().get(e.repair()));
    }
  }

  private static Optional<Double> typed(Measures measures, String text) {
    try {
      return Optional.of(measures.parse(text)).filter(measures::possible);
    } catch (ReadingException e) {
      return Optional.empty();
    }
  }

  /** Whether the number, which is used, and the text, which is shown, agree. */
  private static boolean isReading(Check check, Answer.Read read) {
    return Double.isFinite(read.value())
        && check
            .measures()
            .flatMap(m -> typed(m, read.typed()))
            .filter(v -> Math.abs(v - read.value()) <= SAME * Math.max(1, Math.abs(v)))
            .isPresent();
  }
}
