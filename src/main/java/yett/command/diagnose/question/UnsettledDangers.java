package yett.command.diagnose.question;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.dispatch.Dispatcher;
import yett.interview.course.Expertise;
import yett.interview.danger.NotExcluded;
import yett.interview.event.Event;
import yett.knowledge.Pressing;
import yett.knowledge.Role;
import yett.knowledge.SetUp;
import yett.knowledge.Spoken;
import yett.wording.Wording;

/** Finds out whether a danger keeps a call from being closed by what its caller says. */
public record UnsettledDangers(Sitting sitting) {
  private static final String AT_ONCE = Pressing.Urgency.AT_ONCE.words();

  /** Says at once what follows from a danger that nobody can tell. */
  public void warn() {
    List<String> untold = notExcluded().words();
    if (!untold.isEmpty()) {
      sitting.show(
          Block.paragraph("Nobody runs the gate, watched or not, until somebody has looked:"),
          Block.numbered(untold.stream().map(Wording::capital).toList()),
          Block.paragraph("Type danger as soon as you can tell."));
    }
  }

  /** Whether the list of dangers is still open although something was said. */
  boolean isOpen() {
    return notExcluded().unasked();
  }

  /**
   * Whether a danger, or a known fault with which the gate must not run, keeps the call from being
   * closed; if so, the reason is shown.
   */
  boolean keepsOpen() {
    return isSaid(why());
  }

  /** The same, or because somebody is needed there at once although the caller is gone. */
  boolean keepsOpenUnreached() {
    return isSaid(why().or(this::pressing));
  }

  private boolean isSaid(Optional<String> why) {
    why.ifPresent(
        w ->
            sitting.say(
                w
                    + ", so this call cannot be closed that way. The case stays open, "
                    + (isAtOnce() ? "with the urgency \"at once\": " : "and ")
                    + "whether or not the gate runs or they ring again, somebody has to look at it"
                    + " before anybody uses it."));
    return why.isPresent();
  }

  /** Whether somebody has to be there at once. */
  public boolean isAtOnce() {
    return level().equals(AT_ONCE);
  }

  /** How soon somebody has to be there. */
  String level() {
    Expertise expertise = sitting.open().interview().expertise();
    return new Dispatcher(expertise, ZoneId.systemDefault()).urgency(sitting.moment()).level();
  }

  /** Whether a danger is the reason, so that help may have been called. */
  boolean isDanger() {
    return danger().isPresent();
  }

  /**
   * The same for a caller who is on the line; then the call goes on to who is sent.
   *
   * @param how how the call would have ended, as a sentence without its full stop
   */
  boolean sends(String how) {
    boolean open = keepsOpen();
    if (open && sitting.moment().state().gaveUp().isEmpty()) {
      sitting.record(new Event.GaveUp(how + ". " + why().orElseThrow()));
    }
    return open;
  }

  /** Why the call cannot be closed, as the beginning of a sentence; empty if it can. */
  private Optional<String> why() {
    return danger().or(this::knownFault);
  }

  private Optional<String> danger() {
    return reported()
        .or(this::untold)
        .or(this::complained)
        .or(() -> isOpen() ? Optional.of("The dangers have not been ruled out") : Optional.empty());
  }

  /**
   * The reason if a danger was reported. With a danger after which a caller may go on, such as a
   * vehicle shut in, a run that was seen ends it.
   */
  private Optional<String> reported() {
    boolean stands =
        sitting.moment().judgement().stops().stream()
            .map(s -> sitting.base().stops().get(s.stop()))
            .anyMatch(s -> s.goesOn().filter(Role.CALLER::may).isEmpty());
    return stands ? Optional.of("A danger was reported") : Optional.empty();
  }

  private Optional<String> knownFault() {
    return sitting.moment().judgement().whyForbidden(SetUp.GATE_RUNNING).stream()
        .findFirst()
        .map(why -> "Nobody runs the gate: " + why);
  }

  private Optional<String> pressing() {
    return level().equals(AT_ONCE)
        ? Optional.of("Somebody is needed there at once")
        : Optional.empty();
  }

  private Optional<String> untold() {
    return notExcluded().untold().isEmpty()
        ? Optional.empty()
        : Optional.of("Nobody could say whether there is a danger");
  }

  /**
   * The reason if a complaint tells of danger. The danger remains even if the gate runs at the
   * moment.
   */
  private Optional<String> complained() {
    Spoken spoken = sitting.base().telephone().spoken();
    List<String> complaints = sitting.moment().state().told().complaints().orElse(List.of());
    return complaints.stream()
        .filter(c -> !spoken.dangers("complaint", c).isEmpty())
        .findFirst()
        .map(c -> sitting.base().checks().get(c).spoken())
        .map(said -> "\"" + Wording.capital(said) + "\" was reported");
  }

  private NotExcluded notExcluded() {
    return NotExcluded.of(sitting.base(), sitting.moment().state());
  }
}
