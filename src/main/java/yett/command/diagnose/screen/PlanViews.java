package yett.command.diagnose.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.interview.moment.Moment;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteCard;
import yett.plan.Advice;
import yett.wording.Figures;
import yett.wording.Wording;

/** Shows the plan of work: the repairs in order, with what each one needs. */
record PlanViews(RuleBase base) {
  List<Block> of(Advice plan, Moment moment) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Plan of work"));
    blocks.add(
        Block.paragraph(
            plan.jobs().size() == 1
                ? "No further check is worth its time. After the repair the gate is tried."
                : "No further check is worth its time. After each repair the gate is tried; the"
                    + " next one follows only if it still fails."));
    List<Block.Item> items = new ArrayList<>();
    int number = 0;
    for (Advice.Job job : plan.jobs()) {
      Repair repair = base.repairs().get(job.repair());
      items.add(
          Block.item(
              Integer.toString(++number), repair.name(), particulars(repair, job, number, moment)));
    }
    blocks.add(new Block.Numbered(items));
    return blocks;
  }

  private String particulars(Repair repair, Advice.Job job, int number, Moment moment) {
    List<String> words = new ArrayList<>();
    words.add(Figures.minutes(repair.minutes()));
    double[] now = moment.belief().remaining();
    repair.removes().keySet().stream()
        .map(id -> now[moment.belief().model().indexOf(id)])
        .max(Double::compare)
        .ifPresent(
            chance -> words.add(Figures.percent(chance) + " that what it puts right is there"));
    if (number > 1) {
      words.add(
          Figures.percent(job.chance())
              + " that it comes to this, the gate still failing after "
              + (number == 2 ? "the first" : "those before it"));
    }
    if (!repair.needs().isEmpty()) {
      words.add("with " + StillInForce.names(base, repair.needs()));
    }
    if (!repair.parts().isEmpty()) {
      words.add(
          "parts: "
              + repair.parts().stream().map(Repair.Part::part).collect(Collectors.joining("; ")));
    }
    Site site = new SiteFacts(base).site(moment.state().told().site());
    List<String> after =
        repair.entails().stream()
            .filter(id -> site.allows(card(id))) // what this gate has not is not done
            .toList();
    if (!after.isEmpty()) {
      words.add("afterwards: " + names(after));
    }
    return String.join("; ", words);
  }

  private SiteCard card(String id) {
    return base.repairs().containsKey(id) ? base.repairs().get(id) : base.checks().get(id);
  }

  private String names(List<String> cards) {
    return cards.stream()
        .map(
            id ->
                base.repairs().containsKey(id)
                    ? base.repairs().get(id).name().toLowerCase(Locale.ROOT)
                    : "check " + Wording.uncapital(Wording.spaced(base.checks().get(id).name())))
        .collect(Collectors.joining(", "));
  }
}
