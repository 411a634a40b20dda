package yett.replay;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import yett.interview.Answer;
import yett.interview.Ending;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Interview;
import yett.interview.Moment;
import yett.interview.SafetyWatch;
import yett.interview.Step;
import yett.interview.UnsafeStep;
import yett.interview.WorkTime;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.plan.Advice;
import yett.replay.Replayed.Kept;
import yett.replay.Replayed.Mended;
import yett.replay.Replayed.Proved;
import yett.replay.Replayed.Why;
import yett.rules.Conclusion.Contradiction;

/** One run of one case: asks, hears the witness, writes down. */
final class Run {
  /** More steps than any interview takes: the run then ends as unfinished. */
  private static final int MOST_STEPS = 1_000;

  private final Interview interview;
  private final RuleBase base;
  private final RecordedCase recorded;
  private final Respondent witness;
  private final Instant start;
  private final List<Entry> entries = new ArrayList<>();
  private final Transcript transcript;
  private final SafetyWatch watch;
  private double spent;
  private String because = "";

  Run(Interview interview, RecordedCase recorded, Respondent witness, Instant start) {
    this.interview = interview;
    this.base = interview.expertise().base();
    this.recorded = recorded;
    this.witness = witness;
    this.start = start;
    this.transcript = new Transcript(base);
    this.watch = new SafetyWatch(base);
  }

  Replayed run() {
    happen(new Event.Opened(recorded.name(), recorded.person(), base.fingerprint()));
    recorded.call().said().ifPresent(words -> happen(new Event.Said(words)));
    Moment moment = interview.at(entries);
    OptionalDouble expected = OptionalDouble.empty();
    for (int i = 0; i < MOST_STEPS && !(moment.step() instanceof Step.Finished); i++) {
      if (expected.isEmpty()) {
        expected = advice(moment.step()).stream().mapToDouble(Advice::expected).findFirst();
      }
      watch(moment);
      take(moment);
      moment = interview.at(entries);
      transcript.finish(moment);
    }
    watch(moment);
    return new Results(base, recorded, transcript, moment)
        .replayed(because, expected.orElse(0), spent);
  }

  private void watch(Moment moment) {
    try {
      watch.accept(moment, recorded.person());
    } catch (UnsafeStep e) {
      transcript.unsafe(e.getMessage());
    }
  }

  private static Optional<Advice> advice(Step step) {
    if (step instanceof Step.Ask ask) {
      return ask.advice();
    }
    return step instanceof Step.Mend mend ? mend.plan() : Optional.empty();
  }

  private double happen(Event event) {
    double minutes = WorkTime.minutes(event, base);
    spent += minutes;
    Instant at = start.plus(Duration.ofSeconds(Math.round(spent * 60)));
    entries.add(new Entry(entries.size() + 1L, at, recorded.person(), event));
    return minutes;
  }

  private void begin(
      String kind, String id, String asked, Why why, String answer, boolean assumed, Event event) {
    double minutes = happen(event);
    transcript.begin(kind, id, asked, why, answer, assumed, entries.size(), minutes);
  }

  private void take(Moment moment) {
    Step step = moment.step();
    if (step instanceof Step.AskDangers s) {
      answer(moment, "danger", s.dangers().get(0), Why.of("dangers come before everything else"));
    } else if (step instanceof Step.AskSite) {
      site();
    } else if (step instanceof Step.AskComplaints) {
      List<String> said = recorded.complaints();
      Why why = Why.of("the search begins with what people noticed");
      String asked = "What is wrong with the gate?";
      begin("complaints", "complaints", asked, why, list(said), false, new Event.Complained(said));
    } else if (step instanceof Step.AskPressing) {
      List<String> pressing = recorded.call().pressing();
      Why why = Why.of("how soon somebody has to be there depends on the site");
      String asked = "What makes it urgent?";
      Event event = new Event.Pressed(pressing);
      begin("pressing", "pressing", asked, why, list(pressing), false, event);
    } else if (step instanceof Step.AskHistory) {
      List<String> history = recorded.history();
      Why why = Why.of("what happened lately moves the odds");
      String asked = "What happened at the gate lately?";
      begin("history", "history", asked, why, list(history), false, new Event.Happened(history));
    } else if (step instanceof Step.Ask s) {
      String kind = s.check().kind() == Check.Kind.PROOF ? "proof" : "check";
      answer(moment, kind, s.check(), Reasons.of(s));
    } else {
      work(step);
    }
  }

  private void site() {
    recorded.site().forEach((question, answer) -> happen(new Event.SiteAnswered(question, answer)));
    List<String> said = new ArrayList<>();
    recorded.site().forEach((question, answer) -> said.add(question + " " + answer));
    Why why = Why.of("usual ranges and what can fail depend on the gate");
    String asked = "What is the gate like?";
    begin("site", "site", asked, why, list(said), false, new Event.SiteTaken());
  }

  private static String list(List<String> words) {
    return words.isEmpty() ? "none given" : String.join(", ", words);
  }

  private void answer(Moment moment, String kind, Check check, Why why) {
    Respondent.Said said =
        witness.answer(
            check,
            moment.judgement().expectation(check.id()),
            a -> interview.hear(moment, check, a).map(h -> h.finding().outcome()));
    if (!said.why().isEmpty()) {
      transcript.note(said.why());
    }
    String words = words(said.answer());
    if (check.kind() == Check.Kind.PROOF) {
      transcript.proved(new Proved(check.id(), words));
    }
    Event event = new Event.Answered(check.id(), said.answer());
    begin(kind, check.id(), check.ask(), why, words, said.assumed(), event);
  }

  private static String words(Answer answer) {
    return answer.map(
        Answer.Chosen::outcome, Answer.Read::typed, () -> "cannot-tell", () -> "not-now");
  }

  private void work(Step step) {
    if (step instanceof Step.Enter s) {
      Why why = Why.of("next: " + s.purpose());
      Event event = s.done();
      begin("enter", s.setUp().id(), s.setUp().name(), why, "confirmed", false, event);
    } else if (step instanceof Step.Leave s) {
      Why why = Why.of("next: " + s.purpose());
      Event event = s.done();
      begin("leave", s.setUp().id(), s.setUp().name(), why, "confirmed", false, event);
    } else if (step instanceof Step.Mend s) {
      witness.repaired(s.repair());
      transcript.mended(new Mended(s.repair().id(), Optional.empty()));
      Event event = new Event.Repaired(s.repair().id(), true);
      begin("repair", s.repair().id(), s.repair().name(), Reasons.of(s), "done", false, event);
    } else if (step instanceof Step.Retest) {
      retest();
    } else if (step instanceof Step.Settle s) {
      settle(s);
    } else if (step instanceof Step.DecideFailedProof s) {
      Why why = Why.of("the proof failed: the search goes on");
      Event event = new Event.Reopened(s.proof().id());
      begin("failed-proof", s.proof().id(), s.proof().ask(), why, "go on", true, event);
    } else {
      end(step);
    }
  }

  private void retest() {
    Optional<Boolean> cured = witness.cured();
    String asked = "Does the gate run as it should?";
    if (cured.isEmpty()) {
      String why = "the file does not say whether the gate runs after the repair";
      transcript.note(why);
      begin(
          "retest",
          "retest",
          asked,
          Why.of("after a repair"),
          "cannot-tell",
          true,
          new Event.GaveUp(why));
      return;
    }
    transcript.tried(cured.get());
    boolean assumed = recorded.retests().isEmpty();
    Why why = Why.of("a repair that cured, or did not, tells what was wrong");
    Event.Retested tried = new Event.Retested(cured.get(), witness.sameTrouble());
    String answer =
        cured.get() ? "cured" : tried.same().orElse(false) ? "fails as before" : "fails";
    begin("retest", "retest", asked, why, answer, assumed, tried);
  }

  private void settle(Step.Settle step) {
    Contradiction contradiction = step.contradiction();
    String first = step.first().check();
    String second = step.second().check();
    String reason = contradiction.reason().words();
    transcript.kept(new Kept(first, second, reason));
    transcript.note("\"" + first + "\" and \"" + second + "\" contradict each other; both kept");
    Event event = new Event.Kept(contradiction.first(), contradiction.second());
    begin("settle", first, second, Why.of(reason), "both kept", true, event);
  }

  private void end(Step step) {
    if (step instanceof Step.MakeSafe s) {
      Why why = Why.of(s.because());
      Event event = new Event.MadeSafe(s.stop().id());
      begin("make-safe", s.stop().id(), s.stop().name(), why, "confirmed", false, event);
    } else if (step instanceof Step.HandOver s) {
      because = s.because();
      close(s.ending(), s.because());
    } else if (step instanceof Step.CloseSolved) {
      because = "it runs as usual, and nothing was done that needs further proofs";
      close(Ending.SOLVED, because);
    } else if (step instanceof Step.CloseRepaired) {
      because = "every proof passed";
      close(Ending.REPAIRED, because);
    } else {
      throw new IllegalStateException("no answer to " + step);
    }
  }

  private void close(Ending ending, String why) {
    begin(
        "close",
        "close",
        "How the case ends",
        Why.of(why),
        ending.words(),
        false,
        new Event.Closed(ending));
  }
}
