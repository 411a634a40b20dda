package yett.study;

import java.io.PrintStream;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/** Plays cases on all processors, in their order, and says how far it has come. */
final class Tasks {
  /** Cases between two lines of progress. */
  private static final int STEP = 20;

  private final Ledger ledger;
  private final PrintStream out;
  private final Instant begin = Instant.now();

  /** A case to be played. */
  record Task(String kind, long number, Supplier<Map<String, Played>> play) {}

  Tasks(Ledger ledger, PrintStream out) {
    this.ledger = ledger;
    this.out = out;
  }

  /** Plays what was not played before, and begins no case after the end. */
  void play(List<Task> tasks, Instant end) {
    List<Task> open = tasks.stream().filter(t -> !ledger.has(t.kind(), t.number())).toList();
    int before = tasks.size() - open.size();
    out.printf("%,d cases to play, %,d of them played before%n", tasks.size(), before);
    AtomicInteger done = new AtomicInteger();
    ExecutorService workers =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try {
      List<Future<?>> playing = new ArrayList<>();
      for (Task task : open) {
        playing.add(
            workers.submit(
                () -> {
                  if (Instant.now().isBefore(end)) {
                    ledger.add(task.kind(), task.number(), task.play().get());
                    tell(before, done.incrementAndGet(), tasks.size());
                  }
                }));
      }
      for (Future<?> one : playing) {
        one.get();
      }
    } catch (ExecutionException e) {
      throw new IllegalStateException("a case could not be played", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      workers.shutdownNow();
    }
  }

  private void tell(int before, int done, int all) {
    int left = all - before - done;
    if (done % STEP == 0 || left == 0) {
      double each = Duration.between(begin, Instant.now()).toMillis() / 1000.0 / done;
      out.printf(
          "%,d of %,d cases, %.1f s each, about %.0f min left%n",
          before + done, all, each, Math.ceil(each * left / 60));
    }
  }
}
