package yett.belief;

import java.util.List;

/**
 * Room for numbers that one thread needs for a moment only, and the chances of the last answer. A
 * belief has some hundred thousand sets of causes: to make a new array for every intermediate
 * result, and clear it away, took as long as the sums themselves.
 */
final class Scratch {
  private static final ThreadLocal<Scratch> OF_THREADS = ThreadLocal.withInitial(Scratch::new);

  private double[] numbers = new double[0];
  private double[] likelihood = new double[0];
  private Lattice lattice;
  private CheckTable table;
  private List<Double> weights = List.of();

  private Scratch() {}

  static Scratch ofThisThread() {
    return OF_THREADS.get();
  }

  /** At least so many numbers, whatever they are; until the next call. */
  double[] numbers(int size) {
    if (numbers.length < size) {
      numbers = new double[size];
    }
    return numbers;
  }

  /**
   * The chance of an answer under each set of a lattice; see {@link CheckTable#mixed}. Of the last
   * answer it is known: an answer that is learned is usually asked for its chance as well.
   *
   * @return of the lattice's size; until the next call, and not to be changed
   */
  double[] likelihood(CheckTable of, Lattice over, List<Double> answer) {
    if (of != table || over != lattice || !answer.equals(weights)) {
      table = null; // should it fail half way
      if (likelihood.length != over.size()) {
        likelihood = new double[over.size()];
      }
      of.mixed(over, answer.stream().mapToDouble(Double::doubleValue).toArray(), likelihood, this);
      lattice = over;
      weights = answer;
      table = of;
    }
    return likelihood;
  }
}
