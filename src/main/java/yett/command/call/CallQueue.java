package yett.command.call;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import yett.casebook.CaseId;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.desk.OpenCase;
import yett.dispatch.CallUrgency;
import yett.dispatch.DispatchSheet;
import yett.interview.event.Entry;
import yett.interview.event.Tending;
import yett.interview.state.CallLog;
import yett.interview.state.CaseState;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.wording.CallWords;

/** The open calls, the most urgent first; among equally urgent ones the oldest first. */
final class CallQueue {
  private static final List<String> LEVELS = List.of("at once", "today", "next working day");

  /** A call in the queue. */
  record Call(CaseSummary line, DispatchSheet.Urgency urgency, CallLog log) {
    String level() {
      return urgency.level();
    }

    /** The call in words, without the number of the case. */
    String words(Instant now) {
      List<String> words = new ArrayList<>();
      words.add(level());
      words.add(line.siteId());
      words.add(age(Duration.between(line.opened(), now)));
      words.add(String.join("; ", urgency.reasons()));
      log.last(Tending.SENT).map(CallWords::of).ifPresent(words::add);
      log.stage().filter(t -> t.what() != Tending.SENT).map(CallWords::of).ifPresent(words::add);
      log.callBack().map(CallWords::of).ifPresent(words::add);
      if (isLate(now)) {
        words.add("LATE");
      }
      words.add(log.holder().map(h -> "with " + h).orElse("nobody has taken it"));
      return String.join(" · ", words);
    }

    private boolean isLate(Instant now) {
      return Stream.concat(
              log.stage().filter(t -> t.what() != Tending.AT_THE_GATE).stream(),
              log.callBack().stream())
          .filter(t -> !t.due().isEmpty() && Instant.parse(t.due()).isBefore(now))
          .findAny()
          .isPresent();
    }

    private static String age(Duration age) {
      return age.toMinutes() < 120
          ? Math.max(0, age.toMinutes()) + " min old"
          : age.toHours() < 48 ? age.toHours() + " h old" : age.toDays() + " days old";
    }
  }

  private CallQueue() {}

  /**
   * @param exactly how urgent a case is that its answers alone do not decide
   */
  static List<Call> of(
      Casebook casebook,
      RuleBase base,
      ZoneId zone,
      Function<CaseId, DispatchSheet.Urgency> exactly) {
    List<Call> calls = new ArrayList<>();
    List<Call> uncertain = new ArrayList<>();
    casebook.forEach(
        casebook.cases(CaseStatus.OPEN),
        (line, events) -> {
          List<Entry> entries = OpenCase.entries(events);
          CaseState state = CaseState.of(entries);
          if (state.opened().filter(o -> o.role() == Role.CALLER).isPresent()) {
            Call call =
                new Call(line, CallUrgency.of(base, state, entries, zone), CallLog.of(entries));
            (CallUrgency.isCertain(base, state) ? calls : uncertain).add(call);
          }
        });
    uncertain.forEach(c -> calls.add(new Call(c.line(), exactly.apply(c.line().id()), c.log())));
    calls.sort(
        Comparator.comparingInt((Call c) -> LEVELS.indexOf(c.level()))
            .thenComparing(c -> c.line().opened())
            .thenComparing(c -> c.line().id()));
    return List.copyOf(calls);
  }
}
