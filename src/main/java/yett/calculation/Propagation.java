package yett.calculation;

import java.util.Arrays;
import java.util.function.UnaryOperator;

/**
 * Calculates the combined standard uncertainty of results from that of their inputs: u² = Σ Z²,
 * where Z = (f(x + u) - f(x - u))/2 for each input in turn. Source: JCGM 100 (GUM), 5.1.2 and the
 * numerical way of 5.1.3, note 2. Valid for independent inputs and a formula that is nearly linear
 * over ±u.
 */
public final class Propagation {
  private Propagation() {}

  /**
   * The standard uncertainty of each result. It is NaN where the model has no result on either side
   * of an input; where it has one on one side only, the difference to that side counts.
   *
   * @param model results for inputs; may return NaN or throw IllegalArgumentException where it is
   *     not valid for them
   * @param inputs best estimates
   * @param uncertainties standard uncertainties of the inputs, none negative
   * @throws IllegalArgumentException if an uncertainty is negative
   */
  public static double[] standardUncertainties(
      UnaryOperator<double[]> model, double[] inputs, double[] uncertainties) {
    double[] middle = model.apply(inputs.clone());
    double[] squares = new double[middle.length];
    for (int i = 0; i < inputs.length; i++) {
      double u = Require.notNegative("standard uncertainty", uncertainties[i]);
      double[] above = moved(model, inputs, i, u, middle.length);
      double[] below = moved(model, inputs, i, -u, middle.length);
      for (int j = 0; j < squares.length; j++) {
        double z = difference(above[j], middle[j], below[j]);
        squares[j] += z * z;
      }
    }
    for (int j = 0; j < squares.length; j++) {
      squares[j] = Math.sqrt(squares[j]);
    }
    return squares;
  }

  private static double difference(double above, double middle, double below) {
    if (Double.isNaN(above)) {
      return middle - below;
    }
    return Double.isNaN(below) ? above - middle : (above - below) / 2;
  }

  private static double[] moved(
      UnaryOperator<double[]> model, double[] inputs, int which, double by, int results) {
    double[] moved = inputs.clone();
    moved[which] += by;
    try {
      return model.apply(moved);
    } catch (IllegalArgumentException e) {
      double[] none = new double[results];
      Arrays.fill(none, Double.NaN);
      return none;
    }
  }
}
