package yett.command.cases;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import yett.casebook.CaseId;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.casebook.Person;
import yett.console.Block;
import yett.desk.OpenCase;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.wording.CallWords;

/**
 * Everything that one case knows of people, which {@code cases forget} deletes.
 *
 * @param said in the caller's own words
 * @param desk what the desk did, with the places, names and times entered with it
 */
record KnownOfPeople(
    CaseId id,
    String gate,
    Instant opened,
    List<Person> people,
    List<String> said,
    List<String> desk) {
  private static final JsonMapper MAPPER = JsonMapper.shared();

  static KnownOfPeople in(Casebook casebook, CaseId id) {
    CaseSummary line = casebook.summary(id);
    List<String> said = new ArrayList<>();
    List<String> desk = new ArrayList<>();
    for (Entry entry : OpenCase.entries(casebook.events(id))) {
      if (entry.event() instanceof Event.Said words && !words.words().isEmpty()) {
        said.add(words.words());
      }
      if (entry.event() instanceof Event.Tended tended && !tended.words().isEmpty()) {
        desk.add(CallWords.of(tended));
      }
    }
    return new KnownOfPeople(
        id,
        line.siteId(),
        line.opened(),
        casebook.people(id),
        List.copyOf(said),
        List.copyOf(desk));
  }

  List<Block> blocks() {
    List<Block.Row> rows = new ArrayList<>();
    people.forEach(p -> rows.add(Block.row(p.part().words(), p.name() + ", " + p.phone())));
    said.forEach(s -> rows.add(Block.row("said", s)));
    desk.forEach(d -> rows.add(Block.row("desk", d)));
    return List.of(
        Block.heading("Case " + id + " · " + gate + " · " + CallWords.when(opened)),
        rows.isEmpty()
            ? Block.paragraph("Nothing is recorded about its people.")
            : new Block.Rows(rows));
  }

  /** In the form of {@code shared/people.schema.json}. */
  static String json(List<KnownOfPeople> cases) {
    ArrayNode all = MAPPER.createArrayNode();
    for (KnownOfPeople one : cases) {
      ObjectNode node = all.addObject();
      node.put("case-id", one.id.toString());
      node.put("gate", one.gate);
      node.put("opened", one.opened.toString());
      ArrayNode people = node.putArray("people");
      for (Person p : one.people) {
        ObjectNode person = people.addObject();
        person.put("part", p.part().words());
        person.put("name", p.name());
        person.put("phone", p.phone());
      }
      one.said.forEach(node.putArray("said")::add);
      one.desk.forEach(node.putArray("desk")::add);
    }
    return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(all) + "\n";
  }
}
