package yett.review;

import java.util.Map;
import java.util.Set;

/**
 * A case in which it is known what was wrong.
 *
 * @param causes the causes
 * @param seen check or complaint to the position of the outcome that it showed as the gate was
 *     found
 * @param share for each cause that is possible at this gate, how often, by the cards, it arises by
 *     itself at a gate with this report, before anything is asked
 */
public record SettledCase(
    Set<String> causes, Map<String, Integer> seen, Map<String, Double> share) {}
