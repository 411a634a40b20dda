package yett.record.handout;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import yett.interview.course.Expertise;
import yett.interview.moment.Moment;
import yett.knowledge.Letterhead;
import yett.paper.Markup;
import yett.paper.Page;
import yett.paper.Picture;
import yett.record.CaseRecord;

/** Writes the paper that is handed out after a visit, as a self-contained page. */
public final class HandOut {
  private final Expertise expertise;
  private final Letterhead letterhead;
  private final Optional<Picture> logo;
  private final ZoneId zone;

  /** A part of the paper, and for whom it is. */
  public enum Part {
    CUSTOMER,
    TECHNICIAN,
    /** Everything that was said and done, for the file. */
    LOG
  }

  /**
   * @param zone time zone for dates and times
   */
  public HandOut(Expertise expertise, Letterhead letterhead, Optional<Picture> logo, ZoneId zone) {
    this.expertise = expertise;
    this.letterhead = letterhead;
    this.logo = logo;
    this.zone = zone;
  }

  /**
   * @param caseId number of the case in the casebook
   * @param gate the gate's name as people say it
   * @param due date of the gate's next inspection, if it is known
   */
  public String html(
      Moment moment, String caseId, String gate, Optional<LocalDate> due, Set<Part> parts) {
    Visit visit = new Visit(moment, caseId, gate, due, zone);
    Findings findings = Findings.of(moment, expertise.base(), zone);
    return Page.of(
        "Record of work: " + gate,
        "Record of work at a gate",
        letterhead.paper(),
        page -> {
          boolean first = true;
          boolean sheet = moment.state().isInspection();
          if (sheet) {
            page.open("div", "class", "first sheet");
            new InspectionPage(expertise.base(), new LetterheadLines(letterhead, logo), visit)
                .write(page);
            page.close();
            first = false;
          }
          for (Part part : Part.values()) {
            if (parts.contains(part) && (!sheet || part == Part.LOG)) {
              String tight = part == Part.TECHNICIAN ? " sheet" : "";
              page.open("div", "class", (first ? "first" : "part") + tight);
              write(part, page, visit, findings);
              page.close();
              first = false;
            }
          }
        });
  }

  private void write(Part part, Markup page, Visit visit, Findings findings) {
    switch (part) {
      case CUSTOMER ->
          new CustomerPage(expertise.base(), new LetterheadLines(letterhead, logo), visit, findings)
              .write(page);
      case TECHNICIAN -> new TechnicianPage(expertise, letterhead, visit, findings).write(page);
      case LOG -> {
        HtmlOutline outline = new HtmlOutline(page);
        new CaseRecord(expertise.base())
            .write(outline, visit.moment(), visit.caseId(), visit.gate());
        outline.end();
      }
    }
  }
}
