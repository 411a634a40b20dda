package yett.command.diagnose.site;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import yett.command.common.HeardAnswer;
import yett.interview.event.Answer;
import yett.knowledge.SiteQuestion;

/** Finds readings in a line that describes a gate. */
final class SiteReadings {
  private static final Pattern BARE = Pattern.compile("[^\\d-]+\\s(-?\\d+(?:[.,]\\d+)?)");

  private SiteReadings() {}

  /** Whether the text is a reading of this question and nothing else. */
  static boolean is(SiteQuestion question, String text) {
    return question
        .measures()
        .flatMap(m -> HeardAnswer.reading(m, text).answer())
        .flatMap(Answer::reading)
        .isPresent();
  }

  /** The reading in a part of a line, perhaps beside the name of its question. */
  static Optional<String> in(SiteQuestion question, String part) {
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

  /** A name with a bare number, as in "temperature -3", if it names only one reading. */
  static Optional<SiteMatch> bare(List<SiteQuestion> questions, String part, Set<String> words) {
    Matcher number = BARE.matcher(part);
    if (!number.matches()) {
      return Optional.empty();
    }
    List<SiteQuestion> named =
        questions.stream()
            .filter(q -> q.measures().isPresent())
            .filter(q -> SiteWords.shared(words, SiteWords.of(q.id() + " " + q.name())) > 0)
            .toList();
    return named.size() == 1
        ? HeardAnswer.reading(named.get(0).measures().get(), number.group(1))
            .answer()
            .flatMap(Answer::reading)
            .map(r -> new SiteMatch(named.get(0), r.typed(), 10))
        : Optional.empty();
  }
}
