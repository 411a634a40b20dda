package yett.rules;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.RuleContext;
import yett.knowledge.AddOn;
import yett.knowledge.RuleBase;

/**
 * Tells which add-on a rule comes from. It is shown with the rule's source and never written into
 * the rule's text.
 */
final class Origins {
  private static final String KEY = Origins.class.getName();
  private static final Pattern PACKAGE = Pattern.compile("(?m)^[ \\t]*package[ \\t]+([\\w.]+)");
  private static final Pattern RULE = Pattern.compile("(?m)^[ \\t]*rule[ \\t]+\"([^\"\n]+)\"");

  private Origins() {}

  /** Stores the origins of the rules in a session. */
  static void tell(RuleBase base, KieSession session) {
    Map<String, String> addOns = new HashMap<>();
    for (AddOn addOn : base.addOns()) {
      base.rules()
          .forEach(
              (file, text) -> {
                if (file.startsWith(addOn.folder())) {
                  Matcher named = PACKAGE.matcher(text);
                  String home = named.find() ? named.group(1) : "";
                  RULE.matcher(text)
                      .results()
                      .forEach(r -> addOns.put(key(home, r.group(1)), addOn.name()));
                }
              });
    }
    session.getEnvironment().set(KEY, addOns);
  }

  /** The origin of the running rule, to be appended to its source. */
  static String of(RuleContext context) {
    Rule rule = context.getRule();
    Object told = context.getKieRuntime().getEnvironment().get(KEY);
    Object addOn =
        told instanceof Map<?, ?> m ? m.get(key(rule.getPackageName(), rule.getName())) : null;
    return addOn == null ? "" : "; add-on " + addOn;
  }

  private static String key(String home, String rule) {
    return home + "/" + rule;
  }
}
