package yett.command.diagnose.sitting;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import yett.knowledge.RuleBase;
import yett.saying.DangerSayings;
import yett.saying.Hearing;
import yett.saying.KnownNames;
import yett.saying.Sayings;
import yett.saying.Tellings;

/**
 * Loads what is needed to understand words at a console. It loads in the background, and only when
 * words are expected, so that a case answered by numbers needs no time for it.
 */
public final class Ears {
  /** What was loaded for the last rule base, kept for the next case. */
  private static Made last = new Made(null, null);

  private final RuleBase base;
  private final Supplier<List<String>> gates;
  private KnownNames names;

  /** One, because it remembers the line that was heard last. */
  private Tellings tellings;

  /**
   * @param gates names of the gates that are known
   */
  Ears(RuleBase base, Supplier<List<String>> gates) {
    this.base = base;
    this.gates = gates;
  }

  private KnownNames names() {
    if (names == null) {
      names = new KnownNames(gates.get());
    }
    return names;
  }

  /** Starts loading, because somebody is about to use words. */
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
   * Waits for the loading to end, a second or two at most. If the program ended meanwhile, the
   * library of the language model would crash the process.
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
    if (tellings == null) {
      tellings = new Tellings(hearing(), names());
    }
    return tellings;
  }

  public Sayings complaints() {
    return new Sayings(hearing());
  }

  public DangerSayings dangers() {
    return new DangerSayings(hearing(), names());
  }

  /** Why words are understood less well here; empty if they are understood fully. */
  public Optional<String> withoutMeanings() {
    return hearing().withoutMeanings();
  }
}
