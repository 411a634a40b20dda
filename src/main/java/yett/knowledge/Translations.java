package yett.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.node.ObjectNode;
import yett.knowledge.CardFile.Document;

/**
 * Texts of cards in other languages, from files of their own. Each entry has its card, its place
 * and the original text that it translates. It is used only while that text is still the card's;
 * otherwise the card's own text is shown, because an outdated translation could be a wrong warning.
 */
final class Translations {
  private static final String SUFFIX = ".texts.yaml";
  private static final Pattern LANGUAGE = Pattern.compile("[a-z]{2,3}(-[A-Za-z0-9]{2,8})*");
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,]\\d+)?");

  /** Identifies a text: a language, a card as {@code cause chain-slack}, a place on it. */
  private record Key(String language, String card, String place) {}

  private record Text(String of, String is) {}

  private final Map<Key, Text> texts = new LinkedHashMap<>();
  private final Set<String> languages;

  private Translations(Set<String> languages) {
    this.languages = languages;
  }

  /** Whether a file of this name holds texts. */
  static boolean holdsTexts(String name) {
    return name.endsWith(SUFFIX);
  }

  private static String language(String file) {
    return file.substring(file.lastIndexOf('/') + 1, file.length() - SUFFIX.length());
  }

  /** The languages of which files of these names hold texts. */
  static SortedSet<String> languages(Collection<String> names) {
    return names.stream()
        .filter(Translations::holdsTexts)
        .map(Translations::language)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * @param files of translations
   * @param cards of all folders, before add-ons are applied
   */
  static Translations of(List<Document> files, Collection<Document> cards, List<Problem> problems) {
    Translations all = new Translations(languages(files.stream().map(Document::file).toList()));
    if (!files.isEmpty()) {
      Map<String, Set<String>> places = places(cards);
      files.forEach(file -> all.read(file, places, problems));
    }
    return all;
  }

  private static Map<String, Set<String>> places(Collection<Document> cards) {
    Map<String, Set<String>> places = new LinkedHashMap<>();
    for (Document card : cards) {
      places
          .computeIfAbsent(name(card), c -> new LinkedHashSet<>())
          .addAll(CardTexts.of(Layers.kind(card), card.root()).keySet());
    }
    return places;
  }

  static String name(Document card) {
    String kind = Layers.kind(card);
    return kind + " " + card.root().path(kind).asString("");
  }

  private void read(Document file, Map<String, Set<String>> places, List<Problem> problems) {
    Fields fields = new Fields(file, "", file.root(), problems);
    String language = language(file.file());
    if (!LANGUAGE.matcher(language).matches()) {
      fields.problem(
          "",
          "unknown-word",
          "\"" + language + "\" is not a language",
          "Name the file by the letters of BCP 47, such as de" + SUFFIX + ", es or pt-BR.");
    }
    fields.text("source", "");
    Fields cards = fields.inner("cards");
    for (String card : cards.names()) {
      if (!places.containsKey(card)) {
        cards.problem(
            card,
            "unknown-name",
            "there is no card \"" + card + "\"",
            Names.advice(card, places.keySet()));
        continue;
      }
      Fields own = cards.inner(card);
      for (String place : own.names()) {
        text(own, new Key(language, card, place), places.get(card));
      }
    }
    fields.finish();
  }

  private void text(Fields card, Key key, Set<String> places) {
    Fields fields = card.inner(key.place());
    Text text = new Text(fields.text("of"), fields.text("is", ""));
    fields.finish();
    if (!places.contains(key.place())) {
      card.problem(
          key.place(),
          "unknown-name",
          "\"" + key.place() + "\" is not a text of the card \"" + key.card() + "\"",
          Names.advice(key.place(), places));
    } else if (!text.is().isEmpty() && !numbers(text.of()).equals(numbers(text.is()))) {
      card.problem(
          key.place(),
          "other-numbers",
          "this text has other numbers than the one that it stands for: "
              + shown(text.is())
              + " instead of "
              + shown(text.of()),
          "Numbers are not translated; write them in figures in both.");
    } else if (texts.putIfAbsent(key, text) != null) {
      card.problem(
          key.place(),
          "said-twice",
          "\"" + key.place() + "\" of the card \"" + key.card() + "\" has a text already",
          "Keep one of the two.");
    }
  }

  private static String shown(String text) {
    List<String> numbers = numbers(text);
    return numbers.isEmpty() ? "none" : String.join(", ", numbers);
  }

  /**
   * The numbers in a text, sorted because another language may have them in another order, with
   * decimal points for commas.
   */
  private static List<String> numbers(String text) {
    return NUMBER
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .map(number -> number.replace(',', '.'))
        .sorted()
        .toList();
  }

  /** Reports a language that has no texts. */
  void expect(String language, List<Problem> problems) {
    if (!language.isEmpty() && !languages.contains(language)) {
      problems.add(
          new Problem(
              "unknown-name",
              "(rule base)",
              0,
              0,
              "no card has a text in the language \"" + language + "\"",
              languages.isEmpty()
                  ? "Texts stand in files such as chain/de" + SUFFIX + "."
                  : Names.advice(language, languages)));
    }
  }

  /** The cards with their texts in a language, where they are translated. */
  List<Document> in(String language, List<Document> cards) {
    return language.isEmpty() || texts.isEmpty()
        ? cards
        : cards.stream().map(card -> in(language, card)).collect(Collectors.toList());
  }

  private Document in(String language, Document card) {
    if (!(card.root() instanceof ObjectNode)) {
      return card;
    }
    String name = name(card);
    return card.with(
        CardTexts.with(
            Layers.kind(card),
            card.root(),
            (place, own) -> standing(language, name, place, own).orElse(own)));
  }

  private Optional<String> standing(String language, String card, String place, String own) {
    return Optional.ofNullable(texts.get(new Key(language, card, place)))
        .filter(text -> text.of().equals(own) && !text.is().isEmpty())
        .map(Text::is);
  }

  /** The texts of these cards without a valid translation, in the order of the cards. */
  List<Untranslated> lacking(String language, Collection<Document> cards) {
    List<Untranslated> lacking = new ArrayList<>();
    for (Document card : cards) {
      String name = name(card);
      CardTexts.of(Layers.kind(card), card.root())
          .forEach(
              (place, own) -> {
                if (standing(language, name, place, own).isEmpty()) {
                  Text text = texts.get(new Key(language, name, place));
                  boolean stale = text != null && !text.is().isEmpty();
                  lacking.add(new Untranslated(card.file(), name, place, own, stale));
                }
              });
    }
    return lacking;
  }
}
