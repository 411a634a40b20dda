package yett.command.diagnose.look;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.command.common.Words;
import yett.command.diagnose.answer.Difference;
import yett.command.diagnose.correction.Disagreement;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Columns;

/**
 * Asks a round of looks: Enter says that all looks are ordinary, numbers say which are not. Enter
 * never does so for a look that was named, nor after a line that could not be read.
 */
public final class LookList {
  private static final Set<Words.Wish> UNTOLD =
      Set.of(Words.Wish.UNKNOWN, Words.Wish.SENSELESS, Words.Wish.LATER);

  private final Sitting sitting;
  private final PromptRequests wishes;
  private final RoundViews views;
  private final LookAnswers answers;

  /** Remarks on looks of this round, made during an inspection. */
  private final List<Event> remarks = new ArrayList<>();

  private final OpenLooks open;
  private final BesideLooks beside;

  /** Id of the place whose looks the person wants one at a time; empty for none. */
  private String singly = "";

  public LookList(Sitting sitting, PromptRequests wishes) {
    this(sitting, wishes, new RoundViews(sitting));
  }

  public LookList(Sitting sitting, PromptRequests wishes, RoundViews views) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.views = views;
    this.open = new OpenLooks(sitting);
    this.beside = new BesideLooks(wishes);
    this.answers = new LookAnswers(sitting, wishes, views);
  }

  /** Whether the person wants the looks of this place one at a time. */
  public boolean asksSingly(Step.LookRound round) {
    if (!singly.equals(round.place().id())) {
      singly = "";
    }
    return !singly.isEmpty();
  }

  /** Asks until the round is answered, or a request leads elsewhere. */
  public void ask(Step.LookRound round) {
    remarks.clear();
    OneRound asked = new OneRound(round);
    sitting.screen(views.round(round, asked.moment));
    open.comeBack(asked.looks, asked.said);
    while (!asked.isOver(sitting.line(asked.prompt()))) {
      // a line that ends nothing says so itself
    }
  }

  /** A round while it is asked: what was said of it so far. */
  private final class OneRound {
    private final Step.LookRound round;
    private final Moment moment = sitting.moment();
    private final List<Check> looks;
    private final LooksSaid said = new LooksSaid();

    /**
     * Something was typed that could not be read, so Enter no longer means that all is ordinary.
     */
    private boolean refused;

    OneRound(Step.LookRound round) {
      this.round = round;
      this.looks = round.looks().stream().map(Step.Ask::check).toList();
    }

    String prompt() {
      return refused
          ? "The numbers that differ, or 0 if all others are as listed"
          : "Enter if all are as listed, or the numbers that are not";
    }

    /** Takes a line; whether the round is over with it, answered or left. */
    boolean isOver(String typed) {
      String line = moment.state().isInspection() ? withoutRemarks(looks, typed) : typed;
      if (line.isEmpty() && !typed.isBlank()) {
        return false;
      }
      String text = line.strip().toLowerCase(Locale.ROOT);
      if (text.equals("one")) {
        singly = round.place().id();
        return left();
      }
      return isRequest(line, text) ? isElsewhere() : isAnswered(line, text);
    }

    /** Grants what was typed if it asks for something and answers nothing. */
    private boolean isRequest(String line, String text) {
      if (text.matches("how(\\s+\\d)?")) {
        how(round, text.replaceAll("\\D", ""));
        return true;
      }
      Optional<Words.Wish> untold = Words.wish(line).filter(UNTOLD::contains);
      if (untold.isPresent()) {
        String sign = untold.get() == Words.Wish.LATER ? "-" : "?";
        sitting.say(
            "Say for which: %s2 for number 2, %s1-%d for all.".formatted(sign, sign, looks.size()));
        return true;
      }
      if (Words.isBack(line) && (refused || !said.answers().isEmpty())) {
        answers.takeBack(looks, said);
        refused = false;
        return true;
      }
      return wishes.grant(line);
    }

    private boolean isAnswered(String line, String text) {
      if (refused && text.isEmpty()) {
        return false; // what could not be read may have been out of the ordinary
      }
      RoundLine.Heard heard = RoundLine.read(looks, text.equals("0") ? "" : line);
      if (beside.isHeard(looks, line, heard) && !BesideLooks.isNumbered(line)) {
        refused = true; // the words were about something, and nothing may have come of them
        return isElsewhere();
      }
      said.add(heard);
      if (isElsewhere()) {
        return true;
      }
      if (heard.complaints().isEmpty()) {
        finish();
        return true;
      }
      refused = true;
      heard.complaints().forEach(sitting::say);
      sitting.say(
          (said.answers().isEmpty() ? "" : "So far: " + views.soFar(looks, said.answers()) + ". ")
              + "Type the rest, or 0 if all others are as listed.");
      return false;
    }

    /** Leaves the round if the case has moved on. */
    private boolean isElsewhere() {
      return sitting.moment() != moment && left();
    }

    private boolean left() {
      open.leave(looks, said);
      return true;
    }

    /** Asks what is missing of the looks, and stores them unless a request leads elsewhere. */
    private void finish() {
      boolean complete = false;
      try {
        complete = answers.complete(moment, looks, said);
      } finally {
        if (!complete) {
          open.leave(looks, said);
        }
      }
      if (complete) {
        open.answered(looks);
        remarks.addAll(said.remarks(looks));
        record(moment, round, said);
      }
    }
  }

  /** Keeps the remarks of a line. Nothing of it counts if one is on a look that is not there. */
  private String withoutRemarks(List<Check> looks, String typed) {
    String line = typed;
    List<RemarkLine> kept = new ArrayList<>();
    while (RemarkLine.is(line)) {
      RemarkLine remark = RemarkLine.first(line);
      if (remark.look() < 1 || remark.look() > looks.size()) {
        sitting.say("The looks are numbered 1 to " + looks.size() + ".");
        return "";
      }
      kept.add(remark);
      line = remark.rest();
    }
    for (RemarkLine remark : kept) {
      remarks.add(new Event.Noted(remark.words(), Optional.of(looks.get(remark.look() - 1).id())));
      sitting.say("Kept as a remark on " + remark.look() + ".");
    }
    return line;
  }

  private void how(Step.LookRound round, String number) {
    Optional<Integer> which = Optional.of(number).filter(n -> !n.isEmpty()).map(Integer::valueOf);
    sitting.show(
        views.how(round, which.map(n -> n - 1).filter(n -> n >= 0 && n < round.looks().size())));
  }

  /** Stores one event for each look, all together. */
  private void record(Moment moment, Step.LookRound round, LooksSaid said) {
    List<Event> events = new ArrayList<>(remarks);
    Map<String, Answer> answers = new LinkedHashMap<>();
    said.answers()
        .forEach((i, answer) -> answers.put(round.looks().get(i).card(), answer.orElseThrow()));
    List<String> named = said.named().stream().map(i -> round.looks().get(i).card()).toList();
    differences(moment, round, said).stream()
        .filter(told -> !named.contains(told.check()))
        .forEach(told -> answers.put(told.check(), told.answer()));
    answers.forEach((check, answer) -> events.add(new Event.Answered(check, answer)));
    sitting.record(events.toArray(Event[]::new));
    sitting.show(views.taken(moment, sitting.moment(), round));
    new Disagreement(sitting).ask(moment);
  }

  /** What the columns that were told apart say together. */
  private List<Event.Answered> differences(Moment moment, Step.LookRound round, LooksSaid said) {
    Map<Columns, Set<String>> unusual = new LinkedHashMap<>();
    for (int i = 0; i < round.looks().size(); i++) {
      Set<String> columns = said.columns(i);
      round
          .looks()
          .get(i)
          .check()
          .columns()
          .ifPresent(c -> unusual.computeIfAbsent(c, x -> new LinkedHashSet<>()).addAll(columns));
    }
    Difference difference = new Difference(sitting.base(), moment);
    return unusual.entrySet().stream()
        .flatMap(e -> difference.by(e.getKey(), e.getValue()).stream())
        .toList();
  }
}
