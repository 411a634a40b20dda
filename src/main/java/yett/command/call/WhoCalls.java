package yett.command.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import yett.casebook.CaseId;
import yett.casebook.CasebookException;
import yett.casebook.Person;
import yett.command.common.Words;
import yett.command.diagnose.PromptRequests;
import yett.command.diagnose.Sitting;
import yett.console.Block;
import yett.interview.CallLog;
import yett.interview.Event;
import yett.interview.Moment;
import yett.interview.Tending;

/**
 * Asks who calls, from where and on which number. It is asked once, in the first minute of a call.
 * Whatever is typed is heard first, because people answer this with what is wrong, too.
 */
final class WhoCalls {
  private static final int LONGEST = 120;

  /** Words for a caller who gives no name. */
  private static final Pattern NOT_SAID =
      Pattern.compile(
          "(?i)(?:(?:they|she|he|i) )?(?:(?:do|does|would|will|wo)(?:n['’]?t| not)|rather not|no|not)"
              + " ?(?:want(?:ing)? to |like to |going to )?(?:say|tell|give (?:a|his|her|their|my)"
              + " name|saying|telling|name)?(?: me| us| (?:his|her|their|my|a) name)?");

  private final Sitting sitting;
  private final PromptRequests wishes;
  private final SaidForName saidForName;
  private boolean asked;
  private boolean interrupted;
  private Optional<CaseId> same = Optional.empty();

  WhoCalls(Sitting sitting, PromptRequests wishes) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.saidForName = new SaidForName(sitting, wishes);
  }

  /** Whether something else came first, so that the call has to be looked at again. */
  boolean isLeft() {
    return !asked || interrupted;
  }

  /** The open case of the same caller that this call is about. */
  Optional<CaseId> goesOnIn() {
    return same;
  }

  /** Asks, unless it was asked before or is known. */
  void ask() {
    boolean again = interrupted;
    interrupted = false;
    if (asked) {
      if (again) {
        same = new SameCaller(sitting).openCase();
      }
      return;
    }
    if (sitting.open().caller().filter(p -> !p.phone().isEmpty()).isPresent()) {
      asked = true;
      return;
    }
    sitting.show(
        Block.heading("Who is calling?"),
        Block.paragraph(
            "Name, place of the gate, number to call back, separated by commas. Leave out"
                + " what they do not say; press Enter for none."));
    Moment before = sitting.moment();
    while (!asked && !interrupted) {
      take(sitting.line("Who").strip(), before);
    }
  }

  private void take(String line, Moment before) {
    boolean unknown =
        line.matches("0|d")
            || NOT_SAID.matcher(line).matches()
            || Words.wish(line).equals(Optional.of(Words.Wish.UNKNOWN));
    if (line.isEmpty() || unknown) {
      asked = true;
    } else if (wishes.grant(line)) {
      interrupted = sitting.moment() != before; // asked again after what the request led to
    } else if (line.toLowerCase(Locale.ROOT).matches("done|send|close|yes|no|g|[1-9]")) {
      sitting.say("That is not a name. Press Enter if they do not say.");
    } else {
      takeWords(line);
    }
  }

  /** A danger comes before all; what may end the call comes after the name. */
  private void takeWords(String line) {
    SaidForName.Rest rest = saidForName.take(line);
    interrupted = rest.danger() || rest.toHear().isPresent();
    if (rest.details().length() > LONGEST) {
      sitting.say("At most " + LONGEST + " letters, please.");
    } else if (!rest.details().isBlank()) {
      keep(CallerDetails.of(rest.details()));
      asked = true;
      same = interrupted ? Optional.empty() : new SameCaller(sitting).openCase();
    }
    rest.toHear().ifPresent(wishes.volunteered()::hear);
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
