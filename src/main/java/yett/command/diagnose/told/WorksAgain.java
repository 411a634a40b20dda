package yett.command.diagnose.told;

import java.util.function.Predicate;
import java.util.regex.Pattern;
import yett.command.diagnose.sitting.Sitting;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.Telephone;
import yett.saying.Heard;
import yett.saying.Thing;
import yett.saying.Tripped;

/** Recognises the words and answers by which a caller says that the gate works again. */
public record WorksAgain(Sitting sitting) {
  /**
   * Least weight at which words count as "it works again". It is low, because asking costs little.
   */
  private static final double LEAST = 0.5;

  /** What was done is often told beside it, and may fit a little better: "she put it on". */
  private static final double BESIDE = 0.15;

  /**
   * What says that the gate is meant, and not the people: "all well" is about whoever is shut in.
   */
  private static final Pattern OF_THE_GATE =
      Pattern.compile(
          "(?i)\\b(?:gate|it|it['\u2019]s|work(?:s|ed|ing)?|runs?|running|open(?:s|ed|ing)?"
              + "|clos(?:es?|ed|ing)|shuts?|goes|going|mov(?:es?|ed|ing))\\b");

  /**
   * Whether these words say that it works again, and fit no complaint better, and nothing else much
   * better.
   */
  public boolean tellsOfIt(String words) {
    Heard heard = sitting.ears().tellings().hear(words);
    double again = most(heard, this::saysSo);
    boolean danger = !sitting.moment().judgement().stops().isEmpty();
    return isCall()
        && (!danger || OF_THE_GATE.matcher(words).find())
        && !Tripped.again(words)
        && heard.dangers().isEmpty()
        && again >= LEAST
        && again >= most(heard, t -> t.kind() == Thing.Kind.COMPLAINT)
        && again >= most(heard, t -> true) - BESIDE;
  }

  private static double most(Heard heard, Predicate<Thing> which) {
    return heard.findings().stream()
        .filter(f -> which.test(f.thing()))
        .mapToDouble(Heard.Found::weight)
        .max()
        .orElse(0);
  }

  private boolean saysSo(Thing thing) {
    Check check = sitting.base().checks().get(thing.card());
    return check != null && Telephone.tellsItWorksAgain(check, thing.outcome());
  }

  /** Whether this outcome of a check says the same. */
  public boolean isIt(Check check, String outcome) {
    return isCall() && Telephone.tellsItWorksAgain(check, outcome);
  }

  private boolean isCall() {
    return sitting.moment().state().role() == Role.CALLER;
  }
}
