package yett.command;

import java.util.Collection;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import yett.command.common.Prompt;
import yett.console.Console;
import yett.desk.Consent;
import yett.desk.UntrustedRules;

/** Asks the person at the terminal for consent. In a pipe it asks nobody and refuses. */
record ConsentAtConsole(Supplier<Console> console, AtomicBoolean waited) implements Consent {
  ConsentAtConsole(Supplier<Console> console) {
    this(console, new AtomicBoolean());
  }

  @Override
  public boolean toRun(Collection<String> files) {
    return given(
        "These rules are new here or were changed: "
            + String.join(", ", files)
            + ". Rules (DRL) are a program and can do whatever you can. Run them only if you"
            + " know who wrote them and have read them.");
  }

  @Override
  public boolean toBeLed(Collection<String> lacking) {
    return given(
        "This rule base leaves out or changes what protects people in the program's own: "
            + UntrustedRules.few(lacking)
            + ". Go on only if you know who did it and why.");
  }

  @Override
  public void waits() {
    boolean first = !waited.getAndSet(true); // two rule bases may be prepared for one command
    if (first && console.get().interactive()) {
      console.get().say("Preparing the rules. This takes some seconds, the first time only.");
    }
  }

  private boolean given(String question) {
    if (!console.get().interactive()) {
      return false;
    }
    console.get().say(question);
    return Prompt.forWords(console.get())
        .line("Type trust to go on, or press Enter to stop: ", List.of())
        .filter("trust"::equalsIgnoreCase)
        .isPresent();
  }
}
