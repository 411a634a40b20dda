package yett.command.diagnose.intake;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.LongList;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.wording.Wording;

/** Asks what was reported: what is wrong with the gate, and what happened there recently. */
public record Report(Sitting sitting, Questions questions) {
  /** Asks what is wrong with the gate. */
  public void askComplaints(Step.AskComplaints step) {
    List<String> names = step.complaints().stream().map(Check::ask).toList();
    List<String> ids = step.complaints().stream().map(Check::id).toList();
    LongList list =
        LongList.of(
            sitting,
            "What is wrong with the gate?",
            said(step)
                + (step.said().isEmpty() ? "Pick all that were" : "Pick everything else that was")
                + " noticed, or say it in your own words.",
            names);
    boolean nothingYet = step.said().isEmpty();
    Optional<List<Integer>> picked =
        questions.several(
            list, nothingYet ? "Numbers" : "Numbers, or 0 if that is all", ids, names);
    if (picked.isPresent() && picked.get().isEmpty() && nothingYet) {
      sitting.say("Pick at least one; if nothing fits, take the nearest and add a note.");
    } else if (picked.isPresent()) {
      List<String> complaints = picked.get().stream().map(ids::get).toList();
      echo(picked.get(), names);
      sitting.record(step.reported(complaints));
      questions.hearComplaints(complaints); // "none" may have been typed at the dangers in haste
    }
  }

  private static String said(Step.AskComplaints step) {
    return step.said().stream()
        .map(c -> "Already reported: " + Wording.quoted(c.ask()) + ". ")
        .collect(Collectors.joining());
  }

  /** Asks what happened there lately. */
  public void askHistory(Step.AskHistory step) {
    List<String> names = step.histories().stream().map(History::name).toList();
    List<String> ids = step.histories().stream().map(History::id).toList();
    LongList list =
        LongList.of(
            sitting, "What happened lately?", "Pick all that apply to the last few weeks.", names);
    questions
        .several(list, "0 for none, or numbers", ids, names)
        .ifPresent(
            p -> {
              echo(p, names);
              sitting.record(new Event.Happened(p.stream().map(ids::get).toList()));
            });
  }

  /** Says what was picked, so that a slip shows while it is easily corrected. */
  private void echo(List<Integer> picked, List<String> names) {
    if (!picked.isEmpty()) {
      sitting.say(
          "Noted: " + picked.stream().map(names::get).collect(Collectors.joining("; ")) + ".");
    }
  }
}
