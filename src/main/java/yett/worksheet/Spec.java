package yett.worksheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import yett.quantity.Unit;

/** The methods with which a worksheet declares itself, and its declarations. */
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

  /** The inputs, in the order in which they are asked. */
  protected final void asks(Input... all) {
    inputs = List.of(all);
  }

  /** The results, in the order in which they are shown. */
  protected final void tells(Output... all) {
    outputs = List.of(all);
  }

  /** Intermediate values for formulas and sentences; they are not shown as results. */
  protected final void works(Output... all) {
    steps = List.of(all);
  }

  /** The formula as text, with its symbols. */
  protected final void formula(String text) {
    formula = text;
  }

  /** The range of validity and what is left out; sentences. */
  protected final void validity(String text) {
    validity = text;
  }

  /** The source of formula and figures; common practice and memory are named as such. */
  protected final void source(String text) {
    source = text;
  }

  /** What takes precedence over the calculation: a code, a licence, a data sheet. A sentence. */
  protected final void lastWord(String text) {
    lastWord = Optional.of(text);
  }

  /** Safety notes to read before anything is measured. */
  protected final void notes(Note... all) {
    notes = List.of(all);
  }

  /**
   * Refuses inputs that are possible one by one, but not together.
   *
   * @param sentence the message
   */
  protected final void refuses(Predicate<Values> when, String sentence) {
    refusals.add(Statement.when(when, sentence));
  }

  /**
   * Adds a remark where inputs together are outside the range of the formula.
   *
   * @param sentence the remark
   */
  protected final void remarks(Predicate<Values> when, String sentence) {
    remarks.add(Statement.when(when, sentence));
  }

  /**
   * Adds the meaning of the results at the gate: the first of these statements that holds, after
   * the sentences declared so far.
   */
  protected final void says(Statement... first) {
    says.add(List.of(first));
  }

  /** Adds sentences that hold for all results. */
  protected final void says(String... sentences) {
    says(otherwise(sentences));
  }

  /**
   * Adds a sentence if a result is closer to a limit than its uncertainty, so that the verdict is
   * in doubt.
   *
   * @param limits ids of the numbers that it is compared with
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

  /** Adds a curve. What matters in it has to be said in words as well. */
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

  /** An intermediate number, not shown as a result. */
  protected static Output.Measure step(String id, Unit unit) {
    return number(id, unit, "");
  }

  /** An intermediate text, not shown as a result. */
  protected static Output.Wording phrase(String id) {
    return text(id, "");
  }

  /** Sentences that hold under a condition; see {@link Statement}. */
  protected static Statement when(Predicate<Values> when, String... sentences) {
    return Statement.when(when, sentences);
  }

  /** Sentences for when no statement before them holds. */
  protected static Statement otherwise(String... sentences) {
    return when(v -> true, sentences);
  }
}
