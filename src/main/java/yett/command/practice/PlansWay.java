package yett.command.practice;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import yett.console.Block;
import yett.knowledge.RuleBase;
import yett.practice.Departure;
import yett.practice.PracticeScore;
import yett.practice.StepTold;
import yett.wording.Figures;
import yett.wording.Wording;

/** Shows where a trainee departed from the plan, and what the plan would have done. */
final class PlansWay {
  private static final int MOST_DEPARTURES = 3;
  private static final int MOST_STEPS = 15;
  private static final Set<String> WAY = Set.of("check", "look-round", "repair", "retest");

  private PlansWay() {}

  /** The first departure, and those that cost most. */
  static void departures(List<Departure> departures, List<Block> blocks) {
    if (departures.isEmpty()) {
      blocks.add(Block.paragraph("You never left the plan's path."));
      return;
    }
    Set<Departure> told = new LinkedHashSet<>(List.of(departures.get(0)));
    departures.stream()
        .sorted(Comparator.comparingDouble(d -> -d.lost()))
        .limit(MOST_DEPARTURES - 1)
        .forEach(told::add);
    boolean first = true;
    for (Departure d : told) {
      blocks.add(
          Block.paragraph(
              (first ? "Here you left the plan's path first, in minute " : "In minute ")
                  + Math.round(d.minute())
                  + ": "
                  + Wording.quoted(d.chose())
                  + ". Better: "
                  + Wording.quoted(d.best())
                  + " ("
                  + reason(d)
                  + ")."));
      first = false;
    }
  }

  private static String reason(Departure d) {
    String lost =
        d.lost() >= Departure.WORTH_TELLING
            ? "; the difference is " + Figures.minutes(d.lost()) + " on average"
            : "";
    return d.reason() + lost;
  }

  static void steps(PracticeScore score, RuleBase base, List<Block> blocks) {
    StepTold told = new StepTold(base);
    List<String> steps =
        score.planSteps().stream().filter(s -> WAY.contains(s.kind())).map(told::words).toList();
    blocks.add(Block.paragraph("The plan's own way:"));
    blocks.add(Block.numbered(steps.subList(0, Math.min(MOST_STEPS, steps.size()))));
    if (steps.size() > MOST_STEPS) {
      blocks.add(Block.paragraph("And " + (steps.size() - MOST_STEPS) + " more."));
    }
  }
}
