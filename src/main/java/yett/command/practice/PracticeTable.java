package yett.command.practice;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.command.diagnose.PutAside;
import yett.command.diagnose.StepViews;
import yett.console.Block;
import yett.console.Console;
import yett.interview.Answer;
import yett.interview.Ending;
import yett.interview.Event;
import yett.interview.Step;
import yett.knowledge.Check;
import yett.knowledge.Names;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.practice.Refusal;
import yett.practice.Workbench;

/** Leads a trainee through an exercise at a console, until it is over or put aside. */
public final class PracticeTable {
  private final Console console;
  private final Workbench bench;
  private final RuleBase base;
  private final Labels labels;
  private final PracticeViews views;
  private Optional<Check> last = Optional.empty();

  public PracticeTable(Console console, Workbench bench, RuleBase base) {
    this.console = console;
    this.bench = bench;
    this.base = base;
    this.labels = new Labels(base);
    this.views = new PracticeViews(base);
  }

  /**
   * @return whether it is over; otherwise it was put aside
   */
  public boolean run() {
    console.show(views.outset(bench));
    try {
      while (!bench.over()) {
        if (bench.moment().step() instanceof Step.MakeSafe stop) {
          makeSafe(stop);
        } else if (!bench.moment().judgement().stops().isEmpty()) {
          bench.close(Ending.MADE_SAFE);
        } else {
          turn(line("Minute " + Math.round(bench.minutes())));
        }
      }
      return true;
    } catch (PutAside e) {
      return false;
    }
  }

  private String line(String prompt) {
    return Prompt.withLeave(console).line(prompt + "> ", List.of()).orElseThrow(PutAside::new);
  }

  private void say(String sentence) {
    console.show(Block.paragraph(sentence));
  }

  private void turn(String line) {
    String text = line.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    switch (text) {
      case "" -> say("Type a number, some words, or help.");
      case "dangers", "danger" -> dangers();
      case "set-ups", "set ups", "setups" -> setUps();
      case "proofs" -> console.show(views.list("Proofs", things("p\\d+", t -> true)));
      case "try" -> tryOut();
      case "finish" -> finish();
      case "hand over", "handover" -> handOver();
      case "gate" -> console.show(views.gate(bench));
      case "usual" -> console.show(views.usual(bench.moment(), last));
      case "so far" -> console.show(views.soFar(bench));
      case "hint" -> hint();
      case "help", "?" -> console.show(views.help());
      default -> rest(text);
    }
  }

  private void rest(String text) {
    if (text.matches("checks( .*)?")) {
      list("checks", "\\d+", text);
    } else if (text.matches("repairs( .*)?")) {
      list("repairs", "r\\d+", text);
    } else {
      Optional<Labels.Thing> named = labels.named(text);
      if (named.isEmpty() && text.matches("[rsp]? ?\\d+")) {
        say("There is no " + text + ". See checks, repairs, set-ups or proofs.");
        return;
      }
      named.or(() -> meant(text)).ifPresent(this::use);
    }
  }

  /** What was meant, once the trainee has said which. */
  private Optional<Labels.Thing> meant(String text) {
    List<Labels.Thing> found = labels.meant(text);
    if (found.isEmpty()) {
      say("Nothing here is called \"" + Words.shortened(text) + "\". Try other words, or help.");
      return Optional.empty();
    }
    console.show(views.list("Which of these?", found));
    String which = line("Enter for the first, another label, or no");
    if (which.isEmpty()) {
      return Optional.of(found.get(0));
    }
    Optional<Labels.Thing> named = labels.named(which);
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

  private List<Labels.Thing> things(String label, Predicate<Labels.Thing> which) {
    var unavailable = bench.moment().judgement().unavailable();
    return labels.all().stream()
        .filter(t -> t.label().matches(label))
        .filter(t -> !unavailable.contains(t.card().id()))
        .filter(which)
        .toList();
  }

  private void list(String word, String label, String text) {
    List<Labels.Thing> all = things(label, t -> true);
    String area = text.substring(word.length()).strip();
    if (area.isEmpty()) {
      console.show(views.areas(all, word));
      return;
    }
    List<Labels.Thing> some = things(label, t -> t.area().equals(area));
    if (some.isEmpty()) {
      List<String> areas = all.stream().map(Labels.Thing::area).distinct().toList();
      say("No area \"" + Words.shortened(area) + "\" here. " + Names.advice(area, areas));
    } else {
      console.show(views.list(StepViews.capital(word) + ": " + area, some));
    }
  }

  private void setUps() {
    console.show(views.list("States of the work", things("s\\d+", t -> true)));
    var inForce = bench.moment().state().setUps();
    say("In force: " + (inForce.isEmpty() ? "nothing." : views.setUps(inForce) + "."));
  }

  private void use(Labels.Thing thing) {
    if (thing.card() instanceof Check check) {
      check(check);
    } else if (thing.card() instanceof Repair repair) {
      repair(repair);
    } else {
      setUp((SetUp) thing.card());
    }
  }

  /** Whether something is refused; then it was said why. */
  private boolean told(Optional<Refusal> refusal) {
    refusal.ifPresent(r -> console.show(views.refusal(r, labels.all())));
    return refusal.isPresent();
  }

  private void dangers() {
    if (!(bench.moment().step() instanceof Step.AskDangers)) {
      say("You have looked already.");
      return;
    }
    bench.lookForDangers();
    if (bench.moment().judgement().stops().isEmpty()) {
      say("You look from two metres away and touch nothing: no danger to people.");
    }
  }

  private void makeSafe(Step.MakeSafe stop) {
    console.show(views.steps().stop(stop));
    while (!line("\"done\" when it is done").equalsIgnoreCase("done")) {
      say("People first. Type done when these steps are done, or save to stop here.");
    }
    bench.madeSafe(stop.stop());
  }

  private void check(Check check) {
    if (told(bench.refused(check))) {
      return;
    }
    console.show(views.steps().cautions(base.cautionsFor(check.hazards())));
    Answer answer = bench.ask(check);
    last = Optional.of(check);
    console.show(views.shown(check, answer));
  }

  private void repair(Repair repair) {
    if (told(bench.refused(repair))) {
      return;
    }
    console.show(
        views
            .steps()
            .mend(
                new Step.Mend(repair, base.cautionsFor(repair.hazards()), Optional.empty(), ""),
                bench.moment()));
    if (line("\"done\" to do it, Enter to leave it").equalsIgnoreCase("done")) {
      bench.repair(repair);
      say("Done. Whether it helped shows when the gate is tried.");
    } else {
      say("Left as it is.");
    }
  }

  private void setUp(SetUp setUp) {
    if (bench.moment().state().setUps().contains(setUp.id())) {
      console.show(views.steps().leave(new Step.Leave(setUp, "", "what comes next")));
      if (done()) {
        bench.leave(setUp);
      }
      return;
    }
    if (told(bench.refused(setUp))) {
      return;
    }
    console.show(
        views
            .steps()
            .entering(
                new Step.Enter(setUp, base.cautionsFor(setUp.hazards()), "", "what comes next")));
    line("Enter when these are read");
    console.show(Block.numbered(setUp.enter()));
    if (done()) {
      bench.enter(setUp);
    }
  }

  private boolean done() {
    boolean done = line("\"done\" when all is done, in order; Enter to leave it").equals("done");
    if (!done) {
      say("Left as it was.");
    }
    return done;
  }

  private void tryOut() {
    if (!told(bench.tryRefused())) {
      Event.Retested tried = bench.tryOut();
      say(tried.cured() ? "It runs as it should." : "It " + tried.words() + ".");
    }
  }

  private void finish() {
    if (!told(bench.finishRefused())) {
      bench.close(Ending.REPAIRED);
    }
  }

  private void handOver() {
    if (!told(bench.handOverRefused())) {
      bench.close(Ending.HANDED_OVER);
    }
  }
}
