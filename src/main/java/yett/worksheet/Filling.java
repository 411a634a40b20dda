package yett.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yett.knowledge.Names;
import yett.quantity.ReadingException;

/** The inputs of a calculation while a person fills them in. */
public final class Filling {
  private final Worksheet sheet;
  private final Map<String, Given> givens = new LinkedHashMap<>();

  public Filling(Worksheet sheet) {
    this.sheet = sheet;
  }

  /**
   * Fills in an input by its name.
   *
   * @throws InputException if there is no such input, it was given already, the text is not valid
   *     for it, or the text has no unit and another one is as likely
   */
  public void add(String name, String typed) {
    Input input =
        sheet.inputs().stream()
            .filter(i -> i.id().equalsIgnoreCase(name))
            .findFirst()
            .orElseThrow(() -> new InputException(unknown(name)));
    if (givens.containsKey(input.id())) {
      throw new InputException(input.id() + " is given twice.");
    }
    refusing(input, () -> InputReader.requireUnit(input, typed));
    put(input, typed);
  }

  private String unknown(String name) {
    List<String> names = sheet.inputs().stream().map(Input::id).toList();
    return sheet.id() + " has no input \"" + name + "\". " + Names.advice(name, names);
  }

  /**
   * Fills in or changes an input whose unit the person was told.
   *
   * @throws InputException if the text is not valid for it
   */
  public void put(Input input, String typed) {
    refusing(input, () -> givens.put(input.id(), InputReader.read(input, typed)));
  }

  private static void refusing(Input input, Runnable reading) {
    try {
      reading.run();
    } catch (InputException | ReadingException e) {
      throw new InputException(input.id() + ": " + e.getMessage());
    }
  }

  /** Clears an input, so that it is open again. */
  public void clear(Input input) {
    givens.remove(input.id());
  }

  public boolean has(Input input) {
    return givens.containsKey(input.id());
  }

  /** Inputs that are still needed before the calculation can be solved. */
  public List<Input> missing() {
    return sheet.inputs().stream().filter(i -> i.needed() && !has(i)).toList();
  }

  /**
   * Solves the calculation, with the usual values for inputs that were not given.
   *
   * @throws InputException if the inputs contradict each other, or one is missing
   */
  public Solution solve() {
    if (!missing().isEmpty()) {
      throw new InputException("Missing: " + missing().get(0).id() + ".");
    }
    List<Given> all = new ArrayList<>();
    for (Input input : sheet.inputs()) {
      if (has(input)) {
        all.add(givens.get(input.id()));
      } else if (input.usual().isPresent()) {
        all.add(InputReader.usual(input));
      }
    }
    return Solver.solve(sheet, List.copyOf(all));
  }
}
