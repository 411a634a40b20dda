package yett.belief;

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

  /** For each set and each of its causes, the latest first: the chance that it arose by itself. */
  private volatile double[] shares;

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
   * @param together chance of each set of the lattice; overwritten
   * @return in the model's order
   */
  double[] of(double[] together) {
    double[] chances = new double[model.causes().size()];
    // Each set also stands for those that begin with it: add their chances up, from the longest
    // down.
    for (int h = together.length - 1; h > 0; h--) {
      if (toldAs[h] != COUNTED) {
        chances[toldAs[h]] += together[h];
      }
      together[lattice.parent(h)] += together[h];
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
   * both has arisen by itself with chance p_d / (1 - (1 - p_d)(1 - q)).
   *
   * @param together chance of each set of the lattice
   * @return in the model's order; a cause that has kinds may count more than once
   */
  double[] arisen(double[] together) {
    double[] chances = new double[model.causes().size()];
    double[] share = shares();
    for (int h = 1; h < together.length; h++) {
      if (together[h] > 0) {
        int at = h * lattice.depth();
        for (int set = h; set != 0; set = lattice.parent(set)) {
          chances[model.told(lattice.last(set))] += together[h] * share[at++];
        }
      }
    }
    return chances;
  }

  private double[] shares() {
    double[] known = shares;
    if (known == null) { // worked out twice at the worst
      known = workedOut();
      shares = known;
    }
    return known;
  }

  private double[] workedOut() {
    double[] all = new double[lattice.size() * lattice.depth()];
    boolean[] present = new boolean[model.size()];
    int[] members = new int[lattice.depth()];
    for (int h = 1; h < lattice.size(); h++) {
      int count = lattice.members(h, members);
      for (int k = 0; k < count; k++) {
        present[members[k]] = true;
      }
      for (int k = 0; k < count; k++) {
        int c = members[k];
        all[h * lattice.depth() + k] =
            model.prior(c) / (1 - model.prior(c)) / model.presence(c, present);
      }
      for (int k = 0; k < count; k++) {
        present[members[k]] = false;
      }
    }
    return all;
  }
}
