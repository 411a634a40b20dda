package yett.command.diagnose.question;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.command.common.Words;
import yett.command.diagnose.correction.Corrections;
import yett.command.diagnose.correction.TakenBack;
import yett.command.diagnose.screen.CautionViews;
import yett.command.diagnose.search.CheckList;
import yett.command.diagnose.search.Suspicion;
import yett.command.diagnose.sitting.CaseLeftException;
import yett.command.diagnose.sitting.Sitting;
import yett.command.diagnose.told.Volunteered;
import yett.console.Block;
import yett.desk.Undo;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.interview.step.Step;
import yett.knowledge.Role;

/** Carries out the requests that a person can make at every prompt. */
public final class PromptRequests {
  /** Requests that belong to the search for a fault only. */
  private static final Set<Words.Wish> SEARCH =
      EnumSet.of(Words.Wish.BELIEF, Words.Wish.ACCOUNT, Words.Wish.CHECKS, Words.Wish.SUSPECT);

  private static final Set<Words.Wish> CALL =
      EnumSet.of(
          Words.Wish.WORKS_AGAIN, Words.Wish.CANCEL, Words.Wish.NO_REPLY, Words.Wish.CUT_OFF);

  static final String STAYS = "This step cannot be left out. Type save to stop here.";

  private final Sitting sitting;
  private final Corrections corrections;
  private final Volunteered volunteered;
  private final CheckList checks;
  private final Suspicion suspicion;
  private final CallEnd end;

  public PromptRequests(Sitting sitting) {
    this.sitting = sitting;
    this.corrections = new Corrections(sitting);
    this.end = new CallEnd(sitting, this);
    this.volunteered = new Volunteered(sitting, words -> end.worksAgain(Optional.of(words)));
    this.checks = new CheckList(sitting);
    this.suspicion = new Suspicion(sitting, checks);
    sitting.hears(this::grantOrHear);
  }

  /** Says who leads the call, once there is one. */
  public void ledBy(CallLead lead) {
    end.ledBy(lead);
  }

  /** Takes what is told without being asked. */
  public Volunteered volunteered() {
    return volunteered;
  }

  /** Endings of the call that the caller brings about. */
  public CallEnd end() {
    return end;
  }

  /**
   * Carries out a request, or takes up words that nobody asked for. Returns whether the line was
   * one of the two.
   */
  public boolean grantOrHear(String line) {
    return grant(line) || volunteered.hear(line);
  }

  /** Carries out a request; returns whether the line was one. */
  public boolean grant(String line) {
    Optional<Words.Wish> wish =
        isTheyDoNotKnow(line) ? Optional.of(Words.Wish.UNKNOWN) : Words.wish(line);
    if (wish.isEmpty() && isSend(line)) {
      send();
      return true;
    }
    wish.ifPresent(w -> grant(w, line));
    return wish.isPresent();
  }

  /**
   * Sends somebody before Yett proposes it. At the list of complaints nobody says what is wrong
   * then, and how urgent it is comes first.
   */
  private void send() {
    if (sitting.moment().state().told().complaints().isPresent()) {
      giveUp("");
    } else {
      sitting.say("Then somebody goes. First how urgent it is; type send once that is told.");
      grant(Words.Wish.UNKNOWN, Words.Wish.UNKNOWN.word());
    }
  }

  /** Whether the agent wants to send somebody; the dangers are asked about all the same. */
  private boolean isSend(String line) {
    CaseState state = sitting.moment().state();
    return state.role() == Role.CALLER
        && (state.told().complaints().isPresent()
            || sitting.moment().step() instanceof Step.AskComplaints)
        && line.strip().matches("(?i)send(?:\\s+(?:somebody|someone))?[.!]*");
  }

  /**
   * Whether an agent typed that the caller does not know. That works at questions, so it also has
   * to work at the lists of a call.
   */
  private boolean isTheyDoNotKnow(String line) {
    return sitting.moment().state().role() == Role.CALLER && line.strip().equalsIgnoreCase("d");
  }

  private void grant(Words.Wish wish, String line) {
    if (SEARCH.contains(wish) && sitting.moment().state().isInspection()) {
      sitting.say(
          "An inspection does not look for causes. If something fails, you can begin a case"
              + " when it ends.");
      return;
    }
    if (SEARCH.contains(wish) && sitting.moment().step() instanceof Step.MakeSafe) {
      sitting.say("People first. What is wrong with the gate does not matter now.");
      return;
    }
    switch (wish) {
      case WHY -> sitting.screen(sitting.why().of(sitting.moment()));
      case BELIEF -> sitting.screen(sitting.beliefs().belief(sitting.moment()));
      case ACCOUNT -> sitting.screen(sitting.beliefs().accounts(sitting.moment()));
      case BACK -> back();
      case CORRECT -> corrections.choose(wish.after(line));
      case UNKNOWN -> sitting.moment().step().accept(new NobodyKnows(sitting)).run();
      case LATER, SENSELESS -> sitting.say(STAYS);
      case NOTE -> note(wish.after(line));
      case TELL -> volunteered.tell(wish.after(line));
      case CHECKS -> checks.show();
      case ASK -> checks.ask(wish.after(line));
      case SUSPECT -> suspicion.look(wish.after(line));
      case DANGER -> sitting.record(new Event.DangersAgain());
      case HANDOVER -> giveUp(wish.after(line));
      case WORKS_AGAIN -> end.worksAgain(Optional.empty());
      case CANCEL, NO_REPLY ->
          end.broughtBy(wish, wish == Words.Wish.CANCEL ? wish.after(line) : "");
      case CUT_OFF -> {
        sitting.record(new Event.Noted("The call dropped."));
        throw new CaseLeftException();
      }
      case SAVE -> {
        String why = wish.after(line);
        if (!why.isEmpty()) {
          sitting.record(new Event.Noted(why));
        }
        throw new CaseLeftException();
      }
      case HELP -> help(line);
    }
  }

  /** Lists the requests; "?" also shows the cautions of this step in full, before them. */
  private void help(String line) {
    List<Block> blocks = new ArrayList<>();
    if (line.strip().equals("?")) {
      blocks.addAll(CautionViews.full(sitting.moment().step().cautions()));
    }
    List<Block.Row> rows = new ArrayList<>();
    if (sitting.moment().state().isInspection()) {
      rows.add(Block.row("remark", "remark 2 … adds a remark to look 2, remark … to a reading"));
    }
    List.of(Words.Wish.values()).stream()
        .filter(this::isOfUse)
        .map(w -> Block.row(w.word(), w.meaning()))
        .forEach(rows::add);
    blocks.add(Block.heading("At every prompt"));
    blocks.add(new Block.Rows(rows));
    blocks.add(
        Block.paragraph(
            "Answers: a number from the list, words from an answer, or a reading such as 24.3"
                + " V, 7 1/2 in, 190 mm; a number without a unit is taken in the unit asked for."));
    sitting.screen(blocks);
  }

  /**
   * Whether the request makes sense here: an inspection does not search for a fault, and only a
   * call can end in the ways of a call.
   */
  private boolean isOfUse(Words.Wish wish) {
    CaseState state = sitting.moment().state();
    return state.isInspection()
        ? !SEARCH.contains(wish) && !CALL.contains(wish)
        : state.role() == Role.CALLER || !CALL.contains(wish);
  }

  /** Takes back the last answer. Set-ups stay in force, because they exist at the real gate. */
  private void back() {
    if (sitting.moment().state().closed().isPresent()) {
      return;
    }
    List<Long> last = Undo.last(sitting.moment().entries(), sitting.base());
    if (last.isEmpty()) {
      sitting.say("There is nothing to take back.");
      return;
    }
    String what = TakenBack.words(sitting.moment(), sitting.base(), last);
    sitting.record(last.stream().map(Event.Retracted::new).toArray(Event[]::new));
    sitting.say("Taken back: " + what);
  }

  private void note(String words) {
    String text = words;
    if (text.isEmpty()) {
      text = sitting.line("Note").strip();
    }
    if (!text.isEmpty()) {
      sitting.record(new Event.Noted(text));
      sitting.say("Noted.");
      volunteered.hearDanger(text);
    }
  }

  private void giveUp(String words) {
    String why = words;
    if (why.isEmpty()) {
      why = sitting.line("Why is it handed over? A few words, or Enter").strip();
      Optional<Words.Wish> wish = Words.wish(why);
      if (wish.filter(w -> w != Words.Wish.UNKNOWN).isPresent()) { // they think better of it
        sitting.say("It is not handed over.");
        if (wish.get() != Words.Wish.BACK) {
          grant(wish.get(), why);
        }
        return;
      }
    }
    volunteered.hearDanger(why); // made safe first, then handed over
    sitting.record(
        new Event.GaveUp(why.isEmpty() ? "the person at the gate asked to hand over" : why));
  }
}
