package yett.command.call;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.question.UnsettledDangers;
import yett.command.diagnose.sitting.LongList;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.Text;
import yett.desk.HistoryWorth;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.search.CallPolicy;
import yett.interview.state.CaseState;
import yett.interview.step.Step;
import yett.knowledge.History;
import yett.knowledge.Pressing;

/** Asks how urgent a call is, and what happened at the gate recently. */
final class Circumstances {
  /** How many recent events are offered at first. */
  private static final int LATELY = 7;

  private static final String PICK = "0 for none, numbers, or their words";

  private static final String PICK_EVENTS = "0 for none, or numbers";

  private final Sitting sitting;
  private final Questions questions;
  private final Set<String> offered = new HashSet<>();
  private boolean asked;

  Circumstances(Sitting sitting, Questions questions) {
    this.sitting = sitting;
    this.questions = questions;
  }

  void askPressing(Step.AskPressing step) {
    asked = true;
    List<Pressing> list = step.pressing();
    askPressing(
        list,
        "How urgent is it?",
        "Read out; 0 if none applies.",
        List.of(),
        (ids, texts) -> questions.several(PICK, ids, texts, numbers(list), words(list)));
  }

  /**
   * Asks how urgent it is where a danger alone does not make somebody come at once.
   *
   * @return whether it was asked now
   */
  boolean askOfDanger() {
    CaseState.Told told = sitting.moment().state().told();
    boolean waits = !new UnsettledDangers(sitting).isAtOnce();
    if (waits && told.pressing().isEmpty()) {
      askPressing(new Step.AskPressing(worthAsking()));
      return true;
    }
    return false;
  }

  /**
   * Asks once more how urgent it is if somebody rings again: a gate that was shut this morning may
   * be open tonight.
   *
   * @return whether it was asked now
   */
  boolean askAnew(SaidSince since) {
    CaseState.Told told = sitting.moment().state().told();
    if (asked || !since.isAnotherCall() || told.pressing().isEmpty()) {
      return false;
    }
    asked = true;
    askAnew(told);
    return true;
  }

  /**
   * Asks what a complaint that came later makes worth asking: that the gate stands open is not
   * asked while only a remote control fails.
   *
   * @return whether it was asked now
   */
  boolean askBesides() {
    CaseState.Told told = sitting.moment().state().told();
    if (told.pressing().isEmpty()) {
      return false;
    }
    List<Pressing> list = worthAsking();
    if (offered.isEmpty()) { // asked at an earlier sitting, of the complaints that there are
      list.forEach(p -> offered.add(p.id()));
    }
    List<Pressing> more = list.stream().filter(p -> !offered.contains(p.id())).toList();
    if (more.isEmpty()) {
      return false;
    }
    askPressing(
        more,
        "How urgent is it with that?",
        "Read out; 0 if none applies.",
        told.pressing().get(),
        besideBefore(more));
    return true;
  }

  private void askAnew(CaseState.Told told) {
    List<Pressing> list = worthAsking();
    StillUntold untold = new StillUntold(sitting);
    List<String> numbers =
        list.stream()
            .filter(p -> told.pressing().orElse(List.of()).contains(p.id()))
            .map(p -> number(p).toString())
            .toList();
    askPressing(
        list,
        "How urgent is it now?",
        "It may have changed since they rang. At that time "
            + (untold.isUrgencyUntold()
                ? "nobody could say"
                : numbers.isEmpty() ? "none applied" : "it was " + String.join(", ", numbers))
            + ". Read out again, and type all that apply now; 0 for none.",
        List.of(),
        besideBefore(list));
  }

  /** What the complaints so far make worth asking. */
  private List<Pressing> worthAsking() {
    return CallPolicy.pressing(sitting.base(), sitting.moment().state());
  }

  /** Picks from a list beside which what was answered before may stand. */
  private BiFunction<List<String>, List<String>, Optional<List<Integer>>> besideBefore(
      List<Pressing> list) {
    return (ids, texts) ->
        questions.severalBeside(
            PICK,
            ids,
            texts,
            numbers(list),
            words(list),
            () -> sitting.say("Then it stays as it was."));
  }

  /**
   * @param before what applies already and is not asked about here
   */
  private void askPressing(
      List<Pressing> list,
      String heading,
      String lead,
      List<String> before,
      BiFunction<List<String>, List<String>, Optional<List<Integer>>> pick) {
    List<String> texts = list.stream().map(Pressing::ask).toList();
    List<String> ids = list.stream().map(Pressing::id).toList();
    offered.addAll(ids);
    sitting.show(
        Block.heading(heading),
        Block.paragraph(lead),
        new Block.Numbered(
            list.stream().map(p -> Block.item(number(p).toString(), p.ask())).toList()));
    Optional<List<Integer>> picked = pick.apply(ids, texts);
    if (picked.isEmpty()) {
      return;
    }
    new StillUntold(sitting).urgencyIsTold();
    sitting.record(
        new Event.Pressed(
            Stream.concat(before.stream(), picked.get().stream().map(ids::get)).toList()));
    List<String> now =
        picked.get().stream().flatMap(i -> list.get(i).untilThen().stream()).toList();
    if (!now.isEmpty()) {
      sitting.show(Block.paragraph(Text.strong("Read out:")), Block.numbered(now));
    }
  }

  private Function<String, Optional<List<Integer>>> words(List<Pressing> list) {
    return line -> new SaidUrgency(sitting).in(line, list);
  }

  private List<Integer> numbers(List<Pressing> list) {
    return list.stream().map(this::number).toList();
  }

  /** The same on every call, whatever is left out, so that the desk knows it by heart. */
  private Integer number(Pressing pressing) {
    return List.copyOf(sitting.base().telephone().pressing().keySet()).indexOf(pressing.id()) + 1;
  }

  /**
   * Offers only the events that would tell most about this complaint, so that the list is short
   * enough to read out.
   */
  void askHistory(Step.AskHistory step, Moment moment) {
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
    List<String> texts = new ArrayList<>(offered.stream().map(History::spoken).toList());
    List<String> ids = new ArrayList<>(offered.stream().map(History::id).toList());
    if (more) {
      texts.add("Something else: show the whole list");
      ids.add("something-else");
    }
    LongList list =
        LongList.of(sitting, "Has anything happened at the gate lately?", "Read out.", texts);
    return questions.several(list, PICK_EVENTS, ids, texts);
  }
}
