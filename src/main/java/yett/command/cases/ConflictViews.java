package yett.command.cases;

import java.util.ArrayList;
import java.util.List;
import yett.casebook.CarriedCase;
import yett.casebook.ImportedCase;
import yett.casebook.StoredEvent;
import yett.console.Block;
import yett.desk.OpenCase;
import yett.interview.event.Entry;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/**
 * Shows a case that was continued differently here and elsewhere: what was entered on either side.
 */
record ConflictViews(RuleBase base) {
  private static final int SHOWN = 6;

  List<Block> of(CarriedCase carried, ImportedCase taken) {
    List<Block> blocks = new ArrayList<>();
    long common = taken.here().get(0).seq() - 1;
    blocks.add(Block.heading("Conflict: case " + taken.id()));
    blocks.add(
        Block.paragraph(
            "It was continued both here and elsewhere after event "
                + common
                + ". It was left as it is here."));
    blocks.add(Block.paragraph("Here:"));
    blocks.add(Block.numbered(told(taken.here())));
    blocks.add(Block.paragraph("In the file (there: " + carried.id() + "):"));
    blocks.add(Block.numbered(told(taken.there())));
    blocks.add(
        Block.paragraph(
            "Enter what is missing with: resume "
                + taken.id()
                + ". Or keep both versions: cases import FILE --apart."));
    return blocks;
  }

  private List<String> told(List<StoredEvent> events) {
    var wording = new Wording(base);
    List<String> lines = new ArrayList<>();
    for (StoredEvent e : events.subList(0, Math.min(SHOWN, events.size()))) {
      lines.add(e.by() + ": " + event(e, wording));
    }
    if (events.size() > SHOWN) {
      lines.add((events.size() - SHOWN) + " more");
    }
    return lines;
  }

  /** An event in words. It may have been written by a newer program. */
  private static String event(StoredEvent e, Wording wording) {
    Entry entry = OpenCase.entries(List.of(e)).get(0);
    return wording.event(entry.event());
  }
}
