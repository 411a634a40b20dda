package yett.replay;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/**
 * Runs tasks in parallel and delivers their results in the order of the tasks. Only a few results
 * are held at a time, however many tasks there are.
 */
public final class InOrder {
  private InOrder() {}

  /** The number of processors, for use as the number of threads. */
  public static int threads() {
    return Runtime.getRuntime().availableProcessors();
  }

  /**
   * Runs the tasks.
   *
   * @param threads number of tasks that run at the same time, 1 for one after the other
   * @param results receives each result in the order of the tasks, on the calling thread
   */
  public static <T> void run(List<Callable<T>> tasks, int threads, Consumer<T> results) {
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      Deque<Future<T>> waiting = new ArrayDeque<>();
      Iterator<Callable<T>> left = tasks.iterator();
      for (int done = 0; done < tasks.size(); done++) {
        while (left.hasNext() && waiting.size() < 2 * threads) {
          waiting.add(workers.submit(left.next()));
        }
        results.accept(get(waiting.remove()));
      }
    } finally {
      workers.shutdownNow();
    }
  }

  private static <T> T get(Future<T> future) {
    try {
      return future.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the replay was interrupted", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a replay broke down: " + e.getCause().getMessage(), e);
    }
  }
}
