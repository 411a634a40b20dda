package yett.worksheet.chain;

import static yett.worksheet.Tell.both;

import java.util.List;
import java.util.Optional;
import yett.calculation.ChainSag;
import yett.calculation.Range;
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

/** How far a chain of a span may hang or be moved by hand. Source: {@link ChainSag#usualSag}. */
final class ChainAllowance extends Worksheet {
  ChainAllowance() {
    super(Subject.CHAIN, "chain-allowance", "how far a chain of that span may hang");
  }

  @Override
  public List<Input> inputs() {
    return List.of(Chains.span());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("sag-low", Unit.MILLIMETRE, "usual sag from"),
        Output.reading("sag-high", Unit.MILLIMETRE, "usual sag to"),
        Output.reading("movement-low", Unit.MILLIMETRE, "movement by hand from"),
        Output.reading("movement-high", Unit.MILLIMETRE, "movement by hand to"));
  }

  @Override
  public String formula() {
    return "movement M = 2 % to 4 % of L, sag s = M sqrt(3)/4 = 0.433 M; L span";
  }

  @Override
  public String validity() {
    return "A level run. Movement is up and down together, pushed until the chain is straight; it is"
        + " not the sag, and some tables mix the two up.";
  }

  @Override
  public String source() {
    return "Complete Guide to Chain, 7.1.2: 4 % of the span for ordinary drives, 2 % where centres"
        + " are over 1 m, starts are heavy or motion reverses; geometry of the parabola";
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
    double span = entries.in("span", Unit.METRE);
    Range sag = ChainSag.usualSag(span);
    Range movement = ChainSag.usualMovement(span);
    return new Results()
        .with("sag-low", sag.low(), Unit.METRE)
        .with("sag-high", sag.high(), Unit.METRE)
        .with("movement-low", movement.low(), Unit.METRE)
        .with("movement-high", movement.high(), Unit.METRE);
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    return Meaning.of(
        "With a string from support to support the lowest link hangs "
            + told(results, "sag-low")
            + " to "
            + told(results, "sag-high")
            + " below it; by hand it moves "
            + told(results, "movement-low")
            + " to "
            + told(results, "movement-high")
            + ", up and down together.",
        "A gate reverses often, so set it to the low end, but not tighter.");
  }

  private static String told(Results results, String id) {
    return both(results.in(id, Unit.MILLIMETRE), Unit.MILLIMETRE, Unit.INCH);
  }
}
