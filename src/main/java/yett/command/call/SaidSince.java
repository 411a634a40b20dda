package yett.command.call;

import java.util.Optional;
import yett.command.diagnose.PromptRequests;
import yett.command.diagnose.Sitting;
import yett.command.diagnose.UnheardSentences;
import yett.command.diagnose.WorksAgain;

/** What the caller has said since that was looked at last: it may end the call. */
final class SaidSince {
  private final UnheardSentences unheard;
  private final PromptRequests wishes;
  private final WorksAgain worksAgain;
  private boolean again;

  SaidSince(Sitting sitting, PromptRequests wishes) {
    this.unheard = new UnheardSentences(sitting);
    this.wishes = wishes;
    this.worksAgain = new WorksAgain(sitting);
  }

  /** What was said in an earlier call is known. */
  void ringsAgain() {
    again = true;
    unheard.next();
  }

  boolean isAnotherCall() {
    return again;
  }

  /** Whether it says that it works again; then that was asked. */
  boolean endsIt() {
    boolean ends = unheard.next().stream().anyMatch(worksAgain::tellsOfIt);
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
