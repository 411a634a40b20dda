package yett.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A file of cards parsed into trees. If one card cannot be parsed, the others still are, so that
 * one mistake hides no other.
 *
 * @param unreadable kind and id of the cards that cannot be parsed, as {@code cause chain-slack},
 *     as far as their first lines give them
 */
record ParsedFile(
    String text, List<CardFile.Document> cards, List<Problem> problems, List<String> unreadable) {
  private static final Pattern DIVIDER = Pattern.compile("(?m)^---[ \\t]*(#.*)?\\R?");
  private static final Pattern FIRST =
      Pattern.compile("(?m)^[ \\t]*+([a-z-]++):?[ \\t]++([a-z0-9-]++)");

  static ParsedFile of(String name, String text) {
    List<Problem> problems = new ArrayList<>();
    List<CardFile.Document> cards =
        ShippedKnowledge.cards(name, text).orElseGet(() -> CardFile.read(name, text, problems));
    boolean tooMuch = problems.stream().anyMatch(p -> p.kind().startsWith("too-many"));
    return problems.isEmpty() || tooMuch
        ? new ParsedFile(text, cards, problems, List.of())
        : oneByOne(name, text);
  }

  private static ParsedFile oneByOne(String name, String text) {
    List<Problem> problems = new ArrayList<>();
    List<CardFile.Document> cards = new ArrayList<>();
    List<String> unreadable = new ArrayList<>();
    for (String part : parts(text)) {
      List<Problem> here = new ArrayList<>();
      List<CardFile.Document> card = CardFile.read(name, part, here);
      cards.addAll(here.isEmpty() ? card : List.of());
      problems.addAll(here);
      Matcher first = FIRST.matcher(part);
      if (!here.isEmpty() && first.find()) {
        unreadable.add(first.group(1) + " " + first.group(2));
      }
    }
    return new ParsedFile(text, cards, problems, unreadable);
  }

  /** The text of each card, with empty lines before it so that line numbers stay the same. */
  private static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    Matcher divider = DIVIDER.matcher(text);
    int from = 0;
    while (divider.find()) {
      parts.add(lines(text, from) + text.substring(from, divider.start()));
      from = divider.end();
    }
    parts.add(lines(text, from) + text.substring(from));
    return parts;
  }

  private static String lines(String text, int end) {
    return "\n".repeat((int) text.substring(0, end).chars().filter(c -> c == '\n').count());
  }
}
