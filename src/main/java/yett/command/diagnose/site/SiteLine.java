package yett.command.diagnose.site;

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
import yett.knowledge.SiteQuestion;

/**
 * Reads a line that gives several details of a gate: "6 m, no loops, 120 V". A reading alone
 * belongs to the first question of the page that could have it. A name beside it, or the number of
 * its line before it, says to which one it belongs.
 *
 * @param numbered how many of the questions, from the first, are on the page with numbers
 */
record SiteLine(List<SiteQuestion> questions, int numbered) {
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
      List<SiteMatch> matches = part.isBlank() ? List.of() : matches(part.strip());
      matches.forEach(m -> said.put(m.question(), m.answer()));
      matches.stream().filter(this::isGuess).map(SiteMatch::question).forEach(guessed::add);
      if (matches.isEmpty() && !part.isBlank()) {
        unclear.add(part.strip());
      }
    }
    return new Heard(said, guessed, List.copyOf(unclear));
  }

  private boolean isGuess(SiteMatch match) {
    return match.score() == 1
        && match.question().measures().isPresent()
        && questions.indexOf(match.question()) >= numbered;
  }

  /** What a part says: one thing, or several behind one "no", as in "no edges or loops". */
  private List<SiteMatch> matches(String part) {
    Optional<SiteMatch> whole = part(part);
    if (whole.isPresent()) {
      return whole.stream().toList();
    }
    List<SiteMatch> readings = severalReadings(part);
    if (!readings.isEmpty()) {
      return readings;
    }
    String[] pieces = part.split("(?i)\\s+(?:or|and|nor)\\s+");
    String first = pieces[0].split("\\s+")[0].toLowerCase(Locale.ROOT);
    String not = SiteChoice.NOT.contains(first) ? first + " " : "";
    List<SiteMatch> matches = new ArrayList<>();
    for (int i = 0; i < pieces.length; i++) {
      boolean denied = SiteWords.of(pieces[i]).stream().anyMatch(SiteChoice.NOT::contains);
      part(denied ? pieces[i] : not + pieces[i]).ifPresent(matches::add);
    }
    return matches.size() == pieces.length ? matches : List.of();
  }

  /** Several readings without a comma between them, as in "feeder 40 m 4 mm2"; all or none. */
  private List<SiteMatch> severalReadings(String part) {
    String[] pieces = part.split("\\s+(?=-?\\d)");
    List<SiteMatch> matches = new ArrayList<>();
    String name = "";
    for (String next : pieces) {
      boolean number = next.matches("-?\\d.*");
      name = number ? name : next + " ";
      if (number) {
        Optional<SiteMatch> match = byWords(name + next).or(() -> byWords(next));
        if (match.isEmpty()) {
          return List.of();
        }
        matches.add(match.get());
      }
    }
    boolean distinct =
        matches.stream().map(SiteMatch::question).distinct().count() == matches.size();
    return matches.size() > 1 && distinct ? matches : List.of();
  }

  private Optional<SiteMatch> part(String part) {
    Matcher line = NUMBERED.matcher(part);
    if (!line.matches() || isAnswer(part)) {
      return byWords(part);
    }
    Optional<SiteMatch> said = ofLine(Integer.parseInt(line.group(1)), line.group(2));
    boolean reading = line.group(2).chars().anyMatch(Character::isDigit);
    return said.isPresent() || reading
        ? said
        : byWords(part); // words alone may begin with a number
  }

  /** Reads the answer to a numbered line of the page, such as "13 420 kg". */
  private Optional<SiteMatch> ofLine(int number, String answer) {
    if (number < 1 || number > numbered) {
      return Optional.empty();
    }
    SiteQuestion question = questions.get(number - 1);
    if (question.measures().isPresent()) {
      return Optional.of(answer)
          .filter(a -> SiteReadings.is(question, a))
          .map(a -> new SiteMatch(question, a, 1));
    }
    return new SiteChoice(question).choice(SiteWords.of(answer), 1);
  }

  /** Whether a part that begins with a number is an answer by itself, such as "4 mm2". */
  private boolean isAnswer(String part) {
    Set<String> words = SiteWords.of(part);
    return questions.stream()
        .anyMatch(q -> SiteReadings.is(q, part) || new SiteChoice(q).is(words));
  }

  private Optional<SiteMatch> byWords(String part) {
    Optional<String> there = SiteWords.there(part);
    Set<String> words = SiteWords.of(there.orElse(part));
    Optional<SiteQuestion> named =
        questions.stream().filter(q -> SiteWords.of(q.id()).equals(words)).findFirst();
    if (words.stream().allMatch(w -> w.matches("[a-z]"))) { // "b" is no 08B
      return Optional.empty();
    }
    if (named.isPresent()) { // the name of a detail does not say how it is
      return there.isPresent() ? new SiteChoice(named.get()).fitted(1) : Optional.empty();
    }
    List<SiteMatch> matches =
        questions.stream().flatMap(q -> match(q, part, words).stream()).toList();
    int best = matches.stream().mapToInt(SiteMatch::score).max().orElse(0);
    List<SiteMatch> firsts = matches.stream().filter(m -> m.score() == best).toList();
    if (firsts.isEmpty()) {
      return SiteReadings.bare(questions, part, words);
    }
    boolean reading = firsts.stream().allMatch(m -> m.question().measures().isPresent());
    return firsts.size() == 1 || reading ? firsts.stream().findFirst() : Optional.empty();
  }

  private static Optional<SiteMatch> match(SiteQuestion question, String part, Set<String> words) {
    Set<String> name = SiteWords.of(question.id() + " " + question.name());
    int named = SiteWords.shared(words, name);
    SiteChoice choice = new SiteChoice(question);
    return question.measures().isPresent()
        ? SiteReadings.in(question, part).map(r -> new SiteMatch(question, r, 10 * named + 1))
        : named > 0 ? choice.named(words, name) : choice.choice(words, 0);
  }
}
