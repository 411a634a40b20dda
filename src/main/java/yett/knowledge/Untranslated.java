package yett.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

/**
 * A text of a card that has no standing translation.
 *
 * @param file where the card stands
 * @param card as {@code cause chain-slack}
 * @param place on the card, such as {@code steps.2}
 * @param own the card's own text
 * @param stale whether there is a translation of what the text was before
 */
public record Untranslated(String file, String card, String place, String own, boolean stale) {

  /** The folder in which the card stands. */
  public String area() {
    int slash = file.lastIndexOf('/');
    return slash < 0 ? "" : file.substring(0, slash);
  }

  /**
   * All of a rule base.
   *
   * @param all how many texts there are, and how many of them are in the language
   */
  public record Of(int all, List<Untranslated> lacking) {}

  /**
   * What of a rule base is not in a language; add-ons each by their own cards.
   *
   * @param files contents by path
   * @throws KnowledgeException if something in them cannot be read
   */
  public static Of language(String language, SortedMap<String, String> files) {
    List<Problem> problems = new ArrayList<>();
    List<CardFile.Document> cards = new ArrayList<>();
    List<CardFile.Document> texts = new ArrayList<>();
    files.forEach(
        (name, text) -> {
          if (Translations.holdsTexts(name)) {
            texts.addAll(CardFile.read(name, text, problems));
          } else if (RuleBaseReader.holdsCards(name)) {
            cards.addAll(CardFile.read(name, text, problems));
          }
        });
    Translations all = Translations.of(texts, cards, problems);
    if (!problems.isEmpty()) {
      throw new KnowledgeException(problems);
    }
    int count = cards.stream().mapToInt(c -> CardTexts.of(Layers.kind(c), c.root()).size()).sum();
    return new Of(count, all.lacking(language, cards));
  }
}
