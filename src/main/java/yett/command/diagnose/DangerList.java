package yett.command.diagnose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.command.common.Words;
import yett.interview.Answer;
import yett.interview.Event;
import yett.interview.Step;
import yett.knowledge.Role;
import yett.saying.DangerSayings.Danger;

/**
 * Asks the list of dangers. Only 0 and the single words "none" and "nothing" mean that there is no
 * danger, and only numbers say which dangers there are. All other words are searched for dangers
 * and asked about, because "none of the men can free him" begins with "none" too.
 */
public final class DangerList {
  /** Answers to a question that was not asked. They say nothing and are not stored. */
  private static final Set<String> YES_OR_NO = Set.of("no", "yes", "nope", "yeah", "ok", "okay");

  private final Sitting sitting;
  private final PromptRequests wishes;
  private final KnownDangers known;
  private final AskingBack back;

  public DangerList(Sitting sitting, PromptRequests wishes) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.known = new KnownDangers(sitting);
    this.back = new AskingBack(sitting);
  }

  /** Asks until the list is answered, or a request leads elsewhere. */
  public void ask(Step.AskDangers step) {
    List<Danger> dangers = new ArrayList<>();
    step.dangers()
        .forEach(c -> c.outcomes().stream().skip(1).forEach(o -> dangers.add(new Danger(c, o))));
    sitting.show(sitting.views().dangers(step, role()));
    List<String> words = new ArrayList<>();
    List<Danger> heard = known.told(step, dangers);
    if (!heard.isEmpty()) {
      back.ask(heard, dangers);
    }
    while (true) {
      String line = told(sitting.line("0 for none, or the numbers that apply"));
      DangerLine typed = DangerLine.of(line, dangers);
      Optional<Set<Danger>> unsure = typed.unsure();
      if (unsure.isPresent()) {
        record(step, Set.of(), unsure.get(), words);
        return;
      }
      if (wishes.grant(line)) {
        return;
      }
      if (typed.isNone()) {
        if (heard.isEmpty() || back.isDenied(heard)) {
          record(step, Set.of(), Set.of(), words);
          return;
        }
        continue;
      }
      if (typed.is("no") && !heard.isEmpty()) {
        heard = List.of();
        sitting.say("And on the whole list? 0 if none applies, or the numbers that do.");
        continue;
      }
      if (typed.is("yes") && !heard.isEmpty()) {
        if (areSeparate(heard)) {
          record(step, new LinkedHashSet<>(heard), Set.of(), words);
          return;
        }
        sitting.say(
            "Two of these are forms of the same danger: type the numbers again, with only the"
                + " graver of the two.");
        continue;
      }
      if (typed.isNumbers()) {
        Optional<Set<Danger>> picked = typed.picked();
        if (picked.isPresent() && areSeparate(picked.get())) {
          record(step, picked.get(), Set.of(), words);
          return;
        }
        sitting.say(
            "Type numbers from 1 to "
                + dangers.size()
                + ", or 0 alone for none; of two forms of the same danger, only the graver.");
      } else if (!typed.is("")) {
        if (!YES_OR_NO.contains(typed.text())) {
          words.add(line.strip());
        }
        heard = sitting.ears().dangers().hear(line, dangers);
        back.ask(heard, dangers);
      } else {
        sitting.say(
            "Type 0 only if none of these applies, or the numbers that do; unknown 2 if you"
                + " cannot tell about number 2, unknown all if you see nothing of the gate.");
      }
    }
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
   * Whether each danger answers another question. Of two that answer the same one, the graver has
   * to be chosen.
   */
  private static boolean areSeparate(Collection<Danger> picked) {
    return picked.stream().map(d -> d.check().id()).distinct().count() == picked.size();
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
    answers.forEach((check, answer) -> events.add(new Event.Answered(check, answer)));
    sitting.record(events.toArray(Event[]::new));
    if (kept.others()) {
      wishes.volunteered().hearDanger(String.join(", ", kept.words()));
    }
    if (!unsure.isEmpty()) {
      new UnsettledDangers(sitting).warn();
    }
  }

  private static Event told(String words, Role role) {
    return role == Role.CALLER ? new Event.Said(words) : new Event.Noted(words);
  }

  private Role role() {
    return sitting.moment().state().role();
  }
}
