package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import yett.casebook.Casebook;
import yett.files.OwnFiles;
import yett.testing.HarrowQuay;

/** The gates of Harrow Quay after two years of visits. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class GatesIT {
  @TempDir private static Path directory;

  private static Path home;

  @BeforeAll
  static void fill() throws IOException {
    home = directory.resolve("home");
    OwnFiles.folder(home);
    try (Casebook casebook = Casebook.open(home.resolve("casebook.db"))) {
      HarrowQuay.fill(casebook);
    }
  }

  private static Pipe.Result yett(String... words) {
    return in(home, words);
  }

  private static Pipe.Result in(Path data, String... words) {
    return InProcess.run(Map.of("YETT_HOME", data.toString()), "", words);
  }

  @Test
  @Order(1)
  void the_list_says_what_each_gate_is_and_when_somebody_was_there() {
    Pipe.Result list = yett("gates");

    assertThat(list.stdout())
        .contains("Chandler's gate:", "6 m opening, on a track, 350 kg, mains 230 V")
        .contains("2026-03-02", "3 cases", "2 gates");
    assertThat(list.exitCode()).isZero();
  }

  @Test
  @Order(2)
  void the_page_of_a_gate_draws_its_readings_in_eighty_plain_columns() {
    Pipe.Result page = yett("gates", "show", "chandlers", "gate");

    assertThat(page.stdout())
        .contains("2024-10-08:  case 2024-0001, repaired and proved. Believed most: Chain too")
        .contains("Done: Take up the chain")
        .containsSubsequence(
            "How far does the long free run",
            "126 mm",
            "70 mm",
            "148 mm",
            "82 mm",
            "190 mm",
            "84 mm");
    assertThat(page.stdout().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(81));
    assertThat(page.stdout()).matches("[\\x20-\\x7e\\n]*");
    List<String> sag =
        page.stdout().lines().filter(l -> l.matches(".*\\d mm  .*[=\\]].*\\*.*")).toList();
    assertThat(sag).as("readings above the usual range").isNotEmpty();
  }

  @Test
  @Order(3)
  void a_spreadsheet_reads_the_list() {
    Pipe.Result csv = yett("gates", "--csv");

    List<String[]> rows = rows(csv.stdout());
    assertThat(rows).hasSize(3).allSatisfy(row -> assertThat(row).hasSameSizeAs(rows.get(0)));
    assertThat(rows.get(1)).startsWith("Chandler's gate", "2026-03-02", "3", "0").contains("6 m");
  }

  private static List<String[]> rows(String csv) {
    try (var read =
        new CsvMapper()
            .readerFor(String[].class)
            .with(CsvReadFeature.WRAP_AS_ARRAY)
            .<String[]>readValues(new StringReader(csv))) {
      return read.readAll();
    }
  }

  @Test
  @Order(4)
  void a_new_name_takes_everything_along_and_the_old_one_leads_to_it() {
    assertThat(yett("gates", "rename", "Chandler's gate", "=Chandler & Sons").stdout())
        .contains("is called \"=Chandler & Sons\" now");

    assertThat(yett("gates", "show", "=Chandler & Sons").stdout())
        .contains("Formerly: Chandler's gate.", "190 mm");
    assertThat(yett("record", "2026-0001").stdout()).startsWith("# Case 2026-0001: =Chandler");
    assertThat(yett("cases", "find", "--site", "=Chandler & Sons").stdout()).contains("3 cases.");
    assertThat(yett("cases", "verify").exitCode()).isZero();
    assertThat(rows(yett("gates", "--csv").stdout()).get(1)[0]).isEqualTo("'=Chandler & Sons");

    Pipe.Result old = yett("gates", "show", "Chandler's gate");
    assertThat(old.stderr()).contains("has another name now: =Chandler & Sons.");
    assertThat(old.exitCode()).isEqualTo(64);
  }

  @Test
  @Order(5)
  void the_name_goes_along_in_a_file() throws IOException {
    Path van = directory.resolve("van");
    OwnFiles.folder(van);
    Path file = directory.resolve("all.jsonl");
    assertThat(yett("cases", "export", "--all", "--to", file.toString()).exitCode()).isZero();

    Pipe.Result taken = in(van, "cases", "import", file.toString());

    assertThat(taken.exitCode()).as(taken.stdout() + taken.stderr()).isZero();
    assertThat(in(van, "gates").stdout()).contains("=Chandler & Sons", "3 cases");
  }

  @Test
  @Order(6)
  void what_cannot_be_is_refused_with_advice() {
    Pipe.Result taken = yett("gates", "rename", "=Chandler & Sons", "Customs yard");
    assertThat(taken.stderr()).contains("There is a gate \"Customs yard\" already");
    assertThat(taken.exitCode()).isNotZero();

    assertThat(yett("gates", "show", "cust").stdout()).contains("Customs yard", "2025-09-11");
    assertThat(yett("gates", "rename", "cust", "Customs").stderr()).contains("There is no gate");
    assertThat(yett("gates", "rename", "Customs yard", "quit").stderr())
        .contains("a word to the program");
    assertThat(yett("gates", "rename", "Customs yard").stderr()).contains("Usage: gates rename");
    assertThat(yett("gates", "show", "Custom yard").stderr()).contains("Maybe \"Customs yard\"");
    assertThat(in(directory.resolve("nobody"), "gates").stdout()).contains("knows no gate yet");
  }

  @Test
  @Order(7)
  void a_gate_is_described_without_a_case() {
    Path office = directory.resolve("office");
    String[] added = {"gates", "add", "Ice house", "opening=4 m", "support=cantilever"};

    assertThat(in(office, added).stdout())
        .contains("Ice house: 4 m opening, cantilever, 350 kg, mains 230 V.");
    assertThat(in(office, "gates").stdout()).contains("Ice house:", "never visited; no");
    assertThat(in(office, "gates", "describe", "Ice house", "leaf-mass=600 kg").stdout())
        .contains("Ice house: 4 m opening, cantilever, 600 kg");
    assertThat(in(office, "gates", "show", "ice").stdout())
        .contains("Opening, post to post:  4 m", "Mass of the leaf:       600 kg", "None yet.");

    assertThat(in(office, added).stderr()).contains("There is a gate \"Ice house\" already");
    assertThat(in(office, "gates", "add", "Shed", "opning=4 m").stderr())
        .contains("Maybe \"opening\"");
    assertThat(in(office, "gates", "add", "Shed", "opening=4 V").stderr())
        .contains("\"4 V\" is no answer to: How wide is the opening", "from 1 m to 20 m");
    assertThat(in(office, "gates", "add", "Shed", "support=wings").stderr())
        .contains("Known: track (", "cantilever (");
    assertThat(in(office, "gates", "describe", "Shed", "support=track").stderr())
        .contains("There is no gate \"Shed\"");
    assertThat(in(office, "gates").stdout()).doesNotContain("Shed");
  }
}
