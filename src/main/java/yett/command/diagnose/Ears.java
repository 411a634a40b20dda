package yett.command.diagnose;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import yett.knowledge.RuleBase;
import yett.saying.DangerSayings;
import yett.saying.Hearing;
import yett.saying.Sayings;
import yett.saying.Tellings;

/**
 * What understands words at a console. It is made ready in the background, and only when words are
 * to come: a case that is answered by numbers never pays for it.
 */
public final class Ears {
  private final RuleBase base;
  private CompletableFuture<Hearing> hearing;

  Ears(RuleBase base) {
    this.base = base;
  }

  /** Begins to get ready, because somebody is about to speak. */
  public void prepare() {
    if (hearing == null) {
      hearing = CompletableFuture.supplyAsync(() -> Hearing.of(base));
    }
  }

  private Hearing hearing() {
    prepare();
    return hearing.join();
  }

  public Tellings tellings() {
    return new Tellings(hearing());
  }

  public Sayings complaints() {
    return new Sayings(hearing());
  }

  public DangerSayings dangers() {
    return new DangerSayings(hearing());
  }

  /** Why words are understood less well here; empty if they are not. */
  public Optional<String> withoutMeanings() {
    return hearing().withoutMeanings();
  }
}
