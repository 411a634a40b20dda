package yett.command.diagnose.told;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.command.common.HeardAnswer;
import yett.command.common.ListChoice;
import yett.command.common.Words;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.saying.Tellings;
import yett.saying.Thing;

/** Finds which answer of a check words mean that were said about it. */
public record AboutAsked(Sitting sitting) {
  private static final Pattern IT = Pattern.compile("(?i)it(?:['\u2019]?s)?\\s+(.+)");

  /**
   * The outcome that words typed at the question of a check mean before anything else. What "it"
   * is, is said by the question, so its name is put before the words. Danger goes first.
   */
  Optional<String> before(Check check, String words) {
    boolean telling = words.codePoints().filter(Character::isLetter).count() >= 4;
    if (check.measured()
        || !telling
        || Words.isPrompted(words)
        || !tellings().hear(words).dangers().isEmpty()) {
      return Optional.empty();
    }
    return tellings().hear(named(check.name(), words)).things().stream()
        .limit(1)
        .filter(t -> isOf(t, check))
        .map(Thing::outcome)
        .findFirst();
  }

  /** Words about "it" with the name of what is asked for; any others after the name. */
  public static String named(String name, String words) {
    Matcher it = IT.matcher(words.strip());
    return name + " " + (it.matches() ? it.group(1) : words.strip());
  }

  /** Whether words are said of "it". */
  public static boolean isOfIt(String words) {
    return IT.matcher(words.strip()).matches();
  }

  /**
   * The answer that words typed at the question of a check mean before anything else; where several
   * may be true, each part of the words is heard by itself.
   */
  public Optional<Answer.Chosen> answer(Check check, String words) {
    List<String> parts = check.several() ? ListChoice.apart(words) : List.of();
    List<String> meant =
        parts.stream()
            .map(
                part ->
                    HeardAnswer.to(check, part)
                        .answer()
                        .flatMap(Answer::choice)
                        .or(() -> before(check, part)))
            .flatMap(Optional::stream)
            .distinct()
            .toList();
    return meant.size() > 1 && Answer.Chosen.canBe(check, meant)
        ? Optional.of(Answer.Chosen.of(check, meant))
        : before(check, words).map(Answer.Chosen::new);
  }

  /** The outcome that words about a check probably mean. */
  public Optional<String> outcome(Check check, String words) {
    return tellings().hear(words).things().stream()
        .filter(t -> isOf(t, check))
        .map(Thing::outcome)
        .findFirst();
  }

  private static boolean isOf(Thing thing, Check check) {
    return thing.kind() == Thing.Kind.OUTCOME && thing.card().equals(check.id());
  }

  private Tellings tellings() {
    return sitting.ears().tellings();
  }
}
