package yett.interview.watch;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import yett.interview.watch.PlainReading.Told;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/**
 * A second, simple reading of which reported dangers still stand, written down beside the rules:
 * who may say that a danger is over, and which proofs show it.
 */
record PlainDangers(RuleBase base, PlainReading plain) {
  /** Anybody can tell these: somebody is free, nobody is shut in or on the gate any more. */
  private static final Set<String> BY_ANYBODY =
      Set.of("danger-person", "danger-shut-in", "danger-riding");

  /** Felt only where power is on: mended by somebody, then looked at by an electrician. */
  private static final String SHOCK = "danger-shock";

  /** Proofs that show that what was reported does not happen any more; all of them. */
  private static final Map<String, Set<String>> PROVED_BY =
      Map.of(
          "moved-by-itself", Set.of("usual-run"),
          "closed-on", Set.of("reversal-closing", "reversal-opening"),
          "needs-help", Set.of("usual-run"),
          "no-help", Set.of("usual-run"));

  /** The latest report of each danger that stands. */
  List<Told> standing() {
    return base.ordinaryChecks()
        .filter(Check::danger)
        .flatMap(c -> c.outcomes().stream().skip(1).flatMap(o -> standing(c, o.id()).stream()))
        .toList();
  }

  private Optional<Told> standing(Check check, String outcome) {
    return plain.told.stream()
        .filter(t -> t.check().equals(check.id()) && t.answer().is(outcome))
        .reduce((a, b) -> b)
        .filter(t -> !isOver(t, check))
        .filter(t -> !isProved(t, outcome));
  }

  private boolean isOver(Told report, Check check) {
    String none = check.outcomes().get(0).id();
    Predicate<Told> ends =
        BY_ANYBODY.contains(check.id())
            ? t -> t.answer().choice().isPresent()
            : check.id().equals(SHOCK)
                ? t ->
                    t.answer().is(none) && t.by() == Role.ELECTRICIAN && t.epoch() > report.epoch()
                : t -> t.answer().is(none) && t.by().may(Role.TECHNICIAN);
    return after(report, check.id()).anyMatch(ends);
  }

  private boolean isProved(Told report, String outcome) {
    boolean byAnybody = BY_ANYBODY.contains(report.check());
    return PROVED_BY.containsKey(outcome)
        && PROVED_BY.get(outcome).stream()
            .allMatch(
                proof ->
                    after(report, proof)
                        .filter(t -> byAnybody || t.by().may(Role.TECHNICIAN))
                        .anyMatch(t -> t.answer().is(Check.PASS)));
  }

  private Stream<Told> after(Told report, String check) {
    return plain.told.stream().filter(t -> t.number() > report.number() && t.check().equals(check));
  }
}
