package yett.command.cases;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CaseId;
import yett.casebook.Person;
import yett.casebook.Person.Part;
import yett.casebook.StoredEvent;
import yett.command.common.Completions;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.EventText;

/**
 * {@code cases people} and {@code cases forget}: who to call back, and who was there, if anybody
 * wants to keep that.
 */
public final class PeopleCommands {
  private static final int LONGEST = 120;

  private static final String PEOPLE =
      "Usage: cases people CASE [--caller NAME] [--phone NUMBER] [--technician NAME]. Nothing of"
          + " it need be known; an empty text takes it away. It stands in no record and no export"
          + " unless that is asked for, and cases forget removes it.";

  private static final String FORGET =
      "Usage: cases forget CASE..., or cases forget --person \"NAME OR NUMBER\" for every case"
          + " that knows somebody so. Names, numbers and the caller's own words go; the technical"
          + " record stays. Copies and exported files are for you to delete.";

  private final Desk desk;
  private final Console console;

  public PeopleCommands(Desk desk, Console console) {
    this.desk = desk;
    this.console = console;
  }

  @Command(
      name = {"cases", "people"},
      description = "the people of a case: show, enter, change",
      help = PEOPLE,
      completionProvider = Completions.CASES)
  public void people(
      @Arguments List<String> words,
      @Option(longName = "caller", description = "the caller's name") String caller,
      @Option(longName = "phone", description = "the number to call back") String phone,
      @Option(longName = "technician", description = "the technician's name") String technician) {
    if (words.size() != 1) {
      throw new UsageException(PEOPLE);
    }
    CaseId id = desk.casebook().find(words.get(0));
    if (caller != null || phone != null) {
      Person known = known(id, Part.CALLER);
      desk.casebook()
          .savePerson(
              id,
              new Person(
                  Part.CALLER,
                  text("caller", caller, known.name()),
                  text("phone", phone, known.phone())));
    }
    if (technician != null) {
      Person known = known(id, Part.TECHNICIAN);
      desk.casebook()
          .savePerson(
              id,
              new Person(
                  Part.TECHNICIAN, text("technician", technician, known.name()), known.phone()));
    }
    show(id);
  }

  @Command(
      name = {"cases", "forget"},
      description = "forget the people of cases; the cases stay",
      help = FORGET,
      completionProvider = Completions.CASES)
  public void forget(
      @Arguments List<String> words,
      @Option(
              longName = "person",
              description = "the name or the telephone number of who is to be forgotten")
          String person) {
    if (words.isEmpty() == (person == null)) {
      throw new UsageException(FORGET);
    }
    List<CaseId> ids =
        person != null
            ? desk.casebook().knowing(person)
            : words.stream().map(desk.casebook()::find).distinct().toList();
    int forgotten = 0;
    int sayings = 0;
    List<String> left = new ArrayList<>();
    for (CaseId id : ids) {
      List<Person> people = desk.casebook().people(id);
      forgotten += desk.casebook().forgetPeople(id);
      sayings += forgetWords(id);
      mentioned(id, people).forEach(left::add);
    }
    console.show(
        Block.paragraph(
            (forgotten == 1 ? "1 entry on people" : forgotten + " entries on people")
                + " forgotten in "
                + (ids.size() == 1 ? "1 case" : ids.size() + " cases")
                + (sayings == 0 ? "." : ", and what the caller said in their own words.")));
    if (!left.isEmpty()) {
      console.show(
          Block.paragraph(
              "Somebody typed a name or number into the case itself, where it stays: "
                  + String.join(", ", left)
                  + ". Names do not belong into notes."));
    }
  }

  private Person known(CaseId id, Part part) {
    return desk.casebook().people(id).stream()
        .filter(p -> p.part() == part)
        .findFirst()
        .orElse(new Person(part, "", ""));
  }

  private static String text(String option, String typed, String usual) {
    String text = Objects.requireNonNullElse(typed, usual).strip();
    if (text.length() > LONGEST) {
      throw new UsageException(
          "The " + option + " is too long: at most " + LONGEST + " letters, please.");
    }
    return text;
  }

  private void show(CaseId id) {
    List<Block.Row> rows = new ArrayList<>();
    for (Person person : desk.casebook().people(id)) {
      String text =
          Optional.of(person.name()).filter(n -> !n.isEmpty()).orElse("name not known")
              + (person.phone().isEmpty() ? "" : ", " + person.phone());
      rows.add(Block.row(person.part() == Part.CALLER ? "caller" : "technician", text));
    }
    console.show(
        rows.isEmpty()
            ? Block.paragraph("Nothing is known of the people of case " + id + ".")
            : new Block.Rows(rows));
  }

  /** People say their names and numbers when they call. */
  private int forgetWords(CaseId id) {
    Map<Long, String> left = new HashMap<>();
    for (Entry entry : OpenCase.entries(desk.casebook().events(id))) {
      if (entry.event() instanceof Event.Said said && !said.words().isEmpty()) {
        left.put(entry.number(), EventText.write(new Event.Said("")));
      }
      if (entry.event() instanceof Event.Tended t && !t.words().isEmpty()) {
        left.put(entry.number(), EventText.write(new Event.Tended(t.what(), "", t.due())));
      }
    }
    if (!left.isEmpty()) {
      desk.casebook().forgetWords(id, left);
    }
    return left.size();
  }

  /** Where in its events a case still names somebody. */
  private List<String> mentioned(CaseId id, List<Person> people) {
    List<String> sought =
        people.stream()
            .flatMap(p -> Stream.of(p.name(), p.phone()))
            .map(t -> t.strip().toLowerCase(Locale.ROOT))
            .filter(t -> t.length() > 2)
            .toList();
    if (sought.isEmpty()) {
      return List.of();
    }
    return desk.casebook().events(id).stream()
        .filter(e -> sought.stream().anyMatch(e.body().toLowerCase(Locale.ROOT)::contains))
        .map(StoredEvent::seq)
        .map(seq -> "case " + id + ", event " + seq)
        .toList();
  }
}
