package yett.command.diagnose;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.console.SignalWord;
import yett.interview.Event;
import yett.interview.Step;
import yett.knowledge.Caution;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/**
 * Shows cautions: in full until they were read in a state of the work, afterwards as one line that
 * says for which hazards they still hold.
 */
public final class CautionViews {
  private final RuleBase base;
  private final Supplier<Set<String>> inForce;
  private final String more;

  /** Whether cautions count as read once they were shown. */
  private final boolean atOnce;

  /** Cautions that were shown in full, each with the set-ups that were in force. */
  private final Set<Shown> shown = new HashSet<>();

  /** Those of them that were read, because what their screen asked for was done. */
  private final Set<Shown> read = new HashSet<>();

  private record Shown(String caution, Set<String> setUps) {}

  /** In practice: once for all states, and nothing shows them again. */
  public CautionViews(RuleBase base) {
    this(base, Set::of, "", true);
  }

  /**
   * @param inForce ids of the set-ups in force now
   */
  CautionViews(RuleBase base, Supplier<Set<String>> inForce) {
    this(base, inForce, " ? shows it in full.", false);
  }

  private CautionViews(RuleBase base, Supplier<Set<String>> inForce, String more, boolean atOnce) {
    this.atOnce = atOnce;
    this.base = base;
    this.inForce = inForce;
    this.more = more;
  }

  /** The cautions for a person who reads them on the screen. */
  public List<Block> written(List<Caution> cautions) {
    return written(cautions, Set.copyOf(inForce.get()));
  }

  /** The cautions for somebody who is about to enter a set-up. */
  List<Block> entering(Step.Enter step) {
    return written(step.cautions(), within(step));
  }

  private Set<String> within(Step.Enter step) {
    Set<String> then = new HashSet<>(inForce.get());
    step.instead().forEach(then::remove);
    then.add(step.setUp().id());
    return Set.copyOf(then);
  }

  /** Takes note that these events are about to be entered at a step, and its cautions read. */
  void heed(Step step, Event... events) {
    Set<String> setUps =
        step instanceof Step.Enter enter ? within(enter) : Set.copyOf(inForce.get());
    Heeded.of(step, events).stream()
        .map(c -> new Shown(c.id(), setUps))
        .filter(shown::contains)
        .forEach(read::add);
  }

  private List<Block> written(List<Caution> cautions, Set<String> setUps) {
    List<Block> blocks = new ArrayList<>();
    List<Caution> again = new ArrayList<>();
    for (Caution caution : cautions) {
      Shown now = new Shown(caution.id(), setUps);
      if (read.contains(now)) {
        again.add(caution);
        continue;
      }
      shown.add(now);
      if (atOnce) {
        read.add(now);
      }
      blocks.addAll(full(List.of(caution)));
    }
    if (!again.isEmpty()) {
      blocks.add(reminder(again));
    }
    return blocks;
  }

  /** The cautions in full, whether they were shown before or not. */
  public static List<Block> full(List<Caution> cautions) {
    return cautions.stream()
        .map(c -> Block.signal(SignalWord.valueOf(c.word().name()), c.text()))
        .toList();
  }

  private Block reminder(List<Caution> again) {
    Caution.Word gravest = again.stream().map(Caution::word).min(Enum::compareTo).orElseThrow();
    String hazards =
        again.stream()
            .map(c -> Wording.spaced(c.hazard()))
            .distinct()
            .collect(Collectors.joining(", "));
    return Block.signal(
        SignalWord.valueOf(gravest.name()), "What was said still holds: " + hazards + "." + more);
  }

  /** The cautions to read out on the telephone, in everyday words, each once. */
  public List<Block> spoken(List<Caution> cautions) {
    Map<String, String> lay = base.telephone().cautions();
    List<Block> blocks = new ArrayList<>();
    for (Caution caution : cautions) {
      if (shown.add(new Shown(caution.id(), Set.of()))) {
        String text = lay.getOrDefault(caution.id(), "");
        blocks.add(
            Block.signal(
                SignalWord.valueOf(caution.word().name()),
                "Read out: " + (text.isEmpty() ? caution.text() : text)));
      }
    }
    return blocks;
  }
}
