package yett.replay;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.knowledge.RuleBase;

/**
 * Turns a recorded case into events exactly as its file tells it, with nothing asked or planned.
 */
public final class AsTold {
  private final RecordedCase recorded;
  private final List<Entry> entries = new ArrayList<>();

  private AsTold(RecordedCase recorded) {
    this.recorded = recorded;
  }

  /**
   * The events of a case without any plan: the gate, the complaints, recent events, then every
   * answer of the file for the gate as found.
   */
  public static List<Entry> entries(RecordedCase recorded, RuleBase base) {
    AsTold told = new AsTold(recorded);
    told.add(new Event.Opened(recorded.name(), recorded.person(), base.fingerprint()));
    recorded
        .site()
        .forEach((question, answer) -> told.add(new Event.SiteAnswered(question, answer)));
    told.add(new Event.SiteTaken());
    told.add(new Event.Complained(recorded.complaints()));
    told.add(new Event.Happened(recorded.history()));
    recorded
        .answers()
        .forEach(
            (check, answer) ->
                answer.turn(0).ifPresent(found -> told.add(new Event.Answered(check, found))));
    return List.copyOf(told.entries);
  }

  private void add(Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, recorded.person(), event));
  }
}
