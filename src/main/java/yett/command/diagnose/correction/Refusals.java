package yett.command.diagnose.correction;

import java.util.List;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Event;
import yett.wording.Wording;

/** The repairs that could not be done, each of which can be proposed again. */
record Refusals(Sitting sitting) {
  List<Corrections.Said> all() {
    return sitting.moment().state().work().declined().entrySet().stream()
        .map(
            e -> {
              String name = new Wording(sitting.base()).repair(e.getKey());
              String why = e.getValue().why().isEmpty() ? "" : ": " + e.getValue().why();
              return new Corrections.Said(
                  e.getKey(),
                  name + " (could not be done" + why + ")",
                  () -> ask(name, e.getValue().event()));
            })
        .toList();
  }

  private void ask(String name, long refusal) {
    if (sitting.yes("Can \"" + name + "\" be done now? yes, or no")) {
      sitting.record(new Event.Retracted(refusal));
      sitting.say("It is proposed again when it is worth its cost.");
    }
  }
}
