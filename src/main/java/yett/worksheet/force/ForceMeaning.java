package yett.worksheet.force;

import java.util.function.Function;
import yett.calculation.ForceZone;
import yett.calculation.ObstructionForce;
import yett.calculation.ObstructionForce.Verdict;
import yett.quantity.Unit;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/** Declares what a recorded force means at the gate. */
abstract class ForceMeaning extends Worksheet {
  private static final Note OUT_OF_USE =
      Note.warning(
          "The gate pushes harder or longer than the limits allow. Crushing, broken bones. Take it"
              + " out of use, locked off and signed, until a new record is within them.");

  private static final Function<Values, ObstructionForce> FORCE =
      v ->
          new ObstructionForce(
              CurveFile.read(v.asTyped("curve")), v.choice("zone", ForceZone.class));

  ForceMeaning(String id, String title) {
    super(Subject.FORCE, id, title);
    works(
        phrase("where").by(v -> force(v).zone().where()),
        step("recorded", Unit.SECOND)
            .by(v -> force(v).curve().end() - force(v).contact().orElseThrow()),
        step("first", Unit.NEWTON).by(v -> force(v).curve().samples().get(0).force()),
        step("gap", Unit.MILLISECOND).by(v -> 1000 * force(v).curve().largestGap()));
    saysOfLimits();
    saysOfMeter();
  }

  static ObstructionForce force(Values v) {
    return v.once(FORCE);
  }

  private void saysOfLimits() {
    says(
        when(
            v -> force(v).verdict() == Verdict.MET,
            "This record is within the limits {where}; the gate has passed when all points have,"
                + " three times each."),
        when(v -> force(v).verdict() == Verdict.MISSED).warning(OUT_OF_USE),
        when(
            v -> force(v).contact().isEmpty(),
            "The force never rose above 25 N: the meter was not hit, or was not zeroed. Record"
                + " again."),
        when(
            v -> force(v).dynamic() == Verdict.OPEN || force(v).release() == Verdict.OPEN,
            "Within the limits as far as it goes, but the record ends {recorded} after contact."
                + " Record 5 s and more."),
        otherwise("Within the limits as far as the samples show."));
    says(
        when(
            v -> force(v).peak() == Verdict.MISSED,
            "The peak of {peak} is over the {peak-limit} allowed {where}: less speed before the"
                + " end, a softer edge, or a reversal that begins sooner."));
    says(
        when(
            v -> force(v).dynamic() == Verdict.MISSED,
            "It stays above 150 N for {above-150}, longer than 0.75 s: the drive reverses too late"
                + " or not at all."));
    says(
        when(
            v -> force(v).release() == Verdict.MISSED,
            "After 5 s there are still {after-5-s}, where 25 N are allowed: the leaf does not let"
                + " go, it has to back off."));
  }

  /** Adds the statements about the meter and its record, independent of the limits. */
  private void saysOfMeter() {
    says(
        when(
            v -> force(v).curve().peak().force() >= ObstructionForce.METER_RANGE,
            "The meter's range ends at 2000 N: the true peak may be higher than the record."));
    says(
        when(
            v -> force(v).zeroing() == Verdict.OPEN,
            "Before the contact the meter shows a pull, so every force was higher than recorded:"
                + " zero it with nothing on it, and record again."));
    says(
        when(
            v -> force(v).beginning() == Verdict.OPEN,
            "The record begins at {first}, inside the impact or with a meter that was not"
                + " zeroed: what came before is not in it. Zero the meter, start it before the leaf"
                + " arrives, and record again."));
    says(
        when(v -> force(v).sampling() != Verdict.OPEN),
        when(
            v -> force(v).curve().rate() < ObstructionForce.LEAST_RATE,
            "With {rate} the record is slower than the 200 samples a second of the standard's"
                + " meter: a peak can hide between two samples."),
        otherwise(
            "For {gap} there is no sample, where the standard's meter takes one every 5 ms: a peak"
                + " can hide in the gap. Record again, or export all samples."));
  }
}
