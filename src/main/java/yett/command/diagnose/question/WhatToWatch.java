package yett.command.diagnose.question;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import yett.command.diagnose.sitting.Sitting;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.Telephone;
import yett.saying.Heard;
import yett.saying.Thing;

/** Lists what a caller has to watch for after the gate works again. */
record WhatToWatch(Sitting sitting) {
  /** A look that shows a cause at least this often counts as a sign of the cause. */
  private static final double SHOWS = 0.5;

  /** Words that fit less than this say nothing of what was done. */
  private static final double CLEAR = 0.5;

  /**
   * What to watch for: what the cards say after this repair, and what always applies.
   *
   * @param what what put the gate right, in the caller's words
   */
  List<String> after(String what) {
    return after(repairs(what));
  }

  /** The same, where it was done at Yett's word. */
  List<String> after(Repair done) {
    return after(Stream.of(done));
  }

  private List<String> after(Stream<Repair> repairs) {
    Set<String> watch = new LinkedHashSet<>();
    repairs
        .map(r -> sitting.base().telephone().watch().getOrDefault(r.id(), List.of()))
        .forEach(watch::addAll);
    watch.add("Watch the next runs from the side, with nobody in the opening.");
    watch.add("If it does it again, do not put it right a second time: write down when, and call.");
    watch.add("Call at once if anything is new: a noise, a smell, a gate that does not stop.");
    return List.copyOf(watch);
  }

  /** Whether these words say what put the gate right. */
  boolean tellsWhatDidIt(String words) {
    return repairs(words).findAny().isPresent();
  }

  /** Repairs that a caller may do, for the likeliest meaning of these words that has any. */
  private Stream<Repair> repairs(String words) {
    List<Thing> heard =
        words.isBlank()
            ? List.of()
            : sitting.ears().tellings().hear(words).findings().stream()
                .filter(f -> f.weight() >= CLEAR)
                .map(Heard.Found::thing)
                .toList();
    return heard.stream().map(this::repairs).filter(r -> !r.isEmpty()).findFirst().stream()
        .flatMap(List::stream);
  }

  private List<Repair> repairs(Thing thing) {
    return sitting.base().repairs().values().stream()
        .filter(r -> r.who() == Role.CALLER && isFor(r, thing))
        .toList();
  }

  /** Whether what was understood shows a cause that the repair removes. */
  private boolean isFor(Repair repair, Thing thing) {
    Check check = sitting.base().checks().get(thing.card());
    if (check == null || thing.outcome().isEmpty() || check.id().equals(Telephone.WORKS_AGAIN)) {
      return false;
    }
    int at = check.indexOf(thing.outcome());
    return at > 0
        && repair.removes().keySet().stream()
            .map(check.likelihood()::get)
            .anyMatch(row -> row != null && row[at] >= SHOWS);
  }
}
