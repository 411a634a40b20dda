package yett.rules;

import java.util.List;
import java.util.Map;
import org.kie.api.runtime.rule.RuleContext;

/**
 * Why a rule concluded something, in words.
 *
 * @param rule name of the rule
 * @param because the rule's {@code @Because}
 * @param source the rule's {@code @Source}
 * @param site ids of the site questions on whose answers it depends, in order
 */
public record Reason(String rule, String because, String source, List<String> site) {
  public Reason {
    site = List.copyOf(site);
  }

  /** A reason that does not depend on how the gate is installed. */
  public Reason(String rule, String because, String source) {
    this(rule, because, source, List.of());
  }

  /** The reason of the running rule; in a rule's consequence write {@code because(drools)}. */
  public static Reason because(Object drools) {
    return because(drools, "");
  }

  /** The reason of the running rule, preceded by particulars of this case. */
  public static Reason because(Object drools, String particulars) {
    var rule = ((RuleContext) drools).getRule();
    Map<String, Object> meta = rule.getMetaData();
    String because = unquoted(meta.getOrDefault("Because", rule.getName()));
    return new Reason(
        rule.getName(),
        particulars.isEmpty() ? because : particulars + "; " + because,
        unquoted(meta.getOrDefault("Source", "considered judgement"))
            + Origins.of((RuleContext) drools),
        site((RuleContext) drools));
  }

  private static List<String> site(RuleContext running) {
    return running.getMatch().getObjects().stream()
        .filter(Fact.Site.class::isInstance)
        .map(fact -> ((Fact.Site) fact).question())
        .sorted()
        .distinct()
        .toList();
  }

  /** Removes the quotes that compiled rules keep around an annotation's text. */
  private static String unquoted(Object annotation) {
    return String.valueOf(annotation).replaceFirst("^\"(.*)\"$", "$1");
  }

  /** The reason as one sentence without a full stop. */
  public String words() {
    return because + " (" + source + ")";
  }
}
