package yett.replay;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import yett.interview.Expertise;

/**
 * Runs many case files over one expertise, several at once, and hands on the results in the order
 * of the files. Only a few files are held at a time, however many there are.
 */
public final class Replays {
  private final Expertise expertise;
  private final int threads;

  /**
   * @param threads files that are run at the same time, 1 for one after the other
   */
  public Replays(Expertise expertise, int threads) {
    this.expertise = expertise;
    this.threads = Math.max(1, threads);
  }

  /** As many files at once as there are processors. */
  public static Replays onAllProcessors(Expertise expertise) {
    return new Replays(expertise, Runtime.getRuntime().availableProcessors());
  }

  /** Told after each file, on the thread that called. */
  @FunctionalInterface
  public interface Progress {
    void done(int count, int total);
  }

  /**
   * Runs the files. A file with problems does not stop the others.
   *
   * @param results is given each file's result in the order of the files, on this thread
   */
  public void run(List<Path> files, Progress progress, Consumer<FileReplay> results) {
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      Deque<Future<FileReplay>> waiting = new ArrayDeque<>();
      int sent = 0;
      for (int count = 1; count <= files.size(); count++) {
        while (sent < files.size() && waiting.size() < 2 * threads) {
          Path file = files.get(sent++);
          waiting.add(workers.submit(() -> replay(file)));
        }
        results.accept(get(waiting.remove()));
        progress.done(count, files.size());
      }
    } finally {
      workers.shutdownNow();
    }
  }

  private static FileReplay get(Future<FileReplay> future) {
    try {
      return future.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the replay was interrupted", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a replay broke down: " + e.getCause().getMessage(), e);
    }
  }

  /** Runs the cases of one file. */
  public FileReplay replay(Path file) {
    return replay(CaseFile.read(file, expertise.base()));
  }

  public FileReplay replay(CaseFile file) {
    Replayer replayer = new Replayer(expertise);
    List<Replayed> cases = new ArrayList<>();
    for (RecordedCase recorded : file.cases()) {
      cases.add(replayer.run(recorded));
    }
    return new FileReplay(file.name(), List.copyOf(cases), file.problems());
  }
}
