package yett.command.call;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yett.command.common.ComplaintNames;
import yett.command.common.Words;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.LongList;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.Text;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.SetUp;
import yett.saying.Sayings;

/** Offers the complaints that the caller's words most probably mean, for the caller to confirm. */
record ComplaintChoice(Sitting sitting, PromptRequests wishes, Questions questions) {
  private static final int OFFERED = 5;

  private static final String NONE_FITS =
      "Type the numbers that apply, or d if nothing fits or they can't say.";

  /**
   * Offers what was understood. Any line that does not choose from it counts as further words of
   * the caller.
   */
  void ask(Step.AskComplaints step) {
    Optional<Check> named = named(step);
    if (named.isPresent()) {
      sitting.say("Understood: " + named.get().spoken() + ".");
      complained(List.of(named.get()));
      return;
    }
    List<Check> offered = offered(step);
    if (offered.isEmpty()) {
      pick(step.complaints(), "Those words were not recognised. What is it most like?");
      return;
    }
    sitting
        .ears()
        .withoutMeanings()
        .ifPresent(why -> sitting.say("Understood by words alone: " + why + "."));
    sitting.show(
        Block.heading("Understood"),
        Block.paragraph(
            "Most probable first. Read out what may fit, and let the caller confirm it."),
        Block.numbered(offered.stream().map(Check::spoken).toList()));
    while (true) {
      String line =
          sitting
              .line("Numbers that apply, list for all, d if they can't say, or other words")
              .strip();
      if (line.toLowerCase(Locale.ROOT).matches("list|0|none|no")) {
        pick(step.complaints(), "Everything people call about");
        return;
      }
      if (wishes.grant(line)) {
        return;
      }
      if (line.matches("[\\d\\s,;]+")) {
        Optional<List<Integer>> picked = numbers(line, offered.size());
        if (picked.isPresent()) {
          complained(picked.get().stream().map(offered::get).toList());
          return;
        }
        sitting.say("Type numbers from 1 to " + offered.size() + ", or list.");
      } else if (Words.isPrompted(line)) {
        sitting.say(NONE_FITS);
      } else if (!line.isEmpty()) {
        sitting.record(new Event.Said(line));
        return;
      }
    }
  }

  /** The complaint whose exact name was typed last; then no similar ones are offered. */
  private Optional<Check> named(Step.AskComplaints step) {
    List<String> said = sitting.moment().state().told().said();
    return said.isEmpty()
        ? Optional.empty()
        : new ComplaintNames(step.complaints()).named(said.get(said.size() - 1));
  }

  private List<Check> offered(Step.AskComplaints step) {
    Set<Check> offered = new LinkedHashSet<>();
    List<String> said = sitting.moment().state().told().said();
    if (!said.isEmpty()) {
      sitting.ears().complaints().hear(String.join(". ", said), OFFERED).stream()
          .map(Sayings.Heard::complaint)
          .filter(step.complaints()::contains)
          .forEach(offered::add);
    }
    return List.copyOf(offered);
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

  private void pick(List<Check> complaints, String heading) {
    List<String> texts = complaints.stream().map(Check::spoken).toList();
    List<String> ids = complaints.stream().map(Check::id).toList();
    LongList list = LongList.of(sitting, heading, "Read out what may fit.", texts);
    Optional<List<Integer>> picked =
        questions.several(list, "Numbers, or d if nothing fits", ids, texts);
    if (picked.isPresent() && picked.get().isEmpty()) {
      sitting.say(NONE_FITS);
    } else if (picked.isPresent()) {
      complained(picked.get().stream().map(complaints::get).toList());
    }
  }

  /**
   * A gate that must not run by what was said is left as it is from now on, not from the end of the
   * call on.
   */
  private void complained(List<Check> complaints) {
    List<String> ids = complaints.stream().map(Check::id).toList();
    sitting.record(new Event.Complained(ids));
    if (sitting.moment().judgement().forbidden().contains(SetUp.GATE_RUNNING)) {
      List<String> now =
          ids.stream()
              .flatMap(
                  c -> sitting.base().telephone().untilThen().getOrDefault(c, List.of()).stream())
              .toList();
      if (!now.isEmpty()) {
        sitting.show(Block.paragraph(Text.strong("Read out:")), Block.numbered(now));
      }
    }
    wishes.volunteered().hearComplaints(ids);
  }
}
