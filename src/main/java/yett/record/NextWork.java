package yett.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.evidence.Chance;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.interview.state.CaseState.Answered;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.plan.Advice;
import yett.plan.Planner;
import yett.rules.Conclusion.Remark;
import yett.wording.Wording;

/** Says what comes next, who does it, and why it could not be done here. */
public final class NextWork {
  private static final double UNKNOWN_MATTERS = 0.2;
  private static final int SUGGESTIONS = 3;

  private final RuleBase base;
  private final Planner planner;
  private final Wording words;
  private final Moment moment;
  private final CaseState state;
  private final Outline page;

  NextWork(RuleBase base, Planner planner, Wording words, Moment moment, Outline page) {
    this.base = base;
    this.planner = planner;
    this.words = words;
    this.moment = moment;
    this.state = moment.state();
    this.page = page;
  }

  void write() {
    if (!moment.judgement().stops().isEmpty()) {
      page.heading("What comes next");
      page.paragraph("Nothing before the danger is dealt with.");
      return;
    }
    OpenWork open = new OpenWork(base, state);
    Advice advice =
        planner.advise(
            moment.belief(),
            new Planner.Options(
                open.checks(), open.repairs(), state.work().setUps(), state.work().cured()));
    List<String> lines = new ArrayList<>();
    if (advice.kind() == Advice.Kind.ASK) {
      advice.candidates().stream()
          .filter(c -> c.saves() > 0)
          .limit(SUGGESTIONS)
          .forEach(c -> lines.add(check(base.checks().get(c.check()))));
    }
    advice.jobs().stream()
        .map(j -> base.repairs().get(j.repair()))
        .filter(r -> against(r).findAny().isPresent())
        .limit(SUGGESTIONS)
        .forEach(r -> lines.add(repair(r)));
    double unknown = remaining(Cause.NOT_IN_RULE_BASE);
    if (unknown >= UNKNOWN_MATTERS) {
      lines.add("It may be something that is not in this rule base: " + Chance.of(unknown) + ".");
    }
    words.openProofs(moment).stream()
        .filter(p -> state.work().cured())
        .forEach(p -> lines.add("Proof to be made: " + p.ask() + here(p.who(), p.id())));
    lines.addAll(due(moment, base));
    if (lines.isEmpty() && state.closed().filter(Ending::isProved).isPresent()) {
      return; // back in service, and nothing is left to do
    }
    page.heading("What comes next");
    if (lines.isEmpty()) {
      page.paragraph("Nothing in this rule base is worth its cost now.");
    } else {
      page.items(lines);
    }
  }

  /** Work that rules found to be left to do, such as to order what is worn. */
  public static List<String> due(Moment moment, RuleBase base) {
    return moment.judgement().remarks().stream()
        .filter(Remark::due)
        .map(r -> base.units().in(r.text()))
        .distinct()
        .toList();
  }

  private double remaining(String cause) {
    return remaining(moment, cause);
  }

  /** The chance that a cause is still present. */
  public static double remaining(Moment moment, String cause) {
    int at = moment.belief().model().causes().indexOf(cause);
    return at < 0 ? 0 : moment.belief().remaining()[at];
  }

  private String check(Check check) {
    return "Check: " + check.ask() + here(check.who(), check.id());
  }

  /** Causes that matter and that the repair removes. */
  private Stream<String> against(Repair repair) {
    return repair.removes().keySet().stream().filter(c -> remaining(c) >= CaseRecord.NAMED);
  }

  private String repair(Repair repair) {
    String causes =
        against(repair)
            .map(c -> words.cause(c) + ", " + Chance.of(remaining(c)).percent())
            .collect(Collectors.joining("; "));
    String parts = repair.parts().stream().map(Repair.Part::part).collect(Collectors.joining("; "));
    return "Repair: "
        + repair.name()
        + " (against: "
        + causes
        + ")."
        + (parts.isEmpty() ? "" : " Bring: " + parts + ".")
        + here(repair.who(), repair.id());
  }

  /** Why it could not be done here. */
  private String here(Role who, String id) {
    if (!state.role().may(who)) {
      return " Reserved for " + Wording.aPerson(who) + ".";
    }
    if (state.work().declined().containsKey(id)) {
      return " It could not be done here.";
    }
    Optional<Answer> last = state.latest(id).map(Answered::answer);
    if (last.filter(Answer::putOff).isPresent()) {
      return " It was put off here.";
    }
    if (last.filter(Answer::hopeless).isPresent()) {
      return " It could not be determined here.";
    }
    return " It was not reached here.";
  }
}
