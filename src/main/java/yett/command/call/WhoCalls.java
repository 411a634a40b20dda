package yett.command.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.casebook.CaseId;
import yett.casebook.CasebookException;
import yett.casebook.Person;
import yett.command.common.Words;
import yett.command.diagnose.PromptRequests;
import yett.command.diagnose.Sitting;
import yett.command.diagnose.WorksAgain;
import yett.console.Block;
import yett.interview.CallLog;
import yett.interview.Event;
import yett.interview.Moment;
import yett.interview.Tending;

/**
 * Asks who calls, from where and on which number. It is asked once, in the first minute of a call.
 */
final class WhoCalls {
  private static final int LONGEST = 120;

  private final Sitting sitting;
  private final PromptRequests wishes;
  private boolean asked;
  private Optional<CaseId> same = Optional.empty();

  WhoCalls(Sitting sitting, PromptRequests wishes) {
    this.sitting = sitting;
    this.wishes = wishes;
  }

  /** Whether something else came first, so that it still has to be asked. */
  boolean isLeft() {
    return !asked;
  }

  /** The open case of the same caller that this call is about. */
  Optional<CaseId> goesOnIn() {
    return same;
  }

  /** Asks, unless it was asked before or is known. */
  void ask() {
    if (asked) {
      return;
    }
    asked = true;
    if (sitting.open().caller().filter(p -> !p.phone().isEmpty()).isPresent()) {
      return;
    }
    sitting.show(
        Block.heading("Who is calling?"),
        Block.paragraph(
            "Name, place of the gate, number to call back, separated by commas. Leave out"
                + " what they do not say; press Enter for none."));
    Moment before = sitting.moment();
    while (true) {
      String line = sitting.line("Who").strip();
      boolean unknown =
          line.matches("0|d") || Words.wish(line).equals(Optional.of(Words.Wish.UNKNOWN));
      if (line.isEmpty() || unknown) {
        return;
      }
      if (wishes.grant(line)) {
        if (sitting.moment() != before) {
          asked = false; // asked again after what the request led to
          return;
        }
      } else if (tells(line) && wishes.volunteered().hear(line)) {
        asked = false; // asked again after what was told
        return;
      } else if (line.toLowerCase(Locale.ROOT).matches("done|send|close|yes|no|g|[1-9]")) {
        sitting.say("That is not a name. Press Enter if they do not say.");
      } else if (line.length() > LONGEST) {
        sitting.say("At most " + LONGEST + " letters, please.");
      } else {
        keep(CallerDetails.of(line));
        same = new SameCaller(sitting).openCase();
        return;
      }
    }
  }

  /** Whether the line is not a name but something that cannot wait. */
  private boolean tells(String line) {
    return CallerDetails.of(line).phone().isEmpty()
        && (new WorksAgain(sitting).tellsOfIt(line)
            || !sitting.ears().tellings().hear(line).dangers().isEmpty());
  }

  private void keep(CallerDetails who) {
    List<String> kept = new ArrayList<>();
    try {
      if (!who.name().isEmpty() || !who.phone().isEmpty()) {
        sitting.open().keepCaller(new Person(Person.Part.CALLER, who.name(), who.phone()));
      }
      add(kept, "", who.name());
      add(kept, "number ", who.phone());
    } catch (CasebookException e) {
      sitting.say("Name and number could not be kept: " + e.getMessage());
    }
    boolean known = CallLog.of(sitting.moment().entries()).where().equals(Optional.of(who.where()));
    if (!who.where().isEmpty() && !known) {
      sitting.record(new Event.Tended(Tending.WHERE, who.where()));
    }
    add(kept, "at ", who.where());
    if (!kept.isEmpty()) {
      sitting.say("Kept: " + String.join(" · ", kept) + ".");
    }
  }

  private static void add(List<String> kept, String before, String text) {
    if (!text.isEmpty()) {
      kept.add(before + text);
    }
  }
}
