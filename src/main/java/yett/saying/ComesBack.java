package yett.saying;

import java.util.regex.Pattern;

/**
 * A gate that was closing and turns back "on its own" does what it does when something is in its
 * way; to a model of meanings that is a gate that moves by itself. The words for "on its own" are
 * left out then.
 */
final class ComesBack {
  private static final String ALONE =
      "(?:all )?(?:on its own|by (?:itself|its ?self)|of its own accord|itself)";

  /** Only what was moving can do this. */
  private static final String BACK =
      "(?:(?:com|go|turn|bounc|spring)(?:es?|s|ing)?|came|went|sprang) (?:right |straight |all the"
          + " way )?(?:back|round|around)(?: (?:open|again|to open))?|revers(?:es?|ed|ing)";

  private static final String OPENS = "(?:re)?opens?(?: up| back up)? again|reopens|opens back up";

  private static final String CLOSES = "(?:clos(?:es?|ed|ing)|shut(?:s|ting)?)\\b.{0,40}";

  private static final Pattern TURNS =
      Pattern.compile(
          "(?i)\\b(?:(?:"
              + BACK
              + ")|"
              + CLOSES
              + "\\b(?:"
              + OPENS
              + ")) (?<alone>"
              + ALONE
              + ")\\b");

  /** Then it may start from rest. */
  private static final Pattern FROM_REST =
      Pattern.compile(
          "(?i)\\b(?:nobody|no one|night|random(?:ly)?|whenever|all day|keeps?|hours?|minutes?|later"
              + "|suddenly|power|release[ds]?|let go|hill|slope|uphill|downhill)\\b"
              + "|\\b(?:starts?|started)\\b(?! to (?:close|shut)\\b)");

  private ComesBack() {}

  /** What was said without the words for "on its own", if it is a gate that turns back. */
  static String told(String said) {
    var turns = TURNS.matcher(said);
    return turns.find() && !FROM_REST.matcher(said).find()
        ? (said.substring(0, turns.start("alone")) + said.substring(turns.end("alone")))
            .replaceAll("\\s+", " ")
            .strip()
        : said;
  }
}
