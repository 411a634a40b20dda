package yett.record;

import java.time.ZoneId;
import java.util.List;
import yett.interview.event.Ending;
import yett.interview.inspection.Inspection;
import yett.interview.inspection.Inspection.Result;
import yett.interview.inspection.Verdict;
import yett.interview.moment.Moment;
import yett.interview.state.Forces;
import yett.knowledge.RuleBase;
import yett.wording.ForceWords;
import yett.wording.InspectionWords;

/** Writes the sheet of an inspection as Markdown, to be signed and filed. */
public final class InspectionSheet {
  private final Moment moment;
  private final Inspection inspection;
  private final InspectionWords words;

  /**
   * @param moment of an inspection
   * @param zone time zone for the dates
   */
  public InspectionSheet(RuleBase base, Moment moment, ZoneId zone) {
    this.moment = moment;
    this.inspection = Inspection.of(base, moment).orElseThrow();
    this.words = new InspectionWords(base, moment, zone);
  }

  public String markdown(String caseId, String gate) {
    Markdown page = new Markdown();
    page.title("Inspection for " + inspection.kind().word() + ": " + gate);
    page.item("Our reference: " + caseId);
    page.item("Date: " + words.days());
    page.item("Result: " + result(moment));
    page.item("Inspected: " + inspection.progress() + "; " + inspection.sum());
    page.list("Failed", lines(Verdict.FAIL));
    page.list("Remarks", lines(Verdict.REMARK));
    page.list(InspectionWords.AHEAD, words.ahead(inspection));
    page.list("Measured", inspection.measured().stream().map(this::measured).toList());
    page.list("Safety tests", inspection.proofs().stream().map(this::proof).toList());
    page.list("Force on an obstruction (EN 12453)", ForceWords.lines(Forces.of(moment.entries())));
    page.list("Looked at, in order", words.passedLooks(inspection));
    page.list("Not inspected", words.notInspected(inspection));
    page.heading("Signed");
    page.paragraph("For the firm: name, date, signature: ....................");
    page.paragraph("For the owner: name, date, signature: ....................");
    return page.toString();
  }

  /** What the result means for the gate, as its owner has to know it. */
  public static String result(Moment moment) {
    return moment.state().closed().map(InspectionSheet::result).orElse("not finished");
  }

  private static String result(Ending ending) {
    return ending == Ending.INSPECTED
        ? "passed every safety test that it needs; it may be used"
        : "left out of use until every safety test has passed";
  }

  private String measured(Result result) {
    return result.check().ask() + " " + words.line(result) + ": " + result.verdict().words();
  }

  private String proof(Result result) {
    return result.check().ask() + " " + result.verdict().words();
  }

  private List<String> lines(Verdict verdict) {
    return inspection.results(verdict).stream().map(words::toSeeTo).toList();
  }
}
