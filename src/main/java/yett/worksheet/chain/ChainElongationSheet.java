package yett.worksheet.chain;

import static yett.worksheet.Tell.both;
import static yett.worksheet.Tell.percent;

import java.util.List;
import java.util.Optional;
import yett.calculation.ChainElongation;
import yett.calculation.RollerChain;
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

/** Wear of a chain: 100 (M - n P)/(n P) against its limit. Source: {@link ChainElongation}. */
final class ChainElongationSheet extends Worksheet {
  private static final Choice FIXED =
      new Choice("fixed", "sprocket and brackets stay where they are");

  /** Readings further off than this are of another chain, or miscounted. */
  private static final double MISCOUNTED = 8;

  ChainElongationSheet() {
    super(Subject.CHAIN, "chain-elongation", "wear of a chain, and when to replace it");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Chains.size(),
        Input.whole("pitches", "pitches measured; 24 or more").possible(2, 400).good(6, 400),
        Input.reading(
                "measured",
                Unit.MILLIMETRE,
                "their length, taut, from the middle of the first pin to the middle of the last")
            .possible(10, 10_000),
        Input.whole("teeth", "teeth of the largest sprocket").usually("12").possible(6, 200),
        Input.choice(
                "centres",
                "distance of the wheels",
                FIXED,
                new Choice("tensioned", "a spring or weight takes up the wear by itself"))
            .usually("fixed"),
        Input.reading("whole", Unit.METRE, "length of the whole chain")
            .possible(0.2, 100)
            .mayBeLeftOut());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("elongation", Unit.PERCENT, "elongation"),
        Output.reading("limit", Unit.PERCENT, "replace at"),
        Output.reading("new-length", Unit.MILLIMETRE, "length when new"),
        Output.reading("limit-length", Unit.MILLIMETRE, "length at the limit"),
        Output.reading("pitch-now", Unit.MILLIMETRE, "pitch now"),
        Output.reading("grown", Unit.MILLIMETRE, "whole chain grew by"));
  }

  @Override
  public String formula() {
    return "e = 100 (M - n P)/(n P); limit 3 %, 1.5 % with fixed centres, never over 200/N; M"
        + " measured, n pitches, P pitch, N teeth";
  }

  @Override
  public String validity() {
    return "Taut, no offset link inside, six pitches or more: the tape's error counts the less the"
        + " more pitches there are (1/16 in is half a percent of 12 in). Measure at three places:"
        + " the part that runs over the sprocket most wears most.";
  }

  @Override
  public String source() {
    return Chains.SIZES
        + "; limits: chain makers' wear notes that refer to ASME B29.1. Beware of a printed guide"
        + " that gives 0.36 in per foot for 1.5 %: that is 3 %";
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
    RollerChain chain = Chains.chosen(entries);
    int pitches = entries.whole("pitches");
    double measured = entries.in("measured", Unit.METRE);
    double elongation = ChainElongation.percent(measured, pitches, chain.pitch());
    if (Math.abs(elongation) > MISCOUNTED) {
      throw new InputException(
          both(1000 * measured, Unit.MILLIMETRE, Unit.INCH)
              + " is "
              + percent(Math.abs(elongation) / 100)
              + (elongation > 0 ? " over" : " under")
              + " the "
              + both(1000 * pitches * chain.pitch(), Unit.MILLIMETRE, Unit.INCH)
              + " of "
              + pitches
              + " new pitches; no wear does that. Count the pitches again, from pin to pin, and"
              + " look at the number of the chain.");
    }
    double limit = limit(entries);
    Results results =
        new Results()
            .with("elongation", elongation, Unit.PERCENT)
            .with("limit", limit, Unit.PERCENT)
            .with("new-length", ChainElongation.lengthAt(0, pitches, chain.pitch()), Unit.METRE)
            .with(
                "limit-length", ChainElongation.lengthAt(limit, pitches, chain.pitch()), Unit.METRE)
            .with("pitch-now", measured / pitches, Unit.METRE);
    if (entries.has("whole")) {
      double whole = entries.in("whole", Unit.METRE);
      results.with("grown", whole - whole / (1 + elongation / 100), Unit.METRE);
    }
    return results;
  }

  private static double limit(Entries entries) {
    return ChainElongation.limitPercent(
        entries.whole("teeth"), entries.choice("centres").equals(FIXED));
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double elongation = results.in("elongation", Unit.PERCENT);
    double limit = results.in("limit", Unit.PERCENT);
    String worn = percent(elongation / 100) + ", to be replaced at " + percent(limit / 100);
    Meaning meaning =
        elongation >= limit
            ? Meaning.of(
                "The chain is worn out: " + worn + ". Replace all of it.",
                "New links in a worn chain, or a worn sprocket under a new one, wear both quickly:"
                    + " look at the sprocket's teeth too, and never join old and new.")
            : elongation < 0
                ? Meaning.of(
                    "Shorter than new: the chain was not taut, or the tape did not stand on the"
                        + " middle of the pins. Measure again.")
                : Meaning.of(
                    "The chain may stay: worn "
                        + worn
                        + (elongation > limit * 2 / 3 ? "; have a new one ready." : "."));
    meaning = Doubt.said(meaning, results, "elongation", Unit.PERCENT, limit);
    return results.has("grown") && elongation > 0
        ? meaning.and(
            "On the whole chain the wear is "
                + both(results.in("grown", Unit.MILLIMETRE), Unit.MILLIMETRE, Unit.INCH)
                + ", and shows as slack.")
        : meaning;
  }
}
