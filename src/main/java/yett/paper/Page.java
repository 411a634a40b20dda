package yett.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.function.Consumer;

/** A complete, self-contained page in the style of everything that is handed out. */
public final class Page {
  private Page() {}

  /**
   * @param paper the word for the paper size
   * @param body writes the content
   */
  public static String of(String title, String description, String paper, Consumer<Markup> body) {
    Markup page = new Markup();
    page.open("html", "lang", "en", "xmlns", "http://www.w3.org/1999/xhtml");
    page.open("head");
    page.empty("meta", "charset", "utf-8");
    page.leaf("title", title);
    page.empty("meta", "name", "description", "content", description);
    page.style(style(paper));
    page.close();
    page.open("body");
    body.accept(page);
    page.close().close();
    return "<!DOCTYPE html>\n" + page + "\n";
  }

  private static String style(String paper) {
    try (InputStream in = Page.class.getResourceAsStream("/paper/record.css")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8)
          .replace("@paper@", Paper.named(paper).word())
          .replace("@font@", "'" + PdfFile.FONT + "'");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
