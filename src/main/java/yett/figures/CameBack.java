package yett.figures;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import yett.figures.CaseFigures.Repeat;

/**
 * Finds faults that came back: the same cause at the same gate within {@link CaseFigures#WATCHED}
 * of the repair.
 */
final class CameBack {
  private CameBack() {}

  static boolean of(PastCase cured, List<PastCase> cases) {
    return cases.stream().anyMatch(c -> followed(cured, c));
  }

  private static boolean followed(PastCase first, PastCase later) {
    return first.cured()
        && !first.cause().isEmpty()
        && later.cause().equals(first.cause())
        && later.site().equals(first.site())
        && later.opened().isAfter(first.opened())
        && !later.opened().isAfter(first.opened().plus(CaseFigures.WATCHED));
  }

  static List<Repeat> all(List<PastCase> cases) {
    return cases.stream()
        .filter(c -> cases.stream().anyMatch(o -> followed(c, o) || followed(o, c)))
        .collect(Collectors.groupingBy(c -> List.of(c.site(), c.cause())))
        .entrySet()
        .stream()
        .map(
            e ->
                new Repeat(
                    e.getKey().get(0),
                    e.getKey().get(1),
                    e.getValue().stream().sorted(Comparator.comparing(PastCase::opened)).toList()))
        .sorted(
            Comparator.comparing((Repeat r) -> -r.cases().size())
                .thenComparing(Repeat::site)
                .thenComparing(Repeat::cause))
        .toList();
  }
}
