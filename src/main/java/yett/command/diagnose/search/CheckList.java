package yett.command.diagnose.search;

import java.util.List;
import java.util.Optional;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.command.diagnose.sitting.Choices;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.course.Interview;
import yett.interview.course.OpenChecks;
import yett.interview.course.OpenChecks.Open;
import yett.interview.course.Request;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.wording.StepWords;
import yett.wording.WhoMay;

/** Shows the checks that are open now, and takes the one next that the person chooses. */
public final class CheckList {
  /** Checks on a page of 24 lines, each with what it tells and what it costs. */
  private static final int PAGE = 5;

  private final Sitting sitting;
  private final FirstWords first;

  /** Ids of the list that was shown last, in the same order. */
  private List<String> shown = List.of();

  private final NamedCards<Check> names;

  public CheckList(Sitting sitting) {
    this.sitting = sitting;
    this.first = new FirstWords(new StepWords(sitting.base()));
    this.names =
        new NamedCards<>(
            sitting.base().checks(),
            c -> c.kind() == Check.Kind.CHECK && !c.danger(),
            Check::ask,
            c -> List.of(c.name()),
            sitting.base().telephone().spoken().synonyms());
  }

  private Moment moment() {
    return sitting.moment();
  }

  /** The open checks in the present state of the case. */
  OpenChecks open() {
    return new OpenChecks(sitting.open().interview().expertise(), moment());
  }

  /** Shows the list page by page. Typing a number takes that check next. */
  public void show() {
    if (comesFirst()) {
      return;
    }
    OpenChecks open = open();
    List<Open> all = open.inOrder();
    shown = all.stream().map(o -> o.check().id()).toList();
    if (all.isEmpty()) {
      sitting.say("There is no check you can make now.");
      return;
    }
    int paying = open.paying();
    int from = 0;
    while (from < all.size()) {
      int to = Math.min(from + PAGE, from < paying ? paying : all.size());
      sitting.show(new OpenCheckViews(sitting.base(), moment()).page(open, from, to));
      Optional<Integer> number =
          sitting.until(
              "Number to make it the next check, " + further(to, paying, all.size()),
              line -> read(line, to));
      if (number.isPresent()) {
        if (number.get() > 0) {
          next(all.get(number.get() - 1).check());
        }
        return;
      }
      from = to;
    }
  }

  private static String further(int to, int paying, int all) {
    if (to == all) {
      return "Enter to go back";
    }
    return to == paying
        ? "Enter for " + (all - paying) + " others by place, 0 to go back"
        : "Enter for more, 0 to go back";
  }

  /**
   * Reads a number of the list, 0 to go back, or empty for the next page. Requests work here as at
   * every prompt.
   */
  private Prompt.Reading<Optional<Integer>> read(String line, int most) {
    if (line.isEmpty() || line.equals("0") || Words.isBack(line)) {
      return Prompt.Reading.of(line.isEmpty() ? Optional.empty() : Optional.of(0));
    }
    Optional<Integer> number = Prompt.number(line, most);
    if (number.isPresent()) {
      return Prompt.Reading.of(number);
    }
    Moment before = moment();
    if (!sitting.grants(line)) {
      return Prompt.Reading.again("Type a number from 1 to " + most + ".");
    }
    return moment() == before ? Prompt.Reading.again("") : Prompt.Reading.of(Optional.of(0));
  }

  /**
   * Whether the step at hand has to be done first, which is then said. Before the complaint is
   * known there is nothing to choose by.
   */
  private boolean comesFirst() {
    Step step = moment().step();
    boolean begun = moment().state().told().histories().isPresent();
    if (begun && !(step instanceof Step.AskDangers) && !(step instanceof Step.Finished)) {
      return false;
    }
    later(step);
    return true;
  }

  /** Takes a check next, named by its number in the last list, its id or words of it. */
  public void ask(String words) {
    String text =
        words.isEmpty() ? sitting.line("Which check? Its number, or words from it") : words;
    if (text.isEmpty()) {
      return;
    }
    Optional<Integer> number = Prompt.number(text, shown.size());
    if (number.isPresent()) {
      next(sitting.base().checks().get(shown.get(number.get() - 1)));
      return;
    }
    if (text.matches("\\d+")) {
      sitting.say(
          shown.isEmpty()
              ? "No list has been shown yet; type checks to see it."
              : "The last list has the numbers 1 to " + shown.size() + ".");
      return;
    }
    List<Check> found = names.of(text);
    if (found.isEmpty()) {
      sitting.say("No check matches these words. Type checks to see those you can make.");
    } else if (found.size() == 1) {
      next(found.get(0));
    } else {
      new Choices(sitting).of("Which check?", found, Check::ask).ifPresent(this::next);
    }
  }

  /** Takes a check next, or says why that is not possible. */
  void next(Check check) {
    if (!moment().state().role().may(check.who())) {
      String who = WhoMay.words(sitting.base(), check.id(), check.who(), check.hazards());
      sitting.say("This cannot come next, \"" + check.ask() + "\": it is " + who + ".");
      return;
    }
    Interview interview = sitting.open().interview();
    new Request(interview, moment())
        .of(check)
        .settle(
            sitting::record,
            because ->
                sitting.say("This cannot come next, \"" + check.ask() + "\": " + because + "."),
            this::later);
  }

  private void later(Step step) {
    String what = step.accept(first).strip();
    sitting.say("Before that comes " + what + (what.endsWith("?") ? "" : "."));
  }
}
