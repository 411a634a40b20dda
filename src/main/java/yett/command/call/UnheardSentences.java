package yett.command.call;

import java.util.List;
import yett.command.diagnose.sitting.Sitting;

/**
 * The caller's sentences that one user of them has not processed yet. Each user has an object of
 * its own.
 */
final class UnheardSentences {
  private final Sitting sitting;
  private int heard;

  UnheardSentences(Sitting sitting) {
    this.sitting = sitting;
  }

  /** What was said since the last call of this method. */
  List<String> next() {
    List<String> said = sitting.moment().state().told().said();
    List<String> news = said.subList(Math.min(heard, said.size()), said.size());
    heard = said.size();
    return news;
  }
}
