package yett.command.diagnose.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.console.Text;
import yett.interview.course.OpenChecks;
import yett.interview.course.OpenChecks.Open;
import yett.interview.evidence.Prospects;
import yett.interview.moment.Moment;
import yett.knowledge.Cause;
import yett.knowledge.Place;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.wording.Figures;

/** Shows the checks that are open now: what each one tells and what it costs. */
record OpenCheckViews(RuleBase base, Moment moment) {

  /** The checks from one position up to another. */
  List<Block> page(OpenChecks open, int from, int to) {
    List<Block> blocks = new ArrayList<>();
    int paying = open.paying();
    String span = (from + 1) + " to " + to + " of " + (from < paying ? paying : open.all().size());
    blocks.add(
        Block.heading(
            from < paying ? "Checks that pay now: " + span : "Other checks, by place: " + span));
    List<Block.Item> items = new ArrayList<>();
    for (int i = from; i < to; i++) {
      Open o = open.inOrder().get(i);
      items.add(
          new Block.Item(
              Integer.toString(i + 1),
              Text.of(o.check().ask()),
              Optional.of(Text.of((i < paying ? tells(open, o) : place(o)) + "; " + costs(o)))));
    }
    blocks.add(new Block.Numbered(items));
    return blocks;
  }

  private static String place(Open o) {
    return o.check().place().map(Place::name).orElse("any place").toLowerCase(Locale.ROOT);
  }

  private String tells(OpenChecks open, Open o) {
    if (o.saves().isEmpty()) {
      return "adds little now";
    }
    List<Integer> apart =
        Prospects.separates(
            moment.belief(), Prospects.of(moment.belief(), o.check(), Optional.empty()), 2);
    String causes =
        apart.stream()
            .map(c -> base.causes().get(moment.belief().model().causes().get(c)))
            .map(Cause::name)
            .collect(Collectors.joining(" / "));
    double saves = o.saves().get();
    String saved = !open.findingOut() && saves >= 1 ? ", saves " + Figures.minutes(saves) : "";
    return (causes.isEmpty() ? "adds little now" : "bears on " + causes) + saved;
  }

  /** The minutes of a check, and the set-ups that still have to be entered. */
  static String costs(Open o) {
    String setUps = o.enter().stream().map(SetUp::name).collect(Collectors.joining(", then "));
    return Figures.minutes(o.minutes()) + (setUps.isEmpty() ? "" : " with: " + setUps);
  }
}
