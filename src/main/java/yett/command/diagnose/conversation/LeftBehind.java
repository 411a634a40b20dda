package yett.command.diagnose.conversation;

import java.util.Optional;
import java.util.Set;
import yett.command.diagnose.screen.StillInForce;
import yett.console.Block;
import yett.console.SignalWord;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;

/** What is said about the gate when somebody leaves a case in the middle of the work. */
record LeftBehind(RuleBase base) {
  /** Empty where nobody has worked on the gate, or where it stays out of use. */
  Optional<Block> of(Moment moment) {
    Set<String> inForce = moment.state().work().setUps();
    boolean worked =
        moment.entries().stream()
            .map(Entry::event)
            .anyMatch(e -> e instanceof Event.SetUpEntered || e instanceof Event.Repaired);
    if (moment.state().role() == Role.CALLER
        || moment.state().closed().isPresent()
        || inForce.contains(SetUp.OUT_OF_USE)
        || inForce.isEmpty() && !worked) {
      return Optional.empty();
    }
    return Optional.of(
        Block.signal(
            SignalWord.WARNING,
            "The gate is left "
                + (inForce.isEmpty()
                    ? "with its power on"
                    : "like this: " + StillInForce.names(base, inForce))
                + ". It is not proved, so nobody runs it until it is. If nobody stays with it, resume the"
                + " case and type hand over: that leads through locking it off and barring it."));
  }
}
