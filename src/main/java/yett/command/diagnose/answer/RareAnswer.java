package yett.command.diagnose.answer;

import java.util.Optional;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.Text;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.moment.Moment;
import yett.knowledge.Check;
import yett.wording.Figures;
import yett.wording.Wording;

/**
 * Asks the person to confirm an answer that is very unlikely by the present belief, before it
 * counts.
 */
public final class RareAnswer {
  private final Sitting sitting;

  public RareAnswer(Sitting sitting) {
    this.sitting = sitting;
  }

  /** Whether the answer may count: it is not unlikely, or the person has confirmed it. */
  public boolean isMeant(Moment moment, Check check, Answer answer) {
    if (moment.state().isInspection()) {
      return true; // an inspection has no belief, and looks for what is out of the ordinary
    }
    if (check.kind() == Check.Kind.PROOF && answer.is(Check.FAIL)) {
      return true; // nobody is talked out of it
    }
    Optional<Interview.Hearing> hearing = sitting.open().interview().hear(moment, check, answer);
    if (hearing.isEmpty() || !hearing.get().unlikely()) {
      return true;
    }
    Interview.Hearing heard = hearing.get();
    sitting.show(
        Block.paragraph(
            Text.of("That means \"")
                .and(
                    Text.strong(
                        Wording.meaning(check, heard.finding().outcome(), heard.finding().also())))
                .and(
                    "\", which is unlikely given the answers so far ("
                        + Figures.percent(heard.chance())
                        + "). Are you sure?")));
    return sitting.yes("yes to keep it, no to answer again");
  }
}
