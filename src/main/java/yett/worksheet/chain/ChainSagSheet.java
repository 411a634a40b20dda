package yett.worksheet.chain;

import yett.calculation.ChainSag;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Choice;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * Tension of a chain from its sag, by parabola and by catenary: H = w L²/(8 s); H = w a with s = a
 * (cosh(L/2a) - 1). Source: {@link ChainSag}.
 */
final class ChainSagSheet extends Worksheet {
  /** Largest sag (% of the span) for which the parabola is used. */
  private static final double SHALLOW = 10;

  private static final String OVERLOAD =
      "{load} of what it may be worked at: let it hang lower or hold it up between the supports,"
          + " and see chain-load.";

  ChainSagSheet() {
    super(Subject.CHAIN, "chain-sag", "tension of a hanging chain, and whether it hangs right");
    asks(
        Chains.size(),
        Chains.span(),
        Chains.sag("sag", "how far it hangs or moves at mid-span"),
        choice(
                "read-as",
                "what that is",
                new Choice("sag", "sag below the straight line, hanging free"),
                new Choice("movement", "total movement by hand, up and down"))
            .usually("sag"),
        reading("pull", Unit.NEWTON, "greatest pull of the drive, at the start or stalled")
            .possible(1, 100_000)
            .mayBeLeftOut());
    refuses(
        v -> sag(v) > v.of("span"),
        "The sag is more than the span. Look at the units: sag in mm or in, span in m or ft.");
    tells(
        number("parabola", Unit.NEWTON, "tension, parabola")
            .by(v -> ChainSag.tension(weight(v), v.of("span"), sag(v))),
        number("catenary", Unit.NEWTON, "tension, catenary")
            .by(v -> ChainSag.catenaryTension(weight(v), v.of("span"), sag(v))),
        number("at-supports", Unit.NEWTON, "tension at the supports")
            .by(v -> ChainSag.catenaryGreatestTension(weight(v), v.of("span"), sag(v))),
        number("static-sag", Unit.MILLIMETRE, "sag, hanging free")
            .by(Unit.METRE, ChainSagSheet::sag),
        number("movement", Unit.MILLIMETRE, "movement by hand")
            .by(Unit.METRE, v -> ChainSag.movementForSag(sag(v))),
        number("usual-low", Unit.MILLIMETRE, "usual sag from")
            .by(Unit.METRE, v -> ChainSag.usualSag(v.of("span")).low()),
        number("usual-high", Unit.MILLIMETRE, "usual sag to")
            .by(Unit.METRE, v -> ChainSag.usualSag(v.of("span")).high()),
        number("tight-below", Unit.MILLIMETRE, "too tight below")
            .by(Unit.METRE, v -> Chains.hang(v).usualSag().low()),
        number("load", Unit.PERCENT, "of its working load")
            .by(
                v ->
                    100
                        * (v.of("at-supports") + (v.has("pull") ? v.of("pull") : 0))
                        / Chains.hang(v).workingLoad()),
        number("slack-length", Unit.MILLIMETRE, "chain beyond the span")
            .by(Unit.METRE, v -> ChainSag.catenaryLength(v.of("span"), sag(v)) - v.of("span")));
    works(step("ratio", Unit.PERCENT).by(v -> 100 * sag(v) / v.of("span")));
    formula(
        "parabola H = w L^2/(8 s); catenary H = w a, s = a (cosh(L/2a) - 1), at the supports w (a +"
            + " s); movement M = 4 s/sqrt(3); usual M = 2 % to 4 % of L; too tight below the usual"
            + " sag if the tension is over a fifth of the working load (minimum strength/7 times"
            + " 0.8, chain-load); load (w (a + s) + pull)/working load; chain beyond the span 8"
            + " s^2/(3 L); w weight per length, L span, s sag");
    validity(
        "Supports at one height. Parabola up to a sag of 10 % of the span (there 1.3 % low), the"
            + " catenary beyond. In mid-travel two runs share the slack: measure where the site's"
            + " record says, usually with the gate closed.");
    source(
        Chains.PARABOLA
            + "; usual movement: Complete Guide to Chain, 7.1.2 (4 % ordinary drives, 2 % centres"
            + " over 1 m or reversing); a fifth of the working load as a tension that does no harm"
            + " is a considered judgement; "
            + Chains.SIZES);
    lastWord(Chains.DECIDES);
    notes(Cautions.CHAIN);
    says(
        when(
            v -> v.of("static-sag") > v.of("usual-high"),
            "The chain is slack: usual here is {usual-low} to {usual-high}.",
            "A slack chain slaps, jumps teeth and lets the limits drift; chain-take-up shows"
                + " how much to take out."),
        when(
            v -> v.of("static-sag") >= v.of("usual-low"),
            "The chain hangs as it should: usual here is {usual-low} to {usual-high}."),
        when(
            v -> v.of("static-sag") >= v.of("tight-below"),
            "The chain hangs less than the usual {usual-low} to {usual-high}, but over so short a"
                + " run it pulls with {catenary} only, which harms nothing: leave it as it is."),
        otherwise(
            "The chain is too tight: usual here is {usual-low} to {usual-high}.",
            "It pulls with {catenary} on brackets, idlers and the motor's bearings all day; let it"
                + " out to {usual-low} or more."));
    doubts("static-sag", "tight-below", "usual-high");
    says(
        when(
            v -> v.of("load") > 100 && v.has("pull"),
            "With the pull of the drive it carries " + OVERLOAD),
        when(v -> v.of("load") > 100, "It carries " + OVERLOAD));
    says(
        when(v -> v.of("ratio") > SHALLOW, "At a sag of {ratio} of the span the catenary counts."));
  }

  private static double weight(Values v) {
    return Chains.chosen(v).weightPerLength();
  }

  /** The free sag (m). */
  private static double sag(Values v) {
    double read = v.metres("sag");
    return v.chose("read-as", "movement") ? ChainSag.sagForMovement(read) : read;
  }
}
