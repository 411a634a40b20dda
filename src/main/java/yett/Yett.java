package yett;

import yett.command.Shell;
import yett.command.common.Mistakes;
import yett.console.StandardStreams;

/** Starts the program. */
public final class Yett {
  private static final int SOFTWARE = 70;

  private Yett() {}

  public static void main(String[] words) {
    StandardStreams.keepForOwnWords(line -> Mistakes.ofUser().printed(line));
    Thread.setDefaultUncaughtExceptionHandler((thread, mistake) -> tell(mistake));
    System.exit(run(words));
  }

  private static int run(String[] words) {
    try {
      return Shell.run(System.getenv(), words);
    } catch (Exception | LinkageError | VirtualMachineError mistake) {
      tell(mistake);
      return SOFTWARE;
    }
  }

  private static void tell(Throwable mistake) {
    StandardStreams.standard().tell(Mistakes.ofUser().told(mistake));
  }
}
