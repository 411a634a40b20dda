package yett.command.diagnose;

import java.util.List;

/** The caller's sentences that one listener has not heard yet; each of them listens for itself. */
public final class UnheardSentences {
  private final Sitting sitting;
  private int heard;

  public UnheardSentences(Sitting sitting) {
    this.sitting = sitting;
  }

  /** What was said since this was asked last. */
  public List<String> next() {
    List<String> said = sitting.moment().state().told().said();
    List<String> news = said.subList(Math.min(heard, said.size()), said.size());
    heard = said.size();
    return news;
  }
}
