package yett.worksheet.chain;

import static yett.worksheet.Tell.both;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import yett.calculation.ChainHang;
import yett.calculation.ChainSag;
import yett.calculation.ChainShortening;
import yett.calculation.Range;
import yett.calculation.RollerChain;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * What is left of the sag once links are taken out: s2 = √(s1² - 3 L n p/8), if the chain still
 * reaches. Source: {@link ChainSag#sagAfterChange}.
 */
final class ChainLinks extends Worksheet {
  ChainLinks() {
    super(Subject.CHAIN, "chain-links", "how the chain hangs once links are taken out");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Chains.size(),
        Chains.span(),
        Chains.sag("sag", "sag now, at mid-span"),
        Input.whole("links", "pitches to take out").usually("2").possible(1, 40));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("shorter", Unit.MILLIMETRE, "chain is shorter by"),
        Output.reading("needed-sag", Unit.MILLIMETRE, "sag it takes"),
        Output.reading("sag-after", Unit.MILLIMETRE, "sag after that"),
        Output.reading("tension-after", Unit.NEWTON, "tension after that"),
        Output.reading("usual-low", Unit.MILLIMETRE, "usual sag from"),
        Output.reading("usual-high", Unit.MILLIMETRE, "usual sag to"));
  }

  @Override
  public String formula() {
    return "s2 = sqrt(s1^2 - 3 L n p/8), only if s1 >= sqrt(3 L n p/8); tension by the catenary; L"
        + " span, s sag, n pitches, p pitch";
  }

  @Override
  public String validity() {
    return "Level run, sag up to 10 % of the span, brackets where they are. With the tension bolts"
        + " slackened first, more links come out.";
  }

  @Override
  public String source() {
    return Chains.PARABOLA
        + "; offset link: Complete Guide to Chain, table 2.1; usual sag as chain-sag has it, down to where"
        + " the chain pulls with a fifth of its working load; "
        + Chains.SIZES;
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(Chains.DECIDES);
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.CHAIN, Cautions.CHAIN_OPEN);
  }

  @Override
  protected Results work(Entries entries) {
    RollerChain chain = Chains.chosen(entries);
    double span = entries.in("span", Unit.METRE);
    int links = entries.whole("links");
    Range usual = new ChainHang(chain, span).usualSag();
    Results results =
        new Results()
            .with("shorter", links * chain.pitch(), Unit.METRE)
            .with("needed-sag", ChainShortening.leastSag(span, links, chain.pitch()), Unit.METRE)
            .with("usual-low", usual.low(), Unit.METRE)
            .with("usual-high", usual.high(), Unit.METRE);
    OptionalDouble after =
        ChainSag.sagAfterChange(span, entries.in("sag", Unit.METRE), -links * chain.pitch());
    if (after.isPresent() && after.getAsDouble() > 0) {
      results
          .with("sag-after", after.getAsDouble(), Unit.METRE)
          .with(
              "tension-after",
              ChainSag.catenaryTension(chain.weightPerLength(), span, after.getAsDouble()),
              Unit.NEWTON);
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    int links = entries.whole("links");
    Meaning meaning = hang(results);
    return links % 2 == 0
        ? meaning
        : meaning.and(
            "An odd number of pitches needs an offset link, which is a third weaker: take out "
                + (links == 1 ? "2 or none." : links - 1 + " or " + (links + 1) + "."));
  }

  private static Meaning hang(Results results) {
    if (!results.has("sag-after")) {
      return Meaning.of(
          "The chain would not close: it takes a sag of "
              + told(results, "needed-sag")
              + " to give so much.",
          "Slacken the tension bolts first, or use the bolts alone.");
    }
    double after = results.in("sag-after", Unit.MILLIMETRE);
    String usual = told(results, "usual-low") + " to " + told(results, "usual-high");
    if (after < results.in("usual-low", Unit.MILLIMETRE)) {
      return Meaning.of(
          "It would be too tight: " + told(results, "sag-after") + " where " + usual + " is usual.",
          "Let the bolts out as far as the rest needs, or take out fewer.");
    }
    return after > results.in("usual-high", Unit.MILLIMETRE)
        ? Meaning.of(
            "It still hangs "
                + told(results, "sag-after")
                + " where "
                + usual
                + " is usual; the bolts or more links take up the rest (chain-take-up).")
        : Meaning.of("It then hangs " + told(results, "sag-after") + ", as usual (" + usual + ").");
  }

  private static String told(Results results, String id) {
    return both(results.in(id, Unit.MILLIMETRE), Unit.MILLIMETRE, Unit.INCH);
  }
}
