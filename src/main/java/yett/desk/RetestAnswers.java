package yett.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.interview.CaseState;
import yett.interview.Event;

/** How a try of the gate can end: lines to choose from, and what each is as an event. */
public final class RetestAnswers {
  private record End(String word, String text, Event.Retested event) {}

  private final List<End> ends = new ArrayList<>();

  /** A gate of which nobody complained cannot do what was complained of. */
  public RetestAnswers(CaseState state) {
    ends.add(new End("yes", "it runs as it should", new Event.Retested(true)));
    if (state.told().complaints().filter(c -> !c.isEmpty()).isPresent()) {
      ends.add(new End("same", "it still does what was complained of", failed(true)));
      ends.add(new End("other", "it fails in another way now", failed(false)));
      ends.add(new End("no", "it still fails, hard to say how", new Event.Retested(false)));
    } else {
      ends.add(new End("no", "it still fails", new Event.Retested(false)));
    }
  }

  private static Event.Retested failed(boolean same) {
    return new Event.Retested(false, Optional.of(same));
  }

  public List<String> words() {
    return ends.stream().map(End::word).toList();
  }

  public List<String> texts() {
    return ends.stream().map(End::text).toList();
  }

  public String refusal() {
    return "Type the number of the line that says how it went, 1 to " + ends.size() + ".";
  }

  public Event.Retested event(int number) {
    return ends.get(number).event();
  }
}
