package yett.command.cases;

import java.util.ArrayList;
import java.util.List;
import yett.casebook.StoredEvent;
import yett.console.Block;
import yett.desk.OpenCase;
import yett.desk.StoredEntries;
import yett.interview.Sense;
import yett.knowledge.RuleBase;

/** What stands in a case and counts for nothing, because it cannot be read or cannot be meant. */
public final class UnusableEvents {
  private final Sense sense;

  public UnusableEvents(RuleBase base) {
    this.sense = new Sense(base);
  }

  /** A line each; nothing of the event is quoted. */
  public List<String> of(List<StoredEvent> events) {
    List<String> lines = new ArrayList<>();
    for (StoredEvent event : events) {
      String why = StoredEntries.unreadable(event);
      if (!why.isEmpty()) {
        lines.add("event " + event.seq() + why);
      }
    }
    if (!events.isEmpty()) {
      sense
          .doubts(OpenCase.entries(events))
          .forEach(d -> lines.add("event " + d.event() + ": " + d.words()));
    }
    return lines;
  }

  /** The same under a heading; empty if there is nothing. */
  public List<Block> blocks(List<StoredEvent> events) {
    List<String> lines = of(events);
    return lines.isEmpty()
        ? List.of()
        : List.of(Block.heading("Not as anybody could enter it"), Block.numbered(lines));
  }
}
