package yett.worksheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import yett.calculation.Propagation;
import yett.worksheet.Solution.Line;

/** Solves a calculation, with uncertainties and remarks. */
final class Solver {
  /** Relative size below which an uncertainty is a rounding error. */
  private static final double ROUNDING = 1e-9;

  private Solver() {}

  static Solution solve(Worksheet sheet, List<Given> givens) {
    Values values = new Values(sheet, givens);
    try {
      double[] numbers = sheet.work(values);
      double[] uncertainties = uncertainties(sheet, values);
      List<Line> lines = new ArrayList<>();
      for (int i = 0; i < numbers.length; i++) {
        Output output = sheet.outputs().get(i);
        if (values.has(output.id())) {
          Line line = line(output, values, numbers[i], uncertainties[i]);
          line.standardUncertainty().ifPresent(u -> values.uncertain(output.id(), u));
          lines.add(line);
        }
      }
      return new Solution(
          sheet,
          givens,
          List.copyOf(lines),
          sheet.plot.map(drawing -> drawing.apply(values)),
          Stream.concat(givens.stream().flatMap(Solver::remark), sheet.remarks(values)).toList(),
          sheet.meaning(values));
    } catch (InputException e) {
      throw e;
    } catch (IllegalArgumentException e) {
      throw new InputException("These inputs do not go together: " + e.getMessage() + ".");
    }
  }

  private static Line line(Output output, Values values, double number, double uncertainty) {
    if (output.unit().isEmpty()) {
      String words = values.text(output.id());
      return new Line(output, OptionalDouble.empty(), OptionalDouble.empty(), words);
    }
    return new Line(
        output,
        OptionalDouble.of(number),
        uncertainty > ROUNDING * Math.abs(number)
            ? OptionalDouble.of(uncertainty)
            : OptionalDouble.empty(),
        output.show(number));
  }

  private static double[] uncertainties(Worksheet sheet, Values values) {
    List<Given> uncertain =
        values.givens().stream().filter(g -> g.standardUncertainty() > 0).toList();
    return Propagation.standardUncertainties(
        moved -> sheet.work(values.moved(uncertain, moved)),
        uncertain.stream().mapToDouble(Given::value).toArray(),
        uncertain.stream().mapToDouble(Given::standardUncertainty).toArray());
  }

  private static Stream<String> remark(Given given) {
    Input input = given.input();
    return input.good().contains(input.unit().fromCanonical(given.value()))
        ? Stream.empty()
        : Stream.of(
            given.shown()
                + " for "
                + input.id()
                + " is outside the range in which the formula is valid ("
                + input.inWords(input.good()).orElse("")
                + "); take the result as a rough guide.");
  }
}
