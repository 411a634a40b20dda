package yett.belief;

/**
 * Chances of single causes from chances of sets. What of it depends on the sets alone is worked out
 * once for all beliefs over them. Safe for several threads.
 */
final class Marginals {
  private static final int COUNTED = -1;

  private final CausalModel model;
  private final Lattice lattice;

  /** By set, the cause that its last one is told as; or that a cause before it is told so too. */
  private final int[] toldAs;

  /** By set, then by its causes, the latest first: how far each arose by itself. */
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

  /** Whether some cause of a set is told as this one. */
  private boolean tells(int set, int cause) {
    for (int h = set; h != 0; h = lattice.parent(h)) {
      if (model.told(lattice.last(h)) == cause) {
        return true;
      }
    }
    return false;
  }

  /**
   * Chance of each cause, its kinds counted with it.
   *
   * @param together chance of each set of the lattice; overwritten
   * @return in the model's order
   */
  double[] of(double[] together) {
    double[] chances = new double[model.causes().size()];
    // With a set stand the sets that begin with it: what they have together is added up from the
    // longest down.
    for (int h = together.length - 1; h > 0; h--) {
      if (toldAs[h] != COUNTED) {
        chances[toldAs[h]] += together[h];
      }
      together[lattice.parent(h)] += together[h];
    }
    for (int c = 0; c < chances.length; c++) {
      // Rounding must not make a certain cause more than certain: its log-odds would be no number.
      chances[c] = Math.min(1, chances[c]);
    }
    return chances;
  }

  /**
   * Chance that each cause is there and has arisen by itself: nothing else that is in the set had
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
