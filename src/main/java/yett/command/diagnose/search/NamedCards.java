package yett.command.diagnose.search;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import yett.knowledge.Card;
import yett.saying.Phrases;
import yett.wording.Wording;

/** Finds cards that a person names by id or by words of their name. */
final class NamedCards<C extends Card> {
  /** Least similarity between the words and the name of a card. */
  private static final double FITS = 0.55;

  /** From which share on a name has all of the telling words. */
  private static final double ALL = 0.99;

  /** Least share of the words for a name to be offered beside a better one. */
  private static final double SOME = 0.2;

  private static final int MOST = 4;

  private final Map<String, C> cards;
  private final Predicate<C> spoken;
  private final Function<C, String> name;
  private final Function<C, List<String>> more;
  private final Map<String, List<String>> synonyms;

  /** Built when words are first looked up, because that takes time. */
  private Phrases names;

  private Phrases others;

  /**
   * @param spoken selects the cards that can be named by words; an id can name any card
   * @param more other texts whose words may name a card, if no card has them in its name
   */
  NamedCards(
      Map<String, C> cards,
      Predicate<C> spoken,
      Function<C, String> name,
      Function<C, List<String>> more,
      Map<String, List<String>> synonyms) {
    this.cards = cards;
    this.spoken = spoken;
    this.name = name;
    this.more = more;
    this.synonyms = synonyms;
  }

  /** The cards that may be meant, the best first; empty if none fits. */
  List<C> of(String words) {
    C named = cards.get(words.toLowerCase(Locale.ROOT).strip().replace(' ', '-'));
    if (named != null) {
      return List.of(named);
    }
    List<C> whole = cards.values().stream().filter(spoken).filter(c -> isName(c, words)).toList();
    if (whole.size() == 1) { // by the words that count, it may be like another one
      return whole;
    }
    if (names == null) {
      names = phrases(c -> List.of(name.apply(c), Wording.spaced(c.id())));
    }
    List<C> found = meant(names, words);
    if (!found.isEmpty()) {
      return found;
    }
    if (others == null) {
      others = phrases(more);
    }
    return meant(others, words);
  }

  private boolean isName(C card, String words) {
    return name.apply(card).equalsIgnoreCase(words.strip());
  }

  /**
   * The same; where a name does not have all of the words, also those that have the others, so that
   * "bent guide bracket" is not taken for the bracket of the chain.
   */
  List<C> nearest(String words) {
    List<C> found = of(words);
    if (found.size() != 1
        || names == null
        || isName(found.get(0), words)
        || names.covers(words, found.get(0).id()) > ALL) {
      return found;
    }
    Map<String, Double> others = new HashMap<>();
    for (Phrases.Heard heard : names.hear(words, cards.size())) {
      double covered = names.covers(words, heard.id());
      if (covered >= SOME && cards.get(heard.id()) != found.get(0)) {
        others.put(heard.id(), covered);
      }
    }
    return Stream.concat(
            found.stream(),
            others.entrySet().stream()
                .sorted(
                    Map.Entry.<String, Double>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(e -> cards.get(e.getKey())))
        .limit(MOST)
        .toList();
  }

  private Phrases phrases(Function<C, List<String>> texts) {
    Map<String, List<String>> ways = new HashMap<>();
    cards.values().stream().filter(spoken).forEach(c -> ways.put(c.id(), texts.apply(c)));
    return new Phrases(ways, synonyms);
  }

  private List<C> meant(Phrases phrases, String words) {
    return phrases.meant(words, FITS).stream().map(cards::get).toList();
  }
}
