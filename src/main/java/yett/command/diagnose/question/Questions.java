package yett.command.diagnose.question;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.command.common.CannotTellWords;
import yett.command.common.HeardAnswer;
import yett.command.common.ListChoice;
import yett.command.common.NoneWords;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.command.diagnose.answer.Difference;
import yett.command.diagnose.answer.ForceEntry;
import yett.command.diagnose.answer.TooGood;
import yett.command.diagnose.answer.TwoReadings;
import yett.command.diagnose.answer.UnitSlip;
import yett.command.diagnose.answer.Wandering;
import yett.command.diagnose.answer.WanderingReading;
import yett.command.diagnose.sitting.Choices;
import yett.command.diagnose.sitting.LongList;
import yett.command.diagnose.sitting.Sitting;
import yett.command.diagnose.told.AboutAsked;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.rules.Conclusion.Expectation;
import yett.wording.Wording;

/**
 * Prompts that return an answer. If a request leads to another step instead, they return empty, and
 * the conversation looks at the case again.
 */
public final class Questions {
  /** Words from which a line is a sentence, not an answer with a slip in it. */
  private static final int SENTENCE = 4;

  private final Sitting sitting;
  private final PromptRequests wishes;
  private final ForceEntry forces;

  public Questions(Sitting sitting, PromptRequests wishes) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.forces = new ForceEntry(sitting);
  }

  /** Waits until the steps of a stop are done, and stores that. */
  public void madeSafe(Step.MakeSafe step) {
    word(
            "\"done\" when it is done; \"correct\" if the answer was wrong",
            List.of("done"),
            "People first. Type done when these steps are done.")
        .ifPresent(i -> sitting.record(step.done()));
  }

  /**
   * Reads the answer to a check; empty if the line was a request, or if it could not be read, which
   * is said.
   */
  public Optional<Answer> answer(Check check, String line) {
    if (line.strip().equalsIgnoreCase("how")) {
      sitting.say(check.how().isEmpty() ? "There are no further instructions." : check.how());
      return Optional.empty();
    }
    Optional<Answer> untold = CannotTellWords.answer(line);
    if (untold.isPresent()) {
      return untold;
    }
    if (forces.take(check, line) || wishes.grant(line)) {
      return Optional.empty();
    }
    Optional<TwoReadings> two = TwoReadings.of(check, line);
    if (two.isPresent()) {
      return Optional.of(columns(two.get()));
    }
    Optional<WanderingReading> wandering = WanderingReading.of(check, line);
    if (wandering.isPresent()) {
      return new Wandering(sitting).take(check, wandering.get());
    }
    HeardAnswer heard =
        HeardAnswer.to(check, line, sitting.moment().judgement().expectation(check.id()));
    Optional<Answer.Chosen> about =
        heard.answer().isPresent() ? Optional.empty() : new AboutAsked(sitting).answer(check, line);
    if (about.isPresent()) {
      Optional<Answer> confirmed =
          new Choices(sitting)
              .confirm(
                  about.stream().toList(), a -> Wording.capital(Wording.meaning(check, a)) + ".")
              .map(a -> a);
      return forces.forbids(check, confirmed) ? Optional.empty() : confirmed;
    }
    if (wishes.volunteered().hearElsewhere(check, line)) {
      return Optional.empty();
    }
    if (heard.answer().isEmpty()) {
      refuse(check, line, heard.complaint());
    }
    Optional<Expectation> usual = sitting.moment().judgement().expectation(check.id());
    Optional<Answer> meant =
        heard
            .answer()
            .flatMap(a -> new UnitSlip(sitting).meant(check, a, usual))
            .filter(a -> new TooGood(sitting).isMeant(check, a, usual));
    return forces.forbids(check, meant) ? Optional.empty() : meant;
  }

  /** Keeps both readings, and what their difference says; returns the one that is judged. */
  private Answer columns(TwoReadings two) {
    Moment moment = sitting.moment();
    List<String> unusual = two.unusual(moment.judgement().expectation(two.check().id()));
    sitting.record(two.noted());
    new Difference(sitting.base(), moment).by(two.columns(), unusual).ifPresent(sitting::record);
    return two.judged();
  }

  /** Says why a line is no answer. A sentence says something all the same, so it is kept. */
  private void refuse(Check check, String line, String complaint) {
    if (wishes.volunteered().isOtherReading(check, line)) {
      sitting.say(complaint + " To tell what another check asks for: tell " + line.strip() + ".");
    } else if (line.strip().split("\\s+").length >= SENTENCE) {
      wishes.volunteered().keep(line.strip());
      sitting.say(complaint + " Your words are kept as a note.");
    } else {
      sitting.say(complaint);
    }
  }

  /**
   * Closes the case, unless the person goes back.
   *
   * @param what the name of the case in the question
   */
  public boolean close(String what, Ending ending) {
    OptionalInt closed =
        word(
            "\"close\" to close the " + what + " as " + ending.words() + ", or back",
            List.of("close"),
            "Type close, or back to take the last answer back.");
    closed.ifPresent(i -> sitting.record(new Event.Closed(ending)));
    return closed.isPresent();
  }

  /** Asks about the dangers of which these complaints tell, unless that was done. */
  public void hearComplaints(List<String> complaints) {
    wishes.volunteered().hearComplaints(complaints);
  }

  /** Asks about the dangers of which these complaints tell, which came after a repair. */
  public void hearDangersOf(List<String> complaints) {
    wishes.volunteered().hearNewComplaints(complaints);
  }

  /**
   * Asks for one entry of a list, by number, id or the beginning of a word. Similar words choose
   * nothing, because the choice is not read back: "charging current 0 A" is no new charger.
   */
  public OptionalInt one(String prompt, List<String> ids, List<String> texts, String refusal) {
    return position(
        prompt,
        line -> {
          ListChoice.Several named = ListChoice.several(line, ids, texts);
          return named.unclear().isEmpty() ? named.positions() : List.of();
        },
        refusal);
  }

  /**
   * Asks for one of several words and returns its position. An empty word stands for Enter alone.
   */
  public OptionalInt word(String prompt, List<String> words, String refusal) {
    return position(
        prompt,
        line -> Prompt.word(line.strip().replaceFirst("[.!,]$", ""), words).stream().toList(),
        refusal);
  }

  /** Asks until a line names exactly one entry, or a request has changed the case. */
  private OptionalInt position(
      String prompt, Function<String, List<Integer>> meant, String refusal) {
    return meant(
            prompt,
            line -> Optional.of(meant.apply(line)).filter(f -> f.size() == 1).map(f -> f.get(0)),
            refusal)
        .map(OptionalInt::of)
        .orElse(OptionalInt.empty());
  }

  /** Asks until a line means something, or a request has changed the case. */
  public <T> Optional<T> meant(
      String prompt, Function<String, Optional<T>> meaning, String refusal) {
    Moment before = sitting.moment();
    while (true) {
      String line = sitting.line(prompt);
      Optional<T> found = meaning.apply(line);
      if (found.isPresent()) {
        return found;
      }
      if (!wishes.grantOrHear(line)) {
        sitting.say(refusal);
      } else if (sitting.moment() != before) {
        return Optional.empty();
      }
    }
  }

  /** Asks for any number of entries of a list that was shown before, in one line; 0 means none. */
  public Optional<List<Integer>> several(String prompt, List<String> ids, List<String> texts) {
    return picked(Optional.empty(), prompt, new Entries(ids, texts), false);
  }

  /**
   * The same for a list of which some numbers are left out.
   *
   * @param words finds the entries that other words mean; empty if they mean none
   */
  public Optional<List<Integer>> several(
      String prompt,
      List<String> ids,
      List<String> texts,
      List<Integer> numbers,
      Function<String, Optional<List<Integer>>> words) {
    return picked(
        Optional.empty(), prompt, new Entries(ids, texts, numbers, words), false, Optional.empty());
  }

  /**
   * The same for a list that does not belong to the step: who cannot say answers this question
   * only, not that of the step.
   *
   * @param words finds the entries that other words mean; empty if they mean none
   * @param untold what is done then; empty is returned
   */
  public Optional<List<Integer>> severalBeside(
      String prompt,
      List<String> ids,
      List<String> texts,
      List<Integer> numbers,
      Function<String, Optional<List<Integer>>> words,
      Runnable untold) {
    return beside(prompt, new Entries(ids, texts, numbers, words), untold);
  }

  /** The same for a list, numbered from 1, that only reads back what was said: Enter is none. */
  public Optional<List<Integer>> severalOrNone(
      String prompt, List<String> ids, List<String> texts, Runnable untold) {
    return beside(prompt, new Entries(ids, texts, true), untold);
  }

  private Optional<List<Integer>> beside(String prompt, Entries entries, Runnable untold) {
    return picked(Optional.empty(), prompt, entries, false, Optional.of(untold));
  }

  /** The same for a list that is shown here first, a page at a time. */
  public Optional<List<Integer>> several(
      LongList list, String prompt, List<String> ids, List<String> texts) {
    list.show();
    return picked(Optional.of(list), prompt, new Entries(ids, texts), false);
  }

  /** The same for a question within another one: back leads to the other one, and no further. */
  public Optional<List<Integer>> severalWithin(
      LongList list, String prompt, List<String> ids, List<String> texts) {
    list.show();
    return picked(Optional.of(list), prompt, new Entries(ids, texts), true);
  }

  /**
   * The entries of a list, each with its number.
   *
   * @param none whether Enter alone says that none applies
   * @param words finds the entries that other words mean
   */
  private record Entries(
      List<String> ids,
      List<String> texts,
      List<Integer> numbers,
      boolean none,
      Function<String, Optional<List<Integer>>> words) {
    Entries(List<String> ids, List<String> texts) {
      this(ids, texts, false);
    }

    Entries(List<String> ids, List<String> texts, boolean none) {
      this(
          ids,
          texts,
          IntStream.rangeClosed(1, ids.size()).boxed().toList(),
          none,
          line -> Optional.empty());
    }

    Entries(
        List<String> ids,
        List<String> texts,
        List<Integer> numbers,
        Function<String, Optional<List<Integer>>> words) {
      this(ids, texts, numbers, false, words);
    }

    boolean isNone(String line) {
      return NoneWords.isSaid(line) || none && line.isEmpty();
    }

    ListChoice.Several in(String line) {
      return ListChoice.several(line, ids, texts, numbers);
    }

    String toType() {
      boolean all = numbers.get(numbers.size() - 1) == numbers.size();
      return all && numbers.size() > 1
          ? "numbers from 1 to " + numbers.size()
          : numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
  }

  private Optional<List<Integer>> picked(
      Optional<LongList> list, String prompt, Entries entries, boolean within) {
    return picked(list, prompt, entries, within, Optional.empty());
  }

  private Optional<List<Integer>> picked(
      Optional<LongList> list,
      String prompt,
      Entries entries,
      boolean within,
      Optional<Runnable> untold) {
    Moment before = sitting.moment();
    while (true) {
      String line = sitting.line(list.map(l -> l.prompt(prompt)).orElse(prompt));
      if (list.isPresent() && list.get().turns(line)) {
        continue;
      }
      if (within && Words.isBack(line)) {
        return Optional.empty();
      }
      if (untold.isPresent() && isUntold(line)) {
        untold.get().run();
        return Optional.empty();
      }
      if (wishes.grant(line)) {
        if (list.isEmpty() || sitting.moment() != before) {
          return Optional.empty();
        }
        list.get().show();
        continue;
      }
      String text = line.strip();
      if (entries.isNone(text)) {
        return Optional.of(List.of());
      }
      if (text.equalsIgnoreCase("list")) {
        list.ifPresentOrElse(
            LongList::show,
            () ->
                sitting.say(
                    "The whole list is shown above. Type numbers from it, or other words."));
        continue;
      }
      ListChoice.Several picked = entries.in(text);
      if (!text.isEmpty() && picked.unclear().isEmpty()) {
        return Optional.of(picked.positions());
      }
      Optional<List<Integer>> meant =
          text.isEmpty() ? Optional.empty() : entries.words().apply(text);
      if (meant.isPresent()) {
        return meant;
      }
      if (wishes.volunteered().hear(line)) {
        return Optional.empty();
      }
      sitting.say(
          picked.unclear().map(part -> Words.quoted(part) + " is not understood. ").orElse("")
              + (entries.none() ? "Press Enter for none, or type " : "Type 0 for none, or ")
              + entries.toType()
              + (entries.ids().size() > 1 ? " separated by spaces." : "."));
    }
  }

  private static boolean isUntold(String line) {
    return line.strip().equalsIgnoreCase("d") || CannotTellWords.answer(line).isPresent();
  }
}
