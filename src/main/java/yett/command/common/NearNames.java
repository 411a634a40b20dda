package yett.command.common;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import yett.saying.Slips;

/**
 * Names that people who speak of the same thing may give it on the telephone: with a slip, with a
 * word more or less, in another order. Numbers have to be the same, because gate 2 is not gate 3.
 */
public final class NearNames {
  /** Words that tell no gate from another. */
  private static final Set<String> EMPTY =
      Set.of("gate", "gates", "the", "a", "an", "at", "of", "on", "in", "by", "sliding");

  /** A word alone must be as long as this to stand for the whole name. */
  private static final int TELLING = 4;

  private NearNames() {}

  /** Those of some names that may be meant. */
  public static List<String> of(String said, List<String> names) {
    return names.stream().filter(n -> isNear(said, n)).toList();
  }

  static boolean isNear(String one, String other) {
    List<String> first = words(one);
    List<String> second = words(other);
    boolean longer = first.size() > second.size();
    List<String> few = longer ? second : first;
    List<String> many = new ArrayList<>(longer ? first : second);
    boolean telling = few.stream().anyMatch(w -> w.length() >= TELLING) || few.equals(many);
    return !few.isEmpty()
        && (telling && few.stream().allMatch(w -> takesOne(w, many))
            || String.join("", first).equals(String.join("", second)));
  }

  private static List<String> words(String name) {
    return Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
        .filter(w -> !w.isEmpty() && !EMPTY.contains(w))
        .toList();
  }

  private static boolean takesOne(String word, List<String> many) {
    for (int i = 0; i < many.size(); i++) {
      if (isSame(word, many.get(i))) {
        many.remove(i);
        return true;
      }
    }
    return false;
  }

  /** The same word, but for a slip in a long one; a number has no slips. */
  private static boolean isSame(String one, String other) {
    return one.equals(other) || isSlipOf(one, other);
  }

  /** Whether one of two words may be a slip in writing the other. */
  public static boolean isSlipOf(String one, String other) {
    boolean number = (one + other).chars().anyMatch(Character::isDigit);
    boolean brief = Math.min(one.length(), other.length()) < TELLING;
    int most = Math.max(one.length(), other.length()) < 8 ? 1 : 2;
    return !number && !brief && Slips.between(one, other) <= most;
  }
}
