package yett.command.diagnose.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.command.common.ListChoice;
import yett.command.common.Words;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.knowledge.Check;

/**
 * Asks about the complaints that a watched run does not show: that the gate runs does not mean that
 * its warning has gone, or that it no longer fails now and then.
 */
record StillThere(Sitting sitting, Questions questions) {

  /**
   * What is still there: none, some or all; empty if nobody can tell.
   *
   * @param asked the complaints that were asked about
   */
  private record Said(Optional<List<Integer>> left, List<Check> asked) {}

  /** The result of a try in which the gate ran; empty if a request led elsewhere. */
  Optional<List<Event>> afterRun() {
    List<Check> open = open();
    List<Check> hidden = open.stream().filter(c -> !c.how().isEmpty()).toList();
    if (hidden.isEmpty()) {
      return Optional.of(List.of(new Event.Retested(true)));
    }
    return ask(hidden).map(said -> events(said, open));
  }

  /** The complaints, also those that a try showed anew, that have not gone since. */
  private List<Check> open() {
    CaseState state = sitting.moment().state();
    List<String> open = new ArrayList<>(state.told().complaints().orElse(List.of()));
    for (Entry deed : state.work().deeds()) {
      if (deed.event() instanceof Event.Retested tried) {
        if (!tried.left().isEmpty()) {
          open.retainAll(tried.left());
        }
        open.addAll(tried.anew());
      }
    }
    return open.stream()
        .distinct()
        .map(sitting.base().checks()::get)
        .filter(c -> c != null)
        .toList();
  }

  private Optional<Said> ask(List<Check> hidden) {
    List<String> ids = hidden.stream().map(Check::id).toList();
    List<String> names = hidden.stream().map(Check::ask).toList();
    sitting.show(
        Block.heading("What a run does not show"),
        Block.numbered(hidden.stream().map(c -> c.ask() + ": " + how(c)).toList()));
    return questions.meant(
        "0 if " + (hidden.size() == 1 ? "it has" : "all have") + " gone, numbers, or unknown",
        line -> said(line, ids, names).map(left -> new Said(left, hidden)),
        "Type 0 if it has gone, the numbers of what is still there, or unknown if you cannot"
            + " tell yet.");
  }

  private String how(Check complaint) {
    return complaint.how().substring(0, 1).toLowerCase(Locale.ROOT) + complaint.how().substring(1);
  }

  private static Optional<Optional<List<Integer>>> said(
      String line, List<String> ids, List<String> names) {
    if (Words.wish(line)
        .filter(w -> w == Words.Wish.UNKNOWN || w == Words.Wish.LATER)
        .isPresent()) {
      return Optional.of(Optional.empty());
    }
    if (line.strip().equals("0") || line.strip().equalsIgnoreCase("none")) {
      return Optional.of(Optional.of(List.of()));
    }
    ListChoice.Several picked = ListChoice.several(line, ids, names);
    return line.isBlank() || picked.unclear().isPresent()
        ? Optional.empty()
        : Optional.of(Optional.of(picked.positions()));
  }

  private static List<Event> events(Said said, List<Check> open) {
    if (said.left().isEmpty()) {
      return List.of(
          new Event.Noted(
              "for the customer: A run does not show whether this has gone: "
                  + said.asked().stream().map(Check::ask).collect(Collectors.joining("; "))
                  + ". Tell us if it comes again."),
          new Event.Retested(true));
    }
    List<String> left = said.left().get().stream().map(i -> said.asked().get(i).id()).toList();
    if (left.isEmpty()) {
      return List.of(new Event.Retested(true));
    }
    return List.of(
        left.size() == open.size()
            ? new Event.Retested(false, Optional.of(true))
            : Event.Retested.left(left, List.of()));
  }
}
