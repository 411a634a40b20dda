package yett.interview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.calculation.ForcePoint;
import yett.calculation.ObstructionForce.Verdict;

/** The forces of the leaf on an obstruction that were measured since the last repair, by point. */
public final class Forces {
  /** The proofs in which the leaf runs into something. */
  public static final Set<String> PROOFS = Set.of("reversal-closing", "reversal-opening");

  private final List<Event.ForceTaken> taken;

  private Forces(List<Event.ForceTaken> taken) {
    this.taken = taken;
  }

  public static Forces of(List<Entry> entries) {
    List<Entry> valid = Entry.valid(entries);
    long repaired =
        valid.stream()
            .filter(e -> e.event() instanceof Event.Repaired)
            .mapToLong(Entry::number)
            .max()
            .orElse(0);
    return new Forces(
        valid.stream()
            .filter(e -> e.number() > repaired && e.event() instanceof Event.ForceTaken)
            .map(e -> (Event.ForceTaken) e.event())
            .toList());
  }

  public boolean isEmpty() {
    return taken.isEmpty();
  }

  /** A point of a proof with the forces measured there. */
  public record Point(String proof, Event.Height height, ForcePoint force) {}

  /** The points in order of proof, gap and height. */
  public List<Point> points() {
    Map<List<Object>, List<Event.ForceTaken>> byPoint = new LinkedHashMap<>();
    taken.stream()
        .sorted(
            Comparator.comparing(Event.ForceTaken::proof)
                .thenComparing(Event.ForceTaken::gap)
                .thenComparing(Event.ForceTaken::height))
        .forEach(
            t ->
                byPoint
                    .computeIfAbsent(
                        List.of(t.proof(), t.gap(), t.height()), p -> new ArrayList<>())
                    .add(t));
    return byPoint.values().stream().map(Forces::point).toList();
  }

  private static Point point(List<Event.ForceTaken> all) {
    Event.ForceTaken first = all.get(0);
    return new Point(
        first.proof(),
        first.height(),
        new ForcePoint(
            first.gap(),
            all.size(),
            all.stream().mapToDouble(Event.ForceTaken::peak).average().orElse(0),
            all.stream().mapToDouble(Event.ForceTaken::above).average().orElse(0),
            all.stream().flatMap(t -> t.left().stream()).max(Comparator.naturalOrder())));
  }

  public List<Point> points(String proof) {
    return points().stream().filter(p -> p.proof().equals(proof)).toList();
  }

  /** Whether a proof cannot pass because one of its points is over a limit. */
  public boolean forbid(String proof) {
    return points(proof).stream().anyMatch(p -> p.force().verdict() == Verdict.MISSED);
  }

  /** The recorded curve with the greatest force. */
  public Optional<Event.ForceTaken> worstCurve() {
    return taken.stream()
        .filter(t -> !t.curve().isEmpty())
        .max(Comparator.comparingDouble(Event.ForceTaken::peak));
  }
}
