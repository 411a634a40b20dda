package yett.belief;

import java.util.Arrays;

/**
 * Works out chances of single causes from chances of sets. The parts that depend on the sets alone
 * are computed once for all beliefs over them. Thread-safe.
 */
final class Marginals {
  private static final int COUNTED = -1;

  private final CausalModel model;
  private final Lattice lattice;

  /**
   * For each set, the cause under which its last cause is reported, or a mark if an earlier member
   * is reported as that cause too.
   */
  private final int[] toldAs;

  private volatile Differences differences;

  /**
   * The sets in which the number of causes that are expected to have arisen by themselves is not
   * that of the causes there, with such a cause and by how much more there are.
   */
  private record Differences(int[] sets, int[] causes, double[] more) {}

  Marginals(CausalModel model, Lattice lattice) {
    this.model = model;
    this.lattice = lattice;
    this.toldAs = new int[lattice.size()];
    for (int h = 1; h < toldAs.length; h++) {
      int cause = model.told(lattice.last(h));
      boolean counted = model.hasKinds(cause) && tells(lattice.parent(h), cause);
      toldAs[h] = counted ? COUNTED : cause;
    }
  }

  /** Whether some member of a set is reported as this cause. */
  private boolean tells(int set, int cause) {
    for (int h = set; h != 0; h = lattice.parent(h)) {
      if (model.told(lattice.last(h)) == cause) {
        return true;
      }
    }
    return false;
  }

  /**
   * Chance of each cause including its kinds.
   *
   * @param together chance of each set of the lattice, with room behind; overwritten
   * @return in the model's order
   */
  double[] of(double[] together) {
    double[] chances = new double[model.causes().size()];
    // Each set also stands for those that begin with it: add their chances up, from the longest
    // down.
    int parent = 0;
    double ofParent = together[0];
    for (int h = toldAs.length - 1; h > 0; h--) {
      if (lattice.parent(h) != parent) { // those of one parent stand side by side
        together[parent] = ofParent;
        parent = lattice.parent(h);
        ofParent = together[parent];
      }
      double chance = together[h];
      if (toldAs[h] != COUNTED) {
        chances[toldAs[h]] += chance;
      }
      ofParent += chance;
    }
    for (int c = 0; c < chances.length; c++) {
      // Rounding must not give a chance above 1, whose log-odds would be NaN.
      chances[c] = Math.min(1, chances[c]);
    }
    return chances;
  }

  /**
   * Chance that each cause is present and arose by itself, that is, no other member of the set
   * brought it about. Of a link c to d with chance q (noisy-OR), the cause d of a set that holds
   * both has arisen by itself with chance p_d / (1 - (1 - p_d)(1 - q)). In most sets no member
   * brings about another, so only the others are gone through.
   *
   * @param together chance of each set of the lattice
   * @param there chance of each cause, as {@link #of} has it
   * @return in the model's order; a cause that has kinds may count more than once
   */
  double[] arisen(double[] together, double[] there) {
    double[] chances = there.clone();
    Differences differences = differences();
    for (int i = 0; i < differences.sets().length; i++) {
      double chance = together[differences.sets()[i]];
      if (chance > 0) { // what is impossible has no share
        chances[differences.causes()[i]] += chance * differences.more()[i];
      }
    }
    return chances;
  }

  private Differences differences() {
    Differences known = differences;
    if (known == null) { // worked out twice at the worst
      known = workedOut();
      differences = known;
    }
    return known;
  }

  private Differences workedOut() {
    int size = 0;
    int[] sets = new int[1024];
    int[] causes = new int[1024];
    double[] more = new double[1024];
    boolean[] present = new boolean[model.size()];
    double[] arisen = new double[model.size()];
    int[] members = new int[lattice.depth()];
    for (int h = 1; h < lattice.size(); h++) {
      int count = lattice.members(h, members);
      for (int k = 0; k < count; k++) {
        present[members[k]] = true;
        arisen[model.told(members[k])] = -1; // its chance counts once already
      }
      for (int k = 0; k < count; k++) {
        arisen[model.told(members[k])] += arisen(members[k], present);
      }
      if (size + count > sets.length) {
        sets = Arrays.copyOf(sets, 2 * sets.length);
        causes = Arrays.copyOf(causes, sets.length);
        more = Arrays.copyOf(more, sets.length);
      }
      for (int k = 0; k < count; k++) {
        int told = model.told(members[k]);
        if (arisen[told] != 0) {
          sets[size] = h;
          causes[size] = told;
          more[size++] = arisen[told];
          arisen[told] = 0;
        }
        present[members[k]] = false;
      }
    }
    return new Differences(
        Arrays.copyOf(sets, size), Arrays.copyOf(causes, size), Arrays.copyOf(more, size));
  }

  /** The chance that a member of a set has arisen by itself. */
  private double arisen(int cause, boolean[] present) {
    for (int parent : model.parents(cause)) {
      if (present[parent]) {
        double prior = model.prior(cause);
        return prior / (1 - prior) / model.presence(cause, present);
      }
    }
    return 1;
  }
}
