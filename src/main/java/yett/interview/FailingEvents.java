package yett.interview;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Finds the events that make the reasoning fail, so that the case goes on without them. */
final class FailingEvents {
  private final Function<List<Entry>, Moment> reasoning;
  private final List<SetApart> apart = new ArrayList<>();

  /**
   * @param reasoning works out a moment from events; throws if it fails on them
   */
  FailingEvents(Function<List<Entry>, Moment> reasoning) {
    this.reasoning = reasoning;
  }

  /**
   * The case without the events on which the reasoning fails; these are listed in the moment.
   *
   * @throws RuntimeException if the reasoning fails even without any event
   */
  Moment of(List<Entry> entries) {
    List<Entry> sound = new ArrayList<>();
    for (Entry entry : entries) {
      if (entry.event() instanceof Event.Unread) {
        apart.add(new SetApart(entry, "this version of the program cannot read it"));
      } else {
        sound.add(entry);
      }
    }
    while (true) {
      try {
        return reasoning.apply(sound).beside(entries, List.copyOf(apart));
      } catch (RuntimeException e) {
        Entry culprit = sound.remove(firstFailure(sound));
        apart.add(new SetApart(culprit, String.valueOf(e.getMessage())));
      }
    }
  }

  /** The position of the first event with which the reasoning fails, found by bisection. */
  private int firstFailure(List<Entry> sound) {
    reasoning.apply(List.of()); // if this fails, the events are not the reason
    int holds = 0;
    int fails = sound.size();
    while (fails - holds > 1) {
      int middle = (holds + fails) >>> 1;
      try {
        reasoning.apply(sound.subList(0, middle));
        holds = middle;
      } catch (RuntimeException e) {
        fails = middle;
      }
    }
    return fails - 1;
  }
}
