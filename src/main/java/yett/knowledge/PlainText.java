package yett.knowledge;

import java.util.List;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import yett.knowledge.CardFile.Document;

/**
 * Refuses hidden characters in cards. Cards are shown on terminals and printed; a text that moves
 * the cursor or reverses the direction of writing would show something else than it says.
 */
public final class PlainText {
  /**
   * Control characters except line end and tab; marks of direction; separators that some programs
   * take as line ends.
   */
  private static final Pattern UNSEEN =
      Pattern.compile("[\\p{Cc}&&[^\\n\\t]]|[\\u202a-\\u202e\\u2066-\\u2069\\u2028\\u2029]");

  private PlainText() {}

  /** Reports each text and name with a hidden character. */
  public static void check(Document document, List<Problem> problems) {
    look(document, "", document.root(), problems);
  }

  private static void look(
      Document document, String pointer, JsonNode node, List<Problem> problems) {
    if (node.isString() && UNSEEN.matcher(node.stringValue()).find()) {
      problem(document, pointer, problems);
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      look(document, pointer + "/" + i, node.get(i), problems);
    }
    if (node.isObject()) {
      node.properties()
          .forEach(
              e -> {
                if (UNSEEN.matcher(e.getKey()).find()) {
                  problem(document, pointer, problems);
                }
                look(document, pointer + "/" + e.getKey(), e.getValue(), problems);
              });
    }
  }

  private static void problem(Document document, String pointer, List<Problem> problems) {
    problems.add(
        new Problem(
            "unseen-character",
            document.file(),
            document.line(pointer),
            document.column(pointer),
            "there is an invisible character here: a control character or a direction mark",
            "Delete it, or retype the text."));
  }
}
