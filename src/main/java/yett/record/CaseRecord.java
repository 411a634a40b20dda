package yett.record;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import yett.interview.course.Diagnosed;
import yett.interview.course.Interview;
import yett.interview.course.Interview.RankedCause;
import yett.interview.course.PutRight;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.evidence.Chance;
import yett.interview.moment.Moment;
import yett.interview.state.CallLog;
import yett.interview.state.CaseState.Answered;
import yett.interview.state.Forces;
import yett.interview.state.WorkTime;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.wording.CallWords;
import yett.wording.ForceWords;
import yett.wording.Wording;

/**
 * Writes the record of a case for the file: everything that was said and done, and what followed
 * from it. It is written from the present state of the case, closed or not, so it can be written
 * again at any time.
 */
public final class CaseRecord {
  /** Least chance of a cause that is worth a line. */
  static final double NAMED = 0.05;

  private static final int FINGERPRINT = 12;

  private final RuleBase base;
  private final Wording words;

  public CaseRecord(RuleBase base) {
    this.base = base;
    this.words = new Wording(base);
  }

  /**
   * @param caseId number of the case in the casebook
   * @param siteName the gate's name as people say it
   */
  public String markdown(Moment moment, String caseId, String siteName) {
    Markdown page = new Markdown();
    write(page, moment, caseId, siteName);
    return page.toString();
  }

  /** Writes the record onto a page of any kind. */
  public void write(Outline page, Moment moment, String caseId, String siteName) {
    new Page(moment, page).write(caseId, siteName);
  }

  /** One record while it is being written. */
  private final class Page {
    private final Moment moment;
    private final Outline page;

    Page(Moment moment, Outline page) {
      this.moment = moment;
      this.page = page;
    }

    private List<String> call() {
      List<String> lines = new ArrayList<>();
      for (Entry entry : CallLog.of(moment.entries()).tended()) {
        String done = CallWords.of((Event.Tended) entry.event());
        lines.add(Wording.dayAndTime(entry.at()) + ": " + done);
      }
      if (!lines.isEmpty() || moment.state().role() == Role.CALLER) {
        moment.state().gaveUp().ifPresent(why -> lines.add("handed over because: " + why));
      }
      return lines;
    }

    void write(String caseId, String siteName) {
      page.title("Case " + caseId + ": " + siteName);
      head();
      causes();
      StartLines start = new StartLines(base, words, moment, page);
      start.site();
      page.list("The call", call());
      page.list(
          "In the caller's words",
          moment.state().told().said().stream().map(s -> "\"" + s + "\"").toList());
      start.reported();
      start.dangers();
      new CheckLines(base, words, moment, page).write();
      new WorkLines(base, words, moment, page, Entry.valid(moment.entries())).write();
      page.list(
          "Force on an obstruction (EN 12453)", ForceWords.lines(Forces.of(moment.entries())));
      open();
      page.list(
          "Remarks",
          moment.judgement().remarks().stream()
              .map(r -> base.units().in(r.text()))
              .distinct()
              .toList());
      notes();
      CorrectionLines changed = new CorrectionLines(words, moment, page);
      changed.contradictions();
      moment.conflict().ifPresent(c -> page.list("In doubt", List.of(words.conflict(c))));
      changed.corrections();
      page.list(
          "Kept, but not used in the reasoning",
          moment.apart().stream().map(Wording::apart).toList());
    }

    private void head() {
      List<Entry> entries = moment.entries();
      page.item(
          "Ending: "
              + moment.state().closed().map(e -> e.words()).orElse("not closed")
              + moment.state().gaveUp().map(w -> " (" + w + ")").orElse(""));
      if (!entries.isEmpty()) {
        Instant first = entries.get(0).at();
        Instant last = entries.get(entries.size() - 1).at();
        long elapsed = Duration.between(first, last).toMinutes();
        page.item("Opened: " + Wording.dayAndTime(first));
        page.item("Last entry: " + Wording.dayAndTime(last) + ", " + elapsed + " minutes later");
      }
      page.item(
          "Minutes that the cards expect for this work: "
              + minutes(WorkTime.minutes(entries, base)));
      page.item(
          "Answered by: "
              + Entry.valid(moment.entries()).stream()
                  .map(e -> e.by().word())
                  .distinct()
                  .collect(Collectors.joining(", ")));
      page.item(ruleBase());
    }

    private static String minutes(double minutes) {
      return minutes < 1 ? "under 1" : String.valueOf(Math.round(minutes));
    }

    private String ruleBase() {
      String now = base.fingerprint();
      String then = moment.state().opened().map(Event.Opened::ruleBase).orElse(now);
      List<String> versions =
          moment.state().opened().map(Event.Opened::versions).orElse(base.versions());
      String line =
          "Rule base: "
              + (versions.isEmpty() ? "" : String.join(", ", versions) + ", content ")
              + then.substring(0, Math.min(FINGERPRINT, then.length()));
      return then.equals(now)
          ? line
          : line + " when opened; this record is by " + now.substring(0, FINGERPRINT);
    }

    private void causes() {
      page.heading("Cause");
      if (!Diagnosed.is(moment, base)) {
        page.paragraph("Not diagnosed: nothing was asked about the fault.");
        return;
      }
      List<RankedCause> ranking = Interview.ranking(moment, base);
      List<RankedCause> named = ranking.stream().filter(r -> r.chance() >= NAMED).toList();
      List<RankedCause> putRight = PutRight.causes(moment, base);
      for (RankedCause r : named.isEmpty() ? ranking.subList(0, 1) : named) {
        String done = putRight.contains(r) ? ", put right" : "";
        page.item(r.cause().name() + ": " + Chance.of(r.chance()) + done);
      }
      page.paragraph(
          "Chance that it was present at the call-out; several causes can be present at once.");
    }

    private void open() {
      List<String> lines = new ArrayList<>();
      for (Answered a : moment.state().answers()) {
        if (!a.answer().tells() && !words.isProof(a.check())) {
          lines.add(
              (a.answer().putOff() ? "Put off: " : "Could not tell: ") + words.ask(a.check()));
        }
      }
      moment
          .judgement()
          .followUps()
          .forEach(
              f ->
                  lines.add(
                      "Still due after \"" + words.origin(f) + "\": " + words.card(f.card())));
      words.openProofs(moment).forEach(p -> lines.add("Not proved: " + p.ask()));
      page.list("Left open", lines);
    }

    private void notes() {
      page.list(
          "Notes",
          moment.state().notes().stream()
              .map(e -> Wording.time(e.at()) + " " + ((Event.Noted) e.event()).text())
              .toList());
    }
  }
}
