package yett.command.practice;

import java.util.List;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.wording.Figures;
import yett.wording.WhoMay;
import yett.wording.Wording;

/** Lists what a trainee can do at a gate. */
record ThingViews(RuleBase base, LabelledCards labels, Role role) {

  List<Block> areas(List<LabelledCards.Thing> things, String word) {
    String areas =
        things.stream().map(LabelledCards.Thing::area).distinct().collect(Collectors.joining(", "));
    return List.of(Block.paragraph("Areas: " + areas + ". Type " + word + " and an area."));
  }

  List<Block> list(String heading, List<LabelledCards.Thing> things) {
    return List.of(
        Block.heading(heading),
        new Block.Numbered(
            things.stream().map(t -> Block.item(t.label(), t.words(), effort(t))).toList()));
  }

  private String effort(LabelledCards.Thing thing) {
    if (thing.card() instanceof Check check) {
      return Figures.minutes(check.minutes())
          + Wording.instrument(check).map(i -> ", " + i).orElse("")
          + needs(check.needs())
          + who(check.id(), check.who(), check.hazards());
    }
    if (thing.card() instanceof Repair repair) {
      String parts = repair.price() > 0 ? ", parts " + PracticeViews.money(repair.price()) : "";
      return Figures.minutes(repair.minutes())
          + parts
          + needs(repair.needs())
          + who(repair.id(), repair.who(), repair.hazards());
    }
    SetUp setUp = (SetUp) thing.card();
    return Figures.minutes(setUp.enterMinutes())
        + " in, "
        + Figures.minutes(setUp.leaveMinutes())
        + " out"
        + who(setUp.id(), setUp.who(), setUp.hazards());
  }

  /** Who may do it, if the trainee may not. */
  private String who(String card, Role who, List<String> hazards) {
    return role.may(who) ? "" : ", " + WhoMay.words(base, card, who, hazards);
  }

  /** The set-ups that have to be entered first, in words. */
  private String needs(List<String> setUps) {
    return setUps.isEmpty() ? "" : ", needs " + labels.setUps(base.withOuter(setUps), base);
  }
}
