package yett.command.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import yett.casebook.CaseId;
import yett.casebook.CasebookException;
import yett.command.common.NoName;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.interview.moment.Moment;
import yett.interview.state.CallLog;

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

  private static final Pattern NO_NUMBER =
      Pattern.compile("(?i)|0|d|none|no(?: (?:number|phone))?|not known|unknown|withheld");

  private static final Pattern SAME =
      Pattern.compile(
          "(?i)(?:(?:it['’]?s |it is )?(?:me|the same)(?: (?:again|caller|person|one|as before))*"
              + "|same (?:as (?:before|last time)|one|person|caller|again))");

  private final Sitting sitting;
  private final PromptRequests wishes;
  private final SaidForName saidForName;
  private final Callers callers;
  private boolean asked;
  private boolean interrupted;
  private boolean another;
  private Optional<CaseId> same = Optional.empty();

  WhoCalls(Sitting sitting, PromptRequests wishes) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.saidForName = new SaidForName(sitting, wishes);
    this.callers = new Callers(sitting);
  }

  /** Whether something else came first, so that the call has to be looked at again. */
  boolean isLeft() {
    return !asked || interrupted;
  }

  /** The open case of the same caller that this call is about. */
  Optional<CaseId> goesOnIn() {
    return same;
  }

  /** Somebody rings about a case of an earlier call, who need not be the same person. */
  void ringsAgain() {
    another = true;
  }

  /**
   * Asks once more for a number when somebody goes, because whoever stands before the wrong gate
   * has to call back.
   */
  void askNumber() {
    if (callers.hasNumber()) {
      return;
    }
    String number =
        sitting.until(
            "Number to call back, or none",
            line ->
                NO_NUMBER.matcher(line.strip()).matches() || NOT_SAID.matcher(line).matches()
                    ? Prompt.Reading.of("")
                    : Optional.of(CallerDetails.of(line).phone())
                        .filter(n -> !n.isEmpty())
                        .map(Prompt.Reading::of)
                        .orElse(Prompt.Reading.again("Type the number, or none.")));
    if (!number.isEmpty()) {
      keep(new CallerDetails("", number, ""));
    }
  }

  /** Asks, unless it was asked before or is known. */
  void ask() {
    boolean again = interrupted;
    interrupted = false;
    if (asked) {
      if (again) {
        same = elsewhere();
      }
      return;
    }
    if (!another && callers.hasNumber()) {
      asked = true;
      return;
    }
    sitting.show(
        Block.heading(another ? "Who is calling now?" : "Who is calling?"),
        Block.paragraph(
            "Name, place of the gate, number to call back, separated by commas. Leave out"
                + " what they do not say; press Enter for none"
                + (another ? callers.first().map(c -> ", or if it is again " + c).orElse("") : "")
                + "."));
    Moment before = sitting.moment();
    while (!asked && !interrupted) {
      take(sitting.line("Who").strip(), before);
    }
  }

  private void take(String line, Moment before) {
    boolean same = SAME.matcher(line).matches();
    boolean unknown =
        line.matches("0|d")
            || NOT_SAID.matcher(line).matches()
            || another && same
            || Words.wish(line).equals(Optional.of(Words.Wish.UNKNOWN));
    if (same && !another) {
      sitting.say("This is a new case: type the name again, or press Enter.");
      return;
    }
    if (line.isEmpty() || unknown) {
      asked = true;
    } else if (!line.strip().equals("?") && wishes.grant(line)) {
      interrupted = sitting.moment() != before; // asked again after what the request led to
    } else if (NoName.isIn(line)
        || line.toLowerCase(Locale.ROOT).matches("done|send|close|yes|no|g|[1-9]")) {
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
      same = interrupted ? Optional.empty() : elsewhere();
    }
    rest.toHear().ifPresent(wishes.volunteered()::hear);
  }

  /** The open case of another gate that this call is about. */
  private Optional<CaseId> elsewhere() {
    return another ? Optional.empty() : new SameCaller(sitting).openCase();
  }

  private void keep(CallerDetails who) {
    List<String> kept = new ArrayList<>();
    try {
      callers.keep(who);
      add(kept, "", who.name());
      add(kept, "number ", who.phone());
    } catch (CasebookException e) {
      sitting.say("Name and number could not be kept: " + e.getMessage());
    }
    Optional<String> before = CallLog.of(sitting.moment().entries()).where();
    if (!who.where().isEmpty() && before.filter(w -> w.contains(who.where())).isEmpty()) {
      String where =
          before.filter(w -> another).map(w -> w + "; " + who.where()).orElse(who.where());
      sitting.record(new Event.Tended(Tending.WHERE, where));
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
