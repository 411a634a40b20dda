package yett.command.cases;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.CaseId;
import yett.casebook.Person;
import yett.casebook.StoredEvent;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.console.Block;
import yett.desk.OpenCase;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.EventText;

/** {@code cases forget}: takes away what is known of people, and leaves the case. */
public final class CasesForgetVerb extends Verb {
  private final Workplace place;

  public CasesForgetVerb(Workplace place) {
    super(
        "cases forget",
        "forget the people of cases; the cases stay",
        "Usage: cases forget CASE..., or cases forget --person \"NAME OR NUMBER\" for every case"
            + " that knows somebody so. Names, numbers and the caller's own words go; the technical"
            + " record stays. Copies and exported files are for you to delete.",
        value("person", "the name or the telephone number of who is to be forgotten"));
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (words(context).isEmpty() != has(context, "person")) {
      throw new UsageException(getHelp());
    }
    List<CaseId> ids =
        has(context, "person")
            ? place.desk().casebook().knowing(option(context, "person", ""))
            : words(context).stream().map(place.desk().casebook()::find).distinct().toList();
    int forgotten = 0;
    int words = 0;
    List<String> left = new ArrayList<>();
    for (CaseId id : ids) {
      List<Person> people = place.desk().casebook().people(id);
      forgotten += place.desk().casebook().forgetPeople(id);
      words += forgetWords(id);
      mentioned(id, people).forEach(left::add);
    }
    place
        .console()
        .show(
            Block.paragraph(
                (forgotten == 1 ? "1 entry on people" : forgotten + " entries on people")
                    + " forgotten in "
                    + (ids.size() == 1 ? "1 case" : ids.size() + " cases")
                    + (words == 0 ? "." : ", and what the caller said in their own words.")));
    if (!left.isEmpty()) {
      place
          .console()
          .show(
              Block.paragraph(
                  "Somebody typed a name or number into the case itself, where it stays: "
                      + String.join(", ", left)
                      + ". Names do not belong into notes."));
    }
    return OK;
  }

  /** People say their names and numbers when they call. */
  private int forgetWords(CaseId id) {
    Map<Long, String> left = new HashMap<>();
    for (Entry entry : OpenCase.entries(place.desk().casebook().events(id))) {
      if (entry.event() instanceof Event.Said said && !said.words().isEmpty()) {
        left.put(entry.number(), EventText.write(new Event.Said("")));
      }
    }
    if (!left.isEmpty()) {
      place.desk().casebook().forgetWords(id, left);
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
    return place.desk().casebook().events(id).stream()
        .filter(e -> sought.stream().anyMatch(e.body().toLowerCase(Locale.ROOT)::contains))
        .map(StoredEvent::seq)
        .map(seq -> "case " + id + ", event " + seq)
        .toList();
  }
}
