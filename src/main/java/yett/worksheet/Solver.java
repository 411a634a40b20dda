package yett.worksheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import yett.calculation.Propagation;
import yett.worksheet.Solution.Line;

/** Works a calculation out, uncertainties and remarks with it. */
final class Solver {
  /** What smaller uncertainties are made of. */
  private static final double ROUNDING = 1e-9;

  private Solver() {}

  static Solution solve(Worksheet sheet, Entries entries) {
    try {
      Results results = sheet.work(entries);
      double[] uncertainties = uncertainties(sheet, entries);
      List<Line> lines = new ArrayList<>();
      for (int i = 0; i < sheet.outputs().size(); i++) {
        Output output = sheet.outputs().get(i);
        if (results.has(output.id())) {
          Line line = line(output, results, uncertainties[i]);
          line.standardUncertainty().ifPresent(u -> results.uncertain(output.id(), u));
          lines.add(line);
        }
      }
      return new Solution(
          sheet,
          entries.all(),
          List.copyOf(lines),
          results.plot(),
          Stream.concat(remarks(entries).stream(), sheet.remarks(entries, results).stream())
              .toList(),
          sheet.meaning(entries, results));
    } catch (InputException e) {
      throw e;
    } catch (IllegalArgumentException e) {
      throw new InputException("These inputs do not go together: " + e.getMessage() + ".");
    }
  }

  private static Line line(Output output, Results results, double uncertainty) {
    OptionalDouble value = results.number(output.id());
    String text =
        value.isPresent()
            ? output.show(value.getAsDouble())
            : results.text(output.id()).orElseThrow();
    return new Line(
        output,
        value,
        value.isPresent() && uncertainty > ROUNDING * Math.abs(value.getAsDouble())
            ? OptionalDouble.of(uncertainty)
            : OptionalDouble.empty(),
        text);
  }

  private static double[] uncertainties(Worksheet sheet, Entries entries) {
    List<Given> uncertain =
        entries.all().stream().filter(g -> g.standardUncertainty() > 0).toList();
    return Propagation.standardUncertainties(
        values -> numbers(sheet, sheet.work(entries.moved(uncertain, values))),
        uncertain.stream().mapToDouble(Given::value).toArray(),
        uncertain.stream().mapToDouble(Given::standardUncertainty).toArray());
  }

  private static double[] numbers(Worksheet sheet, Results results) {
    return sheet.outputs().stream()
        .mapToDouble(output -> results.number(output.id()).orElse(Double.NaN))
        .toArray();
  }

  private static List<String> remarks(Entries entries) {
    return entries.all().stream()
        .filter(g -> !g.input().good().contains(g.input().unit().fromCanonical(g.value())))
        .map(
            g ->
                g.shown()
                    + " for "
                    + g.input().id()
                    + " is outside what the formula is good for ("
                    + g.input().inWords(g.input().good()).orElse("")
                    + "); take the result as a rough guide.")
        .toList();
  }
}
