package yett.command.cases;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import yett.casebook.CaseId;
import yett.command.common.ListChoice;
import yett.command.common.NoneWords;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.console.Block;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.wording.CallWords;

/**
 * Notes, reasons and what the desk did, where they name somebody who is to be forgotten. They tell
 * of the work as well, and a word of a name may be there by chance; so whoever deletes sees them,
 * and only the name is taken out.
 */
final class NotesOnPeople {
  private record Found(CaseId id, Entry entry, String text, String without) {}

  private final Desk desk;
  private final Console console;
  private final List<Found> found = new ArrayList<>();

  NotesOnPeople(Desk desk, Console console) {
    this.desk = desk;
    this.console = console;
  }

  /**
   * Searches what was typed freely in a case.
   *
   * @param desk whether also what the desk did; it is deleted whole with the people of the case
   */
  void search(CaseId id, NamedPeople named, boolean desk) {
    for (Entry entry : OpenCase.entries(this.desk.casebook().events(id))) {
      Optional<String> text = typed(entry.event(), desk);
      if (text.filter(t -> named.isIn(t) || named.isHintedAt(t)).isPresent()
          && found.stream().noneMatch(f -> f.id().equals(id) && f.entry().equals(entry))) {
        found.add(new Found(id, entry, text.get(), named.without(text.get())));
      }
    }
  }

  private static Optional<String> typed(Event event, boolean desk) {
    if (event instanceof Event.Noted noted) {
      return Optional.of(noted.text());
    }
    if (event instanceof Event.GaveUp gaveUp) {
      return Optional.of(gaveUp.why());
    }
    if (event instanceof Event.Repaired repaired) {
      return Optional.of(repaired.why());
    }
    return desk && event instanceof Event.Tended tended
        ? Optional.of(tended.words())
        : Optional.empty();
  }

  private static Event with(Event event, String text) {
    if (event instanceof Event.GaveUp) {
      return new Event.GaveUp(text);
    }
    if (event instanceof Event.Repaired repaired) {
      return new Event.Repaired(repaired.repair(), repaired.done(), text);
    }
    return event instanceof Event.Tended tended
        ? new Event.Tended(tended.what(), text, tended.due())
        : new Event.Noted(text, ((Event.Noted) event).about());
  }

  /** Shows what was found, and takes the names out of those that are chosen. */
  void ask() {
    if (found.isEmpty()) {
      return;
    }
    List<String> lines =
        found.stream()
            .map(
                f ->
                    "Case "
                        + f.id()
                        + ", "
                        + CallWords.when(f.entry().at())
                        + ": "
                        + Words.quoted(f.text()))
            .toList();
    console.show(
        Block.heading("Notes that may name them"),
        Block.numbered(lines),
        Block.paragraph("The name or number is taken out of those you choose; the rest stays."));
    List<Integer> picked =
        Prompt.forWords(console)
            .until("Numbers, all, or 0 for none> ", List.of(), line -> chosen(line, lines))
            .orElse(List.of());
    Map<CaseId, Map<Long, String>> left = new HashMap<>();
    for (int i : picked) {
      Found one = found.get(i);
      left.computeIfAbsent(one.id(), id -> new HashMap<>())
          .put(one.entry().number(), EventText.write(with(one.entry().event(), one.without())));
    }
    left.forEach(desk.casebook()::forgetWords);
    console.say("Taken out of " + (picked.size() == 1 ? "1 note." : picked.size() + " notes."));
  }

  private static Prompt.Reading<List<Integer>> chosen(String line, List<String> lines) {
    if (line.isEmpty() || NoneWords.isSaid(line)) {
      return Prompt.Reading.of(List.of());
    }
    TreeSet<Integer> all = new TreeSet<>();
    for (int i = 0; i < lines.size(); i++) {
      all.add(i);
    }
    if (line.equalsIgnoreCase("all")) {
      return Prompt.Reading.of(List.copyOf(all));
    }
    ListChoice.Several picked = ListChoice.several(line, lines, lines);
    return picked.unclear().isPresent()
        ? Prompt.Reading.again("Type numbers from 1 to " + lines.size() + ", all, or 0.")
        : Prompt.Reading.of(picked.positions());
  }
}
