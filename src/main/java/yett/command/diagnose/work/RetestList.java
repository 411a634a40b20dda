package yett.command.diagnose.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.LongList;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.Telephone;

/**
 * Asks how the try of the gate went: whether it runs and, if not, which reported complaints remain
 * and which are new.
 */
public final class RetestList {
  /** Asks a caller how it went after a repair, whose last step may have been a run. */
  public static final String SEEN_OR_TRIED =
      "Does it run as it should now? If you have watched it open once and close once since, that"
          + " counts. If not, see that nobody holds it or leans on it, stand to the side, with nobody"
          + " in the opening, let it do what is missing, and watch.";

  private static final String PART = "part";
  private static final String OTHER = "other";

  private final Sitting sitting;
  private final Questions questions;
  private final List<String> words = new ArrayList<>();
  private final List<String> texts = new ArrayList<>();

  public RetestList(Sitting sitting, Questions questions) {
    this.sitting = sitting;
    this.questions = questions;
  }

  /**
   * Asks, and stores the answer.
   *
   * @param what what to try, to be read out or done
   * @param refusal added to the message if the answer is none of the lines
   */
  public void ask(List<Block> what, String refusal) {
    List<Check> reported = reported();
    words.clear(); // this object is used again for every try
    texts.clear();
    lines(reported.size());
    List<Block> blocks = new ArrayList<>(what);
    blocks.add(Block.numbered(texts));
    sitting.show(blocks.toArray(Block[]::new));
    String advice = "Type the number of the line that says how it went, 1 to " + words.size() + ".";
    questions.one("Answer", words, texts, advice + refusal).stream()
        .boxed()
        .flatMap(i -> tried(words.get(i), reported).stream())
        .findFirst()
        .ifPresent(this::record);
  }

  private void record(List<Event> events) {
    sitting.record(events.toArray(Event[]::new));
    List<String> anew =
        events.stream()
            .filter(Event.Retested.class::isInstance)
            .flatMap(e -> ((Event.Retested) e).anew().stream())
            .toList();
    questions.hearDangersOf(anew);
  }

  /** A caller was asked for one run each way, which is what the proof asks for. */
  private List<Event> ranOnTheTelephone() {
    Event.Retested runs = new Event.Retested(true);
    Check proof = sitting.base().checks().get(Telephone.USUAL_RUN);
    return proof == null
        ? List.of(runs)
        : List.of(runs, new Event.Answered(proof.id(), new Answer.Chosen(Check.PASS)));
  }

  private List<Check> reported() {
    CaseState.Told told = sitting.moment().state().told();
    return told.complaints().orElse(List.of()).stream()
        .map(sitting.base().checks()::get)
        .filter(c -> c != null)
        .toList();
  }

  /**
   * Adds the possible answers. Without reported complaints there are none for complaints that
   * remain.
   */
  private void lines(int reported) {
    line("yes", "it runs as it should");
    if (reported > 0) {
      line("same", "same fault as reported");
      if (reported > 1) {
        line(PART, "better, but some of it is left");
      }
      line(OTHER, "it fails in another way now");
    }
    line("no", reported > 0 ? "it still fails, hard to say how" : "it still fails");
  }

  private void line(String word, String text) {
    words.add(word);
    texts.add(text);
  }

  private Optional<List<Event>> tried(String word, List<Check> reported) {
    boolean atTheGate = sitting.moment().state().role() != Role.CALLER;
    if (word.equals("yes") && atTheGate) {
      return new StillThere(sitting, questions).afterRun();
    }
    if (word.equals("yes")) {
      return Optional.of(ranOnTheTelephone());
    }
    Optional<Event.Retested> tried =
        switch (word) {
          case "same" -> Optional.of(new Event.Retested(false, Optional.of(true)));
          case PART -> part(reported);
          case OTHER -> anew(reported).map(other -> Event.Retested.left(List.of(), other));
          default -> Optional.of(new Event.Retested(false));
        };
    return tried.map(List::of);
  }

  private Optional<Event.Retested> part(List<Check> reported) {
    return pick("What is left?", "Pick all that it still does.", reported)
        .map(
            left ->
                left.isEmpty() || left.size() == reported.size()
                    ? new Event.Retested(false, Optional.of(!left.isEmpty()))
                    : Event.Retested.left(left, List.of()));
  }

  private Optional<List<String>> anew(List<Check> reported) {
    List<Check> others =
        sitting.base().complaints().stream().filter(c -> !reported.contains(c)).toList();
    return pick("What does it do now?", "Pick all that is new; 0 if none of it fits.", others);
  }

  private Optional<List<String>> pick(String title, String how, List<Check> complaints) {
    List<String> names = complaints.stream().map(Check::ask).toList();
    List<String> ids = complaints.stream().map(Check::id).toList();
    return questions
        .severalWithin(
            LongList.of(sitting, title, how, names), "0 for none, or numbers", ids, names)
        .map(picked -> picked.stream().map(ids::get).toList());
  }
}
