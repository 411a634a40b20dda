package yett.command.diagnose.danger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yett.command.common.Words;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.UnsettledDangers;
import yett.command.diagnose.screen.StillInForce;
import yett.command.diagnose.sitting.ChildRings;
import yett.command.diagnose.sitting.Sitting;
import yett.command.diagnose.told.GraverForm;
import yett.interview.danger.SaidOver;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.saying.DangerSayings.Danger;

/**
 * Asks the list of dangers. Only 0 and the single words "none" and "nothing" mean that there is no
 * danger, and only numbers say which dangers there are. All other words are searched for dangers
 * and asked about, because "none of the men can free him" begins with "none" too.
 */
public final class DangerList {
  private final Sitting sitting;
  private final PromptRequests wishes;
  private final KnownDangers known;

  public DangerList(Sitting sitting, PromptRequests wishes) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.known = new KnownDangers(sitting);
  }

  /** Asks until the list is answered, or a request leads elsewhere. */
  public void ask(Step.AskDangers step) {
    List<Danger> dangers = new ArrayList<>();
    step.dangers()
        .forEach(c -> c.outcomes().stream().skip(1).forEach(o -> dangers.add(new Danger(c, o))));
    // whoever comes back has it in sight, however much the list pushes off the window
    new StillInForce(sitting.base()).beside(sitting.moment(), List.of()).ifPresent(sitting::show);
    if (ChildRings.isOn(sitting)) {
      askChild(step, dangers);
      return;
    }
    sitting.show(sitting.views().dangers(step, role()));
    Suspected heard = new Suspected(sitting, dangers);
    KnownDangers.Told told = known.told(step, dangers);
    heard.suspect(told.dangers(), told.words());
    if (!heard.isEmpty()) {
      heard.ask();
    }
    while (true) {
      String line = told(sitting.line("0 for none, or the numbers that apply"));
      DangerLine typed = DangerLine.of(line, dangers);
      if (typed.unsure().isEmpty() && isGranted(line, heard)) {
        return;
      }
      Set<Danger> untold = typed.unsure().orElse(Set.of());
      Optional<Set<Danger>> so = so(typed, heard);
      if (so.isPresent()) {
        record(step, so.get(), untold, heard.words());
        return;
      }
    }
  }

  /** A child says what it can; the rest is open until a grown-up comes, and one is fetched. */
  private void askChild(Step.AskDangers step, List<Danger> dangers) {
    Optional<ChildDangers.Answers> told =
        new ChildDangers(sitting, wishes, dangers).ask(known.told(step, dangers).dangers());
    if (told.isEmpty()) {
      return;
    }
    new ChildRings(sitting).sendForGrownUp();
    ChildDangers.Answers answers = told.get();
    Set<String> denied =
        answers.denied().stream().map(d -> d.check().id()).collect(Collectors.toSet());
    Set<Danger> untold =
        dangers.stream()
            .filter(d -> !denied.contains(d.check().id()))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    record(step, answers.so(), untold, answers.words());
  }

  /** Carries out a request; what was typed before it is kept, however the request ends. */
  private boolean isGranted(String line, Suspected heard) {
    if (Words.wish(line).filter(w -> w != Words.Wish.BACK).isPresent()) {
      heard.words().forEach(said -> sitting.record(told(said, role())));
    }
    return wishes.grant(line);
  }

  /** The dangers that there are by this line; empty if it does not settle the list. */
  private Optional<Set<Danger>> so(DangerLine typed, Suspected heard) {
    if (typed.unsure().isPresent() || typed.isNone()) {
      return byName(heard, typed.unsure().orElse(Set.of()));
    }
    if (typed.is("no") && !heard.isEmpty()) {
      return denied(heard);
    }
    if (typed.is("yes") && !heard.isEmpty()) {
      return Optional.of(heard.graver());
    }
    if (typed.isNumbers()) {
      Optional<Set<Danger>> picked = typed.picked().map(GraverForm::of);
      if (picked.isEmpty()) {
        sitting.say("Type numbers from 1 to " + typed.dangers().size() + ", or 0 alone for none.");
      }
      return picked;
    }
    if (typed.is("")) {
      sitting.say(
          "Type 0 only if none of these applies, or the numbers that do; unknown 2 if you"
              + " cannot tell about number 2, unknown all if you see nothing of the gate.");
    } else {
      heard.hear(typed.line());
      heard.ask();
    }
    return Optional.empty();
  }

  private static Optional<Set<Danger>> byName(Suspected heard, Set<Danger> untold) {
    Optional<Set<Danger>> so = heard.byName(untold);
    if (so.isEmpty()) {
      heard.ask();
    }
    return so;
  }

  /** After a "no" to what was heard, the rest of the list is still to be answered. */
  private Optional<Set<Danger>> denied(Suspected heard) {
    Optional<Set<Danger>> so =
        heard.ruleOutTheOnly() ? Optional.of(Set.of()) : byName(heard, Set.of());
    if (so.filter(Set::isEmpty).isPresent()) {
      sitting.say("And on the whole list? 0 if none applies, or the numbers that do.");
    }
    return so.filter(s -> !s.isEmpty());
  }

  /**
   * The line without a leading "tell", which means nothing here because all words are taken as
   * told.
   */
  private static String told(String line) {
    String words = Words.Wish.TELL.after(line);
    boolean tell = Words.wish(line).equals(Optional.of(Words.Wish.TELL)) && !words.isEmpty();
    return tell ? words : line;
  }

  /**
   * Stores the answers together with what was said in words.
   *
   * @param unsure dangers about which nobody can tell; that does not count as "no"
   */
  private void record(
      Step.AskDangers step, Set<Danger> so, Set<Danger> unsure, List<String> words) {
    List<Event> events = new ArrayList<>();
    words.forEach(said -> events.add(told(said, role())));
    Map<String, Answer> answers = new LinkedHashMap<>();
    step.dangers().forEach(c -> answers.put(c.id(), new Answer.Chosen(c.outcomes().get(0).id())));
    unsure.forEach(d -> answers.put(d.check().id(), new Answer.CannotTell()));
    so.forEach(d -> answers.put(d.check().id(), new Answer.Chosen(d.outcome().id())));
    KnownDangers.Kept kept = known.kept(step, answers);
    kept.words().forEach(said -> events.add(told(said, role())));
    kept.stand().forEach(d -> answers.put(d.check().id(), new Answer.Chosen(d.outcome().id())));
    kept.mistaken().forEach(d -> events.add(never(d.check())));
    answers.forEach((check, answer) -> events.add(new Event.Answered(check, answer)));
    sitting.record(events.toArray(Event[]::new));
    if (!kept.over().isEmpty() && !SaidOver.stops(sitting.moment(), sitting.base()).isEmpty()) {
      sitting.say("Kept. It stays in force until somebody who may say so has looked.");
    }
    if (kept.others()) {
      wishes.volunteered().hearDanger(String.join(", ", kept.words()));
    }
    if (!unsure.isEmpty() && !ChildRings.isOn(sitting)) {
      new UnsettledDangers(sitting).warn();
    }
  }

  /** Takes a danger back that was picked by mistake, in place of what was answered. */
  private Event never(Check check) {
    long reported = sitting.moment().state().answer(check.id()).orElseThrow().event();
    return new Event.Corrected(reported, new Answer.Chosen(check.outcomes().get(0).id()));
  }

  private static Event told(String words, Role role) {
    return role == Role.CALLER ? new Event.Said(words) : new Event.Noted(words);
  }

  private Role role() {
    return sitting.moment().state().role();
  }
}
