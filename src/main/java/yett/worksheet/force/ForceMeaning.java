package yett.worksheet.force;

import static yett.worksheet.Tell.both;
import static yett.worksheet.Tell.tell;

import yett.calculation.ForceCurve;
import yett.calculation.ObstructionForce;
import yett.calculation.ObstructionForce.Verdict;
import yett.quantity.Unit;
import yett.worksheet.Meaning;
import yett.worksheet.Note;

/** What a recorded force means at the gate. */
final class ForceMeaning {
  private static final Note OUT_OF_USE =
      Note.warning(
          "The gate pushes harder or longer than the limits allow. Crushing, broken bones. Take it"
              + " out of use, locked off and signed, until a new record is within them.");

  private ForceMeaning() {}

  static Meaning of(ObstructionForce force) {
    Meaning meaning =
        switch (force.verdict()) {
          case MET ->
              Meaning.of(
                  "This record is within the limits "
                      + force.zone().where()
                      + "; the gate has passed when all points have, three times each.");
          case MISSED -> missed(force).with(OUT_OF_USE);
          case OPEN -> open(force);
        };
    return withMeter(meaning, force);
  }

  private static Meaning missed(ObstructionForce force) {
    Meaning meaning = Meaning.of();
    if (force.peak() == Verdict.MISSED) {
      meaning =
          meaning.and(
              "The peak of "
                  + newtons(force.curve().peak().force())
                  + " is over the "
                  + newtons(force.zone().peakLimit())
                  + " allowed "
                  + force.zone().where()
                  + ": less speed before the end, a softer edge, or a reversal that begins sooner.");
    }
    if (force.dynamic() == Verdict.MISSED) {
      meaning =
          meaning.and(
              "It stays above 150 N for "
                  + tell(force.dynamicPeriod(), Unit.SECOND)
                  + ", longer than 0.75 s: the drive reverses too late or not at all.");
    }
    if (force.release() == Verdict.MISSED) {
      meaning =
          meaning.and(
              "After 5 s there are still "
                  + newtons(force.afterRelease().orElseThrow())
                  + ", where 25 N are allowed: the leaf does not let go, it has to back off.");
    }
    return meaning;
  }

  private static Meaning open(ObstructionForce force) {
    if (force.contact().isEmpty()) {
      return Meaning.of(
          "The force never rose above 25 N: the meter was not hit, or was not zeroed. Record"
              + " again.");
    }
    return force.dynamic() == Verdict.OPEN || force.release() == Verdict.OPEN
        ? Meaning.of(
            "Within the limits as far as it goes, but the record ends "
                + tell(force.curve().end() - force.contact().orElseThrow(), Unit.SECOND)
                + " after contact. Record 5 s and more.")
        : Meaning.of("Within the limits as far as the samples tell.");
  }

  private static Meaning withMeter(Meaning meaning, ObstructionForce force) {
    ForceCurve curve = force.curve();
    Meaning all = meaning;
    if (curve.peak().force() >= ObstructionForce.METER_RANGE) {
      all =
          all.and("The meter's range ends at 2000 N: the true peak may be higher than the record.");
    }
    if (force.zeroing() == Verdict.OPEN) {
      all =
          all.and(
              "Before the contact the meter shows a pull, so every force was higher than recorded:"
                  + " zero it with nothing on it, and record again.");
    }
    if (force.beginning() == Verdict.OPEN) {
      all =
          all.and(
              "The record begins at "
                  + newtons(curve.samples().get(0).force())
                  + ", inside the blow or with a meter that was not zeroed: what came before is not"
                  + " in it. Zero the meter, start it before the leaf arrives, and record again.");
    }
    return force.sampling() == Verdict.OPEN ? all.and(hidden(curve)) : all;
  }

  private static String hidden(ForceCurve curve) {
    return curve.rate() < ObstructionForce.LEAST_RATE
        ? "With "
            + tell(curve.rate(), Unit.HERTZ)
            + " the record is slower than the 200 samples a second of the standard's meter: a peak"
            + " can hide between two samples."
        : "For "
            + tell(1000 * curve.largestGap(), Unit.MILLISECOND)
            + " there is no sample, where the standard's meter takes one every 5 ms: a peak can hide"
            + " in the gap. Record again, or export all samples.";
  }

  private static String newtons(double newtons) {
    return both(newtons, Unit.NEWTON, Unit.POUND_FORCE);
  }
}
