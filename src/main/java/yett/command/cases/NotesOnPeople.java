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
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.EventText;
import yett.wording.CallWords;

/**
 * Notes that name somebody who is to be forgotten. They tell of the work as well, and a word of a
 * name may be there by chance; so whoever deletes sees them, and only the name is taken out.
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

  /** Searches the notes of a case. */
  void search(CaseId id, NamedPeople named) {
    for (Entry entry : OpenCase.entries(desk.casebook().events(id))) {
      if (entry.event() instanceof Event.Noted note
          && (named.isIn(note.text()) || named.isHintedAt(note.text()))
          && found.stream().noneMatch(f -> f.id().equals(id) && f.entry().equals(entry))) {
        found.add(new Found(id, entry, note.text(), named.without(note.text())));
      }
    }
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
      Optional<String> about = ((Event.Noted) one.entry().event()).about();
      left.computeIfAbsent(one.id(), id -> new HashMap<>())
          .put(one.entry().number(), EventText.write(new Event.Noted(one.without(), about)));
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
