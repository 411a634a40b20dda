package yett.console;

import java.util.List;

/** Finds what the Tab key offers for a command that is being typed. */
@FunctionalInterface
public interface Completer {
  /**
   * A possible completion of the line.
   *
   * @param line the whole line, not only what is added
   * @param shown its form in a list of several completions
   * @param whole whether its last word is complete, so that a blank may follow
   */
  record Completion(String line, String shown, boolean whole) {}

  /**
   * Lines that the typed text may be completed to. The caller leaves out those that do not begin
   * with it.
   *
   * @param typed the line up to the cursor
   */
  List<Completion> after(String typed);
}
