package yett.command.practice;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import yett.command.common.NewFile;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.paper.Page;
import yett.record.Markdown;
import yett.record.Outline;
import yett.record.handout.HtmlOutline;

/**
 * Writes the papers of a course. That the files do not exist yet is checked before anything is
 * computed.
 */
final class CoursePapers {
  private final Optional<Path> html;
  private final Optional<Path> markdown;

  /**
   * @param html, markdown names of new files; null for none
   */
  CoursePapers(String html, String markdown) {
    this.html = Optional.ofNullable(html).map(NewFile::named);
    this.markdown = Optional.ofNullable(markdown).map(NewFile::named);
  }

  /** Writes to the files that were named; to the screen if none was. */
  void write(String title, Consumer<Outline> content, Desk desk, StandardStreams output) {
    html.ifPresent(
        file ->
            NewFile.write(file, page(title, content, desk.firm().letterhead().paper()), output));
    if (markdown.isPresent() || html.isEmpty()) {
      Markdown text = new Markdown();
      content.accept(text);
      markdown.ifPresentOrElse(
          file -> NewFile.write(file, text.toString(), output),
          () -> output.print(text.toString()));
    }
  }

  private static String page(String title, Consumer<Outline> content, String paper) {
    return Page.of(
        title,
        "Practice on gates that are made up",
        paper,
        body -> {
          HtmlOutline outline = new HtmlOutline(body);
          content.accept(outline);
          outline.end();
        });
  }
}
