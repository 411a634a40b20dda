package yett.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A danger to people, which comes before all other work; rules raise it and lift it.
 *
 * @param now what each kind of person does at once, in order
 * @param leaves set-up in which the gate stands when somebody who may enter it has done that; empty
 *     if the card does not say
 * @param goesOn the least qualified person who then goes on with what may be done in that state;
 *     empty if the case is handed over, whoever is there
 * @param inquiry whether somebody else looks into what happened: the case stays open for them
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

  /**
   * What another danger may rule out: moving, unlocking or releasing the leaf by hand, to free
   * somebody whom it caught or for any other reason, staying at the gate, switching it off, closing
   * the road to it, looking on for the fault with the caller.
   */
  public static final List<String> DEEDS =
      List.of("free-by-hand", "by-hand", "stay", "switch", "close-road", "look-on");

  /**
   * Something to do now.
   *
   * @param deed of {@link #DEEDS}; empty where no other danger rules it out
   */
  public record Line(String text, Optional<String> deed) {}

  /** What this person does now, in order, if there is no other danger. */
  public List<String> now(Role role) {
    return now(role, Set.of());
  }

  /**
   * What this person does now, in order: the words for the nearest role that has some.
   *
   * @param withheld deeds that another danger rules out
   */
  public List<String> now(Role role, Set<String> withheld) {
    return lines(role).stream()
        .filter(l -> l.deed().filter(withheld::contains).isEmpty())
        .map(Line::text)
        .toList();
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
