package yett.command.diagnose.told;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yett.command.common.HeardAnswer;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.command.diagnose.answer.RareAnswer;
import yett.command.diagnose.correction.Disagreement;
import yett.command.diagnose.sitting.Choices;
import yett.command.diagnose.sitting.Sharing;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.Text;
import yett.interview.course.Request;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.Effect;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.saying.Thing;
import yett.saying.Thing.Kind;
import yett.wording.Wording;

/**
 * Turns something that was told and confirmed into the event that answering its question would
 * give.
 */
public final class ToldAndConfirmed {
  private final Sitting sitting;
  private final ReportedLater later;

  public ToldAndConfirmed(Sitting sitting) {
    this.sitting = sitting;
    this.later = new ReportedLater(sitting);
  }

  private RuleBase base() {
    return sitting.base();
  }

  /** The words in which it is shown back. */
  public String words(Thing thing) {
    return switch (thing.kind()) {
      case DANGER, OUTCOME -> {
        Check check = base().checks().get(thing.card());
        yield asked(check) + " " + Wording.capital(Wording.meaning(check, thing.outcome())) + ".";
      }
      case CHECK -> asked(base().checks().get(thing.card())) + " (one of its answers)";
      case READING -> base().checks().get(thing.card()).ask() + " (a reading)";
      case COMPLAINT -> "The complaint: " + asked(base().checks().get(thing.card())) + ".";
      case EFFECT -> base().effects().get(thing.card()).name() + " (as it shows)";
      case HISTORY -> "Lately: " + base().histories().get(thing.card()).name() + ".";
      case PRESSING, NOTHING -> throw new IllegalArgumentException("not taken up: " + thing);
    };
  }

  /** The question of a check; on a call in the words that are read out. */
  private String asked(Check check) {
    return sitting.moment().state().role() == Role.CALLER ? check.spoken() : check.ask();
  }

  /**
   * The checks that are open to this person. If none is, all of them, so that the reason can be
   * given.
   */
  List<String> open(List<String> checks) {
    Set<String> unavailable = sitting.moment().judgement().unavailable();
    List<String> open = checks.stream().filter(id -> !unavailable.contains(id)).toList();
    return open.isEmpty() ? checks : open;
  }

  /**
   * Things that are not known yet and are open to this person; all of them if everything is known
   * already.
   */
  List<Thing> news(List<Thing> things) {
    // How urgent it is, is asked later as one list.
    List<Thing> taken = things.stream().filter(t -> t.kind() != Kind.PRESSING).toList();
    List<Thing> news = taken.stream().filter(t -> !isKnown(t)).toList();
    Set<String> open = Set.copyOf(open(news.stream().map(Thing::card).toList()));
    return (news.isEmpty() ? taken : news)
        .stream().filter(t -> news.isEmpty() || open.contains(t.card())).toList();
  }

  private boolean isKnown(Thing thing) {
    CaseState state = sitting.moment().state();
    return switch (thing.kind()) {
      case COMPLAINT -> state.told().complaints().orElse(List.of()).contains(thing.card());
      case HISTORY -> state.told().histories().orElse(List.of()).contains(thing.card());
      case OUTCOME ->
          state.answer(thing.card()).filter(a -> a.answer().is(thing.outcome())).isPresent();
      case DANGER, CHECK, READING, EFFECT, PRESSING, NOTHING -> false;
    };
  }

  Event chosen(Thing thing) {
    return new Event.Answered(thing.card(), new Answer.Chosen(thing.outcome()));
  }

  /**
   * Stores the things told. Complaints are stored together, because all others are asked for after
   * the first.
   */
  public void take(List<Thing> things) {
    complaints(things.stream().filter(t -> t.kind() == Kind.COMPLAINT).map(Thing::card).toList());
    things.stream().filter(t -> t.kind() != Kind.COMPLAINT).forEach(this::take);
  }

  void take(Thing thing) {
    switch (thing.kind()) {
      case DANGER -> sitting.record(chosen(thing));
      case OUTCOME -> answer(thing.card(), withEarlier(thing));
      case CHECK, READING -> question(base().checks().get(thing.card()));
      case COMPLAINT -> complaints(List.of(thing.card()));
      case EFFECT -> effect(base().effects().get(thing.card()));
      case HISTORY -> later.history(thing.card());
      case PRESSING, NOTHING -> throw new IllegalArgumentException("not taken up: " + thing);
    }
  }

  /** What was told, with what is true besides by an earlier answer since the last repair. */
  private Answer withEarlier(Thing thing) {
    Check check = base().checks().get(thing.card());
    CaseState state = sitting.moment().state();
    List<String> all =
        Stream.concat(
                state.answer(check.id()).stream().flatMap(a -> a.answer().choices().stream()),
                Stream.of(thing.outcome()))
            .distinct()
            .toList();
    return Answer.Chosen.canBe(check, all)
        ? Answer.Chosen.of(check, all)
        : new Answer.Chosen(thing.outcome());
  }

  /** Stores an answer to a check under the same conditions as at its own prompt. */
  public void answer(String id, Answer answer) {
    Check check = base().checks().get(id);
    Moment before = sitting.moment();
    if (isRefused(check)) {
      return;
    }
    if (new RareAnswer(sitting).isMeant(before, check, answer)) {
      sitting.record(new Event.Answered(id, answer));
      if (Sharing.counts(sitting, check, answer)) {
        sitting.show(sitting.taken(before, check));
        new Disagreement(sitting).ask(before);
      }
    }
  }

  /** The same for a reading, which counts as if it had been taken by the procedure of the check. */
  void reading(String id, Answer answer) {
    Check check = base().checks().get(id);
    if (!check.how().isEmpty() && Request.forbidden(sitting.moment(), check).isEmpty()) {
      sitting.show(
          Block.paragraph(
              Text.dim("Was it done like this? " + check.how() + " If not: back, or correct.")));
    }
    answer(id, answer);
  }

  private boolean isRefused(Check check) {
    Optional<String> forbidden = Request.forbidden(sitting.moment(), check);
    forbidden.ifPresent(why -> sitting.say("That does not count: " + why + "."));
    return forbidden.isPresent();
  }

  /** Asks the question itself, because the words did not say which answer. */
  private void question(Check check) {
    if (isRefused(check)) {
      return;
    }
    if (!check.measured()) {
      sitting.show(Block.numbered(check.outcomes().stream().map(Check.Outcome::text).toList()));
    }
    sitting
        .until(
            Words.prompt(check) + ", or Enter for none",
            line -> {
              HeardAnswer heard = HeardAnswer.to(check, line);
              return line.isEmpty() || heard.answer().isPresent()
                  ? Prompt.Reading.of(heard.answer())
                  : Prompt.Reading.again(heard.complaint());
            })
        .ifPresent(answer -> answer(check.id(), answer));
  }

  private void complaints(List<String> ids) {
    List<String> open =
        ids.stream()
            .filter(base().checks()::containsKey)
            .filter(id -> !isRefused(base().checks().get(id)))
            .toList();
    if (!open.isEmpty()) {
      later.complaints(open);
    }
  }

  /** Asks which outcome shows this effect, because an effect itself cannot be answered. */
  private void effect(Effect effect) {
    List<Thing> signs = new Signs(sitting).of(effect);
    if (signs.isEmpty()) {
      sitting.say("None of its signs can be reported here.");
      return;
    }
    new Choices(sitting)
        .of(effect.name() + ": how does it show?", signs, this::words)
        .ifPresent(this::take);
  }
}
