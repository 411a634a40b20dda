package yett.command.cases;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CaseId;
import yett.casebook.CaseSearch;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.casebook.Person;
import yett.casebook.StoredEvent;
import yett.command.common.Completions;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.event.Tending;

/** {@code cases forget}: deletes what is known of people and keeps the cases. */
public record ForgetCommands(Desk desk, Console console) {
  private static final String FORGET =
      "Usage: cases forget CASE..., or cases forget --person \"NAME OR NUMBER\" for every case"
          + " with that name or number. Names, numbers and the caller's own words go; the technical"
          + " record stays. Open cases only with --open. Copies and exported files are for you to delete.";

  @Command(
      name = {"cases", "forget"},
      description = "forget the people of cases; the cases stay",
      help = FORGET,
      completionProvider = Completions.CASES)
  public void forget(
      @Arguments List<String> words,
      @Option(longName = "person", description = "name or telephone number of the person to forget")
          String person,
      @Option(longName = "open", description = "in open cases, too, although somebody may be sent")
          boolean open) {
    UsageException.when(words.isEmpty() == (person == null), FORGET);
    List<CaseId> ids =
        person != null
            ? desk.casebook().knowing(person)
            : words.stream().map(desk.casebook()::find).distinct().toList();
    if (!open) {
      refuseOpen(ids);
    }
    int forgotten = 0;
    int sayings = 0;
    List<String> left = new ArrayList<>();
    NotesOnPeople notes = new NotesOnPeople(desk, console);
    Map<CaseId, List<Person>> named = new LinkedHashMap<>();
    if (person != null) {
      searchElsewhere(person, open, ids, notes);
    }
    for (CaseId id : ids) {
      List<Person> people = desk.casebook().people(id);
      named.put(id, people);
      notes.search(id, new NamedPeople(people), false);
      people.stream()
          .flatMap(p -> Stream.of(p.name(), p.phone()))
          .filter(NamedPeople::isWhole)
          .distinct()
          .forEach(known -> searchElsewhere(known, open, ids, notes));
      forgotten += desk.casebook().forgetPeople(id);
      sayings += forgetWords(id);
    }
    console.say(
        (forgotten == 1 ? "1 entry on people" : forgotten + " entries on people")
            + " forgotten in "
            + (ids.size() == 1 ? "1 case" : ids.size() + " cases")
            + (sayings == 0 ? "." : ", and what the caller said in their own words."));
    notes.ask();
    named.forEach((id, people) -> left.addAll(mentioned(id, people)));
    if (!left.isEmpty()) {
      console.say(
          "A name or number, or a part of it, stands in the case itself, where it stays: "
              + String.join(", ", left)
              + ". Keep names out of notes.");
    }
  }

  /** The same in cases of which they are not the people: "Ina Teal has the key". */
  private void searchElsewhere(String person, boolean open, List<CaseId> ids, NotesOnPeople notes) {
    elsewhere(person, open).stream()
        .filter(id -> !ids.contains(id))
        .forEach(id -> notes.search(id, NamedPeople.of(person), true));
  }

  /** Cases in which the name or number stands as it was typed; open ones only if they are meant. */
  private List<CaseId> elsewhere(String person, boolean open) {
    CaseSearch text =
        new CaseSearch(
            Optional.empty(),
            Set.of(),
            Optional.of(person.strip().toLowerCase(Locale.ROOT)),
            Optional.empty(),
            Optional.empty(),
            open ? Optional.empty() : Optional.of(CaseStatus.CLOSED));
    return desk.casebook().search(text).stream().map(CaseSummary::id).toList();
  }

  /**
   * Nothing is forgotten while a case is open: whoever goes needs the number, the place and what
   * was said, and nobody finds them again.
   */
  private void refuseOpen(List<CaseId> ids) {
    List<String> open =
        ids.stream()
            .map(desk.casebook()::summary)
            .filter(c -> c.summary().state() == CaseStatus.OPEN)
            .map(c -> "case " + c.id() + " at " + c.siteId() + " (" + c.summary().title() + ")")
            .toList();
    UsageException.when(
        !open.isEmpty(),
        "Nothing was forgotten. Still open: "
            + String.join("; ", open)
            + ". The number, the place, who was called for help and who was sent would go, and they"
            + " may be needed. Close it first, or add --open.");
  }

  /** Deletes callers' own words, because people say their names and numbers when they call. */
  private int forgetWords(CaseId id) {
    Map<Long, String> left = new HashMap<>();
    for (Entry entry : OpenCase.entries(desk.casebook().events(id))) {
      if (entry.event() instanceof Event.Said said && !said.words().isEmpty()) {
        left.put(entry.number(), EventText.write(new Event.Said("")));
      }
      if (entry.event() instanceof Event.Tended t && !t.words().isEmpty() && !isOfDesk(t)) {
        left.put(entry.number(), EventText.write(new Event.Tended(t.what(), "", t.due())));
      }
    }
    if (!left.isEmpty()) {
      desk.casebook().forgetWords(id, left);
    }
    return left.size();
  }

  /** Who held the call is no word of the caller, and the desk's figures count it. */
  private static boolean isOfDesk(Event.Tended event) {
    return event.what() == Tending.TAKEN || event.what() == Tending.GIVEN;
  }

  /**
   * Lists the places in the events of a case that still name one of these people. In what somebody
   * typed freely, a part of the name is enough: "told Joan to stay back".
   */
  private List<String> mentioned(CaseId id, List<Person> people) {
    NamedPeople named = new NamedPeople(people);
    return desk.casebook().events(id).stream()
        .filter(e -> named.isIn(e.body()) || freeText(e).filter(named::isHintedAt).isPresent())
        .map(StoredEvent::seq)
        .map(seq -> "case " + id + ", event " + seq)
        .toList();
  }

  private static Optional<String> freeText(StoredEvent stored) {
    return OpenCase.entries(List.of(stored)).stream()
        .map(Entry::event)
        .flatMap(
            e ->
                e instanceof Event.Noted noted
                    ? Stream.of(noted.text())
                    : e instanceof Event.GaveUp gaveUp
                        ? Stream.of(gaveUp.why())
                        : e instanceof Event.Repaired repaired
                            ? Stream.of(repaired.why())
                            : Stream.empty())
        .findFirst();
  }
}
