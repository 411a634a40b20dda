package yett.knowledge;

import java.util.Collection;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds repairs for a caller whose steps speak of work that no caller may do. They are read out on
 * the telephone to somebody who has no tools, no lock and nobody beside them.
 */
final class CallersSteps {
  private CallersSteps() {}

  static void check(Collection<Repair> repairs, RuleBaseReader.Places places) {
    repairs.stream()
        .filter(r -> r.who() == Role.CALLER)
        .forEach(
            r ->
                r.steps().stream()
                    .flatMap(CallersSteps::wrong)
                    .limit(1)
                    .forEach(
                        wrong ->
                            places
                                .of("repair", r.id())
                                .problem(
                                    "steps",
                                    "not-for-a-caller",
                                    "a caller may do this repair, and a step of it speaks of "
                                        + wrong,
                                    "Reserve the card for a technician, with the set-ups and hazards of the"
                                        + " work.")));
  }

  private static Stream<String> wrong(String step) {
    return Stream.of(
            SpokenWork.OPEN_OPERATOR,
            SpokenWork.CHAIN_AND_SPROCKET,
            SpokenWork.TERMINALS,
            SpokenWork.RAISED_LEAF,
            SpokenWork.BATTERY)
        .map(work -> work.in(step).map(said -> work.words() + ": \"" + said + "\""))
        .flatMap(Optional::stream);
  }
}
