package yett.interview.danger;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import yett.interview.moment.Present;
import yett.knowledge.Check;
import yett.knowledge.Spoken;

/**
 * Finds what an answer about dangers already says about the complaints, so that it is not asked
 * again.
 */
public final class SaidBefore {
  private final Present present;

  /** What the dangers of this case say already. */
  public SaidBefore(Present present) {
    this.present = present;
  }

  /**
   * Complaints whose cards refer to a danger that was reported. On the telephone only the caller's
   * own words count, because they are read back.
   */
  public List<Check> complaints() {
    Spoken spoken = present.base().telephone().spoken();
    return present.isCall()
        ? List.of()
        : present.base().complaints().stream()
            .filter(c -> !present.unavailable().contains(c.id()))
            .filter(c -> isToldOf(spoken.dangers("complaint", c.id())))
            .toList();
  }

  private boolean isToldOf(Map<String, String> dangers) {
    return Stream.concat(present.state().answers().stream(), present.state().before().stream())
        .anyMatch(a -> dangers.containsKey(a.check()) && a.answer().is(dangers.get(a.check())));
  }
}
