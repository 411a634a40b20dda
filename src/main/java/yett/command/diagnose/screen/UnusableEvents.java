package yett.command.diagnose.screen;

import java.util.ArrayList;
import java.util.List;
import yett.console.Block;
import yett.console.SignalWord;
import yett.desk.StoredEntries;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.intake.Sense;
import yett.interview.moment.Moment;
import yett.interview.moment.SetApart;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/**
 * Lists events of a case that are ignored because they cannot be read, make no sense, or make the
 * reasoning fail.
 */
public final class UnusableEvents {
  private final Sense sense;

  public UnusableEvents(RuleBase base) {
    this.sense = new Sense(base);
  }

  /**
   * Events that cannot be read or make no sense, one line each. Nothing of their content is quoted.
   */
  public List<String> of(List<Entry> entries) {
    List<String> lines = new ArrayList<>();
    for (Entry entry : entries) {
      String why = StoredEntries.unreadable(entry);
      if (!why.isEmpty()) {
        lines.add("event " + entry.number() + why);
      }
    }
    if (!entries.isEmpty()) {
      sense.doubts(entries).forEach(d -> lines.add("event " + d.event() + ": " + d.words()));
    }
    return lines;
  }

  /** All of them, for a screen; empty if there are none. */
  public List<Block> blocks(Moment moment) {
    List<Block> blocks = new ArrayList<>();
    List<String> lines = of(moment.entries());
    if (!lines.isEmpty()) {
      blocks.add(Block.heading("Entries that nobody could have made"));
      blocks.add(Block.numbered(lines));
    }
    blocks.addAll(failing(moment.apart()));
    return blocks;
  }

  /** Events that can be read but make the reasoning fail. */
  public static List<Block> failing(List<SetApart> apart) {
    List<String> lines =
        apart.stream()
            .filter(a -> !(a.entry().event() instanceof Event.Unread))
            .map(Wording::apart)
            .toList();
    return lines.isEmpty()
        ? List.of()
        : List.of(
            Block.signal(
                SignalWord.NOTICE,
                "This is saved, but the program cannot reason with it and goes on without it:"),
            Block.numbered(lines));
  }
}
