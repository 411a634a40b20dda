package yett.knowledge;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Dangerous work of which the steps of a repair may speak. Set-ups and hazards are fields of their
 * own, and nothing but the words of a step says that one was forgotten. The words are looked for,
 * not understood: work that is put differently is not found.
 */
public enum SpokenWork {
  /** The gate is run, or unlocked for it. */
  RUNNING(
      "running the gate",
      "(run|start|drive|operate|command) (the |it\\b|one\\b)|(one|two|five|ten|a few) runs?\\b"
          + "|unlock\\b|(peak|running) current|current of the (gate|motor)"
          + "|(while|as|when) (it|the gate|the leaf) (runs|moves)|try (it|the gate)\\b"
          + "|(?<=, )try$|(?<!\\w )try$"),
  /** The cover is taken off, or somebody reaches inside. */
  OPEN_OPERATOR(
      "an open operator",
      "(cover|lid|housing) (off|open)\\b|take (off )?the (cover|lid|housing)\\b"
          + "|open the (cover|operator|cabinet|housing|drive)\\b"
          + "|(inside|into) the (operator|cabinet|housing|drive)\\b|reach(es)? (in|into)\\b"),
  /** Hands are at what draws fingers in. */
  CHAIN_AND_SPROCKET(
      "chain, sprocket or rollers",
      "(chain|sprockets?|idlers?|pinion|gear ?wheels?|(?<!guide )rollers?(?! stand))\\b"),
  /** Hands are at conductors. */
  TERMINALS("terminals or bare conductors", "(terminals?|lugs?|conductors?|fuses?|bare wires?)\\b"),
  /** The leaf is on a jack, or is without something that carries it. */
  RAISED_LEAF(
      "a raised leaf",
      "jack(s|ed|ing)?\\b(?! socket)|(lift|raise|hoist) (up )?the (leaf|gate)\\b|(take|lift) (the |a )?(wheel|roller|carriage)s? out\\b"),
  /** A battery is moved, or a lead is taken off it. */
  BATTERY(
      "handling a battery",
      "(charge|refit|swap|renew|replace|lift|disconnect|reconnect|unplug) (it|the|a|each|both)"
          + " (lithium )?(batter(y|ies)|packs?|blocks?)\\b|minus lead\\b");

  /** What comes later in a sentence is done after the repair, in another state of the work. */
  private static final Pattern LATER =
      Pattern.compile(
          "\\b(once (the (power|lock-off)|it is back)|when the power|(on|at) the first"
              + " (runs?|starts?)|before (the|it|you)|after (the|it|each)|until|afterwards"
              + "|with the power on|if it|so that|as the|see that|look (for|at)|the next)\\b",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern NOT_DONE =
      Pattern.compile(
          "\\b(never|(do|does|must|may) not|nobody|nothing|without|instead of|away from|clear of"
              + "|rather than)\\b",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern LEFT_ALONE =
      Pattern.compile("\\bleave (it|them|that)\\b", Pattern.CASE_INSENSITIVE);

  private final String words;
  private final Pattern pattern;

  SpokenWork(String words, String pattern) {
    this.words = words;
    this.pattern = Pattern.compile("\\b(" + pattern + ")", Pattern.CASE_INSENSITIVE);
  }

  /** What it is, to follow "speaks of". */
  public String words() {
    return words;
  }

  /** The words of a step that speak of doing this now; empty if none do. */
  public Optional<String> in(String step) {
    return Arrays.stream(step.split("(?<=\\.)\\s"))
        .filter(sentence -> !LEFT_ALONE.matcher(sentence).find())
        .flatMap(sentence -> Arrays.stream(sentence.split("[.;:](\\s|$)")))
        .map(clause -> before(NOT_DONE, before(LATER, clause)))
        .map(pattern::matcher)
        .filter(Matcher::find)
        .map(Matcher::group)
        .findFirst();
  }

  private static String before(Pattern pattern, String clause) {
    Matcher matcher = pattern.matcher(clause);
    return matcher.find() ? clause.substring(0, matcher.start()) : clause;
  }
}
