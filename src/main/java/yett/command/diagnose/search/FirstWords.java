package yett.command.diagnose.search;

import yett.interview.step.Purpose;
import yett.interview.step.Step;
import yett.wording.StepWords;

/** Names the step that has to come before a request, as the end of a sentence. */
record FirstWords(StepWords words) implements Step.Visitor<String> {
  private static final String END = "the end of the case";

  @Override
  public String askDangers(Step.AskDangers step) {
    return "the list of dangers";
  }

  @Override
  public String askSite(Step.AskSite step) {
    return "the gate as installed";
  }

  @Override
  public String askComplaints(Step.AskComplaints step) {
    return "what is wrong with the gate";
  }

  @Override
  public String askPressing(Step.AskPressing step) {
    return "how urgent it is";
  }

  @Override
  public String askHistory(Step.AskHistory step) {
    return "what happened lately";
  }

  @Override
  public String makeSafe(Step.MakeSafe step) {
    return "people: what to do about the danger";
  }

  @Override
  public String settle(Step.Settle step) {
    return "which of two contradicting answers is right";
  }

  @Override
  public String retest(Step.Retest step) {
    return "the retest after the repair";
  }

  @Override
  public String takeStock(Step.TakeStock step) {
    return "whether to go on asking";
  }

  @Override
  public String decideFailedProof(Step.DecideFailedProof step) {
    return "what to do about the failed proof";
  }

  @Override
  public String ask(Step.Ask step) {
    String occasion = StepWords.occasion(step.occasion());
    return "the question: "
        + step.check().ask()
        + (occasion.isEmpty() ? "" : " (" + occasion + ")");
  }

  @Override
  public String lookRound(Step.LookRound step) {
    return "the round of looks: " + step.place().name();
  }

  @Override
  public String mend(Step.Mend step) {
    return step.repair().name() + ", " + StepWords.occasion(step.occasion());
  }

  @Override
  public String enter(Step.Enter step) {
    return purpose(step.purpose());
  }

  @Override
  public String leave(Step.Leave step) {
    return purpose(step.purpose());
  }

  private String purpose(Purpose purpose) {
    return words.purpose(purpose);
  }

  @Override
  public String handOver(Step.HandOver step) {
    return "the hand-over: " + StepWords.because(step.because());
  }

  @Override
  public String closeRepaired(Step.CloseRepaired step) {
    return END;
  }

  @Override
  public String closeSolved(Step.CloseSolved step) {
    return END;
  }

  @Override
  public String finished(Step.Finished step) {
    return END;
  }
}
