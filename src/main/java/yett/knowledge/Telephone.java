package yett.knowledge;

import java.util.List;
import java.util.Map;

/**
 * The contents of cards that are used on a call, in addition to the checks that a caller may make.
 *
 * @param spoken the wordings that people use
 * @param pressing what makes a visit urgent, in the order of asking
 * @param watch repair to what its user should watch for afterwards
 * @param untilThen complaint to how the gate is left until somebody comes
 * @param lookFirst complaint to the check that a caller is asked first, because it tells how
 *     dangerous the gate is as it stands
 * @param lookNext check to the one that a caller is asked at once after any but its first outcome,
 *     such as which of several switches is pressed
 * @param desk stop to what the desk does while the caller makes the gate safe
 * @param cautions caution to its text in everyday words; missing if it has none
 * @param child danger to the question about it that a child is asked; missing if a child is not
 * @param dangers danger to how soon somebody has to be at the gate because of it; missing if that
 *     is at once
 */
public record Telephone(
    Spoken spoken,
    Map<String, Pressing> pressing,
    Map<String, List<String>> watch,
    Map<String, List<String>> untilThen,
    Map<String, String> lookFirst,
    Map<String, String> lookNext,
    Map<String, List<String>> desk,
    Map<String, String> cautions,
    Map<String, String> child,
    Map<String, Pressing.Urgency> dangers) {

  /** No contents. */
  public static final Telephone NONE =
      new Telephone(
          Spoken.NONE,
          Map.of(),
          Map.of(),
          Map.of(),
          Map.of(),
          Map.of(),
          Map.of(),
          Map.of(),
          Map.of(),
          Map.of());

  /**
   * The id of the question whose first outcome says that the gate works again, which ends a call.
   */
  public static final String WORKS_AGAIN = "as-usual-again";

  /** The id of the proof for which the gate is opened once and closed once. */
  public static final String USUAL_RUN = "usual-run";

  public static boolean tellsItWorksAgain(Check check, String outcome) {
    return check.id().equals(WORKS_AGAIN) && outcome.equals(check.outcomes().get(0).id());
  }

  /** How soon somebody has to be at the gate because of this danger. */
  public Pressing.Urgency urgency(String danger) {
    return dangers.getOrDefault(danger, Pressing.Urgency.AT_ONCE);
  }

  /**
   * The matters to ask about that may make a visit urgent.
   *
   * @param complaints ids of the complaints made; all matters count if nobody can say which
   */
  public List<Pressing> pressing(List<String> complaints) {
    return pressing.values().stream()
        .filter(
            p ->
                complaints.isEmpty()
                    || p.ifSaid().isEmpty()
                    || p.ifSaid().stream().anyMatch(complaints::contains))
        .toList();
  }
}
