package yett.record.handout;

import java.util.Optional;
import yett.dispatch.DispatchSheet;
import yett.knowledge.Letterhead;
import yett.paper.Page;
import yett.record.DispatchPage;

/** The dispatch sheet as a page to print. */
public final class DispatchPaper {
  private DispatchPaper() {}

  public static String html(DispatchSheet sheet, Letterhead letterhead) {
    Optional<String> currency = letterhead.currency();
    return Page.of(
        "Dispatch: " + sheet.gate(),
        "Dispatch sheet for a gate",
        letterhead.paper(),
        page -> {
          page.open("div", "class", "first sheet");
          HtmlOutline outline = new HtmlOutline(page);
          DispatchPage.write(sheet, currency, outline);
          outline.end();
          page.close();
        });
  }
}
