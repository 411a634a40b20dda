package yett.command.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CaseId;
import yett.casebook.Person;
import yett.casebook.Person.Part;
import yett.command.common.Completions;
import yett.command.common.NoName;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;

/**
 * {@code cases people}: keeps and shows the people of a case, such as whom to call back and who was
 * there.
 */
public record PeopleCommands(Desk desk, Console console, StandardStreams output) {
  private static final int LONGEST = 120;

  private static final String PEOPLE =
      "Usage: cases people CASE [--caller NAME] [--phone NUMBER] [--technician NAME]."
          + " All of it is optional; an empty text removes it. It appears in no record or"
          + " export unless you ask for it, and cases forget removes it. cases people"
          + " --person \"NAME OR NUMBER\" shows everything that the cases hold about a"
          + " person; with --json, as a file for them to keep.";

  @Command(
      name = {"cases", "people"},
      description = "the people of a case: show, enter, change",
      help = PEOPLE,
      completionProvider = Completions.CASES)
  public void people(
      @Arguments List<String> words,
      @Option(longName = "caller", description = "the caller's name") String caller,
      @Option(longName = "phone", description = "the number to call back") String phone,
      @Option(longName = "technician", description = "the technician's name") String technician,
      @Option(
              longName = "person",
              description = "the name or telephone number of the person asked about")
          String person,
      @Option(longName = "json", description = "all that is known, as JSON") boolean json) {
    boolean enters = caller != null || phone != null || technician != null;
    UsageException.when(
        words.size() != (person == null ? 1 : 0) || enters && (person != null || json), PEOPLE);
    if (person != null || json) {
      tellAll(
          person == null
              ? List.of(desk.casebook().find(words.get(0)))
              : desk.casebook().knowing(person),
          json);
      return;
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

  /** Shows everything that is kept about somebody, because they have a right to ask. */
  private void tellAll(List<CaseId> ids, boolean json) {
    List<KnownOfPeople> known =
        ids.stream().map(id -> KnownOfPeople.in(desk.casebook(), id)).toList();
    if (json) {
      output.json(KnownOfPeople.json(known));
    } else if (known.isEmpty()) {
      console.say("No case knows anybody of this name or number.");
    } else {
      known.forEach(k -> console.show(k.blocks()));
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
    if (!option.equals("phone") && typed != null && NoName.isIn(text)) {
      throw new UsageException(
          "\"" + text + "\" is no name; leave the option out, or type \"\" to empty it.");
    }
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
      rows.add(Block.row(person.part().words(), text));
    }
    console.show(
        rows.isEmpty()
            ? Block.paragraph("No people are on file for case  " + id + ".")
            : new Block.Rows(rows));
  }
}
