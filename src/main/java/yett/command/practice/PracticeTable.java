package yett.command.practice;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.command.common.Words;
import yett.command.diagnose.sitting.CaseLeftException;
import yett.console.Console;
import yett.interview.event.Ending;
import yett.interview.step.Step;
import yett.knowledge.RuleBase;
import yett.practice.Workbench;

/** Leads a trainee through an exercise at a console until it is finished or put aside. */
public final class PracticeTable {
  private final Console console;
  private final Workbench bench;
  private final LabelledCards labels;
  private final PracticeViews views;
  private final ExerciseWork work;
  private final ThingLists lists;

  public PracticeTable(Console console, Workbench bench, RuleBase base) {
    this.console = console;
    this.bench = bench;
    this.labels = new LabelledCards(base);
    this.views = new PracticeViews(base);
    this.work = new ExerciseWork(console, bench, base, labels, views);
    this.lists = new ThingLists(console, bench, base, labels);
  }

  /**
   * @return whether it is finished; false if it was put aside
   */
  public boolean run() {
    console.show(views.outset(bench, labels));
    try {
      while (!bench.over()) {
        if (bench.moment().step() instanceof Step.MakeSafe stop) {
          work.makeSafe(stop);
        } else if (!bench.moment().judgement().stops().isEmpty()) {
          bench.close(Ending.MADE_SAFE);
        } else {
          turn(work.line("Minute " + Math.round(bench.minutes())));
        }
      }
      return true;
    } catch (CaseLeftException e) {
      return false;
    }
  }

  private void turn(String line) {
    String text = line.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    switch (text) {
      case "" -> console.say("Type a number, some words, or help.");
      case "dangers", "danger" -> work.dangers();
      case "set-ups", "set ups", "setups" -> lists.setUps();
      case "proofs" -> lists.proofs();
      case "try" -> work.tryOut();
      case "finish" -> work.finish();
      case "hand over", "handover" -> work.handOver();
      case "done" ->
          console.say("Nothing is waiting for that. Type a number, some words, or help.");
      case "gate" -> console.show(views.gate(bench));
      case "usual" -> console.show(views.usual(bench.moment(), work.last()));
      case "so far" -> console.show(views.soFar(bench));
      case "hint" -> hint();
      case "help", "?" -> console.show(PracticeHelp.blocks(views.running(labels)));
      default -> rest(text);
    }
  }

  private void rest(String text) {
    if (text.matches("checks( .*)?")) {
      lists.list("checks", "\\d+", text);
    } else if (text.matches("repairs( .*)?")) {
      lists.list("repairs", "r\\d+", text);
    } else {
      Optional<LabelledCards.Thing> named = labels.named(text);
      if (named.isEmpty() && text.matches("[rsp]? ?\\d+")) {
        console.say("There is no " + text + ". See checks, repairs, set-ups or proofs.");
        return;
      }
      named.or(() -> meant(text)).ifPresent(work::take);
    }
  }

  /** Asks the trainee which of several things was meant, and returns it. */
  private Optional<LabelledCards.Thing> meant(String text) {
    List<LabelledCards.Thing> found = labels.meant(text);
    if (found.isEmpty()) {
      console.say("Nothing here is called " + Words.quoted(text) + ". Try other words, or help.");
      return Optional.empty();
    }
    lists.show("Which of these?", found);
    String which = work.line("Enter for the first, another label, or no");
    if (which.isEmpty()) {
      return Optional.of(found.get(0));
    }
    Optional<LabelledCards.Thing> named = labels.named(which);
    if (named.isEmpty() && which.equalsIgnoreCase("no")) {
      console.say("None of them, then.");
    } else if (named.isEmpty()) {
      turn(which); // they typed something else instead
    }
    return named;
  }

  private void hint() {
    Workbench.Hint hint = bench.hint();
    String label =
        labels.all().stream()
            .filter(t -> t.card().id().equals(hint.card()))
            .findFirst()
            .map(t -> t.label() + " ")
            .orElse("");
    console.say(
        "The plan would do this now: "
            + label
            + hint.words()
            + (hint.reason().isEmpty() ? "" : " (" + hint.reason() + ")"));
    console.show(new RefusalViews().first(hint.leave(), hint.enter(), labels.all()));
  }
}
