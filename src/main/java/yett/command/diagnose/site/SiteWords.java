package yett.command.diagnose.site;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The words of a line that describes a gate, compared with those of the cards. */
final class SiteWords {
  /** Words without meaning here. */
  private static final Set<String> SMALL =
      Set.of("a", "an", "the", "of", "at", "is", "it", "its", "by", "with", "has", "in", "on");

  /** An age, as in "4 years old batteries". */
  private static final Pattern OLD = Pattern.compile("(?i)(\\d+)[ -]?(?:years?|yrs?)[ -]old\\s*");

  private static final Pattern BEAMS =
      Pattern.compile(
          "(?i)\\b(?:photo[- ]?(?:eye|cell|beam)s?|electric eyes?|(?:light|safety) beams?)\\b");

  private static final Pattern TRACK =
      Pattern.compile("(?i)\\bv[- ]?(?:groove|shaped)?[- ]?(?:track|rail)\\b");

  /** Numbers that people write for the words of an answer, such as "2 beams". */
  private static final Map<String, String> COUNTS =
      Map.of("1", "one", "2", "two", "3", "more", "4", "more");

  private static final Pattern BATTERIES =
      Pattern.compile(
          "(?i)\\b(?:(?:battery|batteries)[- ]?back[- ]?up|(?:back[- ]?up|stand[- ]?by)"
              + " (?:battery|batteries))\\b");

  private static final Pattern MAINS_ONLY = Pattern.compile("(?i)\\b(?:on )?mains[- ]only\\b");

  /** Who names its kind says that it is there. */
  private static final Pattern LOOPS =
      Pattern.compile(
          "(?i)(\\b(?:no|without) )?\\bLOOP(?:(?: (?:and|or|nor)(?: an?)?|,) LOOP)*\\b"
              .replace("LOOP", "(?:free[- ]?)?(?:exit|safety|shadow|road|vehicle)[- ]loops?"));

  private static final Pattern MARKER =
      Pattern.compile("(?i)(\\b(?:no|without) )?\\b(?:reference )?markers? (?:on|in) the chain\\b");

  /** Numbers from which on "one or more" and "two or more" are meant. */
  private static final Set<String> SEVERAL = Set.of("two", "three", "four", "several", "both");

  /** Says that what follows is there, without saying of which kind. */
  private static final Pattern THERE =
      Pattern.compile(
          "(?i)(?:yes,? )?(?:with|has|have|got|(?:it|we)(?: ha(?:s|ve)|'s| have got| has got)|there"
              + " (?:is|are)|there's)\\s+(?:an? |some |any )?(.+)");

  private SiteWords() {}

  /** A line with the trade's other names for some details replaced by those of the cards. */
  static String plain(String line) {
    String plain = BEAMS.matcher(TRACK.matcher(line).replaceAll("track")).replaceAll("beams");
    plain = MAINS_ONLY.matcher(plain).replaceAll("no batteries");
    plain = LOOPS.matcher(plain).replaceAll(m -> there(m, "loops"));
    plain = MARKER.matcher(plain).replaceAll(m -> there(m, "marker"));
    String joined = BATTERIES.matcher(plain).replaceAll("batteries");
    return OLD.matcher(joined).replaceAll("$1 years ");
  }

  private static String there(MatchResult said, String detail) {
    return (said.group(1) == null ? "with " : said.group(1)) + detail;
  }

  /** The same words with numbers as the answers of cards write them. */
  static Set<String> counted(Set<String> words) {
    return words.stream()
        .map(w -> COUNTS.getOrDefault(w, w))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The same for words beside the name of a detail: two of them are also "one or more". */
  static Set<String> countedOf(Set<String> words) {
    Set<String> counted = counted(words);
    if (counted.stream().anyMatch(SEVERAL::contains)) {
      counted.add("more");
    }
    return counted;
  }

  /** What a part says is there, as in "with loops"; empty if it says something else. */
  static Optional<String> there(String part) {
    Matcher there = THERE.matcher(part.strip());
    return there.matches() ? Optional.of(there.group(1)) : Optional.empty();
  }

  /** Words in small letters without a plural s. */
  static Set<String> of(String text) {
    Set<String> words = new LinkedHashSet<>();
    String apart = text.replaceAll("(?<=\\d)(?=\\p{L})", " "); // 230V is 230 V
    Arrays.stream(apart.toLowerCase(Locale.ROOT).split("[^a-z0-9./]+"))
        .filter(w -> !w.isEmpty() && !SMALL.contains(w))
        .map(w -> w.endsWith("ies") ? w.substring(0, w.length() - 3) + "y" : w)
        .map(w -> w.length() > 3 && w.endsWith("s") ? w.substring(0, w.length() - 1) : w)
        .forEach(words::add);
    return words;
  }

  /** How many words two sets have in common. */
  static int shared(Set<String> some, Set<String> others) {
    return (int) some.stream().filter(others::contains).count();
  }
}
