package yett.command.diagnose.opening;

import java.util.List;
import java.util.Optional;
import yett.casebook.CaseId;
import yett.command.common.Prompt;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.interview.event.Ending;
import yett.interview.state.CaseState;
import yett.knowledge.Role;
import yett.wording.Wording;

/**
 * Finds out whose work is done in a case that is resumed. Whoever was there last may not be who is
 * there now, so nobody is led to live parts because an electrician was there before them.
 */
public record WhoAnswers(Desk desk, Console console) {
  /**
   * The role for a case, if none was given in the command. What is over asks nobody anything; but a
   * case may follow on an inspection.
   *
   * @return empty if the person leaves instead of answering
   */
  public Optional<Role> of(CaseId id) {
    CaseState left = CaseState.of(OpenCase.entries(desk.casebook().events(id)));
    boolean over = left.closed().filter(Ending::isDone).isPresent() && !left.isInspection();
    return over || Role.TECHNICIAN.may(left.role())
        ? Optional.of(left.role())
        : confirmed(left.role());
  }

  private Optional<Role> confirmed(Role last) {
    String who = Wording.aPerson(last);
    console.say(
        Wording.capital(who)
            + " answered last. Whoever says yes is led to work that only "
            + who
            + " may do.");
    return Prompt.withLeave(console)
        .until(
            "Are you " + who + "? yes, or Enter for no> ",
            List.of("yes", "no"),
            line -> line.isEmpty() ? Prompt.Reading.of(false) : Prompt.yesOrNo(line))
        .map(yes -> yes ? last : Role.TECHNICIAN);
  }

  /** Whose work it is, for the heading of a case. */
  static String words(Role role) {
    return role == Role.CALLER ? "on the telephone" : "as " + Wording.aPerson(role);
  }
}
