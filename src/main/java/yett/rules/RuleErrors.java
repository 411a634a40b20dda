package yett.rules;

import java.util.List;

/** Rules that cannot be compiled. */
public final class RuleErrors extends RuntimeException {
  RuleErrors(List<String> errors) {
    super("the rules cannot be compiled:\n" + String.join("\n", errors));
  }
}
