package yett.interview;

import java.util.Comparator;
import java.util.List;
import yett.knowledge.Stop;
import yett.rules.Conclusion.StopNow;

/** A danger to people: what is dealt with first, and how the case ends. */
final class StopSteps {
  private final Present present;

  StopSteps(Present present) {
    this.present = present;
  }

  Step step() {
    return inOrder().stream()
        .filter(now -> !present.state.madeSafe().contains(now.stop()))
        .findFirst()
        .map(this::makeSafe)
        .orElseGet(this::handOver);
  }

  private Step makeSafe(StopNow now) {
    Stop stop = present.base.stops().get(now.stop());
    return new Step.MakeSafe(stop, stop.now(present.role()), now.reason().because());
  }

  private Step handOver() {
    List<Stop> stops =
        present.judgement.stops().stream()
            .map(s -> present.base.stops().get(s.stop()))
            .distinct()
            .toList();
    return new Step.HandOver(Ending.MADE_SAFE, new HandOverReason.Stopped(stops));
  }

  /** In the order of the cards: people first. */
  private List<StopNow> inOrder() {
    List<String> order = List.copyOf(present.base.stops().keySet());
    return present.judgement.stops().stream()
        .sorted(Comparator.comparingInt(s -> order.indexOf(s.stop())))
        .toList();
  }
}
