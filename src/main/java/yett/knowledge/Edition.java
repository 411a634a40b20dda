package yett.knowledge;

import java.util.Iterator;
import java.util.List;
import java.util.regex.Pattern;
import yett.knowledge.CardFile.Document;

/**
 * Identifies a rule base by its own card, with the language of its texts.
 *
 * @param name for people; empty if no card gives it
 * @param version as its keeper counts; empty if no card gives it
 * @param language as in BCP 47, such as {@code de}; empty for the cards' own texts
 */
public record Edition(String name, String version, String language) {
  public static final Edition NONE = new Edition("", "", "");

  static final String KIND = "rule-base";
  private static final String FILE = KIND + ".yaml";
  private static final String VERSION = "version";
  private static final Pattern VERSION_LINE = Pattern.compile("(?m)^version:.*\\R?");
  private static final Pattern VERSIONS = Pattern.compile("[0-9A-Za-z][0-9A-Za-z._+-]{0,29}");

  /**
   * Removes the card with name and version from the cards and reads it; there may be one.
   *
   * @param language of the texts
   */
  static Edition take(List<Document> cards, String language, List<Problem> problems) {
    Edition edition = new Edition("", "", language);
    boolean said = false;
    for (Iterator<Document> all = cards.iterator(); all.hasNext(); ) {
      Document card = all.next();
      if (!Layers.kind(card).equals(KIND)) {
        continue;
      }
      all.remove();
      Fields fields = new Fields(card, "", card.root(), problems);
      fields.id(KIND);
      Edition own = new Edition(fields.text("name"), version(fields), language);
      fields.text("source", "");
      fields.finish();
      if (said) {
        fields.problem(
            KIND,
            "duplicate-id",
            "a rule base says once which it is",
            "Delete this card; an add-on has its version in " + AddOn.FILE + ".");
      } else {
        edition = own;
        said = true;
      }
    }
    return edition;
  }

  /** The version on a card; empty if there is none. */
  static String version(Fields fields) {
    if (!fields.has(VERSION)) {
      return "";
    }
    if (!fields.get(VERSION).isString() || !VERSIONS.matcher(fields.text(VERSION, "")).matches()) {
      fields.problem(
          VERSION,
          "not-text",
          Fields.shown(fields.get(VERSION)) + " cannot be a version",
          "Write figures, letters and points in quotes, such as \"1.10\"; without quotes 1.10 is the"
              + " number 1.1.");
      return "";
    }
    return fields.text(VERSION, "");
  }

  /** The text of a file without the version of the rule base or add-on, if it is there. */
  static String unversioned(String file, String text) {
    boolean versioned = file.endsWith(AddOn.FILE) || file.endsWith(FILE);
    return versioned ? VERSION_LINE.matcher(text).replaceAll("") : text;
  }

  /** Name and version in a few words. */
  static String words(String name, String version) {
    return version.isEmpty() ? name : name + " " + version;
  }
}
