package yett.replay;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.step.Step;
import yett.plan.Advice;
import yett.plan.Advice.Candidate;
import yett.replay.Replayed.RunnerUp;
import yett.replay.Replayed.Why;
import yett.wording.StepWords;

/** Says why a check or a repair is the next step, from the plan's advice. */
public final class Reasons {
  private Reasons() {}

  public static Why of(Step.Ask ask) {
    if (ask.advice().isEmpty()) {
      return Why.of(StepWords.occasion(ask.occasion()));
    }
    Advice advice = ask.advice().get();
    Optional<Candidate> second = advice.candidates().stream().skip(1).findFirst();
    return new Why(
        withoutRunnerUp(ask)
            + "; "
            + second.map(s -> runnerUp(advice, s)).orElse("no other check tells anything"),
        Optional.of(ResultNumbers.minutes(advice.candidates().get(0).saves())),
        second.map(s -> new RunnerUp(s.check(), ResultNumbers.minutes(s.saves()))),
        List.of());
  }

  /** The reason for a round, which is that for its first look. */
  public static Why of(Step.LookRound round) {
    return of(round.first());
  }

  /** The reason in words, without the second-best check. */
  public static String withoutRunnerUp(Step.Ask ask) {
    return words(ask, ask.advice().map(Reasons::worth).stream());
  }

  /** The same for somebody who looks for the fault: no repair is named, as its name tells it. */
  public static String withoutRepair(Step.Ask ask) {
    return words(
        ask,
        ask.advice().stream()
            .map(
                advice ->
                    advice.confirming()
                        ? "confirms or clears what the repair in view is for, first"
                        : worth(advice)));
  }

  private static String words(Step.Ask ask, Stream<String> worth) {
    return Stream.concat(
            Stream.of(StepWords.occasion(ask.occasion())).filter(occasion -> !occasion.isEmpty()),
            worth)
        .collect(Collectors.joining("; "));
  }

  private static String worth(Advice advice) {
    if (advice.confirming()) {
      return "confirms or clears what \"" + advice.jobs().get(0).repair() + "\" is for, first";
    }
    return advice.findingOut()
        ? "resolves most for its cost, while no repair is worth trying"
        : "saves "
            + ResultNumbers.minutes(advice.candidates().get(0).saves())
            + " minutes on average against repairing at once";
  }

  private static String runnerUp(Advice advice, Candidate second) {
    String name = "\"" + second.check() + "\"";
    return advice.findingOut()
        ? name + " came second"
        : name + " would save " + ResultNumbers.minutes(second.saves()) + " minutes";
  }

  public static Why of(Step.Mend mend) {
    String occasion = StepWords.occasion(mend.occasion());
    if (mend.plan().isEmpty()) {
      return Why.of(occasion);
    }
    Advice advice = mend.plan().get();
    Optional<Candidate> best = advice.candidates().stream().findFirst();
    String words = "no check is worth its minutes before this repair";
    return new Why(
        occasion.isEmpty() ? words : occasion + "; " + words,
        Optional.empty(),
        best.map(c -> new RunnerUp(c.check(), ResultNumbers.minutes(c.saves()))),
        advice.jobs().stream().map(Advice.Job::repair).toList());
  }
}
