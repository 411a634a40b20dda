package yett.worksheet.sensing;

import yett.calculation.Insulation;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/** Verdict on the insulation of a buried loop or cable. Source: {@link Insulation}. */
final class LoopInsulation extends Worksheet {
  LoopInsulation() {
    super(Subject.SENSING, "insulation", "verdict on the insulation of a loop or buried cable");
    asks(
        reading("measured", Unit.MEGOHM, "resistance to earth, read at 500 V DC")
            .possible(0, 100000),
        choice(
                "state",
                "new work or in service",
                new Choice("in-service", "in service"),
                new Choice("new", "new, before it is connected"))
            .usually("in-service"));
    tells(
        text("verdict", "verdict").by(LoopInsulation::verdict),
        number("good-from", Unit.MEGOHM, "good from")
            .by(Unit.OHM, v -> isNew(v) ? Insulation.NEW_GOOD : Insulation.SERVICE_GOOD),
        number("bad-below", Unit.MEGOHM, "bad below")
            .by(Unit.OHM, v -> isNew(v) ? Insulation.NEW_LEAST : Insulation.SERVICE_LEAST));
    formula(
        "in service: good from 10 Mohm, bad below 1 Mohm; new: good from 100 Mohm, bad below 50"
            + " Mohm");
    validity(
        "Loop and lead-in disconnected from the detector at both ends, read at 500 V of direct"
            + " current against an earth rod or the protective conductor for a minute. Damp ends"
            + " read like a bad cable: dry and clean them first.");
    source(
        "50 Mohm new WAC 296-46B-300; 100 Mohm new from loop installers and, from memory, ASTM"
            + " E2561; 10 and 1 Mohm in service from common practice");
    lastWord("Local code may name its own figure; in Washington State 50 Mohm is the law.");
    notes(
        Note.warning(
            "The tester puts 500 V on the wire, and a long cable stays charged. Shock. Warn"
                + " everyone at both ends, and let it discharge before it is touched."),
        Note.notice("500 V destroys a detector or a control board: disconnect both ends first."));
    says(
        when(
            v -> isNew(v) && v.of("measured") >= v.of("good-from"),
            "{measured} is as new work should be; write it down for later readings."),
        when(
            v -> isNew(v) && v.of("measured") < v.of("bad-below"),
            "{measured} is too little for new work, though it would work for now: a nicked wire, a"
                + " wet splice or a damp end.",
            "Dry the ends and read again, then open splices and pull the wire again before"
                + " the slot is sealed."),
        when(
            LoopInsulation::isNew,
            "{measured} is what the law of one state asks for at least, and less than good work"
                + " reads: dry the ends, look at the splices, and read again."),
        when(
            v -> v.of("measured") < v.of("bad-below"),
            "{measured} is a wire that touches earth: expect calls without a vehicle and a loop"
                + " that locks after rain.",
            "Open the splices first; if they are dry, cut a new loop."),
        when(
            v -> v.of("measured") < v.of("good-from"),
            "{measured} still works, but water is getting in; read it again after rain, and renew"
                + " splices."),
        otherwise("{measured} is no reason for false calls; look elsewhere."));
  }

  private static boolean isNew(Values v) {
    return v.chose("state", "new");
  }

  private static String verdict(Values v) {
    return switch (Insulation.verdict(v.in("measured", Unit.OHM), isNew(v))) {
      case GOOD -> "good";
      case WATCH -> isNew(v) ? "poor for new work" : "watch it";
      case BAD -> "bad";
    };
  }
}
