package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** From the van's embedded casebook to the desk's, of either kind, and back. */
@ParameterizedClass
@EnumSource(Store.class)
class CarryTest {
  private static final Person CALLER = new Person(Person.Part.CALLER, "Ina Teal", "+1 555 0107");

  @TempDir Path directory;
  @Parameter Store store;
  private Casebook van;
  private Casebook desk;
  private Path file;

  @BeforeEach
  void begin() {
    van = Casebook.open(directory.resolve("van").resolve("casebook.db"));
    desk = Store.open(store.newCasebook(directory));
    file = directory.resolve("cases.jsonl");
    van.saveSite(new SiteRecord("fish-dock", "Fish dock", "{\"span\":\"9 m\"}", Writer.AT));
  }

  @AfterEach
  void close() {
    van.close();
    desk.close();
  }

  private CaseId caseInVan(int events) {
    CaseId id = van.newCase("fish-dock", Writer.AT);
    van.savePerson(id, CALLER);
    for (int n = 0; n < events; n++) {
      van.append(id, n, Writer.event("technician", n));
    }
    van.summarise(id, events, new Summary(CaseStatus.OPEN, "Chain slack, 87 %", "chain-slack"));
    return id;
  }

  private void write(boolean people, Casebook from, CaseId... ids) {
    CarryFile.writeTo(
        file,
        to -> {
          CarryFile.writeHead(to, Writer.AT, ids.length, 1);
          CarryFile.write(to, from.carry("fish-dock").orElseThrow());
          for (CaseId id : ids) {
            CarryFile.write(to, from.carry(id, people));
          }
        });
  }

  private final List<Boolean> sites = new ArrayList<>();

  private List<ImportedCase> takeInto(Casebook casebook) {
    List<ImportedCase> taken = new ArrayList<>();
    CarryFile.read(
        file,
        new CarryFile.Reader() {
          @Override
          public void head(int cases, int sites) {}

          @Override
          public void site(CarriedSite site) {
            sites.add(casebook.take(site));
          }

          @Override
          public void carried(CarriedCase carried) {
            taken.add(casebook.take(carried));
          }
        });
    return taken;
  }

  private List<String> carried(Casebook casebook) {
    return casebook.cases().stream()
        .map(line -> casebook.carry(line.id(), true).toString() + casebook.events(line.id()))
        .toList();
  }

  @Test
  void what_arrives_is_what_was_sent_and_arrives_once() {
    CaseId id = caseInVan(3);
    write(false, van, id);

    assertThat(takeInto(desk))
        .extracting(ImportedCase::outcome)
        .containsExactly(ImportedCase.Outcome.NEW);
    var before = carried(desk);
    assertThat(takeInto(desk))
        .extracting(ImportedCase::outcome)
        .containsExactly(ImportedCase.Outcome.KNOWN);

    assertThat(carried(desk)).isEqualTo(before);
    assertThat(desk.events(id)).isEqualTo(van.events(id));
    assertThat(desk.summary(id)).isEqualTo(van.summary(id));
    assertThat(desk.siteHistory("fish-dock")).isEqualTo(van.siteHistory("fish-dock"));
    assertThat(sites).containsOnly(true);
  }

  @Test
  void names_and_numbers_of_people_travel_only_when_asked_for() throws IOException {
    CaseId id = caseInVan(1);

    write(false, van, id);
    // the case's number in the world is drawn, and may hold any digits
    String drawn = "\"uid\":\"[^\"]*\"";
    assertThat(Files.readString(file).replaceAll(drawn, "")).doesNotContain("Teal", "555");
    Files.delete(file);

    write(true, van, id);
    takeInto(desk);
    assertThat(desk.people(id)).containsExactly(CALLER);
  }

  @Test
  void a_case_whose_number_is_taken_gets_the_next_one() {
    desk.newCase("ferry", Writer.AT);
    CaseId id = caseInVan(2);
    write(false, van, id);

    ImportedCase taken = takeInto(desk).get(0);

    assertThat(taken.id()).hasToString("2026-0002");
    assertThat(desk.events(taken.id())).isEqualTo(van.events(id));
    assertThat(desk.newCase("ferry", Writer.AT)).hasToString("2026-0003");
  }

  @Test
  void no_later_case_gets_the_number_of_a_case_that_came() {
    caseInVan(1);
    CaseId second = caseInVan(1);
    write(false, van, second);

    takeInto(desk);

    assertThat(desk.newCase("ferry", Writer.AT)).hasToString("2026-0003");
  }

  /** The desk's case goes to the van, is gone on with there, and comes back. */
  @Test
  void a_case_that_went_on_elsewhere_goes_on_here() {
    CaseId id = caseInVan(2);
    write(false, van, id);
    takeInto(desk);
    van.append(id, 2, Writer.event("technician", 7));
    van.summarise(id, 3, new Summary(CaseStatus.CLOSED, "repaired", "chain-slack"));
    file = directory.resolve("later.jsonl");
    write(false, van, id);

    assertThat(takeInto(desk))
        .extracting(ImportedCase::outcome)
        .containsExactly(ImportedCase.Outcome.CONTINUED);
    assertThat(desk.events(id)).isEqualTo(van.events(id));
    assertThat(desk.summary(id).summary().state()).isEqualTo(CaseStatus.CLOSED);

    file = directory.resolve("cases.jsonl");
    assertThat(takeInto(desk)) // the earlier file knows less
        .extracting(ImportedCase::outcome)
        .containsExactly(ImportedCase.Outcome.KNOWN);
  }

  @Test
  void a_conflict_is_shown_and_changes_nothing() {
    CaseId id = caseInVan(2);
    write(false, van, id);
    takeInto(desk);
    var there = van.append(id, 2, Writer.event("technician", 7));
    var here = desk.append(id, 2, Writer.event("caller", 8), Writer.event("caller", 9));
    file = directory.resolve("later.jsonl");
    write(false, van, id);
    var before = carried(desk);

    assertThat(takeInto(desk))
        .containsExactly(new ImportedCase(id, ImportedCase.Outcome.CONFLICT, here, there));
    assertThat(carried(desk)).isEqualTo(before);

    var apart = van.carry(id, false);
    ImportedCase own = desk.takeApart(apart);
    assertThat(own.outcome()).isEqualTo(ImportedCase.Outcome.NEW);
    assertThat(desk.events(own.id())).isEqualTo(van.events(id));
    assertThat(desk.takeApart(apart).outcome()).isEqualTo(ImportedCase.Outcome.KNOWN);
    assertThat(desk.events(id)).hasSize(4);
  }

  @Test
  void a_site_described_anew_here_and_elsewhere_stays_as_it_is_here() {
    write(false, van, caseInVan(1));
    takeInto(desk);
    van.saveSite(
        new SiteRecord("fish-dock", "Fish dock", "{\"span\":\"8 m\"}", Writer.AT.plusSeconds(60)));
    desk.saveSite(
        new SiteRecord("fish-dock", "Fish dock", "{\"span\":\"7 m\"}", Writer.AT.plusSeconds(30)));

    assertThat(desk.take(van.carry("fish-dock").orElseThrow())).isFalse();
    assertThat(desk.site("fish-dock").orElseThrow().body()).contains("7 m");
  }

  @Test
  void a_site_described_anew_elsewhere_only_is_taken_over() {
    write(false, van, caseInVan(1));
    takeInto(desk);
    van.saveSite(
        new SiteRecord("fish-dock", "Fish dock", "{\"span\":\"8 m\"}", Writer.AT.plusSeconds(60)));

    assertThat(desk.take(van.carry("fish-dock").orElseThrow())).isTrue();
    assertThat(desk.siteHistory("fish-dock")).isEqualTo(van.siteHistory("fish-dock"));
  }

  @Test
  void every_line_keeps_to_the_schema() throws IOException {
    CaseId id = caseInVan(2);
    write(true, van, id);
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Path.of("shared/casebook-line.schema.json")));

    assertThat(Files.readAllLines(file))
        .hasSize(3)
        .allSatisfy(line -> assertThat(schema.validate(line, InputFormat.JSON)).isEmpty());
    assertThat(
            schema.validate(
                Files.readAllLines(file).get(2).replace("\"uid\"", "\"name\""), InputFormat.JSON))
        .isNotEmpty();
  }

  /** From a file that an older program wrote, when a gate was the letters of its name. */
  @Test
  void gates_of_an_older_file_get_their_names() throws IOException {
    Files.writeString(
        file,
        """
        {"kind":"casebook","format":1,"written":"2026-11-25T09:30:00Z","cases":2,"sites":1}
        {"kind":"site","id":"north-south","revisions":[{"name":"North+South","body":"{}","at":"2026-11-25T09:30:00Z"},{"name":"North/South","body":"[]","at":"2026-11-25T09:30:00Z"}]}
        {"kind":"case","uid":"u1","id":"2026-0001","site":"north-south","opened":"2026-11-25T09:30:00Z","state":"OPEN","title":"","cause":"","events":[{"at":"2026-11-25T09:30:00Z","by":"caller","type":"opened","body":"{\\"site\\":\\"North/South\\"}"}]}
        {"kind":"case","uid":"u2","id":"2026-0002","site":"north-south","opened":"2026-11-25T09:30:00Z","state":"OPEN","title":"","cause":"","events":[]}
        """);

    takeInto(desk);

    assertThat(desk.sites())
        .extracting(SiteRecord::id)
        .containsExactly("North+South", "North/South");
    assertThat(desk.site("North/South").orElseThrow().body()).isEqualTo("[]");
    assertThat(desk.cases())
        .extracting(CaseSummary::siteId)
        .containsExactly("north-south", "North/South");
  }

  @Test
  void a_number_beyond_all_bounds_is_not_taken_over() {
    CarriedCase carried = van.carry(caseInVan(2), false);
    var far =
        new CarriedCase(
            "far",
            new CaseId(2026, 999_999_999),
            carried.siteId(),
            carried.opened(),
            carried.summary(),
            carried.events(),
            List.of());

    assertThat(desk.take(far).id()).hasToString("2026-0001");
    assertThat(desk.newCase("Ferry", Writer.AT)).hasToString("2026-0002");
  }
}
