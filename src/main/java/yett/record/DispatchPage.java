package yett.record;

import static java.util.stream.Collectors.joining;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.dispatch.DispatchSheet;
import yett.dispatch.DispatchSheet.Cover;
import yett.interview.event.Event;
import yett.interview.evidence.Chance;
import yett.wording.CallWords;
import yett.wording.Wording;

/**
 * Writes a dispatch sheet on one page of 60 lines of 80 characters. Its JSON form has everything.
 */
public final class DispatchPage {
  /** Lines of a page; the next constant is the characters of a line. */
  private static final int PAGE = 60;

  private static final int WIDTH = 80;

  /** How many entries of each list are shown at most; fewer if the page is too short. */
  private static final int MOST = 5;

  private static final int CAUSES = 4;
  private static final int SAID = 4;

  /** The same of what was said and answered where the page has room left. */
  private static final int ROOMY = 8;

  private static final int NOTES = 3;

  private static final int AFTER_A_LOOK = 6;
  private static final List<String> UNTOLD =
      List.of("could not tell", "does not apply", "could not get there");

  private final DispatchSheet sheet;
  private final Optional<String> currency;
  private final int detail;
  private final int asked;
  private final int said;
  private final boolean named;
  private final Outline page;

  private DispatchPage(
      DispatchSheet sheet, Optional<String> currency, Length length, Outline page) {
    this.sheet = sheet;
    this.currency = currency;
    this.detail = length.detail();
    this.asked = length.asked();
    this.said = length.said();
    this.named = length.named();
    this.page = page;
  }

  /**
   * How many entries each list may have.
   *
   * @param named whether all parts are named; the shortest page only counts them
   */
  private record Length(int detail, int asked, int said, boolean named) {
    static Length of(int detail) {
      return new Length(detail, Math.max(2, detail), SAID, true);
    }

    Length shorter() {
      return detail > 0 ? of(detail - 1) : new Length(0, asked, said, false);
    }

    Length withAsked(int more) {
      return new Length(detail, Math.max(asked, more), said, named);
    }

    Length withSaid(int more) {
      return new Length(detail, asked, Math.max(said, more), named);
    }
  }

  /**
   * @param currency of the prices, if the firm has set one
   */
  public static String markdown(DispatchSheet sheet, Optional<String> currency) {
    Markdown page = new Markdown();
    write(sheet, currency, page);
    return page.toString();
  }

  /** The same in another format, with as much as fits on the page as Markdown. */
  public static void write(DispatchSheet sheet, Optional<String> currency, Outline page) {
    Length length = Length.of(MOST);
    while (length.named() && lines(sheet, currency, length) > PAGE) {
      length = length.shorter();
    }
    for (int more = 1; more <= ROOMY; more++) {
      length = longer(sheet, currency, length, length.withAsked(more));
      length = longer(sheet, currency, length, length.withSaid(more));
    }
    new DispatchPage(sheet, currency, length, page).write();
  }

  private static Length longer(
      DispatchSheet sheet, Optional<String> currency, Length length, Length longer) {
    return lines(sheet, currency, longer) <= PAGE ? longer : length;
  }

  private static int lines(DispatchSheet sheet, Optional<String> currency, Length length) {
    Markdown page = new Markdown();
    new DispatchPage(sheet, currency, length, page).write();
    return page.toString().lines().mapToInt(DispatchPage::height).sum();
  }

  private static int height(String line) {
    return Math.max(1, (line.length() + WIDTH - 1) / WIDTH);
  }

  private void write() {
    page.title("Dispatch, case " + sheet.caseId() + ": " + sheet.gate());
    page.paragraph(
        Wording.capital(sheet.urgency().level()),
        String.join("; ", sheet.urgency().reasons()) + ".");
    who();
    List<String> dangers = new ArrayList<>(sheet.dangers());
    sheet.notExcluded().forEach(n -> dangers.add(Wording.capital(n)));
    sheet.notes().stream().filter(DispatchPage::isForced).map(Shortened::cut).forEach(dangers::add);
    page.list("Danger", dangers);
    page.list("What was said", Shortened.some(said(), said));
    List<String> believed = new ArrayList<>();
    sheet.putRight().forEach(b -> believed.add(line(b) + ", put right"));
    sheet.believed().stream()
        .filter(b -> sheet.putRight().stream().noneMatch(r -> r.cause().equals(b.cause())))
        .limit(CAUSES)
        .map(DispatchPage::line)
        .forEach(believed::add);
    sheet.first().stream()
        .limit(sheet.somebodyGoes() ? Math.min(2, detail) : 0)
        .forEach(f -> believed.add("Look first: " + f));
    page.list("Probable causes", sheet.diagnosed() ? believed : List.of(undiagnosed()));
    if (sheet.diagnosed() && sheet.somebodyGoes()) {
      bring();
    }
    page.list("Answers on the telephone", Shortened.some(asked(), asked));
    if (sheet.somebodyGoes()) {
      page.list("Cautions (each step says what to do)", cautions());
      page.list("What the caller was told, until somebody comes", sheet.untilThen());
    }
  }

  private void who() {
    DispatchSheet.Call call = sheet.call();
    List<String> who = new ArrayList<>();
    call.where().ifPresent(w -> who.add("At: " + w));
    who.add(
        "Called by: "
            + call.caller().orElse("name not given")
            + ", "
            + call.phone().orElse("number not given"));
    who.add("Call: " + CallWords.when(Instant.parse(sheet.at())) + ", " + sheet.ended());
    call.because().ifPresent(b -> who.add("Handed over because: " + b));
    call.help().ifPresent(h -> who.add("Called for help: " + h));
    call.sent()
        .ifPresent(
            s ->
                who.add(
                    (sheet.somebodyGoes() ? "Sent: " : "Sent before, to be called off: ")
                        + s
                        + call.due()
                            .map(d -> ", there by " + CallWords.when(Instant.parse(d)))
                            .orElse("")));
    if (!sheet.stands().isEmpty() && sheet.somebodyGoes()) {
      who.add("The gate, as told: " + String.join("; ", sheet.stands()));
    }
    sheet.minutesOnSite().filter(m -> sheet.somebodyGoes()).ifPresent(m -> who.add(onSite(m)));
    Shortened.some(sheet.notes().stream().filter(n -> !isForced(n)).toList(), NOTES)
        .forEach(n -> who.add("Note: " + Shortened.cut(n)));
    who.forEach(page::item);
  }

  private String onSite(DispatchSheet.Minutes minutes) {
    return "On site: about "
        + minutes.likely()
        + " minutes"
        + (minutes.nineInTen() > minutes.likely()
            ? ", in nine of ten cases up to " + minutes.nineInTen()
            : "")
        + sheet.electrician().map(e -> "; an electrician is needed: " + Chance.of(e)).orElse("");
  }

  private String undiagnosed() {
    String why = looks().isEmpty() ? "nothing was asked" : "the caller could tell nothing";
    return "Not diagnosed: " + (sheet.dangers().isEmpty() ? why : "an emergency");
  }

  /** What was asked about the fault, without the dangers. */
  private List<DispatchSheet.Asked> looks() {
    return sheet.asked().stream().filter(a -> !a.check().startsWith("danger-")).toList();
  }

  private static boolean isForced(String note) {
    return note.startsWith(Event.Noted.FORCED);
  }

  private List<String> said() {
    List<String> said = new ArrayList<>();
    sheet.said().forEach(s -> said.add("\"" + Shortened.cut(s) + "\""));
    if (!sheet.complaints().isEmpty()) {
      said.add(String.join("; ", sheet.complaints()));
    }
    if (!sheet.histories().isEmpty()) {
      said.add("Lately: " + String.join("; ", sheet.histories()));
    }
    if (!sheet.siteKnown().isEmpty()) {
      List<String> site = new ArrayList<>();
      sheet.siteKnown().forEach((q, a) -> site.add(q + ": " + a));
      said.add(String.join("; ", site));
    }
    return said;
  }

  private List<String> asked() {
    List<String> asked = new ArrayList<>();
    List<DispatchSheet.Asked> looks = looks();
    looks.stream()
        .filter(a -> !UNTOLD.contains(a.answer()))
        .forEach(a -> asked.add(a.question() + " " + Wording.capital(a.answer())));
    long untold = looks.stream().filter(a -> UNTOLD.contains(a.answer())).count();
    if (untold > 0) {
      asked.add((untold == 1 ? "1 question" : untold + " questions") + " they could not answer");
    }
    return asked;
  }

  /**
   * Writes the parts. Their shares are of all possible causes, so that they can be compared with
   * the chances of the causes.
   */
  private void bring() {
    Cover bring = sheet.bring();
    List<String> lines = new ArrayList<>();
    bring.parts().stream().limit(1L + detail).forEach(p -> lines.add(line(p)));
    List<DispatchSheet.Packed> others = bring.parts().subList(lines.size(), bring.parts().size());
    if (lines.isEmpty()) {
      lines.add("No part: nothing that is probable needs one");
    } else if (!others.isEmpty()) {
      double most = others.stream().mapToDouble(DispatchSheet.Packed::chance).max().orElse(0);
      lines.add(
          "After a look at the gate, "
              + (others.size() == 1 ? "in " : "each in ")
              + "at most "
              + Chance.of(most).percent()
              + ": "
              + afterALook(others));
    }
    lines.add("No part is needed in " + ofAll(bring.without()));
    if (!sheet.instruments().isEmpty() && detail > 0) {
      lines.add(
          "Instruments: "
              + String.join(
                  ", ", sheet.instruments().stream().limit(MOST).map(i -> i.name()).toList()));
    }
    page.list("Parts and tools to bring", lines);
  }

  /** A few by name, because nobody packs thirty parts for one gate. */
  private String afterALook(List<DispatchSheet.Packed> others) {
    int shown = named ? Math.min(AFTER_A_LOOK, others.size()) : 0;
    List<String> names = new ArrayList<>();
    others.stream().limit(shown).map(DispatchSheet.Packed::name).forEach(names::add);
    if (shown < others.size()) {
      names.add(others.size() - shown + " more (dispatch CASE --json)");
    }
    return String.join("; ", names);
  }

  private String ofAll(double ofKnown) {
    return Chance.of(ofKnown * (1 - sheet.bring().unknown())).percent();
  }

  private String line(DispatchSheet.Packed p) {
    boolean brief = detail == 0;
    return p.name()
        + p.size().map(size -> ", " + size).orElse("")
        + p.ask().map(ask -> ", size unknown: ask" + (brief ? "" : " (" + ask + ")")).orElse("")
        + p.van().map(van -> "; " + van).orElse("")
        + "; "
        + Chance.of(p.chance()).percent()
        + (brief ? ", enough in " : ", so far enough in ")
        + ofAll(p.covers())
        + currency.map(c -> "; " + c + " " + Math.round(p.price())).orElse("");
  }

  private static String line(DispatchSheet.Believed b) {
    return b.name() + ": " + Chance.of(b.chance());
  }

  /** One entry: they are a reminder, and what the caller answered needs the room. */
  private List<String> cautions() {
    String all = sheet.cautions().stream().map(DispatchPage::hazard).collect(joining(" "));
    return all.isEmpty() ? List.of() : List.of(all);
  }

  /** The hazard that a caution names. */
  private static String hazard(String caution) {
    return caution.split("(?<=[.]) ", 2)[0];
  }
}
