package yett.command.knowledge;

import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import yett.console.Console;
import yett.console.Progress;
import yett.console.StandardStreams;
import yett.trial.Comparison;
import yett.trial.Difference;
import yett.trial.Difference.Turn;

/**
 * Shows how far a comparison is. Nobody should have to wait longer than a minute for a first
 * result: then it is told what the cases show that the change moves most.
 */
final class FirstResult implements Comparison.Course, AutoCloseable {
  private static final Duration WAIT = Duration.ofMinutes(1);

  /** Fewer cases say too little. */
  private static final int LEAST = 8;

  private final Console console;
  private final StandardStreams output;
  private final boolean kept;
  private final long begun = System.nanoTime();
  private Progress progress;
  private int replayed;
  private boolean told;
  private boolean toldOfLooks;

  /**
   * @param kept whether the comparison can go on after it was broken off
   */
  FirstResult(Console console, StandardStreams output, int runs, boolean kept) {
    this.console = console;
    this.output = output;
    this.kept = kept;
    this.progress = console.start("Replaying", runs);
  }

  @Override
  public void step() {
    progress.step();
  }

  @Override
  public void looked(int touched, int left) {
    if (toldOfLooks || left == 0 || !waited()) {
      return;
    }
    toldOfLooks = true;
    output.tell(
        "Still looking which cases the change touches: "
            + touched
            + " so far, "
            + left
            + " to be looked at. They are replayed after that.");
  }

  private boolean waited() {
    return System.nanoTime() - begun >= WAIT.toNanos();
  }

  @Override
  public void replayed(Supplier<Comparison> soFar, int open) {
    replayed++;
    if (told || open == 0 || replayed < LEAST || !waited()) {
      return;
    }
    told = true;
    progress.close();
    output.tell(words(soFar.get(), replayed, open, kept));
    progress = console.start("Replaying the rest", 2 * open);
  }

  static String words(Comparison soFar, int replayed, int open, boolean kept) {
    return "First result: "
        + replayed
        + " cases replayed"
        + (kept ? ", those first that the change moves most; " : "; ")
        + open
        + " are open. From right to wrong so far: "
        + names(soFar, Turn.WORSE)
        + ". From wrong to right: "
        + names(soFar, Turn.BETTER)
        + "."
        + (kept ? " You can stop with Ctrl-C; the same command then goes on from here." : "");
  }

  private static String names(Comparison soFar, Turn turn) {
    List<String> names =
        soFar.differences().stream().filter(d -> d.turn() == turn).map(Difference::name).toList();
    return names.isEmpty() ? "none" : String.join(", ", names);
  }

  @Override
  public void close() {
    progress.close();
  }
}
