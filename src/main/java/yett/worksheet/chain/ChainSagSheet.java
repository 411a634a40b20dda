package yett.worksheet.chain;

import static yett.worksheet.Tell.both;
import static yett.worksheet.Tell.percent;

import java.util.List;
import java.util.Optional;
import yett.calculation.ChainHang;
import yett.calculation.ChainSag;
import yett.calculation.Range;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Choice;
import yett.worksheet.Doubt;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.InputException;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * Tension of a chain from its sag, by parabola and by catenary: H = w L²/(8 s); H = w a with s = a
 * (cosh(L/2a) - 1). Source: {@link ChainSag}.
 */
final class ChainSagSheet extends Worksheet {
  private static final Choice HANG = new Choice("sag", "sag below the straight line, hanging free");
  private static final Choice MOVEMENT =
      new Choice("movement", "total movement by hand, up and down");

  /** s/L up to which the parabola is taken. */
  private static final double SHALLOW = 0.1;

  ChainSagSheet() {
    super(Subject.CHAIN, "chain-sag", "tension of a hanging chain, and whether it hangs right");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Chains.size(),
        Chains.span(),
        Chains.sag("sag", "how far it hangs or moves at mid-span"),
        Input.choice("read-as", "what that is", HANG, MOVEMENT).usually(HANG.id()),
        Input.reading("pull", Unit.NEWTON, "greatest pull of the drive, at the start or stalled")
            .possible(1, 100_000)
            .mayBeLeftOut());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("parabola", Unit.NEWTON, "tension, parabola"),
        Output.reading("catenary", Unit.NEWTON, "tension, catenary"),
        Output.reading("at-supports", Unit.NEWTON, "tension at the supports"),
        Output.reading("static-sag", Unit.MILLIMETRE, "sag, hanging free"),
        Output.reading("movement", Unit.MILLIMETRE, "movement by hand"),
        Output.reading("usual-low", Unit.MILLIMETRE, "usual sag from"),
        Output.reading("usual-high", Unit.MILLIMETRE, "usual sag to"),
        Output.reading("tight-below", Unit.MILLIMETRE, "too tight below"),
        Output.reading("load", Unit.PERCENT, "of its working load"),
        Output.reading("slack-length", Unit.MILLIMETRE, "chain beyond the span"));
  }

  @Override
  public String formula() {
    return "parabola H = w L^2/(8 s); catenary H = w a, s = a (cosh(L/2a) - 1), at the supports w (a"
        + " + s); movement M = 4 s/sqrt(3); usual M = 2 % to 4 % of L; too tight below the"
        + " usual sag if the tension is over a fifth of the working load (minimum strength/7 times"
        + " 0.8, chain-load); load (w (a + s) + pull)/working load; chain beyond the span 8"
        + " s^2/(3 L); w weight per length, L span, s sag";
  }

  @Override
  public String validity() {
    return "Supports at one height. Parabola up to a sag of 10 % of the span (there 1.3 % low), the"
        + " catenary beyond. In mid-travel two runs share the slack: measure where the site's record"
        + " says, usually with the gate closed.";
  }

  @Override
  public String source() {
    return Chains.PARABOLA
        + "; usual movement: Complete Guide to Chain, 7.1.2 (4 % ordinary drives, 2 % centres over 1"
        + " m or reversing); a fifth of the working load as a tension that does no harm is a considered"
        + " judgement; "
        + Chains.SIZES;
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(Chains.DECIDES);
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.CHAIN);
  }

  @Override
  protected Results work(Entries entries) {
    double weight = Chains.chosen(entries).weightPerLength();
    double span = entries.in("span", Unit.METRE);
    double sag = sag(entries);
    if (sag > span) {
      throw new InputException(
          "The sag is more than the span. Look at the units: sag in mm or in, span in m or ft.");
    }
    Range usual = ChainSag.usualSag(span);
    ChainHang hang = new ChainHang(Chains.chosen(entries), span);
    double pull = entries.has("pull") ? entries.in("pull", Unit.NEWTON) : 0;
    double atSupports = ChainSag.catenaryGreatestTension(weight, span, sag);
    return new Results()
        .with("parabola", ChainSag.tension(weight, span, sag), Unit.NEWTON)
        .with("catenary", ChainSag.catenaryTension(weight, span, sag), Unit.NEWTON)
        .with("at-supports", atSupports, Unit.NEWTON)
        .with("static-sag", sag, Unit.METRE)
        .with("movement", ChainSag.movementForSag(sag), Unit.METRE)
        .with("usual-low", usual.low(), Unit.METRE)
        .with("usual-high", usual.high(), Unit.METRE)
        .with("tight-below", hang.usualSag().low(), Unit.METRE)
        .with("load", 100 * (atSupports + pull) / hang.workingLoad(), Unit.PERCENT)
        .with("slack-length", ChainSag.catenaryLength(span, sag) - span, Unit.METRE);
  }

  private static double sag(Entries entries) {
    double read = entries.in("sag", Unit.METRE);
    return entries.choice("read-as").equals(MOVEMENT) ? ChainSag.sagForMovement(read) : read;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double span = entries.in("span", Unit.METRE);
    double sag = sag(entries);
    Range usual = ChainSag.usualSag(span);
    String range =
        both(1000 * usual.low(), Unit.MILLIMETRE, Unit.INCH)
            + " to "
            + both(1000 * usual.high(), Unit.MILLIMETRE, Unit.INCH);
    Meaning meaning = hanging(entries, results, usual, range);
    meaning =
        Doubt.said(
            meaning,
            results,
            "static-sag",
            Unit.METRE,
            results.in("tight-below", Unit.METRE),
            usual.high());
    double load = results.in("load", Unit.PERCENT) / 100;
    if (load > 1) {
      meaning =
          meaning.and(
              (entries.has("pull") ? "With the pull of the drive it carries " : "It carries ")
                  + percent(load)
                  + " of what it may be worked at: let it hang lower or hold it up between the"
                  + " supports, and see chain-load.");
    }
    double ratio = sag / span;
    return ratio > SHALLOW
        ? meaning.and("At a sag of " + percent(ratio) + " of the span the catenary counts.")
        : meaning;
  }

  private static Meaning hanging(Entries entries, Results results, Range usual, String range) {
    double sag = sag(entries);
    String tension = both(results.in("catenary", Unit.NEWTON), Unit.NEWTON, Unit.POUND_FORCE);
    double tight = results.in("tight-below", Unit.METRE);
    if (usual.contains(sag)) {
      return Meaning.of("The chain hangs as it should: usual here is " + range + ".");
    }
    if (sag > usual.high()) {
      return Meaning.of(
          "The chain is slack: usual here is " + range + ".",
          "A slack chain slaps, jumps teeth and lets the limits wander; chain-take-up tells how much"
              + " to take out.");
    }
    return sag >= tight
        ? Meaning.of(
            "The chain hangs less than the usual "
                + range
                + ", but over so short a run it pulls with "
                + tension
                + " only, which harms nothing: leave it as it is.")
        : Meaning.of(
            "The chain is too tight: usual here is " + range + ".",
            "It pulls with "
                + tension
                + " on brackets, idlers and the motor's bearings all day; let it out to "
                + both(1000 * usual.low(), Unit.MILLIMETRE, Unit.INCH)
                + " or more.");
  }
}
