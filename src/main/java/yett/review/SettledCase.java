package yett.review;

import java.util.Map;
import java.util.Set;

/**
 * A case of which it is known what was wrong.
 *
 * @param causes what was wrong
 * @param seen check or complaint to the position of the outcome that it showed as the gate was
 *     found
 * @param share for each cause that can be at this gate, how often the cards let it arise by itself
 *     at a gate so reported, before anything is asked
 */
public record SettledCase(
    Set<String> causes, Map<String, Integer> seen, Map<String, Double> share) {}
