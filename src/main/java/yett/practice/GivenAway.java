package yett.practice;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.knowledge.RuleBase;

/**
 * Words of a story that give the fault of an exercise away: those of the name of its cause that
 * hardly any other cause has in its name.
 */
public final class GivenAway {
  /** A word in the names of more causes than this tells none of them; considered judgement. */
  private static final int FEW = 2;

  private static final int SHORTEST = 4;

  private GivenAway() {}

  /** Such words, in the order of the alphabet; empty if the story gives nothing away. */
  public static List<String> in(String story, Collection<String> truth, RuleBase base) {
    Set<String> told = words(story);
    Set<String> telling = new TreeSet<>();
    for (String id : truth) {
      words(name(id, base)).stream()
          .filter(word -> told.stream().anyMatch(t -> same(t, word)))
          .filter(word -> causes(word, base) <= FEW)
          .forEach(telling::add);
    }
    return List.copyOf(telling);
  }

  private static String name(String cause, RuleBase base) {
    return base.causes().get(cause).name();
  }

  private static long causes(String word, RuleBase base) {
    return base.causes().keySet().stream()
        .filter(id -> words(name(id, base)).stream().anyMatch(w -> same(w, word)))
        .count();
  }

  private static boolean same(String one, String other) {
    return one.equals(other) || one.equals(other + "s") || other.equals(one + "s");
  }

  private static Set<String> words(String text) {
    return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
        .filter(w -> w.length() >= SHORTEST)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
