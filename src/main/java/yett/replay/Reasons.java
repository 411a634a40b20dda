package yett.replay;

import java.util.List;
import java.util.Optional;
import yett.interview.Step;
import yett.plan.Advice;
import yett.plan.Advice.Candidate;
import yett.replay.Replayed.RunnerUp;
import yett.replay.Replayed.Why;

/** Why a check or a repair is the next step, from the plan's advice. */
public final class Reasons {
  private Reasons() {}

  public static Why of(Step.Ask ask) {
    if (ask.advice().isEmpty()) {
      return Why.of(ask.occasion());
    }
    List<Candidate> candidates = ask.advice().get().candidates();
    Candidate first = candidates.get(0);
    Optional<Candidate> second = candidates.stream().skip(1).findFirst();
    String words =
        "saves "
            + Rounded.minutes(first.saves())
            + " minutes on average against repairing at once"
            + second
                .map(
                    s ->
                        "; \""
                            + s.check()
                            + "\" would save "
                            + Rounded.minutes(s.saves())
                            + " minutes")
                .orElse("; no other check tells anything");
    return new Why(
        ask.occasion().isEmpty() ? words : ask.occasion() + "; " + words,
        Optional.of(Rounded.minutes(first.saves())),
        second.map(s -> new RunnerUp(s.check(), Rounded.minutes(s.saves()))),
        List.of());
  }

  public static Why of(Step.Mend mend) {
    if (mend.plan().isEmpty()) {
      return Why.of(mend.occasion());
    }
    Advice advice = mend.plan().get();
    Optional<Candidate> best = advice.candidates().stream().findFirst();
    String words = "no check is worth its minutes before this repair";
    return new Why(
        mend.occasion().isEmpty() ? words : mend.occasion() + "; " + words,
        Optional.empty(),
        best.map(c -> new RunnerUp(c.check(), Rounded.minutes(c.saves()))),
        advice.jobs().stream().map(Advice.Job::repair).toList());
  }
}
