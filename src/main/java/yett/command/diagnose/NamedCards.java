package yett.command.diagnose;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import yett.knowledge.Card;
import yett.saying.Phrases;
import yett.wording.Wording;

/** Finds cards that a person names by id or by words of their name. */
final class NamedCards<C extends Card> {
  /** Least similarity between the words and the name of a card. */
  private static final double FITS = 0.55;

  private final Map<String, C> cards;
  private final Predicate<C> spoken;
  private final Function<C, String> name;
  private final Map<String, List<String>> synonyms;

  /** Built when words are first looked up, because that takes time. */
  private Phrases phrases;

  /**
   * @param spoken selects the cards that can be named by words; an id can name any card
   */
  NamedCards(
      Map<String, C> cards,
      Predicate<C> spoken,
      Function<C, String> name,
      Map<String, List<String>> synonyms) {
    this.cards = cards;
    this.spoken = spoken;
    this.name = name;
    this.synonyms = synonyms;
  }

  /** The cards that may be meant, the best first; empty if none fits. */
  List<C> of(String words) {
    C named = cards.get(words.toLowerCase(Locale.ROOT).strip().replace(' ', '-'));
    if (named != null) {
      return List.of(named);
    }
    if (phrases == null) {
      Map<String, List<String>> ways = new HashMap<>();
      cards.values().stream()
          .filter(spoken)
          .forEach(c -> ways.put(c.id(), List.of(name.apply(c), Wording.spaced(c.id()))));
      phrases = new Phrases(ways, synonyms);
    }
    return phrases.meant(words, FITS).stream().map(cards::get).toList();
  }
}
