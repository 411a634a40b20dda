package yett.command.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.CaseId;
import yett.casebook.Person;
import yett.casebook.Person.Part;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.console.Block;

/** {@code cases people}: who to call back, and who was there, if anybody wants to keep that. */
public final class CasesPeopleVerb extends Verb {
  private static final int LONGEST = 120;

  private final Workplace place;

  public CasesPeopleVerb(Workplace place) {
    super(
        "cases people",
        "the people of a case: show, enter, change",
        "Usage: cases people CASE [--caller NAME] [--phone NUMBER] [--technician NAME]. Nothing of"
            + " it need be known; an empty text takes it away. It stands in no record and no export"
            + " unless that is asked for, and cases forget removes it.",
        value("caller", "the caller's name"),
        value("phone", "the number to call back"),
        value("technician", "the technician's name"));
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (words(context).size() != 1) {
      throw new UsageException(getHelp());
    }
    CaseId id = place.desk().casebook().find(words(context).get(0));
    if (has(context, "caller") || has(context, "phone")) {
      Person known = known(id, Part.CALLER);
      place
          .desk()
          .casebook()
          .savePerson(
              id,
              new Person(
                  Part.CALLER,
                  text(context, "caller", known.name()),
                  text(context, "phone", known.phone())));
    }
    if (has(context, "technician")) {
      Person known = known(id, Part.TECHNICIAN);
      place
          .desk()
          .casebook()
          .savePerson(
              id,
              new Person(
                  Part.TECHNICIAN, text(context, "technician", known.name()), known.phone()));
    }
    show(id);
    return OK;
  }

  private Person known(CaseId id, Part part) {
    return place.desk().casebook().people(id).stream()
        .filter(p -> p.part() == part)
        .findFirst()
        .orElse(new Person(part, "", ""));
  }

  private static String text(CommandContext context, String option, String usual) {
    String text = option(context, option, usual).strip();
    if (text.length() > LONGEST) {
      throw new UsageException(
          "The " + option + " is too long: at most " + LONGEST + " letters, please.");
    }
    return text;
  }

  private void show(CaseId id) {
    List<Block.Row> rows = new ArrayList<>();
    for (Person person : place.desk().casebook().people(id)) {
      String text =
          Optional.of(person.name()).filter(n -> !n.isEmpty()).orElse("name not known")
              + (person.phone().isEmpty() ? "" : ", " + person.phone());
      rows.add(Block.row(person.part() == Part.CALLER ? "caller" : "technician", text));
    }
    place
        .console()
        .show(
            rows.isEmpty()
                ? Block.paragraph("Nothing is known of the people of case " + id + ".")
                : new Block.Rows(rows));
  }
}
