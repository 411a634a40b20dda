package yett.worksheet.chain;

import yett.calculation.ChainLoad;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Choice;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Compares the load of a chain with its strength. Source: {@link ChainLoad}. */
final class ChainLoadSheet extends Worksheet {
  ChainLoadSheet() {
    super(Subject.CHAIN, "chain-load", "working load of a chain against its strength");
    asks(
        Chains.size(),
        reading("pull", Unit.NEWTON, "greatest pull of the drive: at the start, or stalled")
            .possible(1, 100_000),
        reading("hang", Unit.NEWTON, "tension of the hanging chain (from chain-sag)")
            .usually("0 N")
            .possible(0, 20_000),
        choice(
                "joint",
                "weakest joint in it",
                new Choice("riveted", "riveted all the way"),
                new Choice("connecting-link", "connecting link with spring clip or cotters"),
                new Choice("offset-link", "one-pitch offset link"))
            .usually("connecting-link"));
    tells(
        number("load", Unit.NEWTON, "working load").by(v -> v.of("pull") + v.of("hang")),
        number("strength", Unit.NEWTON, "minimum strength")
            .by(v -> Chains.chosen(v).minimumUltimateStrength()),
        number("factor", Unit.ONE, "strength over load")
            .by(v -> ChainLoad.factor(v.of("strength"), v.of("load"))),
        number("allowed", Unit.NEWTON, "may be worked at")
            .by(v -> ChainLoad.allowed(v.of("strength"), v.choice("joint", ChainLoad.Joint.class))),
        number("used", Unit.PERCENT, "used of that").by(v -> 100 * v.of("load") / v.of("allowed")));
    works(step("all", Unit.PERCENT).by(v -> 100));
    formula(
        "F = pull + hang; factor = S/F; may be worked at S/7 times 1 riveted, 0.8 connecting link,"
            + " 0.65 offset link; S minimum ultimate strength");
    validity(
        "New chain of full strength, oiled, straight on its wheels. S is what the standard asks"
            + " for: a catalogue's average strength is 18 % to 33 % higher and must not be put in"
            + " its place. Wear, rust and a twist take off what no formula knows.");
    source(
        Chains.SIZES
            + "; joints: Complete Guide to Chain, 1.1.1 and table 2.1; factor 7 common practice"
            + " (handbooks 6 to 10 for drives that start under load or reverse)");
    lastWord(
        "What the chain may carry is stated in its maker's data sheet; a chain that hauls"
            + " or holds a weight over people is another matter and needs an engineer.");
    notes(Cautions.CHAIN);
    says(
        when(
            v -> v.of("used") <= 100,
            "The chain is strong enough: {factor} times the load, and with this joint it may be"
                + " worked at {allowed}."),
        otherwise(
                "Too much for this chain: it may be worked at {allowed}. Find what makes the leaf"
                    + " so heavy, take a stronger chain, or another joint.")
            .warning(
                Note.warning(
                    "An overloaded chain breaks at a start or a stall. A whipping end, a leaf that"
                        + " nothing holds. Leave the gate locked off until it is put right.")));
    doubts("used", "all");
    says(
        when(
            v -> v.chose("joint", "offset-link"),
            "Better without the offset link: take out or put in pitches in pairs."));
  }
}
