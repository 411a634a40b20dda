package yett.bench;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import yett.knowledge.Caution;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.paper.Markup;
import yett.wording.Figures;
import yett.wording.WhoMay;

/**
 * Writes work on a page. The hazards, and the set-ups that have to be in force, come before every
 * step.
 */
record WorkOnPage(RuleBase base, Markup page) {
  /** Writes all hazards of this work, each in full once, the gravest first. */
  void cautions(List<Set<String>> hazards) {
    Set<String> all = new LinkedHashSet<>();
    hazards.forEach(all::addAll);
    for (Caution caution : base.cautionsFor(List.copyOf(all))) {
      page.open("p").leaf("strong", caution.word().name()).text(": " + caution.text()).close();
    }
  }

  /** Hazards of a piece of work and of the set-ups that it needs. */
  Set<String> hazards(List<String> needs, List<String> own) {
    Set<String> all = new LinkedHashSet<>(own);
    base.withOuter(needs).forEach(s -> all.addAll(base.setUps().get(s).hazards()));
    return all;
  }

  /**
   * @param needs set-ups; those that they need in turn are added
   * @param effort how long and for whom
   */
  void conditions(List<String> needs, List<String> hazards, String effort) {
    page.leaf("p", effort + ".", "class", "note");
    for (Caution caution : base.cautionsFor(List.copyOf(hazards(needs, hazards)))) {
      page.open("p").leaf("strong", caution.word().name()).text(": " + caution.what()).close();
    }
    List<String> setUps = base.withOuter(needs);
    if (!setUps.isEmpty()) {
      String names =
          setUps.stream().map(s -> base.setUps().get(s).name()).collect(Collectors.joining("; "));
      page.open("p").leaf("strong", "Before").text(": " + names + ".").close();
    }
  }

  void repair(Repair repair, double removes) {
    page.leaf("h3", repair.name());
    String parts = repair.parts().stream().map(Repair.Part::part).collect(Collectors.joining("; "));
    conditions(
        repair.needs(),
        repair.hazards(),
        "Puts it right in "
            + Figures.percent(removes)
            + " of all tries, "
            + Figures.minutes(repair.minutes())
            + ", "
            + WhoMay.words(base, repair.id(), repair.who(), repair.hazards())
            + (parts.isEmpty() ? "" : ". Parts: " + parts));
    if (!repair.measureFirst().isEmpty()) {
      page.open("p")
          .leaf("strong", "Check first, however sure it looks")
          .text(
              ": "
                  + repair.measureFirst().stream()
                      .map(id -> base.checks().get(id).ask())
                      .collect(Collectors.joining(" ")))
          .close();
    }
    if (!repair.steps().isEmpty()) {
      page.open("ol");
      repair.steps().forEach(step -> page.leaf("li", step));
      page.close();
    }
  }
}
