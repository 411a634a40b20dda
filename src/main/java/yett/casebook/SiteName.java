package yett.casebook;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * The name of a gate, by which it is told from others, compared exactly. Before version 4
 * punctuation and capitals were ignored, so that "North+South" and "North/South" were one gate.
 */
public final class SiteName {
  private static final JsonMapper JSON = JsonMapper.shared();
  private static final String OPENED = "opened";

  private SiteName() {}

  /**
   * Letters and digits of a name, in small letters. If they are equal, two names may mean the same
   * gate, and somebody has to be asked. Empty for a name without any.
   */
  public static String letters(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "");
  }

  /** The name with blanks and capitals normalised. */
  static String spelled(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }

  /** The gate's name in the event with which a case was opened. */
  static Optional<String> told(Stream<EventText> events) {
    return events
        .filter(e -> e.type().equals(OPENED))
        .findFirst()
        .flatMap(e -> site(e.body()))
        .filter(name -> !name.isBlank());
  }

  /** An event's type and body. */
  record EventText(String type, String body) {}

  private static Optional<String> site(String body) {
    try {
      return JSON.readTree(body).path("site").stringValueOpt();
    } catch (JacksonException e) {
      return Optional.empty();
    }
  }
}
