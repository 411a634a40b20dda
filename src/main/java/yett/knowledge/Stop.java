package yett.knowledge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A danger to people that comes before all other work; rules raise and lift it.
 *
 * @param now by role, what to do at once, in order
 * @param leaves set-up of the gate after somebody who may enter it has done that; empty if the card
 *     does not say
 * @param goesOn the least qualified person who may then continue with work that this set-up allows;
 *     empty if the case is always handed over
 * @param inquiry whether somebody else investigates; the case stays open for them
 */
public record Stop(
    String id,
    String name,
    Map<Role, List<Line>> now,
    Optional<String> leaves,
    Optional<Role> goesOn,
    boolean inquiry,
    String source)
    implements Card {

  /** The deed of giving the gate its power back. */
  public static final String POWER = "power";

  /**
   * The deeds that another danger may rule out: moving, unlocking or releasing the leaf by hand, to
   * free somebody whom it caught or for any other reason; staying at the gate; pressing or
   * switching something where it is safe to go; switching it off, or giving it its power back;
   * closing the road to it; going on to look for the fault with the caller; calling for help.
   */
  public static final List<String> DEEDS =
      List.of(
          "free-by-hand",
          "by-hand",
          "stay",
          "press",
          "switch",
          POWER,
          "close-road",
          "look-on",
          "call");

  /**
   * What rules withhold from a caller who is to do nothing at the gate: all of {@link #HANDS_ON}.
   */
  public static final String HANDS = "hands";

  /** All that rules may withhold. */
  public static final List<String> WITHHELD =
      Stream.concat(DEEDS.stream(), Stream.of(HANDS)).toList();

  private static final Set<String> HANDS_ON =
      Set.of("free-by-hand", "by-hand", "stay", "press", "switch", POWER, "close-road", "look-on");

  /**
   * One thing to do at once.
   *
   * @param deed one of {@link #DEEDS}; empty if no other danger rules it out
   */
  public record Line(String text, Optional<String> deed) {
    private boolean switchesOff() {
      return deed.equals(Optional.of("switch"));
    }
  }

  /** What this role does at once, in order, if there is no other danger. */
  public List<String> now(Role role) {
    return now(role, Set.of());
  }

  /**
   * What this role does at once, in order; if its card has nothing for the role, the text for the
   * nearest role.
   *
   * @param withheld deeds that another danger rules out
   */
  public List<String> now(Role role, Set<String> withheld) {
    return said(role, withheld).stream().map(Line::text).toList();
  }

  /**
   * What this role does at once about several dangers, in one list: each line once, and one to
   * switch the gate off, the one that says most about how.
   *
   * @param stops the gravest first
   */
  public static List<String> now(List<Stop> stops, Role role, Set<String> withheld) {
    List<Line> all =
        stops.stream().flatMap(s -> s.said(role, withheld).stream()).distinct().toList();
    Optional<Line> off =
        all.stream()
            .filter(Line::switchesOff)
            .max(Comparator.comparingInt((Line l) -> l.text().length()));
    List<String> now = new ArrayList<>();
    for (Line line : all) {
      String text = line.switchesOff() ? off.orElse(line).text() : line.text();
      if (!now.contains(text)) {
        now.add(text);
      }
    }
    return List.copyOf(now);
  }

  private List<Line> said(Role role, Set<String> withheld) {
    Set<String> not = new HashSet<>(withheld);
    if (role == Role.CALLER && withheld.contains(HANDS)) {
      not.addAll(HANDS_ON);
    }
    return lines(role).stream().filter(l -> l.deed().filter(not::contains).isEmpty()).toList();
  }

  private List<Line> lines(Role role) {
    for (int i = role.ordinal(); i >= 0; i--) {
      List<Line> lines = now.get(Role.values()[i]);
      if (lines != null) {
        return lines;
      }
    }
    return now.values().iterator().next();
  }
}
