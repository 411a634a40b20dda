package yett.command.practice;

import java.util.List;
import java.util.function.Predicate;
import yett.command.common.Words;
import yett.console.Console;
import yett.knowledge.Names;
import yett.knowledge.RuleBase;
import yett.practice.Workbench;
import yett.wording.Wording;

/** Shows the lists from which a trainee chooses: what can be done at this gate. */
final class ThingLists {
  private final Console console;
  private final Workbench bench;
  private final LabelledCards labels;
  private final PracticeViews views;
  private final ThingViews shown;

  ThingLists(Console console, Workbench bench, RuleBase base, LabelledCards labels) {
    this.console = console;
    this.bench = bench;
    this.labels = labels;
    this.views = new PracticeViews(base);
    this.shown = new ThingViews(base, labels, bench.moment().state().role());
  }

  /** Lists what a trainee may have meant, to choose from. */
  void show(String heading, List<LabelledCards.Thing> found) {
    console.show(shown.list(heading, found));
  }

  void proofs() {
    show("Proofs", things("p\\d+", t -> true));
  }

  private List<LabelledCards.Thing> things(String label, Predicate<LabelledCards.Thing> which) {
    var unavailable = bench.moment().judgement().unavailable();
    return labels.all().stream()
        .filter(t -> t.label().matches(label))
        .filter(t -> !unavailable.contains(t.card().id()))
        .filter(which)
        .toList();
  }

  /** Lists checks or repairs; only those of an area if one is named. */
  void list(String word, String label, String text) {
    List<LabelledCards.Thing> all = things(label, t -> true);
    String area = text.substring(word.length()).strip();
    if (area.isEmpty()) {
      console.show(shown.areas(all, word));
      return;
    }
    List<LabelledCards.Thing> some = things(label, t -> t.area().equals(area));
    if (some.isEmpty()) {
      List<String> areas = all.stream().map(LabelledCards.Thing::area).distinct().toList();
      console.say("No area " + Words.quoted(area) + " here. " + Names.advice(area, areas));
    } else {
      show(Wording.capital(word) + ": " + area, some);
    }
  }

  void setUps() {
    show("Set-ups", things("s\\d+", t -> true));
    var inForce = bench.moment().state().work().setUps();
    console.say("In force: " + (inForce.isEmpty() ? "nothing." : views.setUps(inForce) + "."));
  }
}
