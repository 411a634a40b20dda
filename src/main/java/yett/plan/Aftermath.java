package yett.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Works out what remains of each hypothesis when a repair did not cure. */
final class Aftermath {
  /**
   * A transition from hypothesis {@code from} to hypothesis {@code to} with chance {@code chance}.
   */
  private record Move(int from, int to, double chance) {}

  private final Scene scene;
  private final Map<List<Integer>, Integer> positions = new HashMap<>();
  private final Move[][] moves;

  Aftermath(Scene scene) {
    this.scene = scene;
    this.moves = new Move[scene.repairs().size()][];
    for (int h = 0; h < scene.hypotheses().length; h++) {
      positions.put(Arrays.stream(scene.hypotheses()[h]).boxed().toList(), h);
    }
  }

  /**
   * The weights after a repair that did not cure; their sum is the chance of that. Where the
   * remaining set is not among the hypotheses, the hypothesis stays as it is.
   */
  double[] of(double[] weights, int repair) {
    if (moves[repair] == null) {
      moves[repair] = moves(scene.repairs().get(repair).removes());
    }
    double[] left = new double[weights.length];
    for (Move move : moves[repair]) {
      left[move.to()] += weights[move.from()] * move.chance();
    }
    return left;
  }

  private Move[] moves(double[] removes) {
    return IntStream.range(0, scene.hypotheses().length)
        .boxed()
        .flatMap(h -> Arrays.stream(moves(h, removes)))
        .toArray(Move[]::new);
  }

  private Move[] moves(int h, double[] removes) {
    int[] set = scene.hypotheses()[h];
    int all = (1 << set.length) - 1;
    return IntStream.range(0, all)
        .mapToObj(gone -> new Move(h, to(h, gone), chance(set, gone, removes)))
        .filter(m -> m.chance() > 0)
        .toArray(Move[]::new);
  }

  private static double chance(int[] set, int gone, double[] removes) {
    double chance = 1;
    for (int k = 0; k < set.length; k++) {
      chance *= (gone >> k & 1) != 0 ? removes[set[k]] : 1 - removes[set[k]];
    }
    return chance;
  }

  private int to(int h, int gone) {
    int[] set = scene.hypotheses()[h];
    List<Integer> left =
        IntStream.range(0, set.length)
            .filter(k -> (gone >> k & 1) == 0)
            .mapToObj(k -> set[k])
            .toList();
    return positions.getOrDefault(left, h);
  }
}
