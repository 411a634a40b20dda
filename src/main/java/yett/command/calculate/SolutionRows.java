package yett.command.calculate;

import java.math.BigDecimal;
import java.math.MathContext;
import yett.console.Block;
import yett.console.Text;
import yett.quantity.Quantity;
import yett.quantity.Unit;
import yett.worksheet.Given;
import yett.worksheet.Input;
import yett.worksheet.Plot;
import yett.worksheet.Solution;

/** Shows the parts of a finished calculation on a screen. */
final class SolutionRows {
  private SolutionRows() {}

  static Block drawing(Plot plot) {
    return new Block.Plot(
        plot.points().stream().map(p -> new Block.Point(p.across(), p.up())).toList(),
        plot.levels().stream().map(l -> new Block.Level(l.label(), l.up())).toList(),
        plot.across(),
        plot.up());
  }

  static Block.Row row(Given given) {
    String uncertainty =
        given.standardUncertainty() > 0
            ? " (u = " + uncertainty(given.input().unit(), given.standardUncertainty()) + ")"
            : "";
    String typed =
        given.typed().equals(given.shown()) || given.usual() ? "" : " as typed: " + given.typed();
    Text text = Text.of(given.shown() + uncertainty);
    if (given.usual()) {
      text = text.and(Text.dim(", the usual"));
    } else if (given.standardUncertainty() == 0
        && !typed.isEmpty()
        && given.input().kind() == Input.Kind.READING) {
      text = text.and(Text.dim("," + typed));
    }
    return new Block.Row(given.input().id(), text);
  }

  static Block.Row row(Solution.Line line) {
    Text text = Text.strong(line.text());
    if (line.standardUncertainty().isPresent()) {
      text =
          text.and(
              ", u = "
                  + uncertainty(
                      line.output().unit().orElseThrow(),
                      line.standardUncertainty().getAsDouble()));
    }
    return new Block.Row(line.output().words(), text);
  }

  /** A standard uncertainty with two figures (JCGM 100, 7.2.6). */
  public static String uncertainty(Unit unit, double canonical) {
    double own = canonical / unit.differenceToCanonical(1);
    double rounded = BigDecimal.valueOf(own).round(new MathContext(2)).doubleValue();
    String figures = Quantity.COUNT.show(rounded, Unit.ONE);
    return unit.symbol().isEmpty() ? figures : figures + " " + unit.symbol();
  }
}
