package yett.command.diagnose.correction;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yett.command.common.CannotTellWords;
import yett.command.common.HeardAnswer;
import yett.command.common.ListChoice;
import yett.command.common.NoneWords;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.command.diagnose.answer.ForceEntry;
import yett.command.diagnose.sitting.LongList;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.Text;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.wording.Wording;

/** Changes earlier answers. A changed answer keeps the place of the earlier one. */
public final class Corrections {
  private final Sitting sitting;

  public Corrections(Sitting sitting) {
    this.sitting = sitting;
  }

  /** An earlier answer that can be given again. */
  record Said(String id, String text, Runnable again) {
    /** What it can be called: its text, then the words of its id. */
    private String named() {
      return text + " " + Wording.spaced(id);
    }
  }

  /**
   * Lets the person choose an answer and give it again.
   *
   * @param words of its question, as typed; may be empty
   */
  public void choose(String words) {
    List<Said> all = said();
    List<Integer> named =
        ListChoice.pick(
            words, all.stream().map(Said::id).toList(), all.stream().map(Said::named).toList());
    if (named.size() == 1) {
      all.get(named.get(0)).again().run();
    } else {
      pick(named.isEmpty() ? all : named.stream().map(all::get).toList());
    }
  }

  /**
   * All that can be changed, the latest answer first; the list of dangers, which "danger" asks
   * anew, comes last.
   */
  private List<Said> said() {
    List<CaseState.Answered> answers = new ArrayList<>(sitting.moment().state().answers());
    answers.removeIf(a -> !sitting.base().checks().containsKey(a.check()));
    answers.sort(Comparator.comparingLong(CaseState.Answered::event).reversed());
    List<Said> said = new ArrayList<>(said(answers, false));
    said.addAll(new Refusals(sitting).all());
    said.addAll(new ReportCorrections(sitting).all());
    said.addAll(said(answers, true));
    return said;
  }

  private List<Said> said(List<CaseState.Answered> answers, boolean dangers) {
    return answers.stream()
        .filter(a -> sitting.base().checks().get(a.check()).danger() == dangers)
        .map(a -> new Said(a.check(), told(a), () -> again(a)))
        .toList();
  }

  private void pick(List<Said> said) {
    if (said.isEmpty()) {
      sitting.say("There is no answer to correct yet; back takes a step back.");
      return;
    }
    List<String> texts = said.stream().map(Said::text).toList();
    LongList list = new LongList(sitting, List.of(Block.heading("Which answer?")), texts);
    list.show();
    List<String> ids = said.stream().map(Said::id).toList();
    List<String> names = said.stream().map(Said::named).toList();
    sitting
        .until(
            () -> list.prompt("Number") + ", or Enter for none",
            line -> {
              if (list.turns(line)) {
                return Prompt.Reading.again("");
              }
              boolean none = line.isEmpty() || Words.isBack(line) || NoneWords.isSaid(line);
              List<Integer> found = none ? List.of() : ListChoice.pick(line, ids, names);
              return none || found.size() == 1
                  ? Prompt.Reading.of(found.stream().findFirst().map(said::get))
                  : Prompt.Reading.again("Type a number from 1 to " + said.size() + ".");
            })
        .ifPresent(s -> s.again().run());
  }

  /** A question with its answer. */
  public String told(CaseState.Answered answered) {
    return sitting.base().checks().get(answered.check()).ask() + " " + shown(answered);
  }

  private String shown(CaseState.Answered answered) {
    Check check = sitting.base().checks().get(answered.check());
    String shown =
        answered
            .answer()
            .map(
                chosen -> Wording.meaning(check, chosen),
                Answer.Read::typed,
                () -> Wording.untold(answered.answer(), "cannot tell"),
                () -> "not now");
    return "(" + shown + ")";
  }

  /** Asks an answered question once more. */
  public void again(CaseState.Answered answered) {
    Check check = sitting.base().checks().get(answered.check());
    sitting.show(Block.paragraph(Text.strong(check.ask()).and(" " + shown(answered))));
    if (!check.measured()) {
      sitting.show(Block.numbered(check.outcomes().stream().map(Check.Outcome::text).toList()));
    }
    sitting
        .until(
            Words.prompt(check) + ", or Enter to leave it as it was",
            line -> unforbidden(check, line))
        .ifPresent(
            answer -> {
              Moment before = sitting.moment();
              sitting.record(new Event.Corrected(answered.event(), answer));
              sitting.show(sitting.taken(before, check));
            });
  }

  /** The new answer, unless a force meter contradicts it. */
  private Prompt.Reading<Optional<Answer>> unforbidden(Check check, String line) {
    Prompt.Reading<Optional<Answer>> read = read(check, line);
    boolean forbidden =
        read.value().isPresent() && new ForceEntry(sitting).forbids(check, read.value().get());
    return forbidden ? Prompt.Reading.again("") : read;
  }

  /** Reads the new answer; its value is empty if the answer stays as it was. */
  private static Prompt.Reading<Optional<Answer>> read(Check check, String line) {
    if (line.isEmpty() || Words.isBack(line)) {
      return Prompt.Reading.of(Optional.empty());
    }
    HeardAnswer heard =
        CannotTellWords.answer(line)
            .filter(Answer::hopeless)
            .map(HeardAnswer::of)
            .orElseGet(() -> HeardAnswer.to(check, line));
    return heard.answer().isPresent()
        ? Prompt.Reading.of(heard.answer())
        : Prompt.Reading.again(heard.complaint());
  }
}
