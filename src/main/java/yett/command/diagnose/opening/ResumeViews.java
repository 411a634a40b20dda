package yett.command.diagnose.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import yett.command.diagnose.correction.Corrections;
import yett.console.Block;
import yett.console.SignalWord;
import yett.desk.OpenCase;
import yett.interview.course.Interview;
import yett.interview.course.Interview.RankedCause;
import yett.interview.event.Event;
import yett.interview.inspection.Inspection;
import yett.interview.moment.Moment;
import yett.interview.state.CouldNotBeDone;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.record.NextWork;
import yett.wording.CallWords;
import yett.wording.Figures;
import yett.wording.Wording;

/** Shows what somebody who resumes a case has to know. */
record ResumeViews(RuleBase base) {

  /**
   * What was said on the telephone, and that the person at the gate has to look for dangers again.
   */
  List<Block> told(OpenCase open, Corrections corrections) {
    List<String> told =
        open.moment().state().answers().stream()
            .filter(a -> a.by() == Role.CALLER && !a.yieldsTo(Role.TECHNICIAN))
            .filter(a -> base.checks().containsKey(a.check()))
            .map(a -> corrections.told(a) + worth(a.check()))
            .toList();
    return told.isEmpty()
        ? List.of()
        : List.of(
            Block.heading("Answers on the telephone"),
            Block.numbered(told),
            Block.signal(
                SignalWord.WARNING,
                "This was said over the telephone, some time ago. Look for each danger of the list"
                    + " again before you touch anything; \"correct\" changes what was told."));
  }

  /** How far an answer from the telephone is trusted, so that it can be checked again. */
  private String worth(String check) {
    Double right = base.checks().get(check).reliability().get(Role.CALLER);
    return right == null ? "" : " · callers see this right in " + Figures.percent(right);
  }

  String summary(OpenCase open) {
    Optional<Inspection> inspection = Inspection.of(base, open.moment());
    if (inspection.isPresent()) {
      return "Inspection for "
          + inspection.get().kind().word()
          + ": "
          + inspection.get().progress()
          + " inspected, "
          + inspection.get().sum()
          + ".";
    }
    int answers = open.moment().state().answers().size();
    return answers
        + (answers == 1 ? " answer" : " answers")
        + " so far; "
        + probable(open.moment())
        + ".";
  }

  /** The most probable cause; after a repair, what was done and what is most probable since. */
  private String probable(Moment moment) {
    List<String> done =
        moment.state().work().repairs().stream()
            .distinct()
            .map(id -> new Wording(base).repair(id).toLowerCase(Locale.ROOT))
            .toList();
    ToDoubleFunction<RankedCause> chance =
        done.isEmpty() ? RankedCause::chance : r -> NextWork.remaining(moment, r.cause().id());
    RankedCause leading =
        Interview.ranking(moment, base).stream()
            .reduce((a, b) -> chance.applyAsDouble(b) > chance.applyAsDouble(a) ? b : a)
            .orElseThrow();
    String probable =
        "most probable"
            + (done.isEmpty() ? ": " : " now: ")
            + leading.cause().name().toLowerCase(Locale.ROOT)
            + ", "
            + Figures.percent(chance.applyAsDouble(leading));
    return done.isEmpty() ? probable : "done: " + String.join("; ", done) + "; " + probable;
  }

  /** Why the case was given away, and what could not be done, each as it was typed. */
  List<Block> left(Moment moment) {
    List<Block> blocks = new ArrayList<>();
    moment
        .state()
        .gaveUp()
        .ifPresent(why -> blocks.add(Block.paragraph("Handed over because: " + why + ".")));
    CouldNotBeDone.of(moment.entries())
        .forEach(
            (repair, e) ->
                blocks.add(
                    Block.paragraph(
                        new Wording(base).repair(repair)
                            + ": "
                            + ((Event.Repaired) e.event()).words()
                            + " ("
                            + e.by().word()
                            + ", "
                            + CallWords.when(e.at())
                            + ").")));
    return blocks;
  }
}
