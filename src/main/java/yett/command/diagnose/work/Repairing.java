package yett.command.diagnose.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.SignalWord;
import yett.interview.event.Event;
import yett.interview.evidence.Trail;
import yett.interview.moment.Moment;
import yett.interview.proof.Settings;
import yett.interview.state.CouldNotBeDone;
import yett.interview.step.Step;
import yett.knowledge.Repair;
import yett.wording.CallWords;
import yett.wording.ConsequenceWords;
import yett.wording.Wording;

/** Proposes a repair, and has the gate tried after it. */
public final class Repairing {
  private final Sitting sitting;
  private final DoneOrNot done;
  private final RetestList retest;

  public Repairing(Sitting sitting, PromptRequests wishes, Questions questions) {
    this.sitting = sitting;
    this.done = new DoneOrNot(sitting, wishes, questions);
    this.retest = new RetestList(sitting, questions);
  }

  /** Shows the repair with its steps, and asks whether it was done. */
  public void mend(Step.Mend step, Moment moment) {
    List<Block> blocks = new ArrayList<>(sitting.views().mend(step, moment));
    refusedBefore(step.repair(), moment)
        .ifPresent(words -> blocks.add(blocks.size() - 1, Block.paragraph(words)));
    new ConsequenceWords(sitting.base(), moment)
        .of(step.repair())
        .ifPresent(words -> blocks.add(blocks.size() - 1, Block.paragraph(words)));
    sitting.screen(blocks);
    done.ask(step.repair());
  }

  /** Why somebody could not do it before; it is proposed again to whoever comes anew. */
  private static Optional<String> refusedBefore(Repair repair, Moment moment) {
    return Optional.ofNullable(CouldNotBeDone.of(moment.entries()).get(repair.id()))
        .map(
            e ->
                Wording.capital(Wording.aPerson(e.by()))
                    + " left it on "
                    + CallWords.when(e.at())
                    + ": it "
                    + ((Event.Repaired) e.event()).words()
                    + ".");
  }

  /** Has the gate tried after a repair, and says what a failed try tells. */
  public void retest() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Retest"));
    yetToSet().ifPresent(blocks::add);
    blocks.add(
        Block.paragraph(
            "Give a command and watch a whole run in both directions. Does the gate run as it "
                + "should?"));
    retest.ask(blocks, "");
    List<Trail.Move> moves = sitting.moment().trail().moves();
    boolean failed = !sitting.moment().state().work().cured();
    if (failed && !sitting.moment().state().work().retestDue() && !moves.isEmpty()) {
      sitting.say(
          "Not fixed, which helps the search too: "
              + sitting.movements().movement(moves.get(moves.size() - 1), sitting.moment()));
    }
  }

  private String whyNot(Repair repair) {
    if (!sitting.moment().state().role().may(repair.who())) {
      return " (by " + Wording.aPerson(repair.who()) + ")";
    }
    return sitting.moment().state().work().declined().containsKey(repair.id())
        ? " (it could not be done before)"
        : "";
  }

  /**
   * Warns of what has to be set before the gate is tried and is not set yet, because the gate may
   * strike.
   */
  private Optional<Block> yetToSet() {
    String names =
        Settings.due(sitting.moment().judgement(), sitting.base()).stream()
            .map(r -> r.name().toLowerCase(Locale.ROOT) + whyNot(r))
            .distinct()
            .collect(Collectors.joining("; "));
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Block.signal(
                SignalWord.WARNING,
                "Still to do: "
                    + names
                    + ". Until then the leaf might not stop or reverse where it should. Run it with a"
                    + " hand on the stop button and stop it before it touches anything; where it stops"
                    + " does not count yet."));
  }
}
