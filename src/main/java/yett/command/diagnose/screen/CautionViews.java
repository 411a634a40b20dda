package yett.command.diagnose.screen;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.console.Block;
import yett.console.SignalWord;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Caution;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/**
 * Shows cautions: in full until somebody has gone on past them in this state of the work,
 * afterwards as one line that says for which hazards they still hold. The line also names what was
 * said about the set-ups in force.
 */
public final class CautionViews {
  private final RuleBase base;
  private final Supplier<Set<String>> inForce;
  private final String more;

  /** Whether whoever is shown a caution has still to go on past it. */
  private final boolean asks;

  /** Cautions that were shown in full and read, each with the set-ups that were in force. */
  private final Set<Shown> shown = new HashSet<>();

  /** Cautions on the present screen. */
  private final Set<Shown> unread = new HashSet<>();

  private record Shown(String caution, Set<String> setUps) {}

  /** In practice: once for all states, and nothing shows them again. */
  public CautionViews(RuleBase base) {
    this(base, Set::of, "", false);
  }

  /**
   * @param inForce ids of the set-ups in force now
   */
  public CautionViews(RuleBase base, Supplier<Set<String>> inForce) {
    this(base, inForce, " ? shows it in full.", true);
  }

  private CautionViews(RuleBase base, Supplier<Set<String>> inForce, String more, boolean asks) {
    this.base = base;
    this.inForce = inForce;
    this.more = more;
    this.asks = asks;
  }

  /** A new screen begins: what was on the last one and not read comes in full again. */
  public void begin() {
    unread.clear();
  }

  /** Somebody has gone on past the cautions on the screen. */
  public void read() {
    shown.addAll(unread);
    unread.clear();
  }

  /** Whoever does what a step asks for has gone on past its cautions. */
  public void recorded(Step step, Event... events) {
    if (Stream.of(events).anyMatch(e -> takes(step, e))) {
      read();
    }
  }

  private static boolean takes(Step step, Event event) {
    return event instanceof Event.Answered a && step.cards().contains(a.check())
        || event instanceof Event.Repaired r && step.cards().contains(r.repair())
        || step instanceof Step.Enter enter && event.equals(enter.done());
  }

  /** The cautions for a person who reads them on the screen. */
  public List<Block> written(List<Caution> cautions) {
    return written(cautions, Set.copyOf(inForce.get()));
  }

  /** The cautions for somebody who is about to enter a set-up. */
  List<Block> entering(Step.Enter step) {
    Set<String> then = new HashSet<>(inForce.get());
    step.instead().forEach(then::remove);
    then.add(step.setUp().id());
    return written(step.cautions(), Set.copyOf(then));
  }

  private List<Block> written(List<Caution> cautions, Set<String> setUps) {
    List<Caution> first = new ArrayList<>();
    List<Caution> again = new ArrayList<>();
    for (Caution caution : cautions) {
      (shown.contains(new Shown(caution.id(), setUps)) ? again : first).add(caution);
    }
    first.forEach(c -> unread.add(new Shown(c.id(), setUps)));
    if (!asks) {
      read();
    }
    stillHold(setUps).filter(c -> !cautions.contains(c)).forEach(again::add);
    if (again.isEmpty()) {
      return full(first);
    }
    List<Block> blocks = new ArrayList<>();
    Caution.Word gravest = again.stream().map(Caution::word).min(Enum::compareTo).orElseThrow();
    List<Caution> before = first.stream().filter(c -> c.word().compareTo(gravest) <= 0).toList();
    blocks.addAll(full(before));
    blocks.add(reminder(again, gravest));
    blocks.addAll(full(first.stream().filter(c -> !before.contains(c)).toList()));
    return blocks;
  }

  /** Cautions about the set-ups themselves that were read in some state of the work. */
  private Stream<Caution> stillHold(Set<String> setUps) {
    List<String> hazards =
        setUps.stream().flatMap(id -> base.setUps().get(id).hazards().stream()).toList();
    return base.cautionsFor(hazards).stream()
        .filter(c -> shown.stream().anyMatch(s -> s.caution().equals(c.id())));
  }

  /** The cautions in full, whether they were shown before or not. */
  public static List<Block> full(List<Caution> cautions) {
    return cautions.stream()
        .map(c -> Block.signal(SignalWord.valueOf(c.word().name()), c.text()))
        .toList();
  }

  private Block reminder(List<Caution> again, Caution.Word gravest) {
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
