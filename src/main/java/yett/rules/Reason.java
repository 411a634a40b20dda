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
 * @param site ids of the site questions whose answers it goes by, in order
 */
public record Reason(String rule, String because, String source, List<String> site) {
  public Reason {
    site = List.copyOf(site);
  }

  /** One that goes by nothing of how the gate is installed. */
  public Reason(String rule, String because, String source) {
    this(rule, because, source, List.of());
  }

  /**
   * The reason that the running rule carries; in a rule's consequence write {@code
   * because(drools)}.
   */
  public static Reason because(Object drools) {
    return because(drools, "");
  }

  /** The rule's own reason, preceded by particulars of this case. */
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

  /** Compiled rules keep an annotation's text with the quotes around it. */
  private static String unquoted(Object annotation) {
    return String.valueOf(annotation).replaceFirst("^\"(.*)\"$", "$1");
  }

  /** The reason as one sentence without a full stop. */
  public String words() {
    return because + " (" + source + ")";
  }
}
