package yett.interview.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import yett.calculation.ForcePoint;
import yett.calculation.ObstructionForce.Verdict;
import yett.interview.event.Entry;
import yett.interview.event.Event;

/**
 * The forces of the leaf on an obstruction that were measured since the last repair, by point, and
 * those of before that were over a limit.
 */
public final class Forces {
  /** The proofs in which the leaf runs into something. */
  public static final Set<String> PROOFS = Set.of("reversal-closing", "reversal-opening");

  /** How many points have to be measured in a proof. */
  public static final int POINTS = Event.ForceTaken.GAPS.size() * Event.Height.values().length;

  /** Measurements between two repairs, oldest first; the last list is of what counts now. */
  private final List<List<Event.ForceTaken>> spells;

  private Forces(List<List<Event.ForceTaken>> spells) {
    this.spells = spells;
  }

  public static Forces of(List<Entry> entries) {
    List<List<Event.ForceTaken>> spells = new ArrayList<>();
    spells.add(new ArrayList<>());
    for (Entry entry : Entry.valid(entries)) {
      if (entry.event() instanceof Event.Repaired r && r.done()) {
        spells.add(new ArrayList<>());
      } else if (entry.event() instanceof Event.ForceTaken taken) {
        spells.get(spells.size() - 1).add(taken);
      }
    }
    return new Forces(spells);
  }

  /** The measurements since the last repair. */
  public List<Event.ForceTaken> taken() {
    return spells.get(spells.size() - 1);
  }

  public boolean isEmpty() {
    return spells.stream().allMatch(List::isEmpty);
  }

  /** A point of a proof with the forces measured there. */
  public record Point(String proof, Event.Height height, ForcePoint force) {
    public boolean isAt(Point other) {
      return place().equals(other.place());
    }

    private List<Object> place() {
      return List.of(proof, force.gap(), height);
    }

    public boolean isOver() {
      return force.verdict() == Verdict.MISSED;
    }
  }

  /** The points measured since the last repair, in order of proof, gap and height. */
  public List<Point> points() {
    return points(taken());
  }

  public List<Point> points(String proof) {
    return points().stream().filter(p -> p.proof().equals(proof)).toList();
  }

  private static List<Point> points(List<Event.ForceTaken> taken) {
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

  /** The points that were over a limit before a repair, oldest first. */
  public List<Point> before() {
    return spells.subList(0, spells.size() - 1).stream()
        .flatMap(s -> points(s).stream())
        .filter(Point::isOver)
        .toList();
  }

  /**
   * The points of a proof that were over a limit before a repair and have not been measured again
   * as often as is needed: nobody knows yet whether the repair helped.
   */
  public List<Point> owed(String proof) {
    Map<String, Point> owed = new TreeMap<>();
    for (List<Event.ForceTaken> spell : spells) {
      for (Point point : points(spell)) {
        if (point.isOver()) {
          owed.put(point.place().toString(), point);
        } else if (point.force().verdict() == Verdict.MET) {
          owed.remove(point.place().toString());
        }
      }
    }
    return owed.values().stream()
        .filter(p -> p.proof().equals(proof))
        .filter(p -> points().stream().noneMatch(now -> now.isAt(p) && now.isOver()))
        .toList();
  }

  /** Whether a proof cannot pass because a point is over a limit, or was and is to be measured. */
  public boolean forbid(String proof) {
    return points(proof).stream().anyMatch(Point::isOver) || !owed(proof).isEmpty();
  }

  /** The recorded curve with the greatest force since the last repair. */
  public Optional<Event.ForceTaken> worstCurve() {
    return taken().stream()
        .filter(t -> !t.curve().isEmpty())
        .max(Comparator.comparingDouble(Event.ForceTaken::peak));
  }
}
