package yett.worksheet.sensing;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.Insulation;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Verdict on the insulation of a buried loop or cable. Source: {@link Insulation}. */
final class LoopInsulation extends Worksheet {
  LoopInsulation() {
    super(Subject.SENSING, "insulation", "verdict on the insulation of a loop or buried cable");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("measured", Unit.MEGOHM, "resistance to earth, read at 500 V DC")
            .possible(0, 100000),
        Input.choice(
                "state",
                "new work or in service",
                new Choice("in-service", "in service"),
                new Choice("new", "new, before it is connected"))
            .usually("in-service"));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.text("verdict", "verdict"),
        Output.reading("good-from", Unit.MEGOHM, "good from"),
        Output.reading("bad-below", Unit.MEGOHM, "bad below"));
  }

  @Override
  public String formula() {
    return "in service: good from 10 Mohm, bad below 1 Mohm; new: good from 100 Mohm, bad below 50"
        + " Mohm";
  }

  @Override
  public String validity() {
    return "Loop and lead-in disconnected from the detector at both ends, read at 500 V of direct"
        + " current against an earth rod or the protective conductor for a minute. Damp ends"
        + " read like a bad cable: dry and clean them first.";
  }

  @Override
  public String source() {
    return "50 Mohm new WAC 296-46B-300; 100 Mohm new from loop installers and, from memory, ASTM"
        + " E2561; 10 and 1 Mohm in service from common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "Local code may name its own figure; in Washington State 50 Mohm is the law.");
  }

  @Override
  public List<Note> notes() {
    return List.of(
        Note.warning(
            "The tester puts 500 V on the wire, and a long cable stays charged. Shock. Warn"
                + " everyone at both ends, and let it discharge before it is touched."),
        Note.notice("500 V destroys a detector or a control board: disconnect both ends first."));
  }

  @Override
  protected Results work(Entries entries) {
    boolean isNew = entries.choice("state").id().equals("new");
    String verdict =
        switch (Insulation.verdict(entries.in("measured", Unit.OHM), isNew)) {
          case GOOD -> "good";
          case WATCH -> isNew ? "poor for new work" : "watch it";
          case BAD -> "bad";
        };
    return new Results()
        .with("verdict", verdict)
        .with("good-from", isNew ? Insulation.NEW_GOOD : Insulation.SERVICE_GOOD, Unit.OHM)
        .with("bad-below", isNew ? Insulation.NEW_LEAST : Insulation.SERVICE_LEAST, Unit.OHM);
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double measured = entries.in("measured", Unit.MEGOHM);
    double good = results.in("good-from", Unit.MEGOHM);
    double bad = results.in("bad-below", Unit.MEGOHM);
    if (entries.choice("state").id().equals("new")) {
      return ofNew(measured, good, bad);
    }
    if (measured < bad) {
      return Meaning.of(
          tell(measured, Unit.MEGOHM)
              + " is a wire that touches earth: expect calls without a vehicle and a loop that"
              + " locks after rain.",
          "Open the splices first; if they are dry, the loop is cut anew.");
    }
    return Meaning.of(
        measured < good
            ? tell(measured, Unit.MEGOHM)
                + " still works, but water is getting in; read it again after rain, and renew"
                + " splices."
            : tell(measured, Unit.MEGOHM) + " is no reason for false calls; look elsewhere.");
  }

  private static Meaning ofNew(double measured, double good, double bad) {
    String read = tell(measured, Unit.MEGOHM);
    if (measured >= good) {
      return Meaning.of(read + " is as new work should be; write it down for later readings.");
    }
    return measured < bad
        ? Meaning.of(
            read
                + " is too little for new work, though it would work for now: a nicked wire, a wet"
                + " splice or a damp end.",
            "Dry the ends and read again, then open splices and pull the wire anew before the slot is"
                + " sealed.")
        : Meaning.of(
            read
                + " is what the law of one state asks for at least, and less than good work reads: dry"
                + " the ends, look at the splices, and read again.");
  }
}
