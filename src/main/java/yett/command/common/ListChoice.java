package yett.command.common;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import yett.saying.Negation;

/** Finds the entries of a list that a typed line names. */
public final class ListChoice {
  private static final String BETWEEN_NUMBERS = "(?:[\\s,;&+]|\\band\\b)+";

  private ListChoice() {}

  /**
   * Splits a line that names several entries. Numbers may be separated by blanks alone, or as they
   * are said: "1 and 2", "1, 2 & 4".
   */
  private static String[] parts(String line) {
    boolean numbers = line.matches("(?i)\\s*\\d+(?:" + BETWEEN_NUMBERS + "\\d+)*[\\s,;]*");
    return line.strip().split(numbers ? "(?i)" + BETWEEN_NUMBERS : "[,;]");
  }

  /** The parts of a line that may each name an entry: "2 and 4", "2 4", "slaps, bang". */
  public static List<String> apart(String line) {
    String between = line.matches("[\\d\\s,;]+") ? "[\\s,;]+" : "(?i)[,;&+]|\\band\\b";
    return Arrays.stream(line.split(between)).map(String::strip).filter(p -> !p.isEmpty()).toList();
  }

  /**
   * The entries that a line names, where several may be chosen.
   *
   * @param positions each once, in the order of the list
   * @param unclear the first part that names nothing, or more than one entry
   */
  public record Several(List<Integer> positions, Optional<String> unclear) {}

  /**
   * Finds several entries by number, id, name or the beginning of a word of the text. A word that
   * is only similar does not count, because the choice is not shown for confirmation. A name that
   * contains commas and is typed as shown is one name.
   */
  public static Several several(String line, List<String> ids, List<String> texts) {
    return several(line, ids, texts, fromOne(ids.size()));
  }

  /**
   * The same for a list of which some numbers are left out.
   *
   * @param numbers the number of each entry
   */
  public static Several several(
      String line, List<String> ids, List<String> texts, List<Integer> numbers) {
    List<String> left = new ArrayList<>(line.isBlank() ? List.of() : List.of(parts(line)));
    Set<Integer> positions = new TreeSet<>();
    while (!left.isEmpty()) {
      List<Integer> found = List.of();
      int taken = left.size() + 1;
      while (found.size() != 1 && taken > 1) {
        taken--;
        found = same(String.join(",", left.subList(0, taken)), ids, texts);
      }
      found = found.size() == 1 ? found : named(left.get(0), ids, texts, numbers);
      if (found.size() != 1) {
        return new Several(List.copyOf(positions), Optional.of(left.get(0).strip()));
      }
      positions.add(found.get(0));
      left.subList(0, taken).clear();
    }
    return new Several(List.copyOf(positions), Optional.empty());
  }

  /**
   * Positions that a line names: by number, by id, by the beginning of a word of the text, or by
   * most of its words. If several are returned, the line is not clear.
   */
  public static List<Integer> pick(String line, List<String> ids, List<String> texts) {
    List<Integer> named = named(line, ids, texts, fromOne(ids.size()));
    String text = line.strip().toLowerCase(Locale.ROOT);
    return named.isEmpty() && !isNumber(text) ? mostWordsInCommon(text, texts) : named;
  }

  private static boolean isNumber(String text) {
    return text.matches("\\d{1,3}");
  }

  private static List<Integer> fromOne(int size) {
    return IntStream.rangeClosed(1, size).boxed().toList();
  }

  private static List<Integer> named(
      String line, List<String> ids, List<String> texts, List<Integer> numbers) {
    String text = line.strip().toLowerCase(Locale.ROOT);
    if (isNumber(text)) {
      int position = numbers.indexOf(Integer.parseInt(text));
      return position >= 0 ? List.of(position) : List.of();
    }
    if (text.isEmpty()) {
      return List.of();
    }
    int exact = ids.indexOf(text.replace(' ', '-'));
    if (exact >= 0) {
      return List.of(exact);
    }
    List<Integer> same =
        IntStream.range(0, texts.size())
            .filter(i -> texts.get(i).toLowerCase(Locale.ROOT).equals(text))
            .boxed()
            .toList();
    if (same.size() == 1) {
      return same;
    }
    return IntStream.range(0, texts.size())
        .filter(
            i ->
                beginsAWord(texts.get(i).toLowerCase(Locale.ROOT), text)
                    || ids.get(i).startsWith(text.replace(' ', '-')))
        .boxed()
        .toList();
  }

  /** Positions whose id or text equals the line, apart from a full stop. */
  public static List<Integer> same(String line, List<String> ids, List<String> texts) {
    String text = line.strip().toLowerCase(Locale.ROOT).replaceFirst("\\.$", "");
    return IntStream.range(0, ids.size())
        .filter(
            i ->
                ids.get(i).equals(text.replace(' ', '-'))
                    || texts.get(i).toLowerCase(Locale.ROOT).equals(text))
        .boxed()
        .toList();
  }

  /**
   * The texts that share the most of the line's longer words, and at least half of them. Words that
   * say that something is not so never mean a text that says that it is, nor the reverse.
   */
  private static List<Integer> mostWordsInCommon(String text, List<String> texts) {
    List<String> words =
        Arrays.stream(text.split("[^\\p{L}\\p{N}]+")).filter(w -> w.length() >= 4).toList();
    long[] common =
        texts.stream()
            .map(t -> t.toLowerCase(Locale.ROOT))
            .mapToLong(
                t ->
                    Negation.in(t) == Negation.in(text)
                        ? words.stream().filter(w -> beginsAWord(t, w)).count()
                        : 0)
            .toArray();
    long most = Arrays.stream(common).max().orElse(0);
    return IntStream.range(0, common.length)
        .filter(i -> most > 0 && common[i] == most && 2 * most >= words.size())
        .boxed()
        .toList();
  }

  private static boolean beginsAWord(String text, String beginning) {
    return text.startsWith(beginning) || text.contains(" " + beginning);
  }
}
