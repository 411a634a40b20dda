package yett.command.practice;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.command.diagnose.CaseLeftException;
import yett.console.Block;
import yett.console.Console;
import yett.interview.Ending;
import yett.interview.Step;
import yett.knowledge.Names;
import yett.knowledge.RuleBase;
import yett.practice.Workbench;
import yett.wording.Wording;

/** Leads a trainee through an exercise at a console, until it is over or put aside. */
public final class PracticeTable {
  private final Console console;
  private final Workbench bench;
  private final RuleBase base;
  private final LabelledCards labels;
  private final PracticeViews views;
  private final ExerciseWork work;

  public PracticeTable(Console console, Workbench bench, RuleBase base) {
    this.console = console;
    this.bench = bench;
    this.base = base;
    this.labels = new LabelledCards(base);
    this.views = new PracticeViews(base);
    this.work = new ExerciseWork(console, bench, base, labels, views);
  }

  /**
   * @return whether it is over; otherwise it was put aside
   */
  public boolean run() {
    console.show(views.outset(bench));
    try {
      while (!bench.over()) {
        if (bench.moment().step() instanceof Step.MakeSafe stop) {
          work.makeSafe(stop);
        } else if (!bench.moment().judgement().stops().isEmpty()) {
          bench.close(Ending.MADE_SAFE);
        } else {
          turn(line("Minute " + Math.round(bench.minutes())));
        }
      }
      return true;
    } catch (CaseLeftException e) {
      return false;
    }
  }

  private String line(String prompt) {
    return Prompt.withLeave(console)
        .line(prompt + "> ", List.of())
        .orElseThrow(CaseLeftException::new);
  }

  private void say(String sentence) {
    console.show(Block.paragraph(sentence));
  }

  private void turn(String line) {
    String text = line.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    switch (text) {
      case "" -> say("Type a number, some words, or help.");
      case "dangers", "danger" -> work.dangers();
      case "set-ups", "set ups", "setups" -> setUps();
      case "proofs" -> console.show(views.list("Proofs", things("p\\d+", t -> true), labels));
      case "try" -> work.tryOut();
      case "finish" -> work.finish();
      case "hand over", "handover" -> work.handOver();
      case "gate" -> console.show(views.gate(bench));
      case "usual" -> console.show(views.usual(bench.moment(), work.last()));
      case "so far" -> console.show(views.soFar(bench));
      case "hint" -> hint();
      case "help", "?" -> console.show(PracticeHelp.blocks());
      default -> rest(text);
    }
  }

  private void rest(String text) {
    if (text.matches("checks( .*)?")) {
      list("checks", "\\d+", text);
    } else if (text.matches("repairs( .*)?")) {
      list("repairs", "r\\d+", text);
    } else {
      Optional<LabelledCards.Thing> named = labels.named(text);
      if (named.isEmpty() && text.matches("[rsp]? ?\\d+")) {
        say("There is no " + text + ". See checks, repairs, set-ups or proofs.");
        return;
      }
      named.or(() -> meant(text)).ifPresent(work::take);
    }
  }

  /** What was meant, once the trainee has said which. */
  private Optional<LabelledCards.Thing> meant(String text) {
    List<LabelledCards.Thing> found = labels.meant(text);
    if (found.isEmpty()) {
      say("Nothing here is called \"" + Words.shortened(text) + "\". Try other words, or help.");
      return Optional.empty();
    }
    console.show(views.list("Which of these?", found, labels));
    String which = line("Enter for the first, another label, or no");
    if (which.isEmpty()) {
      return Optional.of(found.get(0));
    }
    Optional<LabelledCards.Thing> named = labels.named(which);
    if (named.isEmpty() && which.equalsIgnoreCase("no")) {
      say("None of them, then.");
    } else if (named.isEmpty()) {
      turn(which); // something else came to mind
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
    say(
        "The plan would do this now: "
            + label
            + hint.words()
            + (hint.reason().isEmpty() ? "" : " (" + hint.reason() + ")"));
  }

  private List<LabelledCards.Thing> things(String label, Predicate<LabelledCards.Thing> which) {
    var unavailable = bench.moment().judgement().unavailable();
    return labels.all().stream()
        .filter(t -> t.label().matches(label))
        .filter(t -> !unavailable.contains(t.card().id()))
        .filter(which)
        .toList();
  }

  private void list(String word, String label, String text) {
    List<LabelledCards.Thing> all = things(label, t -> true);
    String area = text.substring(word.length()).strip();
    if (area.isEmpty()) {
      console.show(views.areas(all, word));
      return;
    }
    List<LabelledCards.Thing> some = things(label, t -> t.area().equals(area));
    if (some.isEmpty()) {
      List<String> areas = all.stream().map(LabelledCards.Thing::area).distinct().toList();
      say("No area \"" + Words.shortened(area) + "\" here. " + Names.advice(area, areas));
    } else {
      console.show(views.list(Wording.capital(word) + ": " + area, some, labels));
    }
  }

  private void setUps() {
    console.show(views.list("States of the work", things("s\\d+", t -> true), labels));
    var inForce = bench.moment().state().work().setUps();
    say("In force: " + (inForce.isEmpty() ? "nothing." : views.setUps(inForce) + "."));
  }
}
