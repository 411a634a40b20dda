package yett.knowledge;

import java.util.Map;

/**
 * A state of the machine between causes and what people see, such as "the drive needs more force".
 * Causes lead to it, one effect may lead to another, and complaints, looks and measurements show
 * it. It is never the result of a case: it has no prior and no repair, and is present only if
 * something leads to it.
 *
 * @param shows by check, the chance of each outcome when this effect alone is present; each row
 *     adds up to 1
 * @param leadsTo other effects that this one makes present, each with its chance (noisy-OR)
 */
public record Effect(
    String id,
    String name,
    String area,
    Map<String, double[]> shows,
    Map<String, Double> leadsTo,
    String source)
    implements Card {}
