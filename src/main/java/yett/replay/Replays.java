package yett.replay;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import yett.interview.course.Expertise;

/**
 * Runs the cases of many files in parallel and delivers the results in the order of the files. Only
 * a few files are held at a time, however many there are.
 */
public final class Replays {
  private final Expertise expertise;
  private final int threads;

  /**
   * @param threads number of files that run at the same time, 1 for one after the other
   */
  public Replays(Expertise expertise, int threads) {
    this.expertise = expertise;
    this.threads = Math.max(1, threads);
  }

  /** Runs as many files at once as there are processors. */
  public static Replays onAllProcessors(Expertise expertise) {
    return new Replays(expertise, InOrder.threads());
  }

  /** Called after each file, on the calling thread. */
  @FunctionalInterface
  public interface Progress {
    void done(int count, int total);
  }

  /**
   * Runs the files. A file with problems does not stop the others.
   *
   * @param results receives each file's result in the order of the files, on this thread
   */
  public void run(List<Path> files, Progress progress, Consumer<FileReplay> results) {
    List<Callable<FileReplay>> tasks = new ArrayList<>();
    files.forEach(file -> tasks.add(() -> replay(file)));
    AtomicInteger count = new AtomicInteger();
    InOrder.run(
        tasks,
        threads,
        result -> {
          results.accept(result);
          progress.done(count.incrementAndGet(), files.size());
        });
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
