package yett.record.handout;

import yett.paper.Markup;
import yett.record.Outline;

/** Writes an outline as HTML inside a page that already has a title. */
public final class HtmlOutline implements Outline {
  private final Markup page;

  /** The open list: empty, {@code ul} or {@code ol}. */
  private String list = "";

  private boolean inner;

  public HtmlOutline(Markup page) {
    this.page = page;
  }

  @Override
  public Outline title(String words) {
    return block("h1", words);
  }

  @Override
  public Outline heading(String words) {
    return block("h2", words);
  }

  @Override
  public Outline paragraph(String words) {
    return block("p", words);
  }

  @Override
  public Outline paragraph(String strong, String words) {
    end();
    page.open("p").leaf("strong", strong).text(": " + words).close();
    return this;
  }

  private Outline block(String element, String words) {
    end();
    page.leaf(element, words);
    return this;
  }

  @Override
  public Outline item(String words) {
    begin("ul");
    page.open("li").text(words);
    return this;
  }

  @Override
  public Outline item(int number, String words) {
    begin("ol");
    page.open("li", "value", number).text(words);
    return this;
  }

  @Override
  public Outline inner(String words) {
    if (!inner) {
      page.open("ul");
      inner = true;
    }
    page.leaf("li", words);
    return this;
  }

  private void begin(String kind) {
    if (list.equals(kind)) {
      endItem();
    } else {
      end();
      page.open(kind);
      list = kind;
    }
  }

  private void endItem() {
    if (inner) {
      page.close();
      inner = false;
    }
    page.close();
  }

  /** Closes the open elements; to be called after the last line. */
  public void end() {
    if (!list.isEmpty()) {
      endItem();
      page.close();
      list = "";
    }
  }
}
