package yett.command.common;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import yett.saying.Slips;

/**
 * Finds names that may mean the same thing although people say them differently on the telephone:
 * misspelt, with a word more or less, or in another order. Numbers have to be equal, because gate 2
 * is not gate 3.
 */
public final class NearNames {
  /** Words that do not distinguish one gate from another. */
  private static final Set<String> EMPTY =
      Set.of("gate", "gates", "the", "a", "an", "at", "of", "on", "in", "by", "sliding");

  /** A single word must have at least this many letters to stand for the whole name. */
  private static final int TELLING = 4;

  private NearNames() {}

  /** The names that may be meant. */
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
            || joined(first).equals(joined(second)) && hasNumbersOf(first, second));
  }

  /** The words without numbers as one: "rope walk" is "Ropewalk 3". */
  private static String joined(List<String> words) {
    return words.stream().filter(w -> !isNumber(w)).collect(Collectors.joining());
  }

  /** Whether the numbers are equal, or one of the names leaves them out. */
  private static boolean hasNumbersOf(List<String> one, List<String> other) {
    List<String> first = one.stream().filter(NearNames::isNumber).toList();
    List<String> second = other.stream().filter(NearNames::isNumber).toList();
    boolean named = first.size() < one.size(); // "7" alone is not "Ropewalk 7"
    return first.equals(second) || named && (first.isEmpty() || second.isEmpty());
  }

  private static boolean isNumber(String word) {
    return word.chars().allMatch(Character::isDigit);
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

  /** Whether the words are equal, apart from a slip in a long one. Numbers have to be equal. */
  private static boolean isSame(String one, String other) {
    return one.equals(other) || isSlipOf(one, other);
  }

  /** Whether one of the words may be a misspelling of the other. */
  public static boolean isSlipOf(String one, String other) {
    boolean number = (one + other).chars().anyMatch(Character::isDigit);
    boolean brief = Math.min(one.length(), other.length()) < TELLING;
    int most = Math.max(one.length(), other.length()) < 8 ? 1 : 2;
    return !number && !brief && Slips.between(one, other) <= most;
  }
}
