package yett.record.handout;

import java.util.ArrayList;
import java.util.List;
import yett.interview.course.Interview.RankedCause;
import yett.interview.moment.Moment;
import yett.knowledge.Cause;
import yett.knowledge.RuleBase;
import yett.record.NextWork;
import yett.wording.Wording;

/** What the owner of the gate is told is left to do. */
record LeftToDo(RuleBase base, Moment moment, Findings findings) {
  List<String> lines() {
    Wording words = new Wording(base);
    List<String> lines = new ArrayList<>();
    moment
        .state()
        .work()
        .setUps()
        .forEach(s -> lines.add("The gate was left so: " + words.setUp(s) + "."));
    moment
        .judgement()
        .followUps()
        .forEach(
            f ->
                lines.add(
                    base.repairs().containsKey(f.card())
                        ? words.repair(f.card()) + "."
                        : "Still to be looked at: " + words.ask(f.card())));
    lines.addAll(NextWork.due(moment, base));
    findings.causes().stream()
        .map(RankedCause::cause)
        .filter(c -> !c.id().equals(Cause.NOTHING_WRONG) && !c.id().equals(Cause.NOT_IN_RULE_BASE))
        .filter(c -> NextWork.remaining(moment, c.id()) >= Findings.FOUND)
        .forEach(c -> lines.add("Still to be repaired: " + c.name() + "."));
    words.openProofs(moment).forEach(p -> lines.add("Safety test still to be made: " + p.ask()));
    return lines;
  }
}
