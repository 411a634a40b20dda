package yett.worksheet;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.quantity.Unit;

/**
 * The values of a worksheet by name: the inputs, and what follows from them, which is computed at
 * first use.
 */
public final class Values {
  /**
   * Coverage factor: number of standard uncertainties within which 95 % of true values lie (JCGM
   * 100, 6.3.3).
   */
  private static final double COVERAGE = 2;

  private final Worksheet sheet;
  private final Map<String, Given> givens = new LinkedHashMap<>();
  private final Map<String, Output> formulas;
  private final Map<String, Double> uncertainties = new HashMap<>();
  private final Map<Object, Object> known = new HashMap<>();

  Values(Worksheet sheet, Collection<Given> givens) {
    this.sheet = sheet;
    this.formulas =
        Stream.concat(sheet.outputs.stream(), sheet.steps.stream())
            .collect(Collectors.toMap(Output::id, Function.identity()));
    givens.forEach(given -> this.givens.put(given.input().id(), given));
  }

  List<Given> givens() {
    return List.copyOf(givens.values());
  }

  /**
   * A copy with other values for some inputs.
   *
   * @param values in the order of the inputs, in canonical units
   */
  Values moved(List<Given> some, double[] values) {
    Values moved = new Values(sheet, givens.values());
    for (int i = 0; i < some.size(); i++) {
      moved.givens.put(some.get(i).input().id(), some.get(i).moved(values[i]));
    }
    return moved;
  }

  void uncertain(String id, double canonical) {
    uncertainties.put(id, canonical);
  }

  /** Whether an input was given or has a usual value, or a result can be computed. */
  public boolean has(String id) {
    Output formula = formulas.get(id);
    return formula == null ? givens.containsKey(input(id)) : formula.when().test(this);
  }

  /** Whether somebody typed this input. */
  public boolean typed(String id) {
    return has(id) && !given(id).usual();
  }

  /** A number in the unit in which it is asked for or shown. */
  public double of(String id) {
    return in(id, unit(id));
  }

  /** A number in the given unit. */
  public double in(String id, Unit unit) {
    if (unit.quantity() != unit(id).quantity()) {
      throw new IllegalStateException(id + " is no " + unit.quantity().label());
    }
    return unit.fromCanonical(canonical(id));
  }

  /** A length in metres. */
  public double metres(String id) {
    return in(id, Unit.METRE);
  }

  /** A ratio as a fraction: 0.03 for 3 %. */
  public double fraction(String id) {
    return in(id, Unit.PERCENT) / 100;
  }

  public int whole(String id) {
    return (int) of(id);
  }

  public Choice choice(String id) {
    return given(id).choice();
  }

  /** Whether this choice was made. */
  public boolean chose(String id, String choice) {
    return has(id) && choice(id).id().equals(choice);
  }

  /** The choice made, as the enum constant named by its id. */
  public <E extends Enum<E>> E choice(String id, Class<E> of) {
    String name = choice(id).id().toUpperCase(Locale.ROOT).replace('-', '_');
    return Enum.valueOf(of, name);
  }

  /** The value as text for a sentence: a number in both systems of units, a choice in words. */
  public String text(String id) {
    if (!givens.containsKey(id)) {
      return formula(id).text().apply(this);
    }
    Given given = given(id);
    return given.input().kind() == Input.Kind.CHOICE
        ? given.choice().words()
        : NumberWords.told(of(id), unit(id));
  }

  /** An input in the unit in which it was typed. */
  public String asTyped(String id) {
    return given(id).shown();
  }

  /** A value that several formulas need, computed once. */
  @SuppressWarnings("unchecked") // A function is the key of its own result.
  public <T> T once(Function<Values, T> working) {
    Object value = known.get(working);
    if (value == null) {
      value = working.apply(this);
      known.put(working, value);
    }
    return (T) value;
  }

  /**
   * Whether a result is closer to a limit than its uncertainty.
   *
   * @param limit in the unit of the result
   */
  public boolean isNear(String result, double limit) {
    double u = uncertainties.getOrDefault(result, 0.0);
    return Math.abs(unit(result).toCanonical(limit) - canonical(result)) < COVERAGE * u;
  }

  /** The limit, by id, that a result is nearest to. */
  String nearest(String result, String... limits) {
    return Collections.min(
        List.of(limits),
        Comparator.comparingDouble(limit -> Math.abs(canonical(limit) - canonical(result))));
  }

  double canonical(String id) {
    Given given = givens.get(id);
    if (given != null) {
      return given.value();
    }
    Object value = known.get(id);
    if (value == null) {
      value = formula(id).number().applyAsDouble(this);
      known.put(id, value);
    }
    return (double) value;
  }

  /** The standard uncertainty of a result as text for a sentence. */
  String uncertainty(String id) {
    return NumberWords.told(uncertainties.get(id) / unit(id).differenceToCanonical(1), unit(id));
  }

  private Unit unit(String id) {
    return givens.containsKey(id)
        ? given(id).input().unit()
        : formula(id).unit().orElseThrow(() -> new IllegalStateException(id + " is no number"));
  }

  /** The id if it is that of an input. */
  private String input(String id) {
    if (sheet.inputs().stream().noneMatch(input -> input.id().equals(id))) {
      throw new IllegalStateException(sheet + " knows no " + id);
    }
    return id;
  }

  private Given given(String id) {
    Given given = givens.get(id);
    if (given == null) {
      throw new IllegalStateException("no input " + id);
    }
    return given;
  }

  private Output formula(String id) {
    Output formula = formulas.get(id);
    if (formula == null || !formula.when().test(this)) {
      throw new IllegalStateException("no result " + id);
    }
    return formula;
  }
}
