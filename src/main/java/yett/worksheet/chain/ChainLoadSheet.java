package yett.worksheet.chain;

import static yett.worksheet.Tell.both;
import static yett.worksheet.Tell.tell;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.calculation.ChainLoad;
import yett.calculation.RollerChain;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Choice;
import yett.worksheet.Doubt;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** What a chain is worked at, against its strength. Source: {@link ChainLoad}. */
final class ChainLoadSheet extends Worksheet {
  ChainLoadSheet() {
    super(Subject.CHAIN, "chain-load", "working load of a chain against its strength");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Chains.size(),
        Input.reading("pull", Unit.NEWTON, "greatest pull of the drive: at the start, or stalled")
            .possible(1, 100_000),
        Input.reading("hang", Unit.NEWTON, "tension of the hanging chain (chain-sag tells it)")
            .usually("0 N")
            .possible(0, 20_000),
        Input.choice("joint", "weakest joint in it", joints()).usually("connecting-link"));
  }

  private static List<Choice> joints() {
    return Arrays.stream(ChainLoad.Joint.values())
        .map(joint -> new Choice(id(joint), words(joint)))
        .toList();
  }

  private static String id(ChainLoad.Joint joint) {
    return joint.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String words(ChainLoad.Joint joint) {
    return switch (joint) {
      case RIVETED -> "riveted all the way";
      case CONNECTING_LINK -> "connecting link with spring clip or cotters";
      case OFFSET_LINK -> "one-pitch offset link";
    };
  }

  private static ChainLoad.Joint joint(Entries entries) {
    return Arrays.stream(ChainLoad.Joint.values())
        .filter(joint -> id(joint).equals(entries.choice("joint").id()))
        .findFirst()
        .orElseThrow();
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("load", Unit.NEWTON, "working load"),
        Output.reading("strength", Unit.NEWTON, "minimum strength"),
        Output.reading("factor", Unit.ONE, "strength over load"),
        Output.reading("allowed", Unit.NEWTON, "may be worked at"),
        Output.reading("used", Unit.PERCENT, "used of that"));
  }

  @Override
  public String formula() {
    return "F = pull + hang; factor = S/F; may be worked at S/7 times 1 riveted, 0.8 connecting link,"
        + " 0.65 offset link; S minimum ultimate strength";
  }

  @Override
  public String validity() {
    return "New chain of full strength, oiled, straight on its wheels. S is what the standard asks"
        + " for: a catalogue's average strength is 18 % to 33 % higher and must not be put in its"
        + " place. Wear, rust and a twist take off what no formula knows.";
  }

  @Override
  public String source() {
    return Chains.SIZES
        + "; joints: Complete Guide to Chain, 1.1.1 and table 2.1; factor 7 common practice"
        + " (handbooks 6 to 10 for drives that start under load or reverse)";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "What the chain may carry is for its maker's data sheet; a chain that hauls or holds a"
            + " weight over people is another matter and needs an engineer.");
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.CHAIN);
  }

  @Override
  protected Results work(Entries entries) {
    RollerChain chain = Chains.chosen(entries);
    double load = entries.in("pull", Unit.NEWTON) + entries.in("hang", Unit.NEWTON);
    double strength = chain.minimumUltimateStrength();
    double allowed = ChainLoad.allowed(strength, joint(entries));
    return new Results()
        .with("load", load, Unit.NEWTON)
        .with("strength", strength, Unit.NEWTON)
        .with("factor", ChainLoad.factor(strength, load), Unit.ONE)
        .with("allowed", allowed, Unit.NEWTON)
        .with("used", 100 * load / allowed, Unit.PERCENT);
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double used = results.in("used", Unit.PERCENT);
    String times = tell(results.in("factor", Unit.ONE), Unit.ONE);
    String allowed = both(results.in("allowed", Unit.NEWTON), Unit.NEWTON, Unit.POUND_FORCE);
    Meaning meaning =
        used <= 100
            ? Meaning.of(
                "The chain is strong enough: "
                    + times
                    + " times the load, and with this joint it may be worked at "
                    + allowed
                    + ".")
            : Meaning.of(
                    "Too much for this chain: it may be worked at "
                        + allowed
                        + ". Find what makes the leaf so heavy, take a stronger chain, or another"
                        + " joint.")
                .with(
                    Note.warning(
                        "An overloaded chain breaks at a start or a stall. A whipping end, a leaf"
                            + " that nothing holds. Leave the gate locked off until it is put"
                            + " right."));
    meaning = Doubt.said(meaning, results, "used", Unit.PERCENT, 100);
    return joint(entries) == ChainLoad.Joint.OFFSET_LINK
        ? meaning.and("Better without the offset link: take out or put in pitches in pairs.")
        : meaning;
  }
}
