package yett.command.diagnose;

import java.util.Optional;
import yett.knowledge.Check;
import yett.saying.Tellings;
import yett.saying.Thing;

/** Finds which answer of a check words mean that were said about it. */
record AboutAsked(Sitting sitting) {
  /**
   * The outcome that words typed at the question of a check mean before anything else. What "it"
   * is, is said by the question, so its name is put before the words. Danger goes first.
   */
  Optional<String> before(Check check, String words) {
    boolean telling = words.codePoints().filter(Character::isLetter).count() >= 4;
    if (check.measured()
        || !telling
        || Volunteered.isPrompted(words)
        || !tellings().hear(words).dangers().isEmpty()) {
      return Optional.empty();
    }
    return tellings().hear(check.name() + " " + words.strip()).things().stream()
        .limit(1)
        .filter(t -> isOf(t, check))
        .map(Thing::outcome)
        .findFirst();
  }

  /** The outcome that words about a check probably mean. */
  Optional<String> outcome(Check check, String words) {
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
