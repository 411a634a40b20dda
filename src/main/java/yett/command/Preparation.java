package yett.command;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import yett.knowledge.ShippedKnowledge;
import yett.rules.ShippedRules;
import yett.saying.ShippedDirections;

/**
 * Computes during the build what would be slow at every start: the parsed cards, the compiled rules
 * and the meanings of the cards' sentences. One program does all three, the two slow ones in
 * parallel, because everybody who builds has to wait for it.
 */
public final class Preparation {
  private Preparation() {}

  /**
   * @param arguments the folder with the rule base, the folder with the program's classes, and
   *     whether to leave out the language model
   */
  public static void main(String[] arguments) throws Exception {
    ShippedKnowledge.main(arguments);
    FutureTask<Void> rules = begun(() -> ShippedRules.main(arguments));
    if (!Boolean.parseBoolean(arguments[2])) {
      ShippedDirections.main(arguments);
    }
    try {
      rules.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the rules cannot be compiled", e.getCause());
    }
  }

  private interface Work {
    void run() throws Exception;
  }

  private static FutureTask<Void> begun(Work work) {
    Callable<Void> call =
        () -> {
          work.run();
          return null;
        };
    FutureTask<Void> task = new FutureTask<>(call);
    new Thread(task, "rules").start();
    return task;
  }
}
