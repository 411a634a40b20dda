package yett.shell;

import yett.knowledge.Check;

/** Words for what cards hold as ids. */
final class Wordings {
  private Wordings() {}

  /** An outcome in words: its text, or for a band its name, because its text is a range. */
  static String meaning(Check check, String outcome) {
    int index = check.indexOf(outcome);
    return check.measured() || index < 0
        ? outcome.replace('-', ' ')
        : check.outcomes().get(index).text();
  }
}
