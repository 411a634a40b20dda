package yett.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;

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
    Map<Role, List<String>> now,
    Optional<String> leaves,
    Optional<Role> goesOn,
    boolean inquiry,
    String source)
    implements Card {

  /** What this person does now, in order: the words for the nearest role that has some. */
  public List<String> now(Role role) {
    for (int i = role.ordinal(); i >= 0; i--) {
      List<String> steps = now.get(Role.values()[i]);
      if (steps != null) {
        return steps;
      }
    }
    return now.values().iterator().next();
  }
}
