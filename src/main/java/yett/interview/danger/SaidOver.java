package yett.interview.danger;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * Dangers that a caller says are over. A "no" on the telephone ends a fire or a shock for nobody:
 * the danger stays in force until somebody who may say so has looked.
 */
public final class SaidOver {
  private SaidOver() {}

  /** The stops in force whose danger is answered with "none" now. */
  public static Set<String> stops(Moment moment, RuleBase base) {
    return moment.judgement().stops().stream()
        .filter(s -> !base.stops().get(s.stop()).inquiry())
        .filter(s -> isDenied(s.event(), moment.state(), base))
        .map(s -> s.stop())
        .collect(Collectors.toSet());
  }

  /** Whether dangers were reported in this case that are answered with "none" now. */
  public static boolean any(CaseState state, RuleBase base) {
    return told(state)
        .filter(a -> isDanger(a.check(), base))
        .anyMatch(a -> !isNone(a, base) && isDenied(a.event(), state, base));
  }

  private static boolean isDenied(long event, CaseState state, RuleBase base) {
    Optional<String> check =
        told(state).filter(a -> a.event() == event).map(CaseState.Answered::check).findFirst();
    return check
        .filter(c -> isDanger(c, base))
        .flatMap(state::latest)
        .filter(a -> a.event() != event && isNone(a, base))
        .isPresent();
  }

  private static Stream<CaseState.Answered> told(CaseState state) {
    return Stream.of(state.answers(), state.before()).flatMap(List::stream);
  }

  private static boolean isDanger(String check, RuleBase base) {
    return Optional.ofNullable(base.checks().get(check)).filter(Check::danger).isPresent();
  }

  private static boolean isNone(CaseState.Answered answer, RuleBase base) {
    return answer.answer().is(base.checks().get(answer.check()).outcomes().get(0).id());
  }
}
