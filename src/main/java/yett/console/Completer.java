package yett.console;

import java.util.List;

/** What the Tab key offers for a command that is being typed. */
@FunctionalInterface
public interface Completer {
  /**
   * A line that may come of it.
   *
   * @param line all of it, not only what is added
   * @param shown what stands for it in a list of several
   * @param whole whether its last word is at its end, so that a blank may follow
   */
  record Completion(String line, String shown, boolean whole) {}

  /**
   * Lines that begin with what is typed; others are left out by whoever asks.
   *
   * @param typed the line up to the cursor
   */
  List<Completion> after(String typed);
}
