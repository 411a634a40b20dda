package yett.knowledge;

import java.util.List;
import java.util.Map;

/** A condition that ends the interview in favour of people's safety; rules raise it. */
public record Stop(String id, String name, Map<Role, List<String>> now, String source)
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
