package yett.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

/**
 * A text of a card without a valid translation.
 *
 * @param file of the card
 * @param card as {@code cause chain-slack}
 * @param place on the card, such as {@code steps.2}
 * @param own the card's own text
 * @param stale whether there is a translation of an earlier text
 */
public record Untranslated(String file, String card, String place, String own, boolean stale) {

  /** The folder of the card. */
  public String area() {
    int slash = file.lastIndexOf('/');
    return slash < 0 ? "" : file.substring(0, slash);
  }

  /**
   * The untranslated texts of a rule base.
   *
   * @param all number of all texts, translated or not
   */
  public record Of(int all, List<Untranslated> lacking) {}

  /**
   * Finds the texts of a rule base that are not in a language; those of add-ons are under their own
   * cards.
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
