package yett.record;

import java.util.ArrayList;
import java.util.List;
import yett.dispatch.DispatchSheet;
import yett.dispatch.DispatchSheet.Cover;
import yett.interview.Chance;

/** A dispatch sheet on paper. */
public final class DispatchPage {
  /** More parts than this are no short list. */
  private static final int SHORT = 8;

  private DispatchPage() {}

  public static String markdown(DispatchSheet sheet) {
    Markdown page = new Markdown();
    page.title("Dispatch, case " + sheet.caseId() + ": " + sheet.gate());
    page.paragraph(
        upper(sheet.urgency().level()), String.join("; ", sheet.urgency().reasons()) + ".");
    page.paragraph(
        "Call of "
            + sheet.at().replace('T', ' ').replaceAll(":\\d\\d(\\.\\d+)?Z$", " UTC")
            + ", "
            + sheet.ended()
            + ". On site about "
            + sheet.minutesOnSite().likely()
            + " minutes, in nine of ten cases up to "
            + sheet.minutesOnSite().nineInTen()
            + ". An electrician is needed: "
            + Chance.of(sheet.electrician())
            + ".");
    page.list("Danger", sheet.dangers());
    page.list("What is believed", sheet.believed().stream().map(DispatchPage::line).toList());
    bring(page, sheet);
    List<String> said = new ArrayList<>();
    sheet.said().forEach(s -> said.add("In the caller's words: " + s));
    said.addAll(sheet.complaints());
    sheet.histories().forEach(h -> said.add("Lately: " + h));
    sheet.siteKnown().forEach((q, a) -> said.add(q + ": " + a));
    page.list("What was reported", said);
    page.list(
        "What was asked",
        sheet.asked().stream().map(a -> a.question() + " " + a.answer()).toList());
    page.list("Notes", sheet.notes());
    page.list("Cautions", sheet.cautions());
    page.list("Until somebody comes", sheet.untilThen());
    return page.toString();
  }

  private static void bring(Markdown page, DispatchSheet sheet) {
    Cover bring = sheet.bring();
    page.heading("Parts to bring");
    if (bring.parts().isEmpty()) {
      page.paragraph("None: nothing that is probable needs one.");
    } else {
      page.paragraph(
          "In the order of what they gain: first the chance that it is needed, then how often this"
              + " and all above are enough."
              + (bring.parts().size() > SHORT
                  ? " The call leaves much open, so that the list is long: take what is at hand,"
                      + " and of the rest the first."
                  : ""));
      bring.parts().forEach(p -> page.item(line(p)));
    }
    page.paragraph(
        "Enough in "
            + Chance.of(bring.covers()).percent()
            + " of what may be wrong; without any part in "
            + Chance.of(bring.without()).percent()
            + ". It is something that this rule base does not know: "
            + Chance.of(bring.unknown())
            + ".");
    page.list("Parts left out", bring.left().stream().map(DispatchPage::line).toList());
    page.list("Instruments", sheet.instruments().stream().map(DispatchPage::line).toList());
  }

  private static String line(DispatchSheet.Packed p) {
    return p.name()
        + ": "
        + Chance.of(p.chance()).percent()
        + "; enough in "
        + Chance.of(p.covers()).percent()
        + "; price "
        + Math.round(p.price());
  }

  private static String line(DispatchSheet.Believed b) {
    return b.name() + ": " + Chance.of(b.chance());
  }

  private static String line(DispatchSheet.Item i) {
    return i.name() + ": " + Chance.of(i.chance()).percent();
  }

  private static String upper(String level) {
    return Character.toUpperCase(level.charAt(0)) + level.substring(1);
  }
}
