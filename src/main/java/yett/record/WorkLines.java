package yett.record;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import yett.interview.Answer;
import yett.interview.CaseState.Answered;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Moment;
import yett.knowledge.Caution;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.wording.Wording;

/** The work of a record: repairs and tries, proofs, states of the work with their cautions. */
final class WorkLines {
  private final RuleBase base;
  private final Wording words;
  private final Moment moment;
  private final Markdown page;
  private final List<Entry> valid;

  /**
   * @param valid entries that were not taken back
   */
  WorkLines(RuleBase base, Wording words, Moment moment, Markdown page, List<Entry> valid) {
    this.base = base;
    this.words = words;
    this.moment = moment;
    this.page = page;
    this.valid = valid;
  }

  void write() {
    repairs();
    proofs();
    setUps();
  }

  private void repairs() {
    List<String> lines = new ArrayList<>();
    for (Entry entry : valid) {
      if (entry.event() instanceof Event.Repaired e) {
        lines.add(
            Wording.time(entry.at())
                + " "
                + words.repair(e.repair())
                + (e.done() ? ": done" : ": could not be done"));
      } else if (entry.event() instanceof Event.Retested e) {
        lines.add(Wording.time(entry.at()) + " The gate " + e.words() + ".");
      }
    }
    page.list("Repairs", lines);
  }

  private void proofs() {
    List<String> lines = new ArrayList<>();
    for (Answered a : moment.state().answers()) {
      if (words.isProof(a.check())) {
        String result =
            a.answer() instanceof Answer.Chosen c
                ? c.outcome().equals(Check.PASS) ? "PASSED: " : "FAILED: "
                : "OPEN: ";
        lines.add(result + words.ask(a.check()) + " " + words.answer(a.check(), a.answer()));
      }
    }
    page.list("Proofs", lines);
  }

  private void setUps() {
    List<Entry> changes =
        valid.stream()
            .filter(
                e ->
                    e.event() instanceof Event.SetUpEntered || e.event() instanceof Event.SetUpLeft)
            .toList();
    if (changes.isEmpty()) {
      return;
    }
    page.heading("States of the work");
    Set<String> before = new HashSet<>();
    for (Entry entry : changes) {
      if (entry.event() instanceof Event.SetUpEntered e) {
        page.item(Wording.time(entry.at()) + " Entered: " + words.setUp(e.setUp()));
        entered(base.setUps().get(e.setUp()), !before.add(e.setUp()));
      } else if (entry.event() instanceof Event.SetUpLeft e) {
        page.item(Wording.time(entry.at()) + " Left: " + words.setUp(e.setUp()));
      }
    }
  }

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
    for (Caution caution : base.cautionsFor(setUp.hazards())) {
      page.inner("Confirmed: " + caution.word() + ". " + caution.text());
    }
    page.inner("Confirmed: " + count);
  }
}
