package yett.command.call;

import java.util.List;
import java.util.Optional;
import yett.command.diagnose.Sitting;
import yett.command.diagnose.Wishes;

/** What the caller has said since that was looked at last: it may end the call. */
final class SaidSince {
  private final Sitting sitting;
  private final Wishes wishes;
  private boolean again;

  /** So much of what was said has been heard for an end of the call. */
  private int heard;

  SaidSince(Sitting sitting, Wishes wishes) {
    this.sitting = sitting;
    this.wishes = wishes;
  }

  /** What was said in an earlier call is known. */
  void ringsAgain() {
    again = true;
    heard = sitting.moment().state().told().said().size();
  }

  boolean isAnotherCall() {
    return again;
  }

  /** Whether it says that it works again; then that was asked. */
  boolean endsIt() {
    List<String> said = sitting.moment().state().told().said();
    List<String> news = said.subList(Math.min(heard, said.size()), said.size());
    heard = said.size();
    boolean ends = news.stream().anyMatch(wishes.end()::tellsOfIt);
    if (ends) {
      wishes.end().worksAgain(Optional.empty());
    }
    return ends;
  }

  /** The same for a call that had come to its questions before. */
  boolean endsItAnew() {
    return again && endsIt();
  }
}
