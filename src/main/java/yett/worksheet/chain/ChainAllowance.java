package yett.worksheet.chain;

import yett.calculation.ChainSag;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** The usual sag and hand movement of a chain over a span. Source: {@link ChainSag#usualSag}. */
final class ChainAllowance extends Worksheet {
  ChainAllowance() {
    super(Subject.CHAIN, "chain-allowance", "how far a chain of that span may hang");
    asks(Chains.span());
    tells(
        number("sag-low", Unit.MILLIMETRE, "usual sag from")
            .by(Unit.METRE, v -> ChainSag.usualSag(v.of("span")).low()),
        number("sag-high", Unit.MILLIMETRE, "usual sag to")
            .by(Unit.METRE, v -> ChainSag.usualSag(v.of("span")).high()),
        number("movement-low", Unit.MILLIMETRE, "movement by hand from")
            .by(Unit.METRE, v -> ChainSag.usualMovement(v.of("span")).low()),
        number("movement-high", Unit.MILLIMETRE, "movement by hand to")
            .by(Unit.METRE, v -> ChainSag.usualMovement(v.of("span")).high()));
    formula("movement M = 2 % to 4 % of L, sag s = M sqrt(3)/4 = 0.433 M; L span");
    validity(
        "A level run. Movement is up and down together, pushed until the chain is straight; it is"
            + " not the sag, and some tables mix the two up.");
    source(
        "Complete Guide to Chain, 7.1.2: 4 % of the span for ordinary drives, 2 % where centres are"
            + " over 1 m, starts are heavy or motion reverses; geometry of the parabola");
    lastWord(Chains.DECIDES);
    notes(Cautions.CHAIN);
    says(
        "With a string from support to support the lowest link hangs {sag-low} to {sag-high} below"
            + " it; by hand it moves {movement-low} to {movement-high}, up and down together.",
        "A gate reverses often, so set it to the low end, but not tighter.");
  }
}
