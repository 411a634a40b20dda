package yett.command.diagnose;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.console.Block;
import yett.console.SignalWord;
import yett.desk.OpenCase;
import yett.interview.Inspection;
import yett.interview.Interview;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.wording.Figures;

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
    var leading = Interview.ranking(open.moment(), base).get(0);
    return answers
        + (answers == 1 ? " answer" : " answers")
        + " so far; most probable: "
        + leading.cause().name().toLowerCase(Locale.ROOT)
        + ", "
        + Figures.percent(leading.chance())
        + ".";
  }
}
