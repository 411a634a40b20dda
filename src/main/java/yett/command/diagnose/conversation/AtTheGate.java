package yett.command.diagnose.conversation;

import java.util.Map;
import yett.command.diagnose.danger.DangerList;
import yett.command.diagnose.intake.Report;
import yett.command.diagnose.intake.SiteForm;
import yett.command.diagnose.look.LookList;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.question.SingleCheck;
import yett.command.diagnose.sitting.Sitting;
import yett.command.diagnose.work.Repairing;
import yett.command.diagnose.work.SetUpScreens;
import yett.interview.step.Step;

/** Handles each kind of step for a person at the gate. */
final class AtTheGate implements Step.Visitor<Runnable> {
  private final Sitting sitting;
  private final DangerList dangers;
  private final LookList looks;
  private final SetUpScreens setUps;
  private final Report report;
  private final SingleCheck check;
  private final Repairing repairing;
  private final CaseEnd end;
  private final Decisions decisions;
  private final SiteForm siteForm;

  /**
   * @param knownSite answers to site questions kept from an earlier case at this gate
   */
  AtTheGate(
      Sitting sitting, PromptRequests wishes, Questions questions, Map<String, String> knownSite) {
    this.sitting = sitting;
    this.dangers = new DangerList(sitting, wishes);
    this.looks = new LookList(sitting, wishes);
    this.setUps = new SetUpScreens(sitting, questions);
    this.report = new Report(sitting, questions);
    this.check = new SingleCheck(sitting, questions);
    this.repairing = new Repairing(sitting, wishes, questions);
    this.end = new CaseEnd(sitting, questions);
    this.decisions = new Decisions(sitting, questions);
    this.siteForm = new SiteForm(sitting, wishes, knownSite);
  }

  @Override
  public Runnable askDangers(Step.AskDangers step) {
    return () -> dangers.ask(step);
  }

  @Override
  public Runnable askSite(Step.AskSite step) {
    return () -> siteForm.fill();
  }

  @Override
  public Runnable askComplaints(Step.AskComplaints step) {
    return () -> report.askComplaints(step);
  }

  @Override
  public Runnable askPressing(Step.AskPressing step) {
    throw onlyOnCalls(step);
  }

  @Override
  public Runnable askHistory(Step.AskHistory step) {
    return () -> report.askHistory(step);
  }

  @Override
  public Runnable ask(Step.Ask step) {
    return () -> check.ask(step, sitting.moment());
  }

  @Override
  public Runnable lookRound(Step.LookRound step) {
    return looks.asksSingly(step) ? ask(step.first()) : () -> looks.ask(step);
  }

  @Override
  public Runnable enter(Step.Enter step) {
    return () -> setUps.enter(step);
  }

  @Override
  public Runnable leave(Step.Leave step) {
    return () -> setUps.leave(step);
  }

  @Override
  public Runnable mend(Step.Mend step) {
    return () -> repairing.mend(step, sitting.moment());
  }

  @Override
  public Runnable retest(Step.Retest step) {
    return () -> repairing.retest();
  }

  @Override
  public Runnable settle(Step.Settle step) {
    return () -> decisions.settle(step);
  }

  @Override
  public Runnable takeStock(Step.TakeStock step) {
    return () -> decisions.takeStock(step);
  }

  @Override
  public Runnable decideFailedProof(Step.DecideFailedProof step) {
    return () -> decisions.failedProof(step);
  }

  @Override
  public Runnable makeSafe(Step.MakeSafe step) {
    return () -> end.makeSafe(step);
  }

  @Override
  public Runnable handOver(Step.HandOver step) {
    return () -> end.handOver(step);
  }

  @Override
  public Runnable closeSolved(Step.CloseSolved step) {
    throw onlyOnCalls(step);
  }

  @Override
  public Runnable closeRepaired(Step.CloseRepaired step) {
    return () -> end.closeRepaired(step);
  }

  @Override
  public Runnable finished(Step.Finished step) {
    return () -> {};
  }

  private static IllegalStateException onlyOnCalls(Step step) {
    return new IllegalStateException("a step of calls only: " + step);
  }
}
