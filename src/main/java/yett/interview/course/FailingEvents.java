package yett.interview.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.moment.SetApart;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * Finds the events that make the reasoning fail, so that the case goes on without them. An answer
 * about a danger is not left out: it counts as a danger that nobody could tell, so that nobody runs
 * the gate until somebody has looked.
 */
final class FailingEvents {
  private final RuleBase base;
  private final Function<List<Entry>, Moment> reasoning;
  private final List<SetApart> apart = new ArrayList<>();

  /**
   * @param base tells which checks are about dangers
   * @param reasoning works out a moment from events; throws if it fails on them
   */
  FailingEvents(RuleBase base, Function<List<Entry>, Moment> reasoning) {
    this.base = base;
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
        untold(entry, entries).ifPresent(sound::add);
      } else {
        sound.add(entry);
      }
    }
    while (true) {
      try {
        return reasoning.apply(sound).beside(entries, List.copyOf(apart));
      } catch (RuntimeException e) {
        int at = firstFailure(sound);
        Entry culprit = sound.remove(at);
        if (isUntold(culprit)) {
          continue; // even that fails; it is named already
        }
        apart.add(new SetApart(culprit, String.valueOf(e.getMessage())));
        untold(culprit, entries).ifPresent(u -> sound.add(at, u));
      }
    }
  }

  private boolean isUntold(Entry entry) {
    return apart.stream().anyMatch(a -> a.entry().number() == entry.number());
  }

  /** What counts instead of an answer about a danger that cannot be used. */
  private Optional<Entry> untold(Entry entry, List<Entry> all) {
    return danger(entry.event(), all)
        .map(check -> new Event.Answered(check, new Answer.CannotTell()))
        .map(answer -> new Entry(entry.number(), entry.at(), entry.by(), answer));
  }

  /** The danger that an event tells of; of one that cannot be read, the one that it names. */
  private Optional<String> danger(Event event, List<Entry> all) {
    if (event instanceof Event.Answered answered) {
      return dangers().filter(answered.check()::equals).findFirst();
    }
    if (event instanceof Event.Corrected corrected) {
      return all.stream()
          .filter(e -> e.number() == corrected.event() && e.event() instanceof Event.Answered)
          .flatMap(e -> danger(e.event(), all).stream())
          .findFirst();
    }
    return event instanceof Event.Unread unread
        ? dangers().filter(id -> unread.text().contains("\"" + id + "\"")).findFirst()
        : Optional.empty();
  }

  private Stream<String> dangers() {
    return base.checks().values().stream().filter(Check::danger).map(Check::id);
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
