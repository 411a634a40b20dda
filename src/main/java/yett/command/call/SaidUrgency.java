package yett.command.call;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import yett.command.diagnose.sitting.Choices;
import yett.command.diagnose.sitting.Sitting;
import yett.knowledge.Pressing;
import yett.saying.Heard;
import yett.saying.PlainWords;
import yett.saying.Thing;
import yett.wording.Wording;

/**
 * Understands how urgent it is where that is said in words: "it can wait", "the site stands open".
 * What was understood is read back, as everywhere.
 */
record SaidUrgency(Sitting sitting) {
  private static final double CLEAR = 0.5;

  private static final Pattern CAN_WAIT =
      Pattern.compile(
          "(?:(?:no|nah|well|oh|they say|she says|he says|it|its|that|this|thats|there is|theres)"
              + " )*(?:(?:can|could|will) (?:easily |surely )?wait(?: (?:until|till|for|a bit|a"
              + " while|a day|a few days)(?: \\w+){0,3})?|(?:in )?no (?:great |big |real )?(?:hurry"
              + "|rush|urgency)(?: at all)?|not (?:at all |that |very |so |really )?(?:urgent"
              + "|pressing)(?: at all)?|nothing urgent|whenever (?:you|it|they|somebody)(?:"
              + " \\w+){1,3}|take your time|(?:tomorrow|next week|monday) (?:will do|is fine|is"
              + " soon enough|is early enough|does it))",
          Pattern.CASE_INSENSITIVE);

  /**
   * The positions in the list that the words mean; none if they say that it can wait. Empty if they
   * say neither, or tell of a danger, which comes first.
   */
  Optional<List<Integer>> in(String line, List<Pressing> list) {
    if (CAN_WAIT.matcher(PlainWords.of(line)).matches()) {
      sitting.say("Taken as 0: it can wait.");
      return Optional.of(List.of());
    }
    Heard heard = sitting.ears().tellings().hear(line);
    if (!heard.dangers().isEmpty() && !onlyReported(heard)) {
      return Optional.empty();
    }
    List<String> ids = list.stream().map(Pressing::id).toList();
    List<Thing> meant =
        heard.findings().stream()
            .filter(f -> f.weight() >= CLEAR && f.thing().kind() == Thing.Kind.PRESSING)
            .map(Heard.Found::thing)
            .filter(t -> ids.contains(t.card()))
            .toList();
    if (meant.isEmpty()) {
      return Optional.empty();
    }
    List<Thing> confirmed =
        new Choices(sitting)
            .several(
                meant,
                t -> Wording.capital(list.get(ids.indexOf(t.card())).said()) + ".",
                other -> false);
    return confirmed.isEmpty()
        ? Optional.empty()
        : Optional.of(confirmed.stream().map(t -> ids.indexOf(t.card())).toList());
  }

  /** "Nobody can get out" is no news once it was reported that somebody is shut in. */
  private boolean onlyReported(Heard heard) {
    return heard.dangerThings().stream()
        .allMatch(
            t ->
                sitting
                    .moment()
                    .state()
                    .answer(t.card())
                    .filter(a -> a.answer().tells())
                    .filter(a -> !a.answer().is(first(t.card())))
                    .isPresent());
  }

  private String first(String check) {
    return sitting.base().checks().get(check).outcomes().get(0).id();
  }
}
