package yett.command.cases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.command.common.PrintedFiles;
import yett.command.common.UsageException;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.interview.moment.Moment;
import yett.knowledge.Letterhead;
import yett.knowledge.Names;
import yett.paper.Picture;
import yett.record.handout.HandOut;
import yett.record.handout.HandOut.Part;

/** Writes the record of a case into files to hand out. */
final class RecordFiles {
  static final List<String> READERS = List.of("customer", "technician");

  private final Desk desk;
  private final PrintedFiles files;
  private final Set<Part> parts;

  /**
   * @param html name of the HTML file; null for none
   * @param pdf name of the PDF file; null for none
   * @throws UsageException if one of them exists already
   */
  RecordFiles(Desk desk, StandardStreams output, String html, String pdf, Set<Part> parts) {
    this.desk = desk;
    this.files = new PrintedFiles(output, html, pdf);
    this.parts = parts;
  }

  /** The parts of the record for this reader; for both readers if none is named. */
  static Set<Part> parts(String reader, boolean log) {
    if (reader != null && !READERS.contains(reader)) {
      throw new UsageException(
          "\""
              + reader
              + "\" is not one of the readers a page can be for. "
              + Names.advice(reader, READERS));
    }
    Set<Part> parts = EnumSet.noneOf(Part.class);
    if (reader == null || reader.equals(READERS.get(0))) {
      parts.add(Part.CUSTOMER);
    }
    if (reader == null || reader.equals(READERS.get(1))) {
      parts.add(Part.TECHNICIAN);
    }
    if (log) {
      parts.add(Part.LOG);
    }
    return parts;
  }

  void write(Moment moment, String caseId, String gate) {
    Letterhead letterhead = desk.firm().letterhead();
    HandOut handOut =
        new HandOut(desk.expertise(), letterhead, logo(letterhead), ZoneId.systemDefault());
    Optional<LocalDate> due =
        new NextInspections(desk).after(gate, moment.entries(), ZoneId.systemDefault());
    files.write(handOut.html(moment, caseId, gate, due, parts));
  }

  private Optional<Picture> logo(Letterhead letterhead) {
    try {
      return desk.logo().map(Picture::of);
    } catch (IllegalArgumentException e) {
      throw new UncheckedIOException(
          "The logo " + letterhead.logo().orElse("") + " cannot be used: " + e.getMessage() + ".",
          new IOException(e));
    }
  }
}
