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
  /** Of the last rule base: case after case is heard with the same ears. */
  private static Made last = new Made(null, null);

  private final RuleBase base;

  Ears(RuleBase base) {
    this.base = base;
  }

  /** Begins to get ready, because somebody is about to speak. */
  public void prepare() {
    made(base);
  }

  private static synchronized CompletableFuture<Hearing> made(RuleBase base) {
    if (last.base() != base) {
      last = new Made(base, CompletableFuture.supplyAsync(() -> Hearing.of(base)));
    }
    return last.hearing();
  }

  /**
   * Waits for what is being made ready, at most a second or two: the library of meanings takes the
   * whole process down if that ends while it is being loaded.
   */
  public static void settle() {
    CompletableFuture<Hearing> begun = begun();
    if (begun != null) {
      begun.handle((hearing, failure) -> hearing).join();
    }
  }

  private static synchronized CompletableFuture<Hearing> begun() {
    return last.hearing();
  }

  private Hearing hearing() {
    return made(base).join();
  }

  private record Made(RuleBase base, CompletableFuture<Hearing> hearing) {}

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
