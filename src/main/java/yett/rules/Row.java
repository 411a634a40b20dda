package yett.rules;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import yett.rules.Conclusion.Expectation;
import yett.rules.Conclusion.Odds;
import yett.rules.Fact.Given;

/**
 * A row of a table as a fact. For each kind of row there is one fixed rule that concludes from it;
 * nothing in a row becomes part of a rule's text.
 */
public sealed interface Row {
  Grounds grounds();

  /** The reason, with the name of the row as the name of the rule. */
  Reason reason();

  /** All conditions of the row, each in words. */
  default Set<String> conditions() {
    return grounds().conditions();
  }

  /** The conclusion of the row as text, without its reason. */
  String consequence();

  /** Whether a fact matters for the row's conditions. */
  default boolean concerns(Fact fact) {
    return grounds().concern(fact);
  }

  /**
   * Whether the row applies.
   *
   * @param concerned all facts that matter for its conditions
   */
  default boolean speaks(Set<?> concerned) {
    return grounds().hold(concerned);
  }

  /**
   * The usual range of a reading.
   *
   * @param low canonical unit
   * @param how where the range comes from, for people
   */
  record UsualRange(
      String check, double low, double high, String how, Grounds grounds, Reason reason)
      implements Row {
    public Expectation expectation() {
      return new Expectation(check, low, high, how, reason);
    }

    @Override
    public String consequence() {
      return "usual range of " + check + " " + low + " " + high;
    }
  }

  /**
   * Factors on the odds of causes.
   *
   * @param factors by cause
   */
  record MovedOdds(Map<String, Double> factors, Grounds grounds, Reason reason) implements Row {
    public List<Odds> odds() {
      return factors.entrySet().stream()
          .map(e -> new Odds(e.getKey(), e.getValue(), reason))
          .toList();
    }

    @Override
    public String consequence() {
      return "odds " + factors;
    }
  }

  /** Two answers that cannot both be right between the same repairs. */
  record Exclusion(Answers one, Answers other, Grounds grounds, Reason reason) implements Row {
    public boolean one(Given answer) {
      return one.hold(answer);
    }

    public boolean other(Given answer) {
      return other.hold(answer);
    }

    @Override
    public Set<String> conditions() {
      Set<String> conditions = new TreeSet<>(Row.super.conditions());
      conditions.add(one.toString());
      conditions.add(other.toString());
      return conditions;
    }

    @Override
    public String consequence() {
      return "contradiction";
    }
  }

  /** An accepted answer to one of some checks. */
  record Answers(Set<String> checks, Accepted accepted) {
    private boolean hold(Given answer) {
      return checks.contains(answer.check()) && accepted.admits(answer.outcome(), answer.value());
    }
  }
}
