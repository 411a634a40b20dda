package yett.command.diagnose;

import java.util.List;
import yett.interview.Event;
import yett.interview.SomeSteps;
import yett.interview.Step;
import yett.knowledge.Caution;

/**
 * The cautions that somebody has read, because they did what their screen asked for. Whoever types
 * another word there, such as back, may not have read them.
 *
 * @param events what they entered at the step
 */
record Heeded(List<Event> events) implements SomeSteps<List<Caution>> {

  static List<Caution> of(Step step, Event... events) {
    return step.accept(new Heeded(List.of(events)));
  }

  @Override
  public List<Caution> ask(Step.Ask step) {
    boolean answered =
        events.stream()
            .anyMatch(e -> e instanceof Event.Answered a && a.check().equals(step.check().id()));
    return answered ? step.cautions() : List.of();
  }

  /** Of the looks that were answered, because each may come by itself with its own cautions. */
  @Override
  public List<Caution> lookRound(Step.LookRound step) {
    return step.looks().stream().flatMap(look -> ask(look).stream()).distinct().toList();
  }

  @Override
  public List<Caution> enter(Step.Enter step) {
    return events.contains(step.done()) ? step.cautions() : List.of();
  }

  @Override
  public List<Caution> mend(Step.Mend step) {
    boolean answered =
        events.stream()
            .anyMatch(e -> e instanceof Event.Repaired r && r.repair().equals(step.repair().id()));
    return answered ? step.cautions() : List.of();
  }

  @Override
  public List<Caution> other(Step step) {
    return List.of();
  }
}
