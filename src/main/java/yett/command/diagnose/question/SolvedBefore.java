package yett.command.diagnose.question;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.Console;
import yett.desk.OpenCase;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.interview.state.CallLog;
import yett.interview.state.CaseState;
import yett.knowledge.Role;
import yett.wording.CallWords;

/**
 * Earlier calls about a gate that ended well. A fault that comes back soon was not solved, whoever
 * made the gate work again.
 */
public record SolvedBefore(OpenCase open) {
  /** A fault that comes back later counts as another one. */
  private static final Duration SOON = Duration.ofDays(30);

  private static final Set<Ending> WELL = EnumSet.of(Ending.SOLVED, Ending.WORKS_AGAIN);

  private record Earlier(CaseState state, String words) {}

  /** Tells the desk of the last one, before the caller is asked anything. */
  public void tell(Console console) {
    last().ifPresent(e -> console.say("An earlier call about this gate: " + e.words() + "."));
  }

  /**
   * Offers to send somebody if the same fault was reported before.
   *
   * @return whether somebody goes, so that the call is not over
   */
  public boolean sends(Sitting sitting) {
    Optional<Earlier> before = last().filter(this::isSame);
    if (before.isEmpty()) {
      return false;
    }
    sitting.show(
        Block.heading("The same fault again"),
        Block.paragraph("Earlier: " + before.get().words() + "."),
        Block.paragraph(
            "It came back within "
                + SOON.toDays()
                + " days, so it is not solved, even if the gate"
                + " runs now. Somebody should find out why. Read out: we would like to send"
                + " somebody to look for the reason."));
    boolean send = sitting.yes("Send somebody? yes; no if they want nobody");
    sitting.record(
        send
            ? new Event.GaveUp(
                "it works again, but the same fault was there before: " + before.get().words())
            : new Event.Noted(
                "They want nobody, though it was the same before: " + before.get().words()));
    return send;
  }

  private Optional<Earlier> last() {
    return open.othersAtGate().stream()
        .filter(c -> c.lastEvent().isAfter(open.now().minus(SOON)))
        .map(
            c -> {
              var entries = open.entriesOf(c.id());
              CaseState state = CaseState.of(entries);
              String ended = state.closed().map(Ending::words).orElse("");
              String how =
                  CallLog.of(entries)
                      .last(Tending.WORKS_AGAIN)
                      .map(t -> t.words().startsWith(ended) ? t.words() : ended + ": " + t.words())
                      .orElse(ended);
              return new Earlier(
                  state, "case " + c.id() + ", " + CallWords.when(c.lastEvent()) + ", " + how);
            })
        .filter(e -> e.state().role() == Role.CALLER)
        .filter(e -> e.state().closed().filter(WELL::contains).isPresent())
        .findFirst();
  }

  /** Whether one complaint is the same, or nobody could say it on one of the calls. */
  private boolean isSame(Earlier earlier) {
    List<String> then = earlier.state().told().complaints().orElse(List.of());
    List<String> now = open.moment().state().told().complaints().orElse(List.of());
    return then.isEmpty() || now.isEmpty() || !Collections.disjoint(then, now);
  }
}
