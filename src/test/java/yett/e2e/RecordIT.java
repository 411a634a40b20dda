package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.casebook.Casebook;
import yett.files.OwnFiles;
import yett.testing.HarrowQuay;

/** Tests the papers of a case as the program writes them. */
class RecordIT {
  private static final String FIRM =
      """
      firm:
        name: Quayside Gates <&> Sons
        address: [2 Rope Walk, Harrow Quay]
        logo: logo.png
      currency: EUR
      paper: Letter
      """;

  @TempDir private static Path directory;
  @TempDir private Path papers;

  private static Path home;

  @BeforeAll
  static void fill() throws IOException {
    home = directory.resolve("home");
    OwnFiles.folder(home);
    try (Casebook casebook = Casebook.open(home.resolve("casebook.db"))) {
      HarrowQuay.add(casebook, HarrowQuay.chandler());
    }
  }

  @BeforeEach
  void settings() throws IOException {
    Files.writeString(home.resolve("firm.yaml"), FIRM);
    ImageIO.write(
        new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB),
        "png",
        home.resolve("logo.png").toFile());
  }

  private static Pipe.Result yett(String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString()), "", words);
  }

  @Test
  void a_page_and_its_print_hold_the_same_case() throws IOException {
    Path html = papers.resolve("chandler.html");
    Path pdf = papers.resolve("chandler.pdf");

    Pipe.Result written =
        yett(
            "record", "1", "--html", html.toString(), "--pdf", pdf.toString(), "--for", "customer");

    assertThat(written.exitCode()).as(written.stderr()).isZero();
    assertThat(written.stdout()).contains("chandler.html is written.", "chandler.pdf is written.");
    assertThat(written.stderr()).isEmpty();
    assertThat(html)
        .content()
        .contains("Quayside Gates &lt;&amp;&gt; Sons", "data:image/png;base64,", "size: Letter")
        .contains("Chandler's gate")
        .doesNotContain("How the suspicion moved");
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(612); // points of 8.5 in
      assertThat(new PDFTextStripper().getText(document))
          .contains("Quayside Gates <&> Sons", "Record of work", "Chain too slack");
    }
  }

  @Test
  void markdown_stays_what_goes_to_standard_output() {
    assertThat(yett("record", "1").stdout()).startsWith("# Case 2026-0001: Chandler's gate");
    assertThat(yett("record", "1", "--hand-over").stdout()).startsWith("# Hand-over of case");
    Path file = papers.resolve("chandler.md");
    Path page = papers.resolve("chandler-and-page.html");
    Pipe.Result written = yett("record", "1", "--md", file.toString(), "--html", page.toString());
    assertThat(written.exitCode()).as(written.stderr()).isZero();
    assertThat(file).content().isEqualTo(yett("record", "1").stdout());
    assertThat(page).isNotEmptyFile();
    Path sheet = papers.resolve("sheet.md");
    yett("record", "1", "--hand-over", "--md", sheet.toString());
    assertThat(sheet).content().startsWith("# Hand-over of case");
  }

  @Test
  void nothing_is_written_over_and_slips_are_told() throws IOException {
    Path there = Files.writeString(papers.resolve("there.html"), "mine");

    Pipe.Result over = yett("record", "1", "--html", there.toString());
    assertThat(over.stderr()).contains("exists already");
    assertThat(over.exitCode()).isEqualTo(64);
    assertThat(there).hasContent("mine");

    String fresh = papers.resolve("fresh.pdf").toString();
    assertThat(yett("record", "1", "--pdf", fresh, "--for", "costumer").stderr())
        .contains("Maybe \"customer\"");
    assertThat(yett("record", "1", "--log").stderr()).contains("Usage: record CASE");
    assertThat(yett("record", "1", "--hand-over", "--pdf", fresh).stderr()).contains("Usage:");
    Pipe.Result nowhere =
        yett("record", "1", "--html", papers.resolve("no/such/folder.html").toString());
    assertThat(nowhere.stderr()).contains("it cannot be written", "its folder");
    assertThat(nowhere.exitCode()).isEqualTo(74);
    assertThat(Path.of(fresh)).doesNotExist();
  }

  @Test
  void a_logo_that_is_no_picture_is_told() throws IOException {
    Files.writeString(home.resolve("logo.png"), "<svg/>");
    String fresh = papers.resolve("fresh.html").toString();

    Pipe.Result told = yett("record", "1", "--html", fresh);

    assertThat(told.stderr())
        .contains("The logo logo.png cannot be used", "neither a PNG nor a JPEG");
    assertThat(Path.of(fresh)).doesNotExist();
  }

  @Test
  void a_screen_that_is_named_and_cannot_be_reached_does_not_matter() {
    Path pdf = papers.resolve("afar.pdf");

    Pipe.Result written =
        Pipe.run(
            Programs.packaged("record", "1", "--pdf", pdf.toString()),
            Map.of("YETT_HOME", home.toString(), "DISPLAY", ":77"),
            "",
            Visitor.PATIENCE);

    assertThat(written.exitCode()).as(written.stderr()).isZero();
    assertThat(pdf).isNotEmptyFile();
  }
}
