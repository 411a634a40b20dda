package yett.worksheet.chain;

import static yett.worksheet.Tell.both;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
 * How much chain to take up for a wanted sag, d = 8 (s1² - s2²)/(3 L), and how many links that is.
 * Source: {@link ChainSag#takeUp}, {@link ChainShortening}.
 */
final class ChainTakeUp extends Worksheet {
  ChainTakeUp() {
    super(Subject.CHAIN, "chain-take-up", "how much to take up, and how many links that is");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Chains.size(),
        Chains.span(),
        Chains.sag("sag", "sag now, at mid-span"),
        Chains.sag("wanted", "sag wanted; without it the middle of what is usual").mayBeLeftOut(),
        Input.reading("thread", Unit.MILLIMETRE, "thread left on the tension bolts, both together")
            .possible(0, 1000)
            .mayBeLeftOut());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("wanted-sag", Unit.MILLIMETRE, "sag wanted"),
        Output.reading("take-up", Unit.MILLIMETRE, "length to take up"),
        Output.reading("links", Unit.ONE, "pitches to take out"),
        Output.reading("sag-after-links", Unit.MILLIMETRE, "sag after that"),
        Output.reading("bolts", Unit.MILLIMETRE, "rest, by the bolts"),
        Output.reading("tension", Unit.NEWTON, "tension then, catenary"));
  }

  @Override
  public String formula() {
    return "d = 8 (s1^2 - s2^2)/(3 L); pitches n = 2 floor(d/(2 p)); rest d - n p by the bolts; sag"
        + " after links sqrt(s1^2 - 3 L n p/8); L span, s sag, p pitch";
  }

  @Override
  public String validity() {
    return "Level run, sag up to 10 % of the span. Links come out in pairs of pitches: one alone"
        + " needs an offset link, which is a third weaker. A chain beyond its wear limit is replaced,"
        + " not shortened (chain-elongation).";
  }

  @Override
  public String source() {
    return Chains.PARABOLA + "; offset link: Complete Guide to Chain, table 2.1; " + Chains.SIZES;
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
    double sag = entries.in("sag", Unit.METRE);
    double wanted = wanted(entries);
    double takeUp = ChainSag.takeUp(span, sag, wanted);
    Results results =
        new Results()
            .with("wanted-sag", wanted, Unit.METRE)
            .with("take-up", takeUp, Unit.METRE)
            .with(
                "tension",
                ChainSag.catenaryTension(chain.weightPerLength(), span, wanted),
                Unit.NEWTON);
    if (takeUp < 0) {
      return results;
    }
    ChainShortening shortening = shortening(entries, takeUp);
    OptionalDouble after =
        ChainSag.sagAfterChange(span, sag, -shortening.pitches() * chain.pitch());
    return results
        .with("links", shortening.pitches(), Unit.ONE)
        .with("sag-after-links", after.orElseThrow(), Unit.METRE)
        .with("bolts", shortening.byBolts(), Unit.METRE);
  }

  /** All by the bolts where their thread is known to be long enough. */
  private static ChainShortening shortening(Entries entries, double takeUp) {
    return entries.has("thread") && entries.in("thread", Unit.METRE) >= takeUp
        ? new ChainShortening(0, takeUp)
        : ChainShortening.of(takeUp, Chains.chosen(entries).pitch());
  }

  private static double wanted(Entries entries) {
    if (entries.has("wanted")) {
      return entries.in("wanted", Unit.METRE);
    }
    Range usual = ChainSag.usualSag(entries.in("span", Unit.METRE));
    return (usual.low() + usual.high()) / 2;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double takeUp = results.in("take-up", Unit.MILLIMETRE);
    if (takeUp < 0) {
      return Meaning.of(
          "The chain is tighter than that: let out "
              + both(-takeUp, Unit.MILLIMETRE, Unit.INCH)
              + " with the bolts.");
    }
    long links = Math.round(results.in("links", Unit.ONE));
    double bolts = results.in("bolts", Unit.MILLIMETRE);
    if (links == 0) {
      String pair = both(2000 * Chains.chosen(entries).pitch(), Unit.MILLIMETRE, Unit.INCH);
      Meaning meaning =
          Meaning.of(
              "Turn the tension bolts in by " + both(bolts, Unit.MILLIMETRE, Unit.INCH) + ".",
              takeUp < 2000 * Chains.chosen(entries).pitch()
                  ? "No links come out: two pitches are "
                      + pair
                      + ", and one alone would need an"
                      + " offset link."
                  : "Their thread is long enough; no link has to come out.");
      return shortThread(entries, bolts)
          ? meaning.and(
              "The thread does not go so far: slacken the bolts until two pitches can come out, or"
                  + " fit a chain that is two pitches shorter.")
          : meaning;
    }
    Meaning meaning =
        Meaning.of(
            "Take out "
                + links
                + " pitches ("
                + links / 2
                + (links == 2 ? " pair" : " pairs")
                + " of an inner and an outer link), never an odd number, and take up the last "
                + both(bolts, Unit.MILLIMETRE, Unit.INCH)
                + " with the bolts.",
            "Measure the wear first: a worn chain is replaced. Then the limits are off by up to "
                + both(1000 * links * Chains.chosen(entries).pitch(), Unit.MILLIMETRE, Unit.INCH)
                + "; teach them again, and look where the marker sits.");
    return shortThread(entries, bolts)
        ? meaning.and("The thread that is left does not do that rest.")
        : meaning;
  }

  private static boolean shortThread(Entries entries, double bolts) {
    return entries.has("thread") && entries.in("thread", Unit.MILLIMETRE) < bolts;
  }
}
