package yett.interview.course;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.interview.event.Entry;
import yett.interview.event.Event;

/**
 * A gate as it physically stands after what was confirmed, worked out from the names of the set-ups
 * alone: what each does to supplies, leaf, covers and people is written down here a second time, so
 * that a slip on a card shows.
 */
record Gate(Set<String> inForce) {
  /** What each set-up makes so while it is in force. */
  private static final Map<String, Set<String>> MAKES =
      Map.ofEntries(
          Map.entry("cover-off", Set.of("uncovered")),
          Map.entry("mains-off-batteries-on", Set.of("uncovered", "mains off")),
          Map.entry(
              "locked-off", Set.of("uncovered", "mains off", "batteries off", "chocked", "barred")),
          Map.entry("leaf-released", Set.of("released")),
          Map.entry("gate-running", Set.of("watched")),
          Map.entry("motor-unplugged", Set.of("uncovered", "motor off", "chocked", "barred")),
          Map.entry("drive-free", Set.of("uncovered", "released", "held", "barred")),
          Map.entry("motor-off", Set.of("motor off", "chocked", "barred", "signed")),
          Map.entry("isolated", Set.of("mains off", "barred")),
          Map.entry("barred", Set.of("barred")),
          Map.entry("out-of-use", Set.of("covered again", "chocked", "barred", "signed")));

  static Gate after(List<Entry> entries) {
    Set<String> inForce = new LinkedHashSet<>();
    for (Entry entry : entries) { // what is taken back is a word: nothing moves at the gate
      if (entry.event() instanceof Event.SetUpEntered e) {
        e.instead().forEach(inForce::remove);
        inForce.add(e.setUp());
      } else if (entry.event() instanceof Event.SetUpLeft e) {
        inForce.remove(e.setUp());
      } else if (entry.event() instanceof Event.MadeSafe e && e.setUps().isPresent()) {
        inForce.clear();
        inForce.addAll(e.setUps().get());
      }
    }
    return new Gate(inForce);
  }

  boolean is(String state) {
    return inForce.stream().anyMatch(s -> MAKES.get(s).contains(state));
  }

  /** Whether anything could drive the leaf. */
  boolean powered() {
    return !is("mains off") || !is("batteries off") && !inForce.contains("isolated");
  }

  /** Nothing can strike, shock or crush whoever comes by. */
  boolean leftSafe() {
    boolean covered = !is("uncovered") || is("covered again");
    return is("mains off")
        && is("batteries off")
        && is("chocked")
        && is("barred")
        && is("signed")
        && covered
        && !is("released");
  }
}
