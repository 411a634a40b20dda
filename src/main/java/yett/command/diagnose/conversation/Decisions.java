package yett.command.diagnose.conversation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import yett.command.diagnose.correction.Corrections;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.SignalWord;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.interview.step.Suspect;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.SetUp;
import yett.wording.Figures;
import yett.wording.Wording;

/** Asks the person to decide how the case continues. */
record Decisions(Sitting sitting, Questions questions) {
  void settle(Step.Settle step) {
    Corrections corrections = new Corrections(sitting);
    List<String> texts =
        List.of(
            "answer again: " + corrections.told(step.first()),
            "answer again: " + corrections.told(step.second()),
            "both are right");
    sitting.show(
        Block.heading("Two answers contradict each other"),
        Block.paragraph(Wording.capital(step.contradiction().reason().words()) + "."),
        Block.numbered(texts));
    OptionalInt answer =
        questions.one(
            "Answer",
            List.of("first", "second", "both"),
            texts,
            "Type 1 or 2 to change an answer, 3 to keep both.");
    if (answer.isEmpty()) {
      return;
    }
    if (answer.getAsInt() == 2) {
      sitting.record(new Event.Kept(step.contradiction().first(), step.contradiction().second()));
    } else {
      corrections.again(answer.getAsInt() == 0 ? step.first() : step.second());
    }
  }

  void failedProof(Step.DecideFailedProof step) {
    sitting.show(
        Block.heading("A proof failed"),
        Block.paragraph(step.proof().ask()),
        Block.signal(
            SignalWord.WARNING,
            (sitting.moment().judgement().forbidden().contains(SetUp.GATE_RUNNING)
                    ? "Nobody runs the gate, not even while somebody watches, until what failed has"
                        + " been repaired."
                    : "The gate is out of use until this proof passes.")
                + " Keep people away from it."),
        Block.numbered(
            List.of(
                afterFailure(step.proof()),
                "leave the gate out of use: locked off, open way closed by other means, "
                    + "signed")));
    questions
        .one(
            "Answer",
            List.of("go-on", "leave"),
            List.of("go on", "leave"),
            "Type 1 to go on, 2 to leave the gate out of use.")
        .ifPresent(
            i ->
                sitting.record(
                    i == 0
                        ? new Event.Reopened(step.proof().id())
                        : new Event.GaveUp("a proof failed: " + step.proof().ask())));
  }

  /** What going on means: the repair that puts right just what failed has its name here. */
  private String afterFailure(Check proof) {
    return sitting.base().repairs().values().stream()
        .filter(r -> r.putsRight().contains(proof.id()))
        .findFirst()
        .map(r -> "put it right now and prove it again: " + r.name())
        .orElse("go on: repair what the proof points to, or look for the cause");
  }

  /** One of the possible decisions when further checks are no longer worth their cost. */
  private record Choice(String word, String text, Event event) {}

  void takeStock(Step.TakeStock step) {
    List<Choice> choices = new ArrayList<>();
    choices.add(
        new Choice("go-on", "go on; next would be: " + step.next().ask(), new Event.WentOn()));
    for (Suspect suspect : step.suspects()) {
      suspect
          .repair()
          .filter(r -> suspect.worthTrying())
          .filter(r -> choices.stream().noneMatch(c -> c.word().equals(r.id())))
          .ifPresent(
              r ->
                  choices.add(
                      new Choice(r.id(), onSuspicion(suspect, r), new Event.AskedFor(r.id()))));
    }
    choices.add(
        new Choice(
            "hand-over",
            "hand over, with everything that was found",
            new Event.GaveUp("the last checks changed no suspicion")));
    List<String> texts = choices.stream().map(Choice::text).toList();
    sitting.show(
        Block.heading("The last checks told little"),
        Block.paragraph(
            "They changed no suspicion, and none is strong enough to justify a repair. More may"
                + " still tell: checks lists them."
                + (step.suspects().isEmpty() ? "" : " Still possible:")),
        Block.rows(step.suspects().stream().map(Decisions::told).toArray(Block.Row[]::new)),
        Block.numbered(texts));
    questions
        .one(
            "Answer",
            choices.stream().map(Choice::word).toList(),
            texts,
            "Type the number of a line, 1 to "
                + choices.size()
                + ". To look into something else: suspect, with the name of a cause.")
        .ifPresent(i -> sitting.record(choices.get(i).event()));
  }

  private static String onSuspicion(Suspect suspect, Repair repair) {
    boolean sound = suspect.cause().id().equals(Cause.NOTHING_WRONG);
    return (sound ? "assume that nothing is wrong: " : "on suspicion: ") + repair.name();
  }

  private static Block.Row told(Suspect suspect) {
    String repair =
        suspect.repair().isEmpty()
            ? "; no repair for it is open to you now"
            : suspect.worthTrying() ? "" : "; too little evidence to fit a part";
    return Block.row(suspect.cause().name(), Figures.percent(suspect.chance()) + repair);
  }
}
