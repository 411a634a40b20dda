package yett.replay;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.interview.moment.Moment;
import yett.interview.state.WorkTime;
import yett.interview.step.Purpose;
import yett.interview.step.Step;
import yett.interview.watch.SafetyWatch;
import yett.interview.watch.UnsafeStep;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.Stop;
import yett.knowledge.Telephone;
import yett.plan.Advice;
import yett.replay.Replayed.Kept;
import yett.replay.Replayed.Mended;
import yett.replay.Replayed.Proved;
import yett.replay.Replayed.Why;
import yett.rules.Conclusion.Contradiction;
import yett.rules.Conclusion.Finding;
import yett.wording.StepWords;

/** One run of one case: takes each step, asks the respondent, and records the result. */
final class Run {
  /** Most steps; an interview takes fewer, so a run that reaches this ends as unfinished. */
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

  Run(
      Interview interview,
      RecordedCase recorded,
      Respondent witness,
      Instant start,
      Transcript transcript) {
    this.interview = interview;
    this.base = interview.expertise().base();
    this.recorded = recorded;
    this.witness = witness;
    this.start = start;
    this.transcript = transcript;
    this.watch = new SafetyWatch(base);
  }

  Replayed run() {
    happen(new Event.Opened(recorded.name(), recorded.person(), base.fingerprint()));
    recorded.call().said().ifPresent(words -> happen(new Event.Said(words)));
    Moment moment = interview.at(entries);
    OptionalDouble expected = OptionalDouble.empty();
    for (int i = 0; i < MOST_STEPS && !(moment.step() instanceof Step.Finished); i++) {
      if (expected.isEmpty()) {
        expected = moment.step().advice().stream().mapToDouble(Advice::expected).findFirst();
      }
      watch(moment);
      take(moment);
      moment = interview.at(entries);
      transcript.finish(moment);
    }
    watch(moment);
    return new RunSummary(base, recorded, transcript, moment)
        .replayed(because, expected.orElse(0), spent);
  }

  private void watch(Moment moment) {
    try {
      watch.accept(moment, recorded.person());
    } catch (UnsafeStep e) {
      transcript.unsafe(e.getMessage());
    }
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
    moment.step().accept(new Taking(moment)).run();
  }

  /** Handles each kind of step. */
  private final class Taking implements Step.Visitor<Runnable> {
    private final Moment moment;

    Taking(Moment moment) {
      this.moment = moment;
    }

    @Override
    public Runnable askDangers(Step.AskDangers step) {
      return () -> {
        Why why = Why.of("dangers come before everything else");
        answer(moment, "danger", step.dangers().get(0), why);
      };
    }

    @Override
    public Runnable askSite(Step.AskSite step) {
      return () -> site();
    }

    @Override
    public Runnable askComplaints(Step.AskComplaints step) {
      return () -> {
        List<String> said = recorded.complaints();
        Why why = Why.of("the search begins with what people noticed");
        String asked = "What is wrong with the gate?";
        Event event = new Event.Complained(said);
        begin("complaints", "complaints", asked, why, list(said), false, event);
      };
    }

    @Override
    public Runnable askPressing(Step.AskPressing step) {
      return () -> {
        List<String> pressing = recorded.call().pressing();
        Why why = Why.of("how soon somebody has to be there depends on the site");
        String asked = "What makes it urgent?";
        Event event = new Event.Pressed(pressing);
        begin("pressing", "pressing", asked, why, list(pressing), false, event);
      };
    }

    @Override
    public Runnable askHistory(Step.AskHistory step) {
      return () -> {
        List<String> history = recorded.history();
        Why why = Why.of("what happened lately moves the odds");
        String asked = "What happened at the gate lately?";
        Event event = new Event.Happened(history);
        begin("history", "history", asked, why, list(history), false, event);
        recorded.call().told().forEach(id -> tell(base.checks().get(id)));
      };
    }

    @Override
    public Runnable ask(Step.Ask step) {
      return () -> {
        String kind = step.check().kind() == Check.Kind.PROOF ? "proof" : "check";
        answer(moment, kind, step.check(), Reasons.of(step));
      };
    }

    @Override
    public Runnable lookRound(Step.LookRound step) {
      return () -> look(moment, step);
    }

    @Override
    public Runnable enter(Step.Enter step) {
      return () -> setUp("enter", step.setUp(), step.purpose(), step.done());
    }

    @Override
    public Runnable leave(Step.Leave step) {
      return () -> setUp("leave", step.setUp(), step.purpose(), step.done());
    }

    @Override
    public Runnable mend(Step.Mend step) {
      return () -> {
        String id = step.repair().id();
        witness.repaired(step.repair());
        transcript.mended(new Mended(id, Optional.empty()));
        Event event = new Event.Repaired(id, true);
        begin("repair", id, step.repair().name(), Reasons.of(step), "done", false, event);
      };
    }

    @Override
    public Runnable retest(Step.Retest step) {
      return () -> Run.this.retest();
    }

    @Override
    public Runnable settle(Step.Settle step) {
      return () -> Run.this.settle(step);
    }

    @Override
    public Runnable takeStock(Step.TakeStock step) {
      return () -> {
        String why = "the last checks changed no suspicion";
        String asked = "Go on asking, repair on suspicion, or hand over?";
        boolean first = moment.state().work().wentOn() == 0;
        Event event = first ? new Event.WentOn() : new Event.GaveUp(why);
        String answer = first ? "go on" : "hand over";
        begin("take-stock", "take-stock", asked, Why.of(why), answer, true, event);
      };
    }

    @Override
    public Runnable decideFailedProof(Step.DecideFailedProof step) {
      return () -> {
        Check proof = step.proof();
        Why why = Why.of("the proof failed: the search goes on");
        Event event = new Event.Reopened(proof.id());
        begin("failed-proof", proof.id(), proof.ask(), why, "go on", true, event);
      };
    }

    @Override
    public Runnable makeSafe(Step.MakeSafe step) {
      return () -> {
        Stop stop = step.stop();
        Why why = Why.of(step.because());
        Event event = step.done();
        begin("make-safe", stop.id(), stop.name(), why, "confirmed", false, event);
      };
    }

    @Override
    public Runnable handOver(Step.HandOver step) {
      return () -> close(step.ending(), StepWords.because(step.because()));
    }

    @Override
    public Runnable closeSolved(Step.CloseSolved step) {
      return () ->
          close(Ending.SOLVED, "it runs as usual, and nothing was done that needs further proofs");
    }

    @Override
    public Runnable closeRepaired(Step.CloseRepaired step) {
      return () -> close(step.ending(), "every proof passed");
    }

    @Override
    public Runnable finished(Step.Finished step) {
      return () -> {};
    }
  }

  private void setUp(String kind, SetUp setUp, Purpose purpose, Event event) {
    Why why = Why.of("next: " + new StepWords(base).purpose(purpose));
    begin(kind, setUp.id(), setUp.name(), why, "confirmed", false, event);
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

  /** Answers each look of a round from the file. */
  private void look(Moment moment, Step.LookRound round) {
    List<Transcript.Look> looks = new ArrayList<>();
    double minutes = 0;
    for (Step.Ask look : round.looks()) {
      Respondent.Said said = hear(moment, look.check());
      String id = look.check().id();
      minutes += happen(new Event.Answered(id, said.answer()));
      looks.add(new Transcript.Look(id, words(said.answer()), said.assumed(), entries.size()));
    }
    String place = round.place().id();
    String told =
        looks.stream().map(l -> l.check() + " " + l.answer()).collect(Collectors.joining(", "));
    boolean assumed = looks.stream().allMatch(Transcript.Look::assumed);
    transcript.begin(
        "look-round",
        place,
        round.place().name(),
        Reasons.of(round),
        told,
        assumed,
        entries.size(),
        minutes);
    looks.forEach(transcript::looked);
  }

  private Respondent.Said hear(Moment moment, Check check) {
    Respondent.Said said =
        witness.answer(
            check,
            moment.judgement().expectation(check.id()),
            a -> interview.meaning(moment, check, a).map(Finding::outcome));
    if (!said.why().isEmpty()) {
      transcript.note(said.why());
    }
    return said;
  }

  private void answer(Moment moment, String kind, Check check, Why why) {
    Respondent.Said said = hear(moment, check);
    String words = words(said.answer());
    if (check.kind() == Check.Kind.PROOF) {
      transcript.proved(new Proved(check.id(), words));
    }
    Event event = new Event.Answered(check.id(), said.answer());
    begin(kind, check.id(), check.ask(), why, words, said.assumed(), event);
    if (endsCall(check, said)) {
      happen(new Event.Tended(Tending.WORKS_AGAIN, "nobody knows why"));
      close(Ending.WORKS_AGAIN, "the caller says that it works as usual again");
    }
  }

  /**
   * Whether the caller says that the gate works again. The file has to have this answer; one that
   * the run assumed does not count.
   */
  private boolean endsCall(Check check, Respondent.Said said) {
    return recorded.person() == Role.CALLER
        && recorded.answers().containsKey(check.id())
        && said.answer().choice().filter(o -> Telephone.tellsItWorksAgain(check, o)).isPresent();
  }

  private void tell(Check check) {
    answer(interview.at(entries), "told", check, Why.of("whoever reported it said so"));
  }

  private static String words(Answer answer) {
    return answer.map(
        c -> String.join(" + ", c.all()),
        Answer.Read::typed,
        () -> answer.senseless() ? CaseReader.DOES_NOT_APPLY : CaseReader.CANNOT_TELL,
        () -> "not-now");
  }

  private void retest() {
    Optional<Event.Retested> tried = witness.retest();
    String asked = "Does the gate run as it should?";
    if (tried.isEmpty()) {
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
    transcript.tried(tried.get().cured());
    boolean assumed = recorded.retests().isEmpty();
    Why why = Why.of("whether a repair helped shows what was wrong");
    begin("retest", "retest", asked, why, words(tried.get()), assumed, tried.get());
  }

  private static String words(Event.Retested tried) {
    if (tried.cured()) {
      return "cured";
    }
    return tried.left().isEmpty()
        ? tried.same().orElse(false) ? "fails as before" : "fails"
        : "left: " + list(tried.left());
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

  private void close(Ending ending, String why) {
    because = why;
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
