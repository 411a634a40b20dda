package yett.worksheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import yett.quantity.Unit;

/** The words in which a worksheet is declared, and what was declared. */
abstract class Spec {
  List<Input> inputs = List.of();
  List<Output> outputs = List.of();
  List<Output> steps = List.of();
  String formula = "";
  String validity = "";
  String source = "";
  Optional<String> lastWord = Optional.empty();
  List<Note> notes = List.of();
  Optional<Function<Values, Plot>> plot = Optional.empty();
  final List<Statement> refusals = new ArrayList<>();
  final List<Statement> remarks = new ArrayList<>();
  final List<List<Statement>> says = new ArrayList<>();

  /** What it has to be told, in the order in which it is asked for. */
  protected final void asks(Input... all) {
    inputs = List.of(all);
  }

  /** What it tells, in that order. */
  protected final void tells(Output... all) {
    outputs = List.of(all);
  }

  /** What formulas and sentences need on the way, and nobody is told by itself. */
  protected final void works(Output... all) {
    steps = List.of(all);
  }

  /** The formula as text, with its symbols. */
  protected final void formula(String text) {
    formula = text;
  }

  /** What it is good for, and what it leaves out; sentences. */
  protected final void validity(String text) {
    validity = text;
  }

  /** Where formula and figures come from; common practice and memory are called that. */
  protected final void source(String text) {
    source = text;
  }

  /** Who or what has the last word: a code, a licence, a data sheet. A sentence. */
  protected final void lastWord(String text) {
    lastWord = Optional.of(text);
  }

  /** What to mind before anything is measured for it. */
  protected final void notes(Note... all) {
    notes = List.of(all);
  }

  /** Refuses inputs that are possible one by one, but not together. */
  protected final void refuses(Predicate<Values> when, String sentence) {
    refusals.add(Statement.when(when, sentence));
  }

  /** Says where inputs together leave what the formula is good for. */
  protected final void remarks(Predicate<Values> when, String sentence) {
    remarks.add(Statement.when(when, sentence));
  }

  /** What the results mean at the gate: the first of these that holds, behind what was said. */
  protected final void says(Statement... first) {
    says.add(List.of(first));
  }

  /** Says these sentences whatever the results are. */
  protected final void says(String... sentences) {
    says(otherwise(sentences));
  }

  /**
   * Says where the verdict hangs on a result that is not known well enough: if it lies nearer to a
   * limit than its uncertainty can tell.
   *
   * @param limits the names of the numbers that it is held against
   */
  protected final void doubts(String result, String... limits) {
    for (String limit : limits) {
      says(
          when(
              v -> v.nearest(result, limits).equals(limit) && v.isNear(result, v.of(limit)),
              "With u = {"
                  + result
                  + " u} that is too near to {"
                  + limit
                  + "} to be sure of: measure more exactly before you act on it."));
    }
  }

  /** A curve for those who can see it; what matters in it is said in words. */
  protected final void draws(Function<Values, Plot> drawing) {
    plot = Optional.of(drawing);
  }

  protected static Input reading(String id, Unit unit, String words) {
    return Input.reading(id, unit, words);
  }

  protected static Input whole(String id, String words) {
    return Input.whole(id, words);
  }

  protected static Input choice(String id, String words, Choice... choices) {
    return Input.choice(id, words, choices);
  }

  protected static Output.Measure number(String id, Unit unit, String words) {
    return new Output.Measure(id, unit, words);
  }

  protected static Output.Wording text(String id, String words) {
    return new Output.Wording(id, words);
  }

  /** A number that is worked out on the way and not told by itself. */
  protected static Output.Measure step(String id, Unit unit) {
    return number(id, unit, "");
  }

  /** Words that are needed on the way and not told by themselves. */
  protected static Output.Wording phrase(String id) {
    return text(id, "");
  }

  /** Said of some numbers; see {@link Statement}. */
  protected static Statement when(Predicate<Values> when, String... sentences) {
    return Statement.when(when, sentences);
  }

  /** Said where nothing before it was. */
  protected static Statement otherwise(String... sentences) {
    return when(v -> true, sentences);
  }
}
