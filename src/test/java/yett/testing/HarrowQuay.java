package yett.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import yett.casebook.CaseId;
import yett.casebook.CaseStatus;
import yett.casebook.Casebook;
import yett.casebook.NewEvent;
import yett.casebook.SiteRecord;
import yett.casebook.Summary;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.moment.Moment;
import yett.knowledge.Role;
import yett.replay.CaseFile;
import yett.replay.Replayer;

/**
 * Visits to the gates of Harrow Quay, made by replaying test cases of the rule base at a gate and a
 * time.
 */
public final class HarrowQuay {
  public static final String CHANDLER = "Chandler's gate";
  public static final String CUSTOMS = "Customs yard";

  private static final String SLACK = "chain/chain-slack.case.yaml";
  private static final String WORN = "battery/batteries-worn.case.yaml";

  private HarrowQuay() {}

  /** A repaired and proved case: Chandler's gate on a day in March, with a slack chain. */
  public static Moment chandler() {
    return visit(CHANDLER, "2026-03-02T08:10:00Z", SLACK, "190 mm", "84 mm", Map.of());
  }

  /** Fills a casebook with two years of visits, as desks and vans would have entered them. */
  public static void fill(Casebook casebook) {
    add(
        casebook,
        visit(
            CHANDLER, "2024-10-08T09:00:00Z", SLACK, "126 mm", "70 mm", Map.of("202 N", "188 N")));
    add(
        casebook,
        visit(
            CHANDLER, "2025-05-20T13:30:00Z", SLACK, "148 mm", "82 mm", Map.of("202 N", "194 N")));
    add(casebook, visit(CUSTOMS, "2025-09-11T07:45:00Z", WORN, "", "", Map.of()));
    add(casebook, chandler());
  }

  /**
   * Replays a test case as a visit to a gate.
   *
   * @param found sag of the chain before it was tightened, such as "190 mm"; empty if nobody
   *     measured it
   * @param left its sag afterwards
   * @param otherwise texts of the case file and what replaces them
   */
  private static Moment visit(
      String gate,
      String start,
      String file,
      String found,
      String left,
      Map<String, String> otherwise) {
    Path path = Path.of("knowledge").resolve(file);
    try {
      String text = Files.readString(path);
      for (var change : otherwise.entrySet()) {
        text = text.replace(change.getKey(), change.getValue());
      }
      var recorded = CaseFile.read(path.toString(), text, Shipped.BASE).cases().get(0);
      Moment moment = new Replayer(Shipped.QUICK, Instant.parse(start)).run(recorded).moment();
      List<Entry> entries = new ArrayList<>(moment.entries());
      Entry first = entries.get(0);
      entries.set(
          0,
          new Entry(
              first.number(),
              first.at(),
              first.by(),
              new Event.Opened(gate, Role.TECHNICIAN, Shipped.BASE.fingerprint())));
      if (!found.isEmpty()) {
        entries = measured(entries, found, left);
      }
      try (Interview interview = Shipped.QUICK.newInterview()) {
        return interview.at(entries);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Inserts measurements of the chain right before the first repair and right after the last. */
  private static List<Entry> measured(List<Entry> entries, String found, String left) {
    List<Integer> repairs = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      if (entries.get(i).event() instanceof Event.Repaired) {
        repairs.add(i);
      }
    }
    List<Entry> all = new ArrayList<>(entries);
    int last = repairs.get(repairs.size() - 1);
    all.add(last + 1, sag(entries.get(last), left));
    all.add(repairs.get(0), sag(entries.get(repairs.get(0) - 1), found));
    List<Entry> numbered = new ArrayList<>();
    for (Entry e : all) {
      numbered.add(new Entry(numbered.size() + 1L, e.at(), e.by(), e.event()));
    }
    return numbered;
  }

  private static Entry sag(Entry beside, String typed) {
    double millimetres = Double.parseDouble(typed.replace(" mm", ""));
    return new Entry(
        0,
        beside.at(),
        beside.by(),
        new Event.Answered("chain-sag", new Answer.Read(typed, millimetres)));
  }

  /** Stores a replayed case in a casebook. */
  public static void add(Casebook casebook, Moment moment) {
    List<Entry> entries = moment.entries();
    String gate = moment.state().opened().orElseThrow().site();
    CaseId id = casebook.newCase(gate, entries.get(0).at());
    casebook.append(
        id,
        0,
        entries.stream()
            .map(
                e ->
                    new NewEvent(
                        e.at(), e.by().word(), type(e.event()), EventText.write(e.event())))
            .toArray(NewEvent[]::new));
    var leading = Interview.ranking(moment, Shipped.BASE).get(0);
    casebook.summarise(
        id,
        entries.size(),
        new Summary(
            moment.state().closed().isPresent() ? CaseStatus.CLOSED : CaseStatus.OPEN,
            leading.cause().name(),
            leading.cause().id()));
    StringBuilder body = new StringBuilder();
    moment
        .state()
        .told()
        .site()
        .forEach(
            (question, answer) ->
                body.append(body.isEmpty() ? "" : ",")
                    .append("\"" + question + "\":\"" + answer + "\""));
    casebook.saveSite(
        new SiteRecord(gate, gate, "{" + body + "}", entries.get(entries.size() - 1).at()));
  }

  private static String type(Event event) {
    return event
        .getClass()
        .getSimpleName()
        .replaceAll("(?<=[a-z])(?=[A-Z])", "-")
        .toLowerCase(java.util.Locale.ROOT);
  }

  /**
   * Fills a casebook to look at.
   *
   * @param words the folder for it
   */
  public static void main(String... words) {
    try (Casebook casebook = Casebook.open(Path.of(words[0], "casebook.db"))) {
      fill(casebook);
    }
  }
}
