package yett.knowledge;

import java.util.List;
import java.util.Map;

/**
 * What the cards hold for a call, besides the checks that a caller may make.
 *
 * @param spoken how people say things
 * @param pressing what makes a visit urgent, in the order of asking
 * @param watch repair to what its user watches for afterwards
 * @param untilThen complaint to how the gate is left until somebody comes
 * @param desk stop to what the desk does while the caller does what they are told
 * @param cautions caution to the same in everyday words; empty if it has none
 */
public record Telephone(
    Spoken spoken,
    Map<String, Pressing> pressing,
    Map<String, List<String>> watch,
    Map<String, List<String>> untilThen,
    Map<String, List<String>> desk,
    Map<String, String> cautions) {

  /** Nothing at all. */
  public static final Telephone NONE =
      new Telephone(Spoken.NONE, Map.of(), Map.of(), Map.of(), Map.of(), Map.of());

  /** The question whose first outcome says that the gate works again, which ends a call. */
  public static final String WORKS_AGAIN = "as-usual-again";

  public static boolean tellsItWorksAgain(Check check, String outcome) {
    return check.id().equals(WORKS_AGAIN) && outcome.equals(check.outcomes().get(0).id());
  }

  /**
   * What is asked of how soon somebody has to come.
   *
   * @param complaints ids of the complaints
   */
  public List<Pressing> pressing(List<String> complaints) {
    return pressing.values().stream()
        .filter(p -> p.ifSaid().isEmpty() || p.ifSaid().stream().anyMatch(complaints::contains))
        .toList();
  }
}
