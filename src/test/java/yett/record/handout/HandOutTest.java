package yett.record.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.knowledge.Letterhead;
import yett.knowledge.Role;
import yett.paper.Picture;
import yett.record.handout.HandOut.Part;
import yett.testing.HarrowQuay;
import yett.testing.Pages;
import yett.testing.Shipped;

/** The papers of a case at Harrow Quay. */
class HandOutTest {
  static final Letterhead FIRM =
      new Letterhead(
          "Quayside Gates & Sons",
          List.of("2 Rope Walk", "Harrow Quay"),
          "+1 555 0100",
          "desk@quayside.example",
          Optional.empty(),
          Optional.of("EUR"),
          "A4");

  static final Moment CHANDLER = HarrowQuay.chandler();

  static String html(Letterhead firm, Moment moment, String gate, Set<Part> parts) {
    return new HandOut(Shipped.QUICK, firm, Optional.<Picture>empty(), ZoneOffset.UTC)
        .html(moment, "2026-0001", gate, Optional.of(LocalDate.parse("2027-03-02")), parts);
  }

  private static Document page(Part... parts) {
    return Pages.parsed(html(FIRM, CHANDLER, HarrowQuay.CHANDLER, EnumSet.copyOf(List.of(parts))));
  }

  private static String words(Document page) {
    return ((Element) page.getElementsByTagName("body").item(0))
        .getTextContent()
        .replace('\u00a0', ' ');
  }

  @Test
  void the_customer_reads_what_was_wrong_what_was_done_and_what_was_measured() {
    String words = words(page(Part.CUSTOMER));

    assertThat(words)
        .contains("Quayside Gates & Sons", "Harrow Quay", "Chandler's gate", "2 March 2026")
        .contains("The gate is back in use.", "Chain too slack", "Take up the chain.")
        .contains("190 mm84 mm54 mm to 107 mmslack; now in order")
        .contains("Does breaking the beam stop and reverse the closing leaf?passed")
        .contains("For the owner: name, date, signature");
  }

  /** "In the rain it will not close": the rain is an answer, the closing a complaint. */
  @Test
  void the_customer_reads_all_that_they_told_and_no_check_of_the_visit() {
    List<Event> events = new ArrayList<>();
    events.add(new Event.Opened("Fish dock", Role.TECHNICIAN, "any"));
    Shipped.BASE.checks().values().stream()
        .filter(yett.knowledge.Check::danger)
        .forEach(
            c ->
                events.add(
                    new Event.Answered(c.id(), new Answer.Chosen(c.outcomes().get(0).id()))));
    events.add(new Event.SiteTaken());
    events.add(new Event.Complained(List.of("stays-open")));
    events.add(new Event.Answered("when-it-fails", new Answer.Chosen("rain")));
    events.add(new Event.Happened(List.of("heavy-rain")));
    events.add(new Event.Answered("beam-path", new Answer.Chosen("dirty")));
    List<Entry> entries = new ArrayList<>();
    events.forEach(
        e -> entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, e)));
    try (Interview interview = Shipped.QUICK.newInterview()) {
      String words =
          words(
              Pages.parsed(
                  html(FIRM, interview.at(entries), "Fish dock", EnumSet.of(Part.CUSTOMER))));
      String told = words.substring(words.indexOf("What you told us"), words.indexOf("What was w"));
      assertThat(told)
          .contains("It opens, but it will not close", "rain, or after it", "Heavy rain, flooding")
          .doesNotContain(Shipped.BASE.checks().get("beam-path").spoken(), "danger");
    }
  }

  @Test
  void what_the_inspection_before_found_is_not_what_the_customer_told() {
    List<Event> events =
        List.of(
            new Event.Opened("Fish dock", Role.TECHNICIAN, "any"),
            new Event.SiteTaken(),
            new Event.Answered(
                "track-look", new Answer.Chosen("dirty"), Optional.of(Instant.EPOCH)),
            new Event.Complained(List.of("stays-open")),
            new Event.Happened(List.of("heavy-rain")));
    List<Entry> entries = new ArrayList<>();
    events.forEach(
        e -> entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, e)));
    try (Interview interview = Shipped.QUICK.newInterview()) {
      assertThat(
              words(
                  Pages.parsed(
                      html(FIRM, interview.at(entries), "Fish dock", EnumSet.of(Part.CUSTOMER)))))
          .contains("What you told us", "It opens, but it will not close")
          .doesNotContain(Shipped.BASE.checks().get("track-look").spoken());
    }
  }

  @Test
  void the_customer_reads_no_figures_of_belief_no_ids_and_no_words_of_the_program() {
    String words = words(page(Part.CUSTOMER));

    assertThat(words).doesNotContain(" dB", " %", "rule base", "Rule base", "set-up", "typed");
    assertThat(Shipped.BASE.checks().keySet().stream().filter(id -> id.contains("-")))
        .noneMatch(words::contains);
    assertThat(Shipped.BASE.causes().keySet().stream().filter(id -> id.contains("-")))
        .noneMatch(words::contains);
  }

  @Test
  void the_next_technician_reads_the_figures() {
    String words = words(page(Part.TECHNICIAN));

    assertThat(words)
        .contains("Chain too slack: almost certain (over 99 %)", "How the suspicion moved")
        .contains("connecting link for the chain size, about 4.00 EUR")
        .contains("190 mm", "not known", "How the gate stands");
    assertThat(words).doesNotContain("Is anybody hurt");
  }

  @Test
  void a_repair_is_told_with_what_was_read_when_the_gate_was_in_order_and_when_it_is_due() {
    List<Event> events = new ArrayList<>(CHANDLER.entries().stream().map(Entry::event).toList());
    Event.Earlier sound =
        new Event.Earlier("chain-sag", 78, Instant.parse("2025-03-03T09:00:00Z"), true);
    events.set(
        0, new Event.Opened("Net loft", Role.TECHNICIAN, "", Optional.empty(), List.of(sound)));
    Moment repaired = moment(events.toArray(Event[]::new));
    String customer = html(FIRM, repaired, "Net loft", EnumSet.of(Part.CUSTOMER));
    assertThat(words(Pages.parsed(customer)))
        .contains("Date2 March 2026; next inspection due on 2 March 2027")
        .contains(
            "When in order",
            "Chain sag190 mm84 mm55 mm to 101 mm as found; now 54 mm to 107 mm"
                + "78 mm on 2025\u201103\u201103");
    String next =
        words(Pages.parsed(html(FIRM, repaired, "Net loft", EnumSet.of(Part.TECHNICIAN))));
    assertThat(next)
        .contains(
            "For the next technician",
            "Opening, post to post: 6 m. All else is as usual, told or assumed.")
        .doesNotContain("What comes next", "Roller chain");
  }

  private static Event read(String check, String typed) {
    double value = Shipped.BASE.checks().get(check).measures().orElseThrow().parse(typed);
    return new Event.Answered(check, new Answer.Read(typed, value));
  }

  private static final Event RAN = new Event.Retested(true);

  /** Two faults: the readings that led to the second one were taken after the first repair. */
  @Test
  void what_was_read_before_the_repair_that_it_led_to_is_as_found_and_not_as_left() {
    Moment two =
        moment(
            new Event.Opened("Net loft", Role.TECHNICIAN, ""),
            new Event.SiteTaken(),
            new Event.Complained(List.of("runs-slowly", "noisy-chain")),
            new Event.Repaired("tighten-chain", true),
            read("chain-sag", "72 mm"),
            read("charging-voltage", "27.3 V"),
            read("battery-running-voltage", "19.3 V"),
            new Event.Repaired("replace-batteries", true),
            read("charging-voltage", "27.6 V"),
            RAN);
    for (Part part : List.of(Part.CUSTOMER, Part.TECHNICIAN)) {
      assertThat(words(Pages.parsed(html(FIRM, two, "Net loft", EnumSet.of(part)))))
          .contains("Chain sagnot measured72 mm", "Charging voltage27.3 V27.6 V")
          .contains("Lowest battery voltage in a run19.3 Vnot measured again");
    }
  }

  /** 12 5/16 in = 312.7 mm over 24 pitches of 12.7 mm: 2.6 % longer (chain handbook arithmetic). */
  @Test
  void a_chain_that_is_worn_and_was_not_replaced_is_left_to_do_on_both_pages() {
    Event worn = read("chain-length", "12 5/16 in");
    Event[] events = {
      new Event.Opened("Net loft", Role.TECHNICIAN, ""),
      new Event.SiteTaken(),
      new Event.Complained(List.of("noisy-chain")),
      new Event.Repaired("tighten-chain", true),
      worn,
      RAN,
      new Event.Closed(Ending.REPAIRED)
    };
    Moment kept = moment(events);
    assertThat(words(Pages.parsed(html(FIRM, kept, "Net loft", EnumSet.of(Part.CUSTOMER)))))
        .contains("passed every safety test that it needs. Some work is left to do.")
        .containsPattern(
            "What is left to do\\s*[^\n]*The chain has grown by 2.6 %. Order a new one.");
    assertThat(words(Pages.parsed(html(FIRM, kept, "Net loft", EnumSet.of(Part.TECHNICIAN)))))
        .containsPattern("What comes next\\s*[^\n]*The chain has grown by 2.6 %. Order a new one.");
    events[3] = worn;
    events[4] = new Event.Repaired("replace-chain", true);
    assertThat(
            words(Pages.parsed(html(FIRM, moment(events), "Net loft", EnumSet.allOf(Part.class)))))
        .doesNotContain("Order a new one");
  }

  @Test
  void a_cause_that_is_still_likely_and_was_not_repaired_is_left_to_do() {
    Moment found =
        moment(
            new Event.Opened("Net loft", Role.TECHNICIAN, ""),
            new Event.SiteTaken(),
            new Event.Complained(List.of("noisy-chain")),
            read("chain-sag", "190 mm"));
    assertThat(words(Pages.parsed(html(FIRM, found, "Net loft", EnumSet.of(Part.CUSTOMER)))))
        .contains("Still to be repaired: Chain too slack.");
    assertThat(words(Pages.parsed(html(FIRM, found, "Net loft", EnumSet.of(Part.TECHNICIAN)))))
        .contains("Repair: Take up the chain (against: Chain too slack");
  }

  @Test
  void a_gate_that_was_held_open_on_purpose_had_nothing_wrong_with_it() {
    List<Event> told =
        List.of(
            new Event.Opened("Net loft", Role.TECHNICIAN, ""),
            new Event.SiteTaken(),
            new Event.Complained(List.of("stays-open")),
            new Event.Answered("timer-or-schedule", new Answer.Chosen("meant")),
            new Event.Answered("held-devices", new Answer.Chosen("one")),
            read("limit-error-closed", "5.5 m"),
            new Event.Noted("Keys hang in the guardhouse."),
            new Event.Noted("for the customer: the hold-open switch was left on."),
            new Event.Repaired("end-hold-open", true),
            RAN);
    List<Event> events = new ArrayList<>(told);
    events.add(
        new Event.Closed(Ending.proved(Stream.of(Shipped.BASE.repairs().get("end-hold-open")))));
    Moment held = moment(events.toArray(Event[]::new));
    assertThat(words(Pages.parsed(html(FIRM, held, "Net loft", EnumSet.of(Part.CUSTOMER)))))
        .contains("Nothing was wrong with the machine", "Held open or shut on purpose")
        .contains("The hold-open switch was left on.", "5.5 m")
        .doesNotContain("It was repaired", "Keys hang", "5500 mm", "relay");
    assertThat(words(Pages.parsed(html(FIRM, held, "Net loft", EnumSet.of(Part.TECHNICIAN)))))
        .contains("Keys hang in the guardhouse.")
        .doesNotContain("Parts for");
  }

  @Test
  void both_pages_have_the_force_at_each_place_against_what_is_allowed() {
    List<Event> events = new ArrayList<>(CHANDLER.entries().stream().map(Entry::event).toList());
    events.add(
        events.size() - 1,
        new Event.ForceTaken(
            "reversal-closing", 300, Event.Height.LOW, 312, 0.31, Optional.of(18.0), List.of()));
    Moment measured = moment(events.toArray(Event[]::new));
    for (Part part : List.of(Part.CUSTOMER, Part.TECHNICIAN)) {
      String html = html(FIRM, measured, HarrowQuay.CHANDLER, EnumSet.of(part));
      assertThat(words(Pages.parsed(html)))
          .contains("Force on an obstruction (EN 12453)")
          .contains("closinggap 300 mm, 50 mm above the ground312 N400 N310 ms750 ms")
          .contains("At most 18 N after 5 s (25 N allowed)");
    }
  }

  @Test
  void all_that_was_said_stands_there_only_if_asked_for() {
    assertThat(words(page(Part.CUSTOMER, Part.TECHNICIAN))).doesNotContain("Dangers asked");
    assertThat(words(page(Part.LOG))).contains("Dangers asked", "Is anybody hurt", "Rule base:");
  }

  @Test
  void a_page_needs_nothing_from_elsewhere() {
    String html = html(FIRM, CHANDLER, HarrowQuay.CHANDLER, EnumSet.allOf(Part.class));

    assertThat(html).doesNotContain("<script", "<link", "@import", "url(", "src=", "href=");
    assertThat(html.replaceAll("xmlns=\"[^\"]*\"", "")).doesNotContain("http:", "https:");
  }

  @Test
  void a_gate_with_marks_in_its_name_is_called_so_and_nothing_else() {
    String hostile = "<script>alert('1')</script> & \"<b>\u202e\u0007";

    Document page = Pages.parsed(html(FIRM, hostile(hostile), hostile, EnumSet.allOf(Part.class)));

    assertThat(Pages.all(page, "script")).isEmpty();
    assertThat(Pages.all(page, "b")).isEmpty();
    assertThat(words(page)).contains("<script>alert('1')</script> & \"<b>");
    assertThat(page.getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo("Record of work: <script>alert('1')</script> & \"<b>");
  }

  /** A case comes from another casebook as well as from this one. */
  private static Moment hostile(String hostile) {
    return moment(
        new Event.Opened(hostile, Role.CALLER, hostile),
        new Event.SiteAnswered("opening", hostile),
        new Event.Said(hostile),
        new Event.Complained(List.of(hostile, "noisy-chain")),
        new Event.Happened(List.of(hostile)),
        new Event.Answered(hostile, new Answer.Chosen(hostile)),
        new Event.Answered("chain-sag", new Answer.Read(hostile, 190)),
        new Event.Noted(hostile),
        new Event.GaveUp(hostile));
  }

  static Moment moment(Event... events) {
    List<Entry> entries = new ArrayList<>();
    for (Event event : events) {
      entries.add(
          new Entry(
              entries.size() + 1L, Instant.parse("2026-03-02T08:00:00Z"), Role.TECHNICIAN, event));
    }
    try (Interview interview = Shipped.QUICK.newInterview()) {
      return interview.at(entries);
    }
  }

  @Test
  void who_owns_a_gate_that_is_not_proved_is_told_not_to_run_it() {
    Moment begun =
        moment(
            new Event.Opened("Net loft", Role.TECHNICIAN, ""),
            new Event.SiteTaken(),
            new Event.Complained(List.of("noisy-chain")));

    String words =
        words(Pages.parsed(html(Letterhead.NONE, begun, "Net loft", EnumSet.of(Part.CUSTOMER))));

    assertThat(words)
        .contains("The work is not finished. Nobody may run it until it has been proved")
        .contains("The cause is not certain yet. Most probable so far: ")
        .contains("Safety test still to be made: Does the closing leaf reverse")
        .doesNotContain("back in use");
  }

  @Test
  void a_danger_stands_first_and_no_suspicion_beside_it() {
    Moment hurt =
        moment(
            new Event.Opened("Net loft", Role.TECHNICIAN, ""),
            new Event.Answered("danger-person", new Answer.Chosen("hurt-or-trapped")));

    String words =
        words(Pages.parsed(html(Letterhead.NONE, hurt, "Net loft", EnumSet.allOf(Part.class))));

    assertThat(words)
        .contains("DangerSomebody is struck or trapped: not yet made safe.")
        .contains("NOT yet made safe")
        .doesNotContain("How the suspicion moved", "back in use");
  }

  @Test
  void a_case_without_a_word_has_a_page_too() {
    Moment nothing = moment();

    assertThat(
            words(
                Pages.parsed(
                    html(Letterhead.NONE, nothing, "Net loft", EnumSet.allOf(Part.class)))))
        .contains("The cause was not looked for.");
  }

  @Test
  void every_drawing_says_what_it_shows_and_every_table_names_its_columns() {
    Document page = page(Part.CUSTOMER, Part.TECHNICIAN);

    assertThat(Pages.all(page, "svg"))
        .hasSize(4)
        .allSatisfy(
            svg -> {
              assertThat(svg.getAttribute("alt")).isNotBlank();
              assertThat(svg.getAttribute("aria-label")).isEqualTo(svg.getAttribute("alt"));
              assertThat(svg.getAttribute("role")).isEqualTo("img");
            });
    assertThat(Pages.all(page, "th"))
        .isNotEmpty()
        .allSatisfy(th -> assertThat(th.getAttribute("scope")).isIn("col", "row"));
    assertThat(Map.of("lang", page.getDocumentElement().getAttribute("lang")))
        .containsEntry("lang", "en");
  }
}
