package yett.knowledge;

import yett.quantity.Quantity;
import yett.quantity.Unit;

/**
 * What a measured check reads.
 *
 * @param unit the unit shown; all numbers are kept in the quantity's canonical unit
 * @param instrument row of the instrument table
 * @param procedureUncertainty standard uncertainty of how the reading is taken, canonical unit
 * @param least below this a reading is impossible, canonical unit
 * @param most above this a reading is impossible, canonical unit
 */
public record Measures(
    Quantity quantity,
    Unit unit,
    String instrument,
    double procedureUncertainty,
    double least,
    double most) {}
