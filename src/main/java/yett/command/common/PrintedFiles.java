package yett.command.common;

import java.nio.file.Path;
import java.util.Optional;
import yett.console.StandardStreams;
import yett.paper.PdfFile;

/** Writes a page into the files that a person named, to look at and to print. */
public final class PrintedFiles {
  private final StandardStreams output;
  private final Optional<Path> html;
  private final Optional<Path> pdf;

  /**
   * @param html name of the HTML file; null for none
   * @param pdf name of the PDF file; null for none
   * @throws UsageException if one of them exists already
   */
  public PrintedFiles(StandardStreams output, String html, String pdf) {
    this.output = output;
    this.html = Optional.ofNullable(html).map(NewFile::named);
    this.pdf = Optional.ofNullable(pdf).map(NewFile::named);
  }

  public boolean isAny() {
    return html.isPresent() || pdf.isPresent();
  }

  public void write(String page) {
    html.ifPresent(file -> NewFile.write(file, page, output));
    pdf.ifPresent(
        file -> {
          byte[] printed = PdfFile.of(page);
          NewFile.write(file, printed, output);
          String missing = PdfFile.missing(page);
          if (!missing.isEmpty()) {
            output.tell(
                file
                    + ": these characters are not in its fonts and look like #: "
                    + missing
                    + ". A browser shows them: --html FILE.");
          }
        });
  }
}
