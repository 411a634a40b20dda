package yett.worksheet.chain;

import java.util.OptionalDouble;
import yett.calculation.ChainSag;
import yett.calculation.ChainShortening;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * The sag that is left after links are taken out: s2 = √(s1² - 3 L n p/8), if the chain still
 * reaches. Source: {@link ChainSag#sagAfterChange}.
 */
final class ChainLinks extends Worksheet {
  ChainLinks() {
    super(Subject.CHAIN, "chain-links", "how the chain hangs once links are taken out");
    asks(
        Chains.size(),
        Chains.span(),
        Chains.sag("sag", "sag now, at mid-span"),
        whole("links", "pitches to take out").usually("2").possible(1, 40));
    tells(
        number("shorter", Unit.MILLIMETRE, "chain is shorter by")
            .by(Unit.METRE, v -> v.of("links") * Chains.pitch(v)),
        number("needed-sag", Unit.MILLIMETRE, "sag it takes")
            .by(
                Unit.METRE,
                v -> ChainShortening.leastSag(v.of("span"), v.whole("links"), Chains.pitch(v))),
        number("sag-after", Unit.MILLIMETRE, "sag after that")
            .by(Unit.METRE, v -> after(v).getAsDouble())
            .when(v -> after(v).orElse(0) > 0),
        number("tension-after", Unit.NEWTON, "tension after that")
            .by(
                v ->
                    ChainSag.catenaryTension(
                        Chains.chosen(v).weightPerLength(), v.of("span"), v.metres("sag-after")))
            .given("sag-after"),
        number("usual-low", Unit.MILLIMETRE, "usual sag from")
            .by(Unit.METRE, v -> Chains.hang(v).usualSag().low()),
        number("usual-high", Unit.MILLIMETRE, "usual sag to")
            .by(Unit.METRE, v -> Chains.hang(v).usualSag().high()));
    works(
        step("fewer", Unit.ONE).by(v -> v.of("links") - 1),
        step("more", Unit.ONE).by(v -> v.of("links") + 1));
    formula(
        "s2 = sqrt(s1^2 - 3 L n p/8), only if s1 >= sqrt(3 L n p/8); tension by the catenary; L"
            + " span, s sag, n pitches, p pitch");
    validity(
        "Level run, sag up to 10 % of the span, brackets where they are. With the tension bolts"
            + " slackened first, more links come out.");
    source(
        Chains.PARABOLA
            + "; offset link: Complete Guide to Chain, table 2.1; usual sag as chain-sag has it,"
            + " down to where the chain pulls with a fifth of its working load; "
            + Chains.SIZES);
    lastWord(Chains.DECIDES);
    notes(Cautions.CHAIN, Cautions.CHAIN_OPEN);
    says(
        when(
            v -> !v.has("sag-after"),
            "The chain would not close: it takes a sag of {needed-sag} to give so much.",
            "Slacken the tension bolts first, or use the bolts alone."),
        when(
            v -> v.of("sag-after") < v.of("usual-low"),
            "It would be too tight: {sag-after} where {usual-low} to {usual-high} is usual.",
            "Let the bolts out as far as the rest needs, or take out fewer."),
        when(
            v -> v.of("sag-after") > v.of("usual-high"),
            "It still hangs {sag-after} where {usual-low} to {usual-high} is usual; the bolts or"
                + " more links take up the rest (chain-take-up)."),
        otherwise("It then hangs {sag-after}, as usual ({usual-low} to {usual-high})."));
    says(
        when(
            v -> v.whole("links") == 1,
            "An odd number of pitches needs an offset link, which is a third weaker: take out 2 or"
                + " none."),
        when(
            v -> v.whole("links") % 2 == 1,
            "An odd number of pitches needs an offset link, which is a third weaker: take out"
                + " {fewer} or {more}."));
  }

  private static OptionalDouble after(Values v) {
    double shorter = v.metres("shorter");
    return ChainSag.sagAfterChange(v.of("span"), v.metres("sag"), -shorter);
  }
}
