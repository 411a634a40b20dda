package yett.interview;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import yett.knowledge.Check;

/** What an answer about dangers says of the gate besides, so that nobody is asked it again. */
final class SaidBefore {
  private final Present present;

  SaidBefore(Present present) {
    this.present = present;
  }

  /**
   * Complaints that tell of a danger (their cards say of which) that was told of. On the telephone
   * it is the caller's own words that count: they are read back.
   */
  List<Check> complaints() {
    Map<String, Map<String, String>> dangers =
        present.base.telephone().spoken().tellsOf().getOrDefault("complaint", Map.of());
    return present.isCall()
        ? List.of()
        : present.base.complaints().stream()
            .filter(c -> !present.unavailable.contains(c.id()))
            .filter(c -> isToldOf(dangers.getOrDefault(c.id(), Map.of())))
            .toList();
  }

  private boolean isToldOf(Map<String, String> dangers) {
    return Stream.concat(present.state.answers().stream(), present.state.before().stream())
        .anyMatch(a -> dangers.containsKey(a.check()) && a.answer().is(dangers.get(a.check())));
  }
}
