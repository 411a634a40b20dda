package yett.knowledge;

import java.util.Map;

/** Something that happened lately and multiplies the odds of causes. */
public record History(String id, String name, Map<String, Double> odds, String source)
    implements Card {}
