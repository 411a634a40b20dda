package yett.command;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import yett.knowledge.ShippedKnowledge;
import yett.rules.ShippedRules;
import yett.saying.ShippedDirections;

/**
 * What no start should have to work out, when the program is built: the cards as the parser reads
 * them, the rules as classes, and what the cards' sentences mean. In one program, the two long ones
 * side by side, because everybody who builds waits for them.
 */
public final class Preparation {
  private Preparation() {}

  /**
   * @param arguments the folder with the rule base, the folder with the program's classes, and
   *     whether the model that knows meanings is left out
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
