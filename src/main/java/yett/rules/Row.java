package yett.rules;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import yett.rules.Conclusion.Expectation;
import yett.rules.Conclusion.Odds;
import yett.rules.Fact.Given;

/**
 * A row of a table as a fact. One rule for each kind, the same for all rows, concludes from it;
 * nothing of a row is ever part of a rule's text.
 */
public sealed interface Row {
  Grounds grounds();

  /** The name of the row stands as the name of the rule. */
  Reason reason();

  /** All that must hold, each in words of its own. */
  default Set<String> conditions() {
    return grounds().conditions();
  }

  /** What follows from it, without its reason. */
  String consequence();

  /** Whether this fact bears on it. */
  default boolean concerns(Fact fact) {
    return grounds().concern(fact);
  }

  /**
   * @param concerned all facts that bear on it
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
   * The odds of causes are multiplied.
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

  /** Such an answer to one of some checks. */
  record Answers(Set<String> checks, Accepted accepted) {
    private boolean hold(Given answer) {
      return checks.contains(answer.check()) && accepted.admits(answer.outcome(), answer.value());
    }
  }
}
