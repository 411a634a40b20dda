package yett.worksheet.chain;

import yett.calculation.ChainElongation;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Choice;
import yett.worksheet.NumberWords;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * Wear of a chain: compares 100 (M - n P)/(n P) with its limit. Source: {@link ChainElongation}.
 */
final class ChainElongationSheet extends Worksheet {
  /** Elongation (%) beyond which the reading must be of another chain, or miscounted. */
  private static final double MISCOUNTED = 8;

  ChainElongationSheet() {
    super(Subject.CHAIN, "chain-elongation", "wear of a chain, and when to replace it");
    asks(
        Chains.size(),
        whole("pitches", "pitches measured; 24 or more").possible(2, 400).good(6, 400),
        reading(
                "measured",
                Unit.MILLIMETRE,
                "their length, taut, from the middle of the first pin to the middle of the last")
            .possible(10, 10_000),
        whole("teeth", "teeth of the largest sprocket").usually("12").possible(6, 200),
        choice(
                "centres",
                "distance of the wheels",
                new Choice("fixed", "sprocket and brackets stay where they are"),
                new Choice("tensioned", "a spring or weight takes up the wear by itself"))
            .usually("fixed"),
        reading("whole", Unit.METRE, "length of the whole chain")
            .possible(0.2, 100)
            .mayBeLeftOut());
    refuses(
        v -> Math.abs(v.of("elongation")) > MISCOUNTED,
        "{measured} is {off} the {new-length} of {pitches} new pitches; no wear does"
            + " that. Count the pitches again, from pin to pin, and check the number of the"
            + " chain.");
    tells(
        number("elongation", Unit.PERCENT, "elongation")
            .by(
                v ->
                    ChainElongation.percent(
                        v.metres("measured"), v.whole("pitches"), Chains.pitch(v))),
        number("limit", Unit.PERCENT, "replace at")
            .by(v -> ChainElongation.limitPercent(v.whole("teeth"), v.chose("centres", "fixed"))),
        number("new-length", Unit.MILLIMETRE, "length when new")
            .by(Unit.METRE, v -> lengthAt(v, 0)),
        number("limit-length", Unit.MILLIMETRE, "length at the limit")
            .by(Unit.METRE, v -> lengthAt(v, v.of("limit"))),
        number("pitch-now", Unit.MILLIMETRE, "pitch now")
            .by(v -> v.of("measured") / v.of("pitches")),
        number("grown", Unit.MILLIMETRE, "whole chain grew by")
            .by(Unit.METRE, v -> v.of("whole") - v.of("whole") / (1 + v.fraction("elongation")))
            .given("whole"));
    works(
        phrase("off")
            .by(
                v ->
                    NumberWords.told(Math.abs(v.of("elongation")), Unit.PERCENT)
                        + (v.of("elongation") > 0 ? " over" : " under")));
    formula(
        "e = 100 (M - n P)/(n P); limit 3 %, 1.5 % with fixed centres, never over 200/N; M"
            + " measured, n pitches, P pitch, N teeth");
    validity(
        "Taut, no offset link inside, six pitches or more: the tape's error counts the less the"
            + " more pitches there are (1/16 in is half a percent of 12 in). Measure at three"
            + " places: the part that runs over the sprocket most wears most.");
    source(
        Chains.SIZES
            + "; limits: chain makers' wear notes that refer to ASME B29.1. Beware of a printed"
            + " guide that gives 0.36 in per foot for 1.5 %: that is 3 %");
    lastWord(Chains.DECIDES);
    notes(Cautions.CHAIN);
    says(
        when(
            v -> v.of("elongation") >= v.of("limit"),
            "The chain is worn out: {elongation}, to be replaced at {limit}. Replace all of it.",
            "New links in a worn chain, or a worn sprocket under a new one, wear both quickly: look"
                + " at the sprocket's teeth too, and never join old and new."),
        when(
            v -> v.of("elongation") < 0,
            "Shorter than new: the chain was not taut, or the tape was not on the middle of"
                + " the pins. Measure again."),
        when(
            v -> v.of("elongation") > v.of("limit") * 2 / 3,
            "The chain may stay: worn {elongation}, to be replaced at {limit}; have a new one"
                + " ready."),
        otherwise("The chain may stay: worn {elongation}, to be replaced at {limit}."));
    doubts("elongation", "limit");
    says(
        when(
            v -> v.has("grown") && v.of("elongation") > 0,
            "On the whole chain the wear is {grown}, and shows as slack."));
  }

  private static double lengthAt(Values v, double percent) {
    return ChainElongation.lengthAt(percent, v.whole("pitches"), Chains.pitch(v));
  }
}
