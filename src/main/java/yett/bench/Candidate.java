package yett.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Something that an answer may name.
 *
 * @param id to be written
 * @param words what it stands for; empty where the id says it all
 */
public record Candidate(String id, String words) {

  /** Those with all of the typed words in id or name, or, where there are none, with any. */
  public static List<Candidate> with(String typed, List<Candidate> all) {
    List<String> wanted = parts(typed).toList();
    List<Candidate> found = all.stream().filter(k -> wanted.stream().allMatch(k::has)).toList();
    return found.isEmpty()
        ? all.stream().filter(k -> wanted.stream().anyMatch(k::has)).toList()
        : found;
  }

  /** Whether a word of it begins so. */
  private boolean has(String beginning) {
    return Stream.concat(parts(id), parts(words)).anyMatch(w -> w.startsWith(beginning));
  }

  private static Stream<String> parts(String text) {
    return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
        .filter(w -> !w.isEmpty());
  }
}
