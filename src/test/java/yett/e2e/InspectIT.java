package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.desk.Demo;
import yett.testing.Shipped;

/** Tests inspections that are interrupted and resumed, that find faults, and their papers. */
class InspectIT {
  @TempDir private static Path directory;
  private static Path demo;

  @BeforeAll
  static void fill() {
    demo = directory.resolve("demo");
    new Demo(Shipped.QUICK, Instant.parse("2026-03-01T08:00:00Z")).fill(demo, () -> {});
  }

  private static Pipe.Result yett(Path home, String stdin, String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString()), stdin, words);
  }

  @Test
  void an_inspection_that_is_cut_off_is_gone_on_with_where_it_was() {
    Path home = directory.resolve("cut");
    Pipe.Result first = yett(home, "0\n\n2b\nremark 1 a little sand\n\n", "inspect", "Net loft");
    assertThat(first.stdout())
        .contains("Inspection for service", "Looks: At the operator, cover on")
        .contains("Kept as a remark on 1");
    Pipe.Result list = yett(home, "", "cases");
    assertThat(list.stdout()).containsPattern("inspection for service, 9\\s+of");
    Pipe.Result again = yett(home, "", "resume", "1");
    assertThat(again.stdout()).contains("9 of", "1 fail, 1 remark", "Looks: Along the track");
  }

  @Test
  void whoever_inspects_the_gate_again_is_offered_what_was_cut_off_and_looks_for_dangers_again() {
    Path home = directory.resolve("again");
    yett(home, "0\n\n2b\n\n", "inspect", "Net loft");
    Pipe.Result left = yett(home, "", "inspect", "Net loft");
    assertThat(left.stdout())
        .contains("This gate has an unfinished inspection")
        .containsPattern("0001, for service: 9 of \\d+ inspected, 1\\s+fail")
        .containsPattern("by\\s+a\\s+technician,\\s+nothing\\s+in\\s+force");
    Pipe.Result gone = yett(home, "1\n0\n", "inspect", "Net loft");
    assertThat(gone.stdout())
        .containsSubsequence("unfinished inspection", "Before anything else", "Along the track")
        .doesNotContain("Looks: At the operator");
    assertThat(yett(home, "", "cases").stdout()).doesNotContain("-0002");
    Pipe.Result anew = yett(home, "0\n0\n\n", "inspect", "Net loft");
    assertThat(anew.stdout()).containsPattern("-0002").contains("Looks: At the operator");
  }

  @Test
  void what_is_no_inspection_and_who_inspects_none_is_told() {
    Pipe.Result what = yett(directory, "", "inspect", "Net loft", "--for", "servise");
    assertThat(what.stderr()).contains("\"servise\" is not a kind of inspection", "service");
    assertThat(what.exitCode()).isNotZero();
    Pipe.Result who = yett(directory, "", "inspect", "Net loft", "--as", "caller");
    assertThat(who.stderr()).contains("over the telephone");
  }

  @Test
  void a_failed_proof_keeps_the_gate_out_of_use_and_begins_a_case_with_all_readings() {
    String failed = failed("Customs shed");
    Pipe.Result sheet = yett(demo, "", "record", failed);
    assertThat(sheet.stdout())
        .contains("left out of use until every safety test has passed", "## Failed", "baseline");
    Pipe.Result resumed = yett(demo, "yes\n0\nsave\n", "resume", failed);
    assertThat(resumed.stdout())
        .contains("This inspection is closed", "Begin a case", "Before anything else")
        .contains("What is wrong with the gate?");
    assertThat(yett(demo, "", "gates", "due").stdout())
        .containsPattern("(?s)12 due|of 12 due")
        .contains("Customs shed");
  }

  private static String failed(String gate) {
    String list = yett(demo, "", "cases", "--gate", gate).stdout();
    if (list.isBlank()) {
      list = yett(demo, "", "cases").stdout();
    }
    Matcher line =
        Pattern.compile("(\\d{4}-\\d{4}): +\\S+ \\S+ " + gate + "\\s+left").matcher(list);
    assertThat(line.find()).as(list).isTrue();
    return line.group(1);
  }

  @Test
  void the_sheet_is_one_page() throws IOException {
    Path pdf = directory.resolve("sheet.pdf");
    Pipe.Result written = yett(demo, "", "record", failed("Customs shed"), "--pdf", pdf.toString());
    assertThat(written.exitCode()).as(written.stderr()).isZero();
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
    }
  }

  @Test
  void the_page_of_a_gate_has_last_value_and_baseline_and_a_repair_begins_it_anew() {
    String page = yett(demo, "", "gates", "show", "North gate").stdout();
    assertThat(page).contains("inspection for commissioning", "repaired and proved");
    String sag = page.substring(page.indexOf("hang below the straight line"));
    assertThat(sag.substring(0, sag.indexOf("How", 10))).contains("Baseline: ", "on 2024-10-02");
    String current = page.substring(page.indexOf("What current does the motor draw"));
    assertThat(current).containsPattern("Baseline: [0-9.]+ A on 2024-");
  }

  @Test
  void a_gate_says_what_failed_and_where_its_readings_are_heading() {
    assertThat(yett(demo, "", "gates").stdout())
        .containsPattern("Harbour office: +size and supply taken as usual")
        .doesNotContain("not described yet");
    assertThat(yett(demo, "", "gates", "show", "Customs shed").stdout())
        .containsPattern("left out of use\\.\\s+Failed:\\s+Edge\\s+reverses\\.");
    String ferry = yett(demo, "", "gates", "show", "Ferry").stdout();
    assertThat(ferry).contains("Remarks:", "at this rate it reaches");
    Matcher last = Pattern.compile("(?s).*case (\\d{4}-\\d{4})").matcher(ferry);
    assertThat(last.find()).isTrue();
    String sheet = yett(demo, "", "record", last.group(1)).stdout();
    assertThat(sheet)
        .as("the batteries were measured and are in order, so crusted lugs do not point to them")
        .contains("crusted or discoloured", "points to: battery lug or link loose");
  }

  @Test
  void a_folder_with_something_in_it_gets_no_demo() {
    Pipe.Result refused = yett(directory, "", "gates", "demo", demo.toString());
    assertThat(refused.stderr()).contains("not an empty folder");
    assertThat(refused.exitCode()).isNotZero();
  }
}
