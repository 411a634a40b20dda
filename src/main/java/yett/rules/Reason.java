package yett.rules;

import java.util.Map;
import org.kie.api.runtime.rule.RuleContext;

/**
 * Why a rule concluded something, in words.
 *
 * @param rule name of the rule
 * @param because the rule's {@code @Because}
 * @param source the rule's {@code @Source}
 */
public record Reason(String rule, String because, String source) {

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
            + Origins.of((RuleContext) drools));
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
