package yett.shell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.console.Console;
import yett.console.Input;
import yett.console.SignalWord;
import yett.console.Text;
import yett.interview.Answer;
import yett.interview.CaseState;
import yett.interview.Ending;
import yett.interview.Event;
import yett.interview.Interview;
import yett.interview.Moment;
import yett.interview.SiteFacts;
import yett.interview.Step;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/** Leads a person through a case at a console, until it is closed or put aside. */
final class Conversation {
  private static final int ROOM_TO_TYPE = 12;

  private final Console console;
  private final OpenCase open;
  private final RuleBase base;
  private final StepViews views;
  private final ReasonViews reasons;
  private final Map<String, String> knownSite;

  /**
   * @param knownSite answers to site questions kept from an earlier case at this gate
   */
  Conversation(Console console, OpenCase open, Map<String, String> knownSite) {
    this.console = console;
    this.open = open;
    this.base = open.interview().expertise().base();
    this.views = new StepViews(base);
    this.reasons = new ReasonViews(base, views);
    this.knownSite = knownSite;
  }

  /** How a conversation ended. */
  enum Outcome {
    CLOSED,
    PUT_ASIDE
  }

  /** Thrown inside to leave from any depth; everything is stored already. */
  private static final class PutAside extends RuntimeException {
    PutAside() {
      super("put aside", null, false, false);
    }
  }

  Outcome run() {
    try {
      while (!(open.moment().step() instanceof Step.Finished)) {
        turn(open.moment());
      }
      return Outcome.CLOSED;
    } catch (PutAside e) {
      console.show(
          Block.blank(),
          Block.paragraph(
              "Saved. Go on with: resume " + open.id() + ". Nothing that was answered is lost."));
      return Outcome.PUT_ASIDE;
    }
  }

  private void turn(Moment moment) {
    Step step = moment.step();
    if (step instanceof Step.AskDangers s) {
      askDangers(s);
    } else if (step instanceof Step.AskSite s) {
      askSite(s);
    } else if (step instanceof Step.AskComplaints s) {
      askComplaints(s);
    } else if (step instanceof Step.AskHistory s) {
      askHistory(s);
    } else if (step instanceof Step.Ask s) {
      ask(s, moment);
    } else if (step instanceof Step.Enter s) {
      enter(s);
    } else if (step instanceof Step.Leave s) {
      confirm(views.leave(s), s.setUp().leave().size(), s.done());
    } else if (step instanceof Step.Mend s) {
      mend(s, moment);
    } else if (step instanceof Step.Retest) {
      retest();
    } else if (step instanceof Step.Settle s) {
      settle(s);
    } else if (step instanceof Step.DecideFailedProof s) {
      failedProof(s);
    } else if (step instanceof Step.MakeSafe s) {
      makeSafe(s);
    } else if (step instanceof Step.HandOver s) {
      handOver(s);
    } else if (step instanceof Step.CloseRepaired) {
      closeRepaired();
    }
  }

  private void askDangers(Step.AskDangers step) {
    record Choice(Check check, Check.Outcome outcome) {}
    List<Choice> choices = new ArrayList<>();
    for (Check check : step.dangers()) {
      check.outcomes().stream().skip(1).forEach(o -> choices.add(new Choice(check, o)));
    }
    console.show(views.dangers(step));
    Optional<List<Integer>> picked =
        pickSeveral(
            "0 for none, or the numbers that are so",
            choices.stream().map(c -> c.outcome().id()).toList(),
            choices.stream().map(c -> c.outcome().text()).toList());
    if (picked.isEmpty()) {
      return;
    }
    Map<String, String> answers = new LinkedHashMap<>();
    step.dangers().forEach(c -> answers.put(c.id(), c.outcomes().get(0).id()));
    for (int i : picked.get()) {
      answers.put(choices.get(i).check().id(), choices.get(i).outcome().id());
    }
    record(
        answers.entrySet().stream()
            .map(e -> new Event.Answered(e.getKey(), new Answer.Chosen(e.getValue())))
            .toArray(Event[]::new));
  }

  private void askSite(Step.AskSite step) {
    Map<String, String> answers = new LinkedHashMap<>(knownSite);
    answers.putAll(open.moment().state().site());
    answers.keySet().retainAll(base.siteQuestions().keySet());
    while (true) {
      List<SiteQuestion> questions = new SiteFacts(base).questions(answers);
      console.show(views.site(new Step.AskSite(questions), answers));
      String line = line("Enter if all is right, or a number to change");
      if (wished(line)) {
        if (!(open.moment().step() instanceof Step.AskSite)) {
          return;
        }
      } else if (line.isBlank()) {
        List<Event> events = new ArrayList<>();
        answers.forEach((q, a) -> events.add(new Event.SiteAnswered(q, a)));
        events.add(new Event.SiteTaken());
        record(events.toArray(Event[]::new));
        return;
      } else {
        List<Integer> found =
            Words.pick(
                line,
                questions.stream().map(SiteQuestion::id).toList(),
                questions.stream().map(SiteQuestion::ask).toList());
        if (found.size() == 1) {
          siteQuestion(questions.get(found.get(0)), answers);
        } else {
          refuse("Type a number from 1 to " + questions.size() + ", or only Enter.");
        }
      }
    }
  }

  private void siteQuestion(SiteQuestion question, Map<String, String> answers) {
    String now = answers.getOrDefault(question.id(), question.usual());
    console.show(views.siteQuestion(question, now));
    while (true) {
      String unit = question.measures().map(m -> " in " + m.unitWord()).orElse("");
      String line = line("Answer" + unit + ", or Enter to leave it").strip();
      if (line.isEmpty()) {
        return;
      }
      if (question.measures().isPresent()) {
        Words.Heard heard = Words.reading(question.measures().get(), line);
        if (heard.answer().isPresent()) {
          answers.put(question.id(), ((Answer.Read) heard.answer().get()).typed());
          return;
        }
        refuse(heard.complaint());
      } else {
        List<String> ids = List.copyOf(question.choices().keySet());
        List<Integer> found = Words.pick(line, ids, List.copyOf(question.choices().values()));
        if (found.size() == 1) {
          answers.put(question.id(), ids.get(found.get(0)));
          return;
        }
        refuse("Type a number from 1 to " + ids.size() + ", or only Enter.");
      }
    }
  }

  private void askComplaints(Step.AskComplaints step) {
    console.show(
        views.picking(
            "What is wrong with the gate?",
            "Pick all that were noticed.",
            step.complaints().stream().map(Check::ask).toList()));
    pickSeveral(
            "Numbers",
            step.complaints().stream().map(Check::id).toList(),
            step.complaints().stream().map(Check::ask).toList())
        .ifPresent(
            picked -> {
              if (picked.isEmpty()) {
                refuse("At least one; if nothing fits, take the nearest and add a note.");
              } else {
                record(
                    new Event.Complained(
                        picked.stream().map(i -> step.complaints().get(i).id()).toList()));
              }
            });
  }

  private void askHistory(Step.AskHistory step) {
    console.show(
        views.picking(
            "What happened lately?",
            "Pick all that apply in the last weeks.",
            step.histories().stream().map(h -> h.name()).toList()));
    pickSeveral(
            "0 for none, or numbers",
            step.histories().stream().map(h -> h.id()).toList(),
            step.histories().stream().map(h -> h.name()).toList())
        .ifPresent(
            picked ->
                record(
                    new Event.Happened(
                        picked.stream().map(i -> step.histories().get(i).id()).toList())));
  }

  /** Numbers or words from one line; empty if the line was a wish and the step may have changed. */
  private Optional<List<Integer>> pickSeveral(String prompt, List<String> ids, List<String> texts) {
    while (true) {
      String line = line(prompt);
      if (wished(line)) {
        return Optional.empty();
      }
      String text = line.strip();
      if (text.equals("0") || text.equalsIgnoreCase("none") || text.equalsIgnoreCase("no")) {
        return Optional.of(List.of());
      }
      if (text.isEmpty()) {
        refuse("Type 0 for none, or numbers from 1 to " + ids.size() + ".");
        continue;
      }
      List<Integer> picked = new ArrayList<>();
      Optional<String> wrong = Optional.empty();
      for (String word : text.split(text.matches("[\\d\\s,;]+") ? "[\\s,;]+" : "[,;]")) {
        List<Integer> found = Words.pick(word, ids, texts);
        if (found.size() == 1) {
          picked.addAll(found);
        } else {
          wrong = Optional.of(word.strip());
        }
      }
      if (wrong.isEmpty()) {
        return Optional.of(picked.stream().distinct().sorted().toList());
      }
      refuse(
          "\""
              + Words.shortened(wrong.get())
              + "\" is not clear: type 0 for none, or numbers from 1 to "
              + ids.size()
              + " with blanks between.");
    }
  }

  private void ask(Step.Ask step, Moment moment) {
    Check check = step.check();
    console.show(views.ask(step, moment, answered(moment) + 1));
    while (true) {
      String line = line(prompt(check));
      Optional<Words.Wish> wish = Words.wish(line);
      Optional<Answer> answer = Optional.empty();
      if (wish.isPresent() && wish.get() == Words.Wish.UNKNOWN) {
        answer = Optional.of(new Answer.CannotTell());
      } else if (wish.isPresent() && wish.get() == Words.Wish.LATER) {
        answer = Optional.of(new Answer.NotNow());
      } else if (wished(line)) {
        if (open.moment() != moment) {
          return;
        }
        continue;
      } else {
        Words.Heard heard = Words.answer(check, line);
        if (heard.answer().isEmpty()) {
          refuse(heard.complaint());
          continue;
        }
        answer = heard.answer();
      }
      if (sure(moment, check, answer.get())) {
        record(new Event.Answered(check.id(), answer.get()));
        console.show(views.taken(moment, open.moment(), check));
        return;
      }
    }
  }

  private int answered(Moment moment) {
    return (int) moment.state().answers().stream().filter(a -> !danger(a.check())).count();
  }

  private boolean danger(String check) {
    return base.checks().containsKey(check) && base.checks().get(check).danger();
  }

  private String prompt(Check check) {
    return check
        .measures()
        .map(m -> m.unitWord().isEmpty() ? "Reading" : "Reading in " + m.unitWord())
        .orElse("Answer");
  }

  /** Queries an answer that the present belief calls very unlikely, before it counts. */
  private boolean sure(Moment moment, Check check, Answer answer) {
    Optional<Interview.Hearing> hearing = open.interview().hear(moment, check, answer);
    if (hearing.isEmpty() || !hearing.get().unlikely()) {
      return true;
    }
    Interview.Hearing heard = hearing.get();
    String meaning = Wordings.meaning(check, heard.finding().outcome());
    console.show(
        Block.paragraph(
            Text.of("That means \"")
                .and(Text.strong(meaning))
                .and(
                    "\", which after all so far is rare ("
                        + Figures.percent(heard.chance())
                        + "). Is it really so?")));
    return yes("yes to keep it, no to answer again");
  }

  private boolean yes(String prompt) {
    while (true) {
      String text = line(prompt).strip().toLowerCase(Locale.ROOT);
      if (text.equals("yes") || text.equals("y") || text.equals("1")) {
        return true;
      }
      if (text.equals("no") || text.equals("n") || text.equals("2")) {
        return false;
      }
      refuse("Type yes or no.");
    }
  }

  /** The cautions first, by themselves, so that they are read; then the steps. */
  private void enter(Step.Enter step) {
    Moment before = open.moment();
    console.show(views.entering(step));
    while (true) {
      String line = line("Enter when these are read");
      if (line.isBlank()) {
        confirm(
            List.of(Block.numbered(step.setUp().enter())),
            step.setUp().enter().size(),
            step.done());
        return;
      }
      if (!wished(line)) {
        refuse("Only Enter, when the cautions are read; save stops here.");
      } else if (open.moment() != before) {
        return;
      }
    }
  }

  /** Steps to confirm: all at once with "done", because each was read in its order. */
  private void confirm(List<Block> blocks, int steps, Event event) {
    console.show(blocks);
    while (true) {
      String line = line("\"done\" when all " + steps + " steps are done, in order");
      if (isDone(line)) {
        record(event);
        return;
      }
      Moment before = open.moment();
      if (!wished(line)) {
        refuse("Type done when it is done; save stops here; hand over gives the case away.");
      } else if (open.moment() != before) {
        return;
      }
    }
  }

  private static boolean isDone(String line) {
    return line.strip().equalsIgnoreCase("done");
  }

  private void mend(Step.Mend step, Moment moment) {
    console.show(views.mend(step, moment));
    while (true) {
      String line = line("\"done\" when it is done, \"cannot\" if it cannot be done here");
      if (isDone(line)) {
        record(new Event.Repaired(step.repair().id(), true));
        return;
      }
      if (line.strip().equalsIgnoreCase("cannot")
          || Words.wish(line)
              .filter(w -> w == Words.Wish.UNKNOWN || w == Words.Wish.LATER)
              .isPresent()) {
        record(new Event.Repaired(step.repair().id(), false));
        return;
      }
      if (!wished(line)) {
        refuse("Type done, or cannot if the part, the time or the permission is missing.");
      } else if (open.moment() != moment) {
        return;
      }
    }
  }

  private void retest() {
    console.show(
        Block.heading("Retest"),
        Block.paragraph(
            "Give a command and watch a whole run in both directions. Does the gate run as it should?"),
        Block.numbered(List.of("it runs as it should", "it still fails")));
    Moment before = open.moment();
    while (true) {
      String line = line("Answer");
      List<Integer> found =
          Words.pick(
              line, List.of("runs", "fails"), List.of("it runs as it should", "it still fails"));
      if (found.size() == 1) {
        record(new Event.Retested(found.get(0) == 0));
        if (found.get(0) == 1) {
          console.show(
              Block.paragraph(
                  "Not cured. That is evidence too: "
                      + views.movement(
                          open.moment()
                              .trail()
                              .moves()
                              .get(open.moment().trail().moves().size() - 1),
                          open.moment())));
        }
        return;
      }
      if (!wished(line)) {
        refuse("Type 1 if it runs as it should, 2 if it still fails.");
      } else if (open.moment() != before) {
        return;
      }
    }
  }

  private void settle(Step.Settle step) {
    List<CaseState.Answered> pair = List.of(step.first(), step.second());
    List<String> texts =
        pair.stream()
            .map(a -> "answer again: " + base.checks().get(a.check()).ask() + " " + shown(a))
            .collect(Collectors.toCollection(ArrayList::new));
    texts.add("both are right");
    console.show(
        Block.heading("Two answers that do not agree"),
        Block.paragraph(StepViews.capital(step.contradiction().reason().words()) + "."),
        Block.numbered(texts));
    Moment before = open.moment();
    while (true) {
      String line = line("Answer");
      List<Integer> found = Words.pick(line, List.of("first", "second", "both"), texts);
      if (found.size() == 1 && found.get(0) == 2) {
        record(new Event.Kept(step.contradiction().first(), step.contradiction().second()));
        return;
      }
      if (found.size() == 1) {
        answerAgain(pair.get(found.get(0)));
        return;
      }
      if (!wished(line)) {
        refuse("Type 1 or 2 to change an answer, 3 to keep both.");
      } else if (open.moment() != before) {
        return;
      }
    }
  }

  private String shown(CaseState.Answered answered) {
    Check check = base.checks().get(answered.check());
    if (answered.answer() instanceof Answer.Chosen chosen) {
      return "(" + Wordings.meaning(check, chosen.outcome()) + ")";
    }
    if (answered.answer() instanceof Answer.Read read) {
      return "(" + read.typed() + ")";
    }
    return answered.answer() instanceof Answer.NotNow ? "(not now)" : "(cannot tell)";
  }

  private void answerAgain(CaseState.Answered answered) {
    Check check = base.checks().get(answered.check());
    console.show(Block.paragraph(Text.strong(check.ask())));
    if (!check.measured()) {
      console.show(Block.numbered(check.outcomes().stream().map(Check.Outcome::text).toList()));
    }
    while (true) {
      String line = line(prompt(check) + ", or Enter to leave it as it was");
      if (line.isBlank()) {
        return;
      }
      Optional<Words.Wish> wish = Words.wish(line);
      Words.Heard heard =
          wish.filter(w -> w == Words.Wish.UNKNOWN).isPresent()
              ? Words.Heard.of(new Answer.CannotTell())
              : Words.answer(check, line);
      if (heard.answer().isPresent()) {
        Moment before = open.moment();
        record(new Event.Corrected(answered.event(), heard.answer().get()));
        console.show(views.taken(before, open.moment(), check));
        return;
      }
      refuse(heard.complaint());
    }
  }

  private void failedProof(Step.DecideFailedProof step) {
    console.show(
        Block.heading("A proof failed"),
        Block.paragraph(step.proof().ask()),
        Block.signal(
            SignalWord.WARNING,
            "The gate must not run for its users until this proof passes. Keep people away from it."),
        Block.numbered(
            List.of(
                "go on looking for the cause",
                "leave the gate out of service: locked off, open way closed by other means, signed")));
    Moment before = open.moment();
    while (true) {
      String line = line("Answer");
      List<Integer> found = Words.pick(line, List.of("go-on", "leave"), List.of("go on", "leave"));
      if (found.size() == 1) {
        record(
            found.get(0) == 0
                ? new Event.Reopened(step.proof().id())
                : new Event.Closed(Ending.OUT_OF_SERVICE));
        return;
      }
      if (!wished(line)) {
        refuse("Type 1 to go on, 2 to leave the gate out of service.");
      } else if (open.moment() != before) {
        return;
      }
    }
  }

  private void makeSafe(Step.MakeSafe step) {
    console.show(views.stop(step, open.moment().state().role()));
    while (true) {
      String line = line("\"done\" when it is done; \"correct\" if the answer was wrong");
      if (isDone(line)) {
        record(new Event.MadeSafe(step.stop().id()));
        return;
      }
      Moment before = open.moment();
      if (!wished(line)) {
        refuse("People first. Type done when these steps are done.");
      } else if (open.moment() != before) {
        return;
      }
    }
  }

  private void handOver(Step.HandOver step) {
    console.show(
        Block.heading("Hand over"),
        Block.paragraph(StepViews.capital(step.because()) + "."),
        views.bars(open.moment(), 4));
    if (step.ending() != Ending.HANDED_OVER) {
      console.show(
          Block.signal(
              SignalWord.WARNING,
              "The gate stays out of service: locked off, signed, and people kept away from the leaf."));
    }
    close(step.ending());
  }

  private void closeRepaired() {
    console.show(
        Block.heading("Back in service"),
        Block.paragraph("Every proof that this gate needs passed."));
    close(Ending.REPAIRED);
  }

  private void close(Ending ending) {
    Moment before = open.moment();
    while (true) {
      String line = line("\"close\" to close the case as " + ending.words() + ", or back");
      if (line.strip().equalsIgnoreCase("close")) {
        record(new Event.Closed(ending));
        String sheet =
            ending == Ending.REPAIRED
                ? ""
                : " The sheet for the next level: record " + open.id() + " --hand-over.";
        console.show(Block.paragraph("Closed. The record: record " + open.id() + "." + sheet));
        return;
      }
      if (!wished(line)) {
        refuse("Type close, or back to take the last answer back.");
      } else if (open.moment() != before) {
        return;
      }
    }
  }

  /** Does what a line wishes, if it wishes something that every prompt understands. */
  private boolean wished(String line) {
    Optional<Words.Wish> wish = Words.wish(line);
    if (wish.isEmpty()) {
      return false;
    }
    switch (wish.get()) {
      case WHY -> console.show(reasons.why(open.moment()));
      case BELIEF -> console.show(reasons.belief(open.moment()));
      case BACK -> back();
      case CORRECT -> correct();
      case UNKNOWN, LATER ->
          console.show(Block.paragraph("This step cannot be left out. Save stops here."));
      case NOTE -> note(line);
      case DANGER -> danger();
      case HANDOVER -> giveUp();
      case SAVE -> throw new IllegalStateException("told before it comes here");
      case HELP -> help();
    }
    return true;
  }

  private void help() {
    List<Block.Row> rows = new ArrayList<>();
    for (Words.Wish wish : Words.Wish.values()) {
      rows.add(Block.row(wish.word(), wish.meaning()));
    }
    console.show(
        Block.heading("At every prompt"),
        new Block.Rows(rows),
        Block.paragraph(
            "Answers: a number of the list, words of an answer, or a reading such as 24.3 V, "
                + "7 1/2 in, 190 mm; a bare number takes the unit that is asked for."));
  }

  /** Takes back the last answer; set-ups stay as they are, because they are in the world. */
  private void back() {
    CaseState state = open.moment().state();
    if (state.closed().isPresent()) {
      return;
    }
    List<Long> last = Backwards.last(open.moment().entries(), this::danger);
    if (last.isEmpty()) {
      console.show(Block.paragraph("There is nothing to take back."));
      return;
    }
    record(last.stream().map(Event.Retracted::new).toArray(Event[]::new));
    console.show(Block.paragraph("Taken back."));
  }

  private void correct() {
    List<CaseState.Answered> answers = open.moment().state().answers();
    if (answers.isEmpty()) {
      console.show(Block.paragraph("There is no answer to correct yet; back takes a step back."));
      return;
    }
    List<String> texts =
        answers.stream().map(a -> base.checks().get(a.check()).ask() + " " + shown(a)).toList();
    console.show(Block.heading("Which answer?"), Block.numbered(texts));
    while (true) {
      String line = line("Number, or Enter for none").strip();
      if (line.isEmpty()) {
        return;
      }
      List<Integer> found =
          Words.pick(line, answers.stream().map(CaseState.Answered::check).toList(), texts);
      if (found.size() == 1) {
        answerAgain(answers.get(found.get(0)));
        return;
      }
      refuse("Type a number from 1 to " + answers.size() + ".");
    }
  }

  private void note(String line) {
    String text = line.strip().length() > 4 ? line.strip().substring(5).strip() : "";
    if (text.isEmpty()) {
      text = line("Note").strip();
    }
    if (!text.isEmpty()) {
      record(new Event.Noted(text));
      console.show(Block.paragraph("Noted."));
    }
  }

  /** The danger questions again: what was answered before is taken back. */
  private void danger() {
    List<Event> events =
        open.moment().state().answers().stream()
            .filter(a -> danger(a.check()))
            .map(a -> (Event) new Event.Retracted(a.event()))
            .toList();
    record(events.toArray(Event[]::new));
  }

  private void giveUp() {
    String why = line("Why is it handed over? A few words, or Enter").strip();
    record(new Event.GaveUp(why.isEmpty() ? "the person at work hands over" : why));
  }

  private void record(Event... events) {
    if (!open.record(events)) {
      console.show(
          Block.signal(
              SignalWord.NOTICE,
              "Somebody else has gone on with this case. Their answers are read in; what you just "
                  + "typed was not kept. Look at the question again."));
    }
  }

  private void refuse(String why) {
    console.show(Block.paragraph(why));
  }

  /** A line; "save" is understood at every prompt, also at those inside another. */
  private String line(String prompt) {
    String shown = prompt + "> ";
    if (shown.length() + ROOM_TO_TYPE > console.width()) {
      console.show(Block.paragraph(prompt + ":"));
      shown = "> ";
    }
    Input input = console.ask(shown);
    if (input instanceof Input.Line line
        && Words.wish(line.text()).filter(w -> w == Words.Wish.SAVE).isEmpty()) {
      return line.text();
    }
    throw new PutAside();
  }
}
