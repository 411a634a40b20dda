package yett.command.call;

import java.util.Optional;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.sitting.Sitting;
import yett.command.diagnose.told.WorksAgain;

/** Looks at what the caller has said since the last look, because it may end the call. */
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

  /** Begins another call about the case; what was said in the earlier one is passed over. */
  void ringsAgain() {
    again = true;
    unheard.next();
  }

  boolean isAnotherCall() {
    return again;
  }

  /** Asks whether the gate works again if the words say so. Returns whether it asked. */
  boolean endsIt() {
    Optional<String> end = unheard.next().stream().filter(worksAgain::tellsOfIt).findFirst();
    end.ifPresent(words -> wishes.end().worksAgainAsSaid(words));
    return end.isPresent();
  }

  /** The same, but only if the caller has rung again. */
  boolean endsItAnew() {
    return again && endsIt();
  }
}
