package yett.command.diagnose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import yett.command.common.HeardAnswer;
import yett.interview.Answer;
import yett.knowledge.SiteQuestion;

/**
 * Reads a line that gives several details of a gate: "6 m, no loops, 120 V". A reading alone
 * belongs to the first question of the page that could have it. A name beside it, or the number of
 * its line before it, says to which one it belongs.
 *
 * @param numbered how many of the questions, from the first, are on the page with numbers
 */
record SiteLine(List<SiteQuestion> questions, int numbered) {
  static final Set<String> NOT = Set.of("no", "none", "without", "not");

  private static final Pattern NUMBERED = Pattern.compile("(\\d{1,2})\\s*[:=]?\\s+(.+)");

  /** A comma between digits is a decimal comma. */
  private static final Pattern BETWEEN = Pattern.compile(";|(?<!\\d),|,(?!\\d)");

  /**
   * What a line says.
   *
   * @param said question to its answer
   * @param guessed of these, readings without a name that fit no question of the page
   * @param unclear parts of the line that mean nothing, or more than one thing
   */
  record Heard(Map<SiteQuestion, String> said, Set<SiteQuestion> guessed, List<String> unclear) {}

  Heard read(String line) {
    Map<SiteQuestion, String> said = new LinkedHashMap<>();
    Set<SiteQuestion> guessed = new LinkedHashSet<>();
    List<String> unclear = new ArrayList<>();
    for (String part : BETWEEN.split(SiteWords.plain(line))) {
      List<Match> matches = part.isBlank() ? List.of() : matches(part.strip());
      matches.forEach(m -> said.put(m.question(), m.answer()));
      matches.stream().filter(this::isGuess).map(Match::question).forEach(guessed::add);
      if (matches.isEmpty() && !part.isBlank()) {
        unclear.add(part.strip());
      }
    }
    return new Heard(said, guessed, List.copyOf(unclear));
  }

  private boolean isGuess(Match match) {
    return match.score() == 1
        && match.question().measures().isPresent()
        && questions.indexOf(match.question()) >= numbered;
  }

  /** What a part says: one thing, or several behind one "no", as in "no edges or loops". */
  private List<Match> matches(String part) {
    Optional<Match> whole = part(part);
    if (whole.isPresent()) {
      return whole.stream().toList();
    }
    String[] pieces = part.split("(?i)\\s+(?:or|and|nor)\\s+");
    String first = pieces[0].split("\\s+")[0].toLowerCase(Locale.ROOT);
    String not = NOT.contains(first) ? first + " " : "";
    List<Match> matches = new ArrayList<>();
    for (int i = 0; i < pieces.length; i++) {
      boolean denied = SiteWords.of(pieces[i]).stream().anyMatch(NOT::contains);
      part(denied ? pieces[i] : not + pieces[i]).ifPresent(matches::add);
    }
    return matches.size() == pieces.length ? matches : List.of();
  }

  /** How well some words fit an answer. */
  record Match(SiteQuestion question, String answer, int score) {}

  private Optional<Match> part(String part) {
    Matcher line = NUMBERED.matcher(part);
    if (!line.matches() || questions.stream().anyMatch(q -> isReading(q, part))) {
      return byWords(part);
    }
    Optional<Match> said = ofLine(Integer.parseInt(line.group(1)), line.group(2));
    boolean reading = line.group(2).chars().anyMatch(Character::isDigit);
    return said.isPresent() || reading
        ? said
        : byWords(part); // words alone may begin with a number
  }

  /** Reads the answer to a numbered line of the page, such as "13 420 kg". */
  private Optional<Match> ofLine(int number, String answer) {
    if (number < 1 || number > numbered) {
      return Optional.empty();
    }
    SiteQuestion question = questions.get(number - 1);
    if (question.measures().isPresent()) {
      return Optional.of(answer)
          .filter(a -> isReading(question, a))
          .map(a -> new Match(question, a, 1));
    }
    return new SiteChoice(question).choice(SiteWords.of(answer), 1);
  }

  private static boolean isReading(SiteQuestion question, String text) {
    return question
        .measures()
        .flatMap(m -> HeardAnswer.reading(m, text).answer())
        .flatMap(Answer::reading)
        .isPresent();
  }

  private Optional<Match> byWords(String part) {
    Optional<String> there = SiteWords.there(part);
    Set<String> words = SiteWords.of(there.orElse(part));
    Optional<SiteQuestion> named =
        questions.stream().filter(q -> SiteWords.of(q.id()).equals(words)).findFirst();
    if (named.isPresent()) { // the name of a detail does not say how it is
      return there.isPresent() ? new SiteChoice(named.get()).fitted(1) : Optional.empty();
    }
    List<Match> matches = questions.stream().flatMap(q -> match(q, part, words).stream()).toList();
    int best = matches.stream().mapToInt(Match::score).max().orElse(0);
    List<Match> firsts = matches.stream().filter(m -> m.score() == best).toList();
    boolean reading = firsts.stream().allMatch(m -> m.question().measures().isPresent());
    return firsts.size() == 1 || reading ? firsts.stream().findFirst() : Optional.empty();
  }

  private static Optional<Match> match(SiteQuestion question, String part, Set<String> words) {
    Set<String> name = SiteWords.of(question.id() + " " + question.name());
    int named = SiteChoice.shared(words, name);
    SiteChoice choice = new SiteChoice(question);
    return question.measures().isPresent()
        ? reading(question, part).map(r -> new Match(question, r, 10 * named + 1))
        : named > 0 ? choice.named(words, name) : choice.choice(words, 0);
  }

  private static Optional<String> reading(SiteQuestion question, String part) {
    int digit = 0;
    while (digit < part.length() && !Character.isDigit(part.charAt(digit))) {
      digit++;
    }
    int from =
        digit > 0 && digit < part.length() && part.charAt(digit - 1) == '-' ? digit - 1 : digit;
    String number = part.substring(from);
    return Stream.of(part, number, withoutName(question, number))
        .filter(text -> text.chars().anyMatch(Character::isLetter)) // a bare number has no unit
        .map(text -> HeardAnswer.reading(question.measures().get(), text).answer())
        .flatMap(a -> a.flatMap(Answer::reading).stream())
        .map(Answer.Read::typed)
        .findFirst();
  }

  /** The text before the name of a question at its end, as in "6.2 m free run". */
  private static String withoutName(SiteQuestion question, String text) {
    Set<String> name = SiteWords.of(question.id() + " " + question.name());
    String left = text;
    while (left.indexOf(' ') > 0) {
      String last = left.substring(left.lastIndexOf(' ') + 1);
      if (!name.containsAll(SiteWords.of(last))) {
        break;
      }
      left = left.substring(0, left.lastIndexOf(' ')).strip();
    }
    return left;
  }
}
