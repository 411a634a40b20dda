package yett.record;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.SomeEvents;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState.Answered;
import yett.knowledge.Caution;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.wording.Wording;

/** Writes the work of a record: repairs and tries, proofs, and set-ups with their cautions. */
final class WorkLines {
  private final RuleBase base;
  private final Wording words;
  private final Moment moment;
  private final Outline page;
  private final List<Entry> valid;

  /**
   * @param valid entries that were not taken back
   */
  WorkLines(RuleBase base, Wording words, Moment moment, Outline page, List<Entry> valid) {
    this.base = base;
    this.words = words;
    this.moment = moment;
    this.page = page;
    this.valid = valid;
  }

  private String who(Role role) {
    return DoneBy.of(moment.entries()).words(role);
  }

  void write() {
    repairs();
    proofs();
    setUps();
  }

  private void repairs() {
    List<String> lines = new ArrayList<>();
    for (Entry entry : valid) {
      entry
          .event()
          .accept(work)
          .ifPresent(line -> lines.add(Wording.time(entry.at()) + " " + line + who(entry.by())));
    }
    page.list("Repairs", lines);
  }

  private final SomeEvents<Optional<String>> work =
      new SomeEvents<>() {
        @Override
        public Optional<String> repaired(Event.Repaired event) {
          return Optional.of(words.repair(event.repair()) + ": " + event.words());
        }

        @Override
        public Optional<String> retested(Event.Retested event) {
          return Optional.of("The gate " + words.tried(event) + ".");
        }

        @Override
        public Optional<String> other(Event event) {
          return Optional.empty();
        }
      };

  private void proofs() {
    List<String> lines = new ArrayList<>();
    for (Answered a : moment.state().answers()) {
      boolean counts = moment.state().latest(a.check()).filter(a::equals).isPresent();
      if (words.isProof(a.check()) && (counts || a.answer().is(Check.FAIL))) {
        String result =
            a.answer()
                .map(
                    c -> c.outcome().equals(Check.PASS) ? "PASSED: " : "FAILED: ",
                    r -> "OPEN: ",
                    () -> "OPEN: ",
                    () -> "OPEN: ");
        String earlier = counts ? "" : "Before, ";
        lines.add(
            earlier
                + result
                + words.ask(a.check())
                + " "
                + words.answer(a.check(), a.answer())
                + who(a.by()));
      }
    }
    page.list("Proofs", lines);
  }

  private void setUps() {
    List<Entry> changes = valid.stream().filter(e -> e.event().accept(change).isPresent()).toList();
    if (changes.isEmpty()) {
      return;
    }
    page.heading("Set-ups");
    Set<String> before = new HashSet<>();
    for (Entry entry : changes) {
      page.item(
          Wording.time(entry.at()) + entry.event().accept(change).orElseThrow() + who(entry.by()));
      if (entry.event() instanceof Event.SetUpEntered e) {
        entered(base.setUps().get(e.setUp()), !before.add(e.setUp()));
      }
    }
  }

  private final SomeEvents<Optional<String>> change =
      new SomeEvents<>() {
        @Override
        public Optional<String> setUpEntered(Event.SetUpEntered event) {
          return Optional.of(" Entered: " + words.setUp(event.setUp()));
        }

        @Override
        public Optional<String> setUpLeft(Event.SetUpLeft event) {
          return Optional.of(" Left: " + words.setUp(event.setUp()));
        }

        @Override
        public Optional<String> other(Event event) {
          return Optional.empty();
        }
      };

  private void entered(SetUp setUp, boolean again) {
    if (setUp == null) {
      return;
    }
    int steps = setUp.enter().size();
    String count = steps + (steps == 1 ? " step" : " steps") + " of entering";
    if (again) {
      page.inner("Confirmed: its cautions as before, " + count);
      return;
    }
    for (Caution caution : base.cautionsFor(setUp.hazards(), moment.state().told().site())) {
      page.inner("Confirmed: " + caution.word() + ". " + caution.text());
    }
    page.inner("Confirmed: " + count);
  }
}
