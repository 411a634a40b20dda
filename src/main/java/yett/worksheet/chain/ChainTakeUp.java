package yett.worksheet.chain;

import java.util.OptionalDouble;
import yett.calculation.ChainSag;
import yett.calculation.ChainShortening;
import yett.calculation.Range;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * How much chain to take up for a wanted sag, d = 8 (s1² - s2²)/(3 L), and how many links that is.
 * Source: {@link ChainSag#takeUp}, {@link ChainShortening}.
 */
final class ChainTakeUp extends Worksheet {
  ChainTakeUp() {
    super(Subject.CHAIN, "chain-take-up", "how much to take up, and how many links that is");
    asks(
        Chains.size(),
        Chains.span(),
        Chains.sag("sag", "sag now, at mid-span"),
        Chains.sag("wanted", "sag wanted; without it the middle of what is usual").mayBeLeftOut(),
        reading("thread", Unit.MILLIMETRE, "thread left on the tension bolts, both together")
            .possible(0, 1000)
            .mayBeLeftOut());
    tells(
        number("wanted-sag", Unit.MILLIMETRE, "sag wanted")
            .by(Unit.METRE, v -> v.has("wanted") ? v.metres("wanted") : usual(v)),
        number("take-up", Unit.MILLIMETRE, "length to take up")
            .by(
                Unit.METRE,
                v -> ChainSag.takeUp(v.of("span"), v.metres("sag"), v.metres("wanted-sag"))),
        number("links", Unit.ONE, "pitches to take out")
            .by(v -> shortening(v).pitches())
            .when(v -> v.of("take-up") >= 0),
        number("sag-after-links", Unit.MILLIMETRE, "sag after that")
            .by(Unit.METRE, v -> after(v).getAsDouble())
            .given("links"),
        number("bolts", Unit.MILLIMETRE, "rest, by the bolts")
            .by(Unit.METRE, v -> shortening(v).byBolts())
            .given("links"),
        number("tension", Unit.NEWTON, "tension then, catenary")
            .by(
                v ->
                    ChainSag.catenaryTension(
                        Chains.chosen(v).weightPerLength(), v.of("span"), v.metres("wanted-sag"))));
    works(
        step("let-out", Unit.MILLIMETRE).by(v -> -v.of("take-up")),
        step("pair", Unit.MILLIMETRE).by(Unit.METRE, v -> 2 * Chains.pitch(v)),
        step("by-links", Unit.MILLIMETRE).by(Unit.METRE, v -> v.of("links") * Chains.pitch(v)),
        phrase("pitches").by(v -> Long.toString(Math.round(v.of("links")))),
        phrase("pairs")
            .by(v -> Math.round(v.of("links") / 2) + (v.of("links") == 2 ? " pair" : " pairs")));
    formula(
        "d = 8 (s1^2 - s2^2)/(3 L); pitches n = 2 floor(d/(2 p)); rest d - n p by the bolts; sag"
            + " after links sqrt(s1^2 - 3 L n p/8); L span, s sag, p pitch");
    validity(
        "Level run, sag up to 10 % of the span. Links come out in pairs of pitches: one alone needs"
            + " an offset link, which is a third weaker. A chain beyond its wear limit is replaced,"
            + " not shortened (chain-elongation).");
    source(Chains.PARABOLA + "; offset link: Complete Guide to Chain, table 2.1; " + Chains.SIZES);
    lastWord(Chains.DECIDES);
    notes(Cautions.CHAIN, Cautions.CHAIN_OPEN);
    says(
        when(
            v -> !v.has("links"),
            "The chain is tighter than that: let out {let-out} with the bolts."),
        when(v -> v.of("links") == 0, "Turn the tension bolts in by {bolts}."),
        otherwise(
            "Take out {pitches} pitches ({pairs} of an inner and an outer link), never an odd"
                + " number, and take up the last {bolts} with the bolts.",
            "Measure the wear first: a worn chain is replaced. Then the limits are off by up to"
                + " {by-links}; teach them again, and look where the marker sits."));
    says(
        when(v -> !v.has("links") || v.of("links") > 0),
        when(
            v -> v.of("take-up") < v.of("pair"),
            "No links come out: two pitches are {pair}, and one alone would need an offset link."),
        otherwise("Their thread is long enough; no link has to come out."));
    says(
        when(v -> !v.has("links") || !v.has("thread") || v.of("thread") >= v.of("bolts")),
        when(
            v -> v.of("links") == 0,
            "The thread does not go so far: slacken the bolts until two pitches can come out, or"
                + " fit a chain that is two pitches shorter."),
        otherwise("The thread that is left does not do that rest."));
  }

  /** The middle (m) of the usual range of sag. */
  private static double usual(Values v) {
    Range usual = ChainSag.usualSag(v.of("span"));
    return (usual.low() + usual.high()) / 2;
  }

  /** The shortening; by the tension bolts alone if their thread is known to be long enough. */
  private static ChainShortening shortening(Values v) {
    double takeUp = v.metres("take-up");
    return v.has("thread") && v.metres("thread") >= takeUp
        ? new ChainShortening(0, takeUp)
        : ChainShortening.of(takeUp, Chains.pitch(v));
  }

  private static OptionalDouble after(Values v) {
    double shorter = v.metres("by-links");
    return ChainSag.sagAfterChange(v.of("span"), v.metres("sag"), -shorter);
  }
}
