package yett.command.call;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.command.common.Words;
import yett.command.diagnose.Questions;
import yett.command.diagnose.Sitting;
import yett.command.diagnose.Wishes;
import yett.console.Block;
import yett.console.Text;
import yett.desk.HistoryWorth;
import yett.interview.Answer;
import yett.interview.Event;
import yett.interview.Moment;
import yett.interview.SomeSteps;
import yett.interview.Step;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.Pressing;
import yett.saying.Sayings;
import yett.wording.Wording;

/**
 * The desk's side of a call: everything is in words to read out, one thing at a time, and nothing
 * is asked that somebody on the telephone cannot know.
 */
public final class Calling {
  private static final int OFFERED = 5;

  /** So many things that may have happened are offered first. */
  private static final int LATELY = 7;

  private final Sitting sitting;
  private final Wishes wishes;
  private final Questions questions;
  private final CallDeeds deeds;
  private final WhoCalls whoCalls;
  private final Map<String, String> knownSite;
  private boolean wordsAsked;
  private boolean ringsAgain;
  private boolean keysTold;

  /** So much of what was said has been heard for an end of the call. */
  private int saidHeard;

  /**
   * @param knownSite what is known of the gate from earlier cases
   */
  public Calling(
      Sitting sitting, Wishes wishes, Questions questions, Map<String, String> knownSite) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.questions = questions;
    this.whoCalls = new WhoCalls(sitting, wishes);
    this.deeds = new CallDeeds(sitting, questions, whoCalls);
    this.knownSite = knownSite;
  }

  /**
   * What is done at a step on a call.
   *
   * @param otherwise for steps of which a call has nothing special
   */
  public Step.Visitor<Runnable> turn(Moment moment, Step.Visitor<Runnable> otherwise) {
    return new Turn(moment, otherwise);
  }

  private final class Turn implements SomeSteps<Runnable> {
    private final Moment moment;
    private final Step.Visitor<Runnable> otherwise;

    Turn(Moment moment, Step.Visitor<Runnable> otherwise) {
      this.moment = moment;
      this.otherwise = otherwise;
    }

    @Override
    public Runnable askDangers(Step.AskDangers step) {
      boolean beginning = !wordsAsked && (ringsAgain || moment.state().told().said().isEmpty());
      return beginning ? Calling.this::askWords : other(step);
    }

    @Override
    public Runnable askSite(Step.AskSite step) {
      return () -> takeSite();
    }

    @Override
    public Runnable askComplaints(Step.AskComplaints step) {
      return () -> Calling.this.askComplaints(step);
    }

    @Override
    public Runnable askPressing(Step.AskPressing step) {
      return () -> Calling.this.askPressing(step);
    }

    @Override
    public Runnable askHistory(Step.AskHistory step) {
      return () -> Calling.this.askHistory(step, moment);
    }

    @Override
    public Runnable ask(Step.Ask step) {
      return () -> Calling.this.ask(step, moment);
    }

    @Override
    public Runnable makeSafe(Step.MakeSafe step) {
      return () -> deeds.makeSafe(step);
    }

    @Override
    public Runnable mend(Step.Mend step) {
      return () -> deeds.mend(step);
    }

    @Override
    public Runnable retest(Step.Retest step) {
      return () -> deeds.retest();
    }

    @Override
    public Runnable decideFailedProof(Step.DecideFailedProof step) {
      return () -> deeds.failedProof(step);
    }

    @Override
    public Runnable closeSolved(Step.CloseSolved step) {
      return () -> deeds.solved(step);
    }

    @Override
    public Runnable handOver(Step.HandOver step) {
      return () -> {
        if (!heardAgain()) {
          deeds.dispatch(step, moment);
        }
      };
    }

    @Override
    public Runnable other(Step step) {
      return step.accept(otherwise);
    }
  }

  /** What is said now comes on top of what was said before. */
  public void ringsAgain() {
    ringsAgain = true;
    saidHeard = sitting.moment().state().told().said().size();
  }

  private void askWords() {
    sitting.ears().prepare(); // made ready while the caller talks
    sitting.show(
        Block.heading("The call"),
        Block.paragraph("\"What is wrong with the gate?\" Type what is said, as it is said."));
    while (true) {
      String words = sitting.line("In the caller's own words").strip();
      if (words.isEmpty() || !wishes.grant(words)) {
        wordsAsked = true;
        if (!words.isEmpty()) {
          sitting.record(new Event.Said(words));
        }
        return;
      }
    }
  }

  /** What is known of the gate is taken; a caller is not asked for feeders and classes. */
  private void takeSite() {
    whoCalls.ask();
    if (whoCalls.isLeft() || sitting.moment().state().closed().isPresent()) {
      return;
    }
    List<Event> events = new ArrayList<>();
    knownSite.forEach(
        (question, answer) -> {
          if (sitting.base().siteQuestions().containsKey(question)) {
            events.add(new Event.SiteAnswered(question, answer));
          }
        });
    events.add(new Event.SiteTaken());
    sitting.record(events.toArray(Event[]::new));
  }

  /** Offers what was understood; any other line is heard as further words of the caller. */
  private void askComplaints(Step.AskComplaints step) {
    if (worksAgain()) {
      return;
    }
    Set<Check> offered = new LinkedHashSet<>();
    List<String> said = sitting.moment().state().told().said();
    if (!said.isEmpty()) {
      sitting.ears().complaints().hear(String.join(". ", said), OFFERED).stream()
          .map(Sayings.Heard::complaint)
          .filter(step.complaints()::contains)
          .forEach(offered::add);
    }
    if (offered.isEmpty()) {
      pick(step.complaints(), "None of these words is known. What is it most like?");
      return;
    }
    List<Check> list = List.copyOf(offered);
    sitting
        .ears()
        .withoutMeanings()
        .ifPresent(why -> sitting.say("Understood by words alone: " + why + "."));
    sitting.show(
        Block.heading("Understood"),
        Block.paragraph("The most probable first. Read out what fits, and let the caller confirm."),
        Block.numbered(list.stream().map(Calling::lay).toList()));
    while (true) {
      String line = sitting.line("Numbers that are so, \"list\" for all, or other words").strip();
      if (line.toLowerCase(Locale.ROOT).matches("list|0|none|no")) {
        pick(step.complaints(), "All that people call about");
        return;
      }
      if (wishes.grant(line)) {
        return;
      }
      if (line.matches("[\\d\\s,;]+")) {
        Optional<List<Integer>> picked = numbers(line, list.size());
        if (picked.isPresent()) {
          complained(picked.get().stream().map(list::get).toList());
          return;
        }
        sitting.say("Type numbers from 1 to " + list.size() + ", or list.");
      } else if (!line.isEmpty()) {
        sitting.record(new Event.Said(line));
        return;
      }
    }
  }

  private static Optional<List<Integer>> numbers(String line, int most) {
    List<Integer> picked = new ArrayList<>();
    for (String word : line.strip().split("[\\s,;]+")) {
      int number = word.length() > 3 || word.isEmpty() ? 0 : Integer.parseInt(word);
      if (number < 1 || number > most) {
        return Optional.empty();
      }
      picked.add(number - 1);
    }
    return Optional.of(picked.stream().distinct().toList());
  }

  /** Whether what was said since the last time says that it works again; then that was asked. */
  private boolean worksAgain() {
    List<String> said = sitting.moment().state().told().said();
    List<String> news = said.subList(Math.min(saidHeard, said.size()), said.size());
    saidHeard = said.size();
    boolean again = news.stream().anyMatch(wishes.end()::tellsOfIt);
    if (again) {
      wishes.end().worksAgain(Optional.empty());
    }
    return again;
  }

  private void pick(List<Check> complaints, String heading) {
    List<String> texts = complaints.stream().map(Calling::lay).toList();
    List<String> ids = complaints.stream().map(Check::id).toList();
    sitting.show(Block.heading(heading), Block.numbered(texts));
    Optional<List<Integer>> picked = questions.several("Numbers", ids, texts);
    if (picked.isPresent() && picked.get().isEmpty()) {
      sitting.say("At least one; if nothing fits, take the nearest and add a note.");
    } else if (picked.isPresent()) {
      complained(picked.get().stream().map(complaints::get).toList());
    }
  }

  private void complained(List<Check> complaints) {
    sitting.record(new Event.Complained(complaints.stream().map(Check::id).toList()));
  }

  private static String lay(Check check) {
    return check.lay().isEmpty() ? check.ask() : check.lay();
  }

  /**
   * A call that had come to its questions before: words of now may end it, or be news.
   *
   * @return whether they did
   */
  private boolean heardAgain() {
    return ringsAgain && worksAgain();
  }

  private void askPressing(Step.AskPressing step) {
    if (heardAgain()) {
      return;
    }
    List<String> texts = step.pressing().stream().map(Pressing::ask).toList();
    List<String> ids = step.pressing().stream().map(Pressing::id).toList();
    sitting.show(
        Block.heading("How urgent is it?"),
        Block.paragraph("Read out; 0 if none of it is so."),
        Block.numbered(texts));
    Optional<List<Integer>> picked = questions.several("0 for none, or numbers", ids, texts);
    if (picked.isEmpty()) {
      return;
    }
    sitting.record(new Event.Pressed(picked.get().stream().map(ids::get).toList()));
    List<String> now =
        picked.get().stream().flatMap(i -> step.pressing().get(i).untilThen().stream()).toList();
    if (!now.isEmpty()) {
      sitting.show(Block.paragraph(Text.strong("Read out:")), Block.numbered(now));
    }
  }

  /**
   * Only what would tell most about this complaint, so that the list is short enough to read out.
   */
  private void askHistory(Step.AskHistory step, Moment moment) {
    if (heardAgain()) {
      return;
    }
    List<History> first = HistoryWorth.most(step.histories(), moment.belief(), LATELY);
    Optional<List<Integer>> picked = happened(first, true);
    if (picked.isPresent() && picked.get().contains(first.size())) {
      first = step.histories();
      picked = happened(first, false);
    }
    List<History> offered = first;
    picked.ifPresent(
        p ->
            sitting.record(
                new Event.Happened(p.stream().map(offered::get).map(History::id).toList())));
  }

  private Optional<List<Integer>> happened(List<History> offered, boolean more) {
    List<String> texts = new ArrayList<>(offered.stream().map(History::name).toList());
    List<String> ids = new ArrayList<>(offered.stream().map(History::id).toList());
    if (more) {
      texts.add("Something else: show the whole list");
      ids.add("something-else");
    }
    sitting.show(Block.heading("Did anything happen at the gate lately?"), Block.numbered(texts));
    return questions.several("0 for none, or numbers", ids, texts);
  }

  private void ask(Step.Ask step, Moment moment) {
    if (heardAgain()) {
      return;
    }
    Check check = step.check();
    int number =
        1
            + (int)
                moment.state().answers().stream().filter(a -> !sitting.isDanger(a.check())).count();
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Question " + number));
    blocks.addAll(sitting.cautions().spoken(step.cautions()));
    blocks.add(Block.paragraph(Text.of("Read out: ").and(Text.strong(lay(check)))));
    if (!check.how().isEmpty()) {
      blocks.add(Block.rows(Block.row("How", check.how())));
    }
    blocks.add(
        Block.numbered(check.outcomes().stream().map(o -> Wording.capital(o.text())).toList()));
    if (!keysTold) {
      keysTold = true;
      blocks.add(
          Block.paragraph(
              Text.dim("d: they don't know · g: they can't get there · x: the call dropped")));
    }
    sitting.show(blocks);
    while (sitting.moment() == moment) {
      String line = sitting.line(Sitting.prompt(check)).strip();
      Optional<Answer> answer = answer(check, line);
      if (answer.isEmpty()) {
        if (!wishes.grant(line) && !wishes.volunteered().hear(line)) {
          sitting.say(Words.answer(check, line).complaint());
        }
      } else if (sitting.isSure(moment, check, answer.get())) {
        sitting.record(new Event.Answered(check.id(), answer.get()));
        sitting.moment().judgement().remarks().stream()
            .filter(r -> !moment.judgement().remarks().contains(r))
            .forEach(r -> sitting.say("Note: " + r.text()));
        if (answer.get().choice().filter(o -> wishes.end().isIt(check, o)).isPresent()) {
          wishes.end().worksAgain(Optional.empty());
          return;
        }
      }
    }
  }

  private Optional<Answer> answer(Check check, String line) {
    Optional<Words.Wish> wish = Words.wish(line);
    if (line.equalsIgnoreCase("d") || wish.equals(Optional.of(Words.Wish.UNKNOWN))) {
      return Optional.of(new Answer.CannotTell());
    }
    if (line.equalsIgnoreCase("g") || wish.equals(Optional.of(Words.Wish.LATER))) {
      return Optional.of(new Answer.NotNow());
    }
    return wish.isPresent() || wishes.volunteered().isElsewhere(check, line)
        ? Optional.empty()
        : Words.answer(check, line).answer();
  }
}
