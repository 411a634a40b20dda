package yett.command.diagnose.opening;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.casebook.CaseId;
import yett.command.common.Prompt;
import yett.command.diagnose.conversation.Conversation;
import yett.command.diagnose.question.CallLead;
import yett.console.Block;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.FollowOn;
import yett.desk.OpenCase;
import yett.interview.event.Event;
import yett.interview.inspection.Inspection;
import yett.interview.inspection.Verdict;
import yett.interview.moment.Moment;
import yett.knowledge.RuleBase;
import yett.wording.InspectionWords;

/**
 * Offers to begin a case from an inspection that found something. The case starts with everything
 * that was found, and with the question whether the gate is still as the inspection left it.
 */
record AfterInspection(Desk desk, Console console, CallLead.Maker calls) {
  /** Offers the case if the inspection is closed and something failed. */
  void offer(OpenCase inspection) {
    boolean failed =
        inspection.moment().state().closed().isPresent()
            && Inspection.of(desk.base(), inspection.moment())
                .filter(i -> !i.results(Verdict.FAIL).isEmpty())
                .isPresent();
    if (!failed) {
      return;
    }
    boolean begins =
        Prompt.withLeave(console)
            .until(
                "Begin a case with all its readings, to find the cause? yes or no> ",
                List.of("yes", "no"),
                line -> line.isEmpty() ? Prompt.Reading.of(false) : Prompt.yesOrNo(line))
            .orElse(false);
    if (!begins) {
      console.say("Later: resume " + inspection.id() + " offers it again.");
      return;
    }
    CaseId id = new FollowOn(desk).begin(inspection);
    console.show(
        Block.heading(
            "Case "
                + id
                + " · "
                + inspection.gate()
                + " · "
                + WhoAnswers.words(inspection.role())));
    try (OpenCase open = desk.open(id, inspection.role())) {
      owed(desk.base(), inspection.moment()).ifPresent(open::record);
      new Conversation(console, open, Map.of(), calls).comesBack().run();
    }
  }

  /** A note for both pages of the new case: a new gate that passes there is not complete yet. */
  static Optional<Event> owed(RuleBase base, Moment inspection) {
    return InspectionWords.owedByElectrician(Inspection.of(base, inspection).orElseThrow())
        .map(words -> new Event.Noted("for the customer: " + words));
  }
}
