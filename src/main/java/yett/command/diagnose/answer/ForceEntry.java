package yett.command.diagnose.answer;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import yett.calculation.ForceCurve;
import yett.calculation.ForceZone;
import yett.calculation.ObstructionForce;
import yett.calculation.ObstructionForce.Verdict;
import yett.command.diagnose.screen.ForceViews;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.state.Forces;
import yett.knowledge.Check;
import yett.quantity.Quantity;
import yett.quantity.Reading;
import yett.quantity.ReadingException;
import yett.quantity.Unit;
import yett.wording.ForceWords;
import yett.worksheet.InputException;
import yett.worksheet.force.CurveFile;

/** Takes the forces measured in a proof, typed or read from the file of a meter. */
public record ForceEntry(Sitting sitting) {
  private static final Pattern LINE =
      Pattern.compile(
          "force\\s+(\\d+)(?:\\s*mm)?\\s+(\\p{Alpha}+)\\s+(.+)", Pattern.CASE_INSENSITIVE);

  private static final Pattern TYPED =
      Pattern.compile(
          "([\\d.,]+\\s*(?:N|kN|lbf)?)[\\s,;]+([\\d.,]+\\s*(?:ms|s)?)", Pattern.CASE_INSENSITIVE);

  private static final Pattern WITHOUT_TIME =
      Pattern.compile("[\\d.,]+\\s*(?:N|kN|lbf)?", Pattern.CASE_INSENSITIVE);

  /**
   * Stores the force if the line gives one, or says why not. Returns whether the line was about a
   * force.
   */
  public boolean take(Check check, String line) {
    if (!Forces.PROOFS.contains(check.id())
        || !line.strip().toLowerCase(Locale.ROOT).matches("force(\\s.*)?")) {
      return false;
    }
    if (line.strip().equalsIgnoreCase("force")) {
      sitting.show(new Block.Rows(ForceViews.rows(check, sitting.moment())));
      return true;
    }
    try {
      Event.ForceTaken taken = read(check.id(), line.strip());
      sitting.record(taken);
      Forces.of(sitting.moment().entries()).points(check.id()).stream()
          .filter(p -> p.force().gap() == taken.gap() && p.height() == taken.height())
          .forEach(p -> sitting.say(ForceWords.line(p) + "."));
    } catch (InputException e) {
      sitting.say(e.getMessage());
    }
    return true;
  }

  /** Whether an answer contradicts the meter; if so, that is said. */
  public boolean forbids(Check check, Optional<Answer> answer) {
    boolean forbidden =
        answer.filter(a -> a.is(Check.PASS)).isPresent()
            && Forces.PROOFS.contains(check.id())
            && Forces.of(sitting.moment().entries()).forbid(check.id());
    if (forbidden) {
      sitting.say(whyNot(Forces.of(sitting.moment().entries()), check.id()));
    }
    return forbidden;
  }

  private static String whyNot(Forces forces, String proof) {
    return ForceWords.over(forces, proof).isPresent()
        ? "According to the meter the force is over the limits, so this proof does not pass, even if"
            + " the leaf reversed. If a reading was typed wrong: back. Otherwise it fails; the"
            + " sheet gives the force."
        : forces.owed(proof).stream()
            .map(ForceWords::line)
            .collect(
                Collectors.joining(
                    "; ",
                    "Before the repair the force was over its limit at ",
                    ". Measure there again, three times each, before this proof can pass. Without a"
                        + " meter: later, and the gate stays out of use."));
  }

  static Event.ForceTaken read(String proof, String line) {
    Matcher words = LINE.matcher(line);
    if (!words.matches()) {
      throw new InputException("Type " + ForceViews.FORM);
    }
    int gap = words.group(1).length() > 4 ? 0 : Integer.parseInt(words.group(1));
    Event.Height height =
        Event.Height.of(words.group(2))
            .orElseThrow(
                () ->
                    new InputException("Heights are low, middle and top. Type " + ForceViews.FORM));
    if (!Event.ForceTaken.GAPS.contains(gap)) {
      throw new InputException("The gaps to measure at are 50, 300 and 500 mm.");
    }
    if (WITHOUT_TIME.matcher(words.group(3).strip()).matches()) {
      throw new InputException(
          "How long did it stay above 150 N? Type it behind the force, such as: "
              + line
              + (line.matches(".*\\d") ? " N" : "")
              + " 420 ms; 0 ms if it never did.");
    }
    Matcher typed = TYPED.matcher(words.group(3).strip());
    return typed.matches()
        ? typed(proof, gap, height, typed.group(1), typed.group(2))
        : recorded(proof, gap, height, words.group(3).strip());
  }

  private static Event.ForceTaken typed(
      String proof, int gap, Event.Height height, String force, String time) {
    try {
      double peak = Reading.parse(force, Quantity.FORCE, Unit.NEWTON).value();
      double above = Reading.parse(time, Quantity.TIME, Unit.MILLISECOND).value();
      if (peak > ObstructionForce.METER_RANGE || above > ObstructionForce.RELEASE_PERIOD) {
        throw new InputException("A meter shows up to 2000 N, and the time above 150 N in 5 s.");
      }
      return new Event.ForceTaken(proof, gap, height, peak, above, Optional.empty(), List.of());
    } catch (ReadingException e) {
      throw new InputException(e.getMessage());
    }
  }

  private static Event.ForceTaken recorded(
      String proof, int gap, Event.Height height, String file) {
    ForceCurve curve = CurveFile.read(file);
    ObstructionForce force = new ObstructionForce(curve, ForceZone.CLOSING_GAP);
    if (force.contact().isEmpty()
        || force.beginning() == Verdict.OPEN
        || force.zeroing() == Verdict.OPEN
        || force.dynamic() == Verdict.OPEN) {
      throw new InputException(
          "This record cannot be used: the meter was not hit, not zeroed, or started or"
              + " stopped too late. Look at it with calculate obstruction-force, and record"
              + " again.");
    }
    if (curve.peak().force() > ObstructionForce.METER_RANGE) {
      throw new InputException("A meter shows up to 2000 N. Check the units in the file.");
    }
    return new Event.ForceTaken(
        proof,
        gap,
        height,
        curve.peak().force(),
        force.dynamicPeriod(),
        force.afterRelease().map(f -> Math.max(0, f)),
        Event.ForceTaken.thinned(curve, force.contact().orElseThrow()));
  }
}
