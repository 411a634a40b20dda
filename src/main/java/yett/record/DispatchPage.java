package yett.record;

import java.util.ArrayList;
import java.util.List;
import yett.dispatch.DispatchSheet;
import yett.interview.Chance;

/** A dispatch sheet on paper. */
public final class DispatchPage {
  private DispatchPage() {}

  public static String markdown(DispatchSheet sheet) {
    Markdown page = new Markdown();
    page.title(
        "Dispatch, case " + Markdown.plain(sheet.caseId()) + ": " + Markdown.plain(sheet.gate()));
    page.paragraph(
        "**"
            + upper(sheet.urgency().level())
            + "**: "
            + String.join("; ", sheet.urgency().reasons())
            + ".");
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
    sheet.said().forEach(s -> said.add("In the caller's words: " + Markdown.plain(s)));
    said.addAll(sheet.complaints());
    sheet.histories().forEach(h -> said.add("Lately: " + h));
    sheet.siteKnown().forEach((q, a) -> said.add(q + ": " + Markdown.plain(a)));
    page.list("What was reported", said);
    page.list(
        "What was asked",
        sheet.asked().stream().map(a -> a.question() + " " + Markdown.plain(a.answer())).toList());
    page.list("Notes", sheet.notes().stream().map(Markdown::plain).toList());
    page.list("Cautions", sheet.cautions());
    page.list("Until somebody comes", sheet.untilThen());
    return page.toString();
  }

  private static void bring(Markdown page, DispatchSheet sheet) {
    List<String> van = new ArrayList<>(sheet.bring().parts());
    if (van.isEmpty()) {
      van.add("no part: nothing that is probable needs one");
    }
    page.heading("Parts to bring").items(van);
    page.item(
        "Enough in "
            + Chance.of(sheet.bring().covers()).percent()
            + " of what may be wrong; it is something that this rule base does not know: "
            + Chance.of(Math.min(1, sheet.bring().unknown()))
            + ".");
    page.list(
        "Chance that each part is needed", sheet.parts().stream().map(DispatchPage::line).toList());
    page.list("Instruments", sheet.instruments().stream().map(DispatchPage::line).toList());
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
