package yett.interview.step;

/** A visitor for some kinds of step only; all others are handled by {@link #other}. */
public interface SomeSteps<R> extends Step.Visitor<R> {

  /** Handles a kind of step without a method of its own. */
  R other(Step step);

  @Override
  default R askDangers(Step.AskDangers step) {
    return other(step);
  }

  @Override
  default R askSite(Step.AskSite step) {
    return other(step);
  }

  @Override
  default R askComplaints(Step.AskComplaints step) {
    return other(step);
  }

  @Override
  default R askPressing(Step.AskPressing step) {
    return other(step);
  }

  @Override
  default R askHistory(Step.AskHistory step) {
    return other(step);
  }

  @Override
  default R ask(Step.Ask step) {
    return other(step);
  }

  @Override
  default R lookRound(Step.LookRound step) {
    return other(step);
  }

  @Override
  default R enter(Step.Enter step) {
    return other(step);
  }

  @Override
  default R leave(Step.Leave step) {
    return other(step);
  }

  @Override
  default R mend(Step.Mend step) {
    return other(step);
  }

  @Override
  default R retest(Step.Retest step) {
    return other(step);
  }

  @Override
  default R settle(Step.Settle step) {
    return other(step);
  }

  @Override
  default R takeStock(Step.TakeStock step) {
    return other(step);
  }

  @Override
  default R decideFailedProof(Step.DecideFailedProof step) {
    return other(step);
  }

  @Override
  default R makeSafe(Step.MakeSafe step) {
    return other(step);
  }

  @Override
  default R handOver(Step.HandOver step) {
    return other(step);
  }

  @Override
  default R closeSolved(Step.CloseSolved step) {
    return other(step);
  }

  @Override
  default R closeRepaired(Step.CloseRepaired step) {
    return other(step);
  }

  @Override
  default R finished(Step.Finished step) {
    return other(step);
  }
}
