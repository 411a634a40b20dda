package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tests that the dispatch sheet is printed on one page, with what it has as text. */
class DispatchPaperTest {
  @TempDir private Path home;

  private Pipe.Result run(String stdin, String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString()), stdin, words);
  }

  @Test
  void a_long_sheet_fits_one_page() throws IOException {
    String said = "it stops, it beeps and it does not close & the <lamp> blinks, ".repeat(4);
    run(said + "\n0\nIna Teal, quay 4, 555 0107\n1\n0\n0\nx\n", "call", "Fish dock");
    Path pdf = home.resolve("sheet.pdf");
    Path html = home.resolve("sheet.html");

    Pipe.Result result =
        run("", "dispatch", "1", "--pdf", pdf.toString(), "--html", html.toString());

    assertThat(result.exitCode()).as(result.stderr()).isZero();
    assertThat(Files.readString(html))
        .contains("Dispatch, case 2026-0001: Fish dock", "Ina Teal, 555 0107", "Probable causes")
        .contains("&lt;lamp");
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
    }
    assertThat(run("", "dispatch", "1", "--json", "--pdf", "x.pdf").exitCode()).isNotZero();
  }
}
