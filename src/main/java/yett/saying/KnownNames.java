package yett.saying;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Names of gates, which say nothing of what happens there: whoever names the gate "Smokehouse"
 * tells of no smoke. A name that is itself the plain word for a danger ("Fire") stays in the
 * sentence, as nobody can tell which of the two is meant.
 */
public final class KnownNames {
  private static final Set<String> DANGERS =
      Set.of(
          "fire",
          "smoke",
          "flame",
          "flames",
          "burning",
          "burns",
          "burnt",
          "sparks",
          "blood",
          "help",
          "accident",
          "danger",
          "shock",
          "acid",
          "gas",
          "hurt",
          "injured",
          "trapped",
          "ambulance");

  /** No name is known. */
  public static final KnownNames NONE = new KnownNames(List.of());

  private final List<Pattern> names;

  public KnownNames(Collection<String> names) {
    this.names =
        names.stream()
            .map(String::strip)
            .filter(name -> !name.isEmpty() && !isPlainWord(name))
            .sorted((a, b) -> b.length() - a.length()) // "Smokehouse yard" before "Smokehouse"
            .map(KnownNames::pattern)
            .toList();
  }

  private static boolean isPlainWord(String name) {
    return DANGERS.contains(name.toLowerCase(Locale.ROOT));
  }

  private static Pattern pattern(String name) {
    return Pattern.compile(
        "(?iu)(?<![\\p{L}\\p{N}])(?:the )?" + Pattern.quote(name) + "(?: gate)?(?![\\p{L}\\p{N}])");
  }

  /** The words with "the gate" in place of each name. */
  String without(String words) {
    String left = words;
    for (Pattern name : names) {
      left = name.matcher(left).replaceAll("the gate");
    }
    return left;
  }
}
