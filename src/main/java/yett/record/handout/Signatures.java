package yett.record.handout;

import java.util.List;
import yett.paper.Markup;

/** Lines to sign on. */
final class Signatures {
  private Signatures() {}

  static void write(Markup page) {
    page.open("table", "class", "signatures", "role", "presentation").open("tr");
    for (String who :
        List.of("For the firm: name, date, signature", "For the owner: name, date, signature")) {
      page.open("td").leaf("div", "", "class", "line").leaf("div", who, "class", "note").close();
    }
    page.close().close();
  }
}
