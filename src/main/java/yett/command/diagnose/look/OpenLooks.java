package yett.command.diagnose.look;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Event;
import yett.knowledge.Check;

/**
 * Looks that were named in a round that was left before its end. Those that had their answer are
 * asked again, too: the answers of a round are stored together or not at all.
 */
final class OpenLooks {
  private final Sitting sitting;
  private final Set<String> ids = new HashSet<>();

  OpenLooks(Sitting sitting) {
    this.sitting = sitting;
  }

  void answered(List<Check> looks) {
    looks.forEach(look -> ids.remove(look.id()));
  }

  /** Keeps the words of a round that is left, and that the looks they belong to are open. */
  void leave(List<Check> looks, LooksSaid said) {
    said.named().forEach(i -> ids.add(looks.get(i).id()));
    List<Event> words = said.remarks(looks);
    if (!words.isEmpty()) {
      sitting.record(words.toArray(Event[]::new));
    }
  }

  /** Keeps looks open that were named before the round was left. */
  void comeBack(List<Check> looks, LooksSaid said) {
    List<String> numbers = new ArrayList<>();
    for (int i = 0; i < looks.size(); i++) {
      if (ids.contains(looks.get(i).id())) {
        said.leaveOpen(i);
        numbers.add(Integer.toString(i + 1));
      }
    }
    if (!numbers.isEmpty()) {
      sitting.say("Still to be answered: " + String.join(", ", numbers) + ".");
    }
  }
}
