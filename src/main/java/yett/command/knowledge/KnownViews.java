package yett.command.knowledge;

import java.util.List;
import yett.bench.Candidate;
import yett.console.Block;

/** Shows ids with their words. */
public final class KnownViews {
  private KnownViews() {}

  public static Block rows(List<Candidate> known) {
    return new Block.Rows(known.stream().map(k -> Block.row(k.id(), k.words())).toList());
  }
}
