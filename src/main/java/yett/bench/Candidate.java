package yett.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Something that an answer may name.
 *
 * @param id to be typed
 * @param words what it stands for; empty if the id says it all
 */
public record Candidate(String id, String words) {

  /**
   * The candidates with all of the typed words in id or name; if there are none, those with any of
   * them.
   */
  public static List<Candidate> with(String typed, List<Candidate> all) {
    List<String> wanted = parts(typed).toList();
    List<Candidate> found = all.stream().filter(k -> wanted.stream().allMatch(k::has)).toList();
    return found.isEmpty()
        ? all.stream().filter(k -> wanted.stream().anyMatch(k::has)).toList()
        : found;
  }

  /** Whether one of its words begins like this. */
  private boolean has(String beginning) {
    return Stream.concat(parts(id), parts(words)).anyMatch(w -> w.startsWith(beginning));
  }

  private static Stream<String> parts(String text) {
    return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
        .filter(w -> !w.isEmpty());
  }
}
