package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
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

/**
 * Tests the commands for gates on the demo casebook of Harrow Quay with its two years of visits.
 */
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
        .contains("Chandler's gate:", "6 m opening")
        .doesNotContain("350 kg") // nobody told that of it
        .contains("2026-03-02", "3 cases", "2 gates");
    assertThat(yett("gates", "show", "Chandler").stdout())
        .contains("Not entered, so assumed as usual: ", "350 kg");
    assertThat(list.exitCode()).isZero();
  }

  @Test
  @Order(2)
  void the_page_of_a_gate_draws_its_readings_in_eighty_plain_columns() {
    Pipe.Result page = yett("gates", "show", "chandlers", "gate");

    assertThat(page.stdout())
        .contains("2024-10-08:  case 2024-0001, repaired and proved. Most probable: Chain too")
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
    assertThat(yett("gates", "rename", "Customs yard", "quit").stderr()).contains("a command word");
    assertThat(yett("gates", "rename", "Customs yard").stderr()).contains("Usage: gates rename");
    assertThat(yett("gates", "show", "Custom yard").stderr()).contains("Maybe \"Customs yard\"");
    assertThat(in(directory.resolve("nobody"), "gates").stdout()).contains("has no gates yet");
  }

  @Test
  @Order(8)
  void a_gate_that_is_retired_is_in_no_list_until_it_is_brought_back() {
    Path office = directory.resolve("retiring");
    in(office, "gates", "add", "Ice house", "opening=4 m");
    in(office, "gates", "add", "Ferry", "opening=5 m");

    assertThat(in(office, "gates", "retire", "Ferry").stdout()).contains("Ferry is retired");
    assertThat(in(office, "gates").stdout()).contains("1 gate", "Retired: 1").doesNotContain("5 m");
    assertThat(in(office, "gates", "due").stdout()).doesNotContain("Ferry");
    assertThat(in(office, "gates", "--retired").stdout()).contains("Ferry:", "5 m");
    assertThat(in(office, "gates", "show", "Ferry").stdout()).contains("Retired on ");
    assertThat(in(office, "gates", "describe", "Ferry", "opening=6 m").exitCode()).isZero();
    assertThat(in(office, "gates", "retire", "Ferry").stderr()).contains("retired already");

    assertThat(in(office, "gates", "restore", "Ferry").stdout()).contains("back in the lists");
    assertThat(in(office, "gates").stdout()).contains("2 gates", "6 m").doesNotContain("Retired");
    assertThat(in(office, "gates", "restore", "Ferry").stderr()).contains("not retired");
  }

  @Test
  @Order(9)
  void two_gates_that_are_one_are_made_one_with_all_their_cases() {
    Path copy = directory.resolve("merging");
    in(copy, "cases", "import", directory.resolve("all.jsonl").toString());
    assertThat(in(copy, "gates", "merge", "Customs yard", "=Chandler & Sons").stdout())
        .contains("belongs to \"=Chandler & Sons\" now");

    assertThat(in(copy, "gates").stdout()).contains("1 gate");
    String page = in(copy, "gates", "show", "=Chandler & Sons").stdout();
    assertThat(page).contains("Customs yard", "Chandler's gate", "2025-09-11", "190 mm", "6 m");
    assertThat(in(copy, "gates", "show", "Customs yard").stderr())
        .contains("has another name now: =Chandler & Sons.");
    assertThat(in(copy, "cases", "verify").exitCode()).isZero();
    assertThat(in(copy, "gates", "merge", "=Chandler & Sons", "=Chandler & Sons").stderr())
        .contains("one gate already");
  }

  @Test
  @Order(10)
  void a_sheet_goes_out_and_in_and_an_error_is_told_by_line_and_column() throws IOException {
    Path from = directory.resolve("sheet-from");
    in(from, "gates", "add", "Ice house", "opening=4 m", "support=cantilever");
    in(from, "gates", "rename", "Ice house", "=Ice; house");
    in(from, "gates", "add", "Ferry", "leaf-mass=600 kg");
    Path sheet = directory.resolve("gates.csv");
    assertThat(in(from, "gates", "export", sheet.toString()).exitCode()).isZero();

    Path to = directory.resolve("sheet-to");
    assertThat(in(to, "gates", "import", sheet.toString()).stdout()).contains("2 new, 0 changed");
    assertThat(in(to, "gates").stdout()).isEqualTo(in(from, "gates").stdout());
    assertThat(in(to, "gates", "import", sheet.toString()).stdout()).contains("0 new, 0 changed");

    Path usual = Files.writeString(directory.resolve("usual.csv"), "Gate,opening\nQuay 3,5 m\n");
    Path another = directory.resolve("another");
    in(another, "gates", "import", usual.toString());
    assertThat(in(another, "gates").stdout()).containsPattern("Quay 3: +5 m opening");

    Path wrong = directory.resolve("wrong.csv");
    Files.writeString(
        wrong, "\uFEFFGate;opening;Suport\n\"Net\nloft\";4 m;\n\nSail store;4 V;\nferry;5 m;\n");
    Pipe.Result refused = in(to, "gates", "import", wrong.toString());
    assertThat(refused.exitCode()).isNotZero();
    assertThat(refused.stderr().replaceAll("\\s+", " "))
        .contains("line 1, column 3: no question about a gate is called \"Suport\".")
        .contains("line 2, column 1 (Gate): ")
        .contains("line 5, column 2 (opening): \"4 V\" is not an answer.")
        .contains("line 6, column 1 (Gate): there is a gate \"Ferry\" already")
        .contains("Nothing was imported");
    assertThat(in(to, "gates").stdout()).contains("2 gates").doesNotContain("Sail store");
  }

  @Test
  @Order(11)
  void past_inspections_come_in_from_a_sheet_with_baseline_and_trend() throws IOException {
    Path firm = directory.resolve("papers");
    in(firm, "gates", "add", "Ferry", "opening=6 m");
    Path sheet = directory.resolve("readings.csv");
    Files.writeString(
        sheet,
        """
        Gate,Date,Visit,Measured,Reading
        Ferry,2022-03-01,commissioning,Chain sag,56 mm
        Ferry,2022-03-01,commissioning,Running current,3.1 A
        Ferry,2023-03-01,service,Chain sag,62 mm
        Ferry,2024-03-01,service,Chain sag,69 mm
        Ferry,2025-03-01,service,Chain sag,75 mm
        Ferry,2025-07-01,call,Chain sag,200 mm
        Ferry,2026-03-01,service,Motor current in the run,3.3 A
        Ferry,2026-03-01,service,chain-sag,81 mm
        """);
    assertThat(in(firm, "gates", "readings", "import", sheet.toString()).stdout())
        .contains("5 visits in the sheet: 7 readings imported");
    assertThat(in(firm, "gates", "readings", "import", sheet.toString()).stdout())
        .contains("here already");

    String page = in(firm, "gates", "show", "Ferry").stdout().replaceAll("\\s+", " ");
    assertThat(page)
        .contains("Baseline: 56 mm on 2022-03-01; last: 81 mm.")
        .contains("Trend: rises by 6.3 mm a year")
        .contains("Next inspection: ", "last passed 2026-03-01");
    Path out = directory.resolve("out.csv");
    assertThat(in(firm, "gates", "readings", "export", out.toString()).exitCode()).isZero();
    assertThat(rows(Files.readString(out))).hasSize(8);
    assertThat(Files.readString(out))
        .contains("Motor current in the run", "Chain sag")
        .doesNotContain("Running current", "running-current");
    assertThat(in(firm, "cases", "verify").exitCode()).isZero();

    Path wrong = directory.resolve("wrong-readings.csv");
    Files.writeString(
        wrong,
        "Gate,Date,Visit,Measured,Reading\nFery,2022-13-01,servise,Chain sack,50 V\n"
            + "Ferry,2023-04-01,service,Chain sag,900 m\n");
    String refused = in(firm, "gates", "readings", "import", wrong.toString()).stderr();
    assertThat(refused.replaceAll("\\s+", " "))
        .contains("line 2, column 1 (Gate): there is no gate \"Fery\"", "Maybe \"Ferry\"")
        .contains("line 2, column 2 (Date)", "line 2, column 3 (Visit)")
        .contains("line 2, column 4 (Measured)", "line 3, column 5 (Reading): ")
        .contains("Nothing was imported");
    assertThat(in(firm, "cases").stdout()).doesNotContain("2023-04");
  }

  @Test
  @Order(6)
  void a_sheet_in_other_units_comes_in_again_as_it_was() throws IOException {
    Path firm = directory.resolve("customary");
    in(firm, "gates", "add", "Long quay", "opening=8 m");
    Path readings = directory.resolve("long-quay.csv");
    Files.writeString(
        readings,
        "Gate,Date,Visit,Measured,Reading\nLong quay,2026-03-01,commissioning,Chain sag,88 mm\n");
    in(firm, "gates", "readings", "import", readings.toString());
    in(firm, "units", "us");

    Path gates = directory.resolve("long-quay-gates.csv");
    in(firm, "gates", "export", gates.toString());
    assertThat(Files.readString(gates)).contains("8 m (26.2 ft)").doesNotContain("26.9 ft");
    Pipe.Result again = in(firm, "gates", "import", gates.toString());
    assertThat(again.stdout()).as(again.stderr()).contains("0 new, 0 changed");

    Path out = directory.resolve("long-quay-readings.csv");
    in(firm, "gates", "readings", "export", out.toString());
    assertThat(Files.readString(out)).contains("3.465 in");
    assertThat(in(firm, "gates", "readings", "import", out.toString()).stdout())
        .contains("here already");
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
        .contains("\"4 V\" is not an answer to: How wide is the opening", "from 1 m to 20 m");
    assertThat(in(office, "gates", "add", "Shed", "support=wings").stderr())
        .contains("Known: track (", "cantilever (");
    assertThat(in(office, "gates", "describe", "Shed", "support=track").stderr())
        .contains("There is no gate \"Shed\"");
    assertThat(in(office, "gates").stdout()).doesNotContain("Shed");
  }
}
