package yett.command.diagnose.site;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.command.common.CannotTellWords;
import yett.command.common.HeardAnswer;
import yett.command.common.ListChoice;
import yett.command.common.NoneWords;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.command.diagnose.sitting.Choices;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.site.SiteFacts;
import yett.knowledge.SiteQuestion;

/** Reads details of the gate as installed, stores them as typed, and shows them back. */
public final class SiteEntry {
  private static final String NONE = "none";

  private final Sitting sitting;
  private final SiteViews views;

  public SiteEntry(Sitting sitting) {
    this.sitting = sitting;
    this.views = new SiteViews(sitting.base());
  }

  /** The screens that show the gate. */
  public SiteViews views() {
    return views;
  }

  /** The questions that make sense for this gate, by what was answered so far. */
  public List<SiteQuestion> questions() {
    return new SiteFacts(sitting.base()).questions(answers());
  }

  /** What was answered so far, by the id of the question. */
  public Map<String, String> answers() {
    return sitting.moment().state().told().site();
  }

  /** Shows these questions a line each, and a page at a time. */
  public void list(List<SiteQuestion> questions) {
    sitting.screen(views.list(questions, answers()));
  }

  /** Lets the person change lines of the page later, until they are finished. */
  public void correct() {
    list(questions());
    while (true) {
      List<SiteQuestion> questions = questions();
      String line = sitting.line("Type what differs, or press Enter when all is right");
      if (line.isBlank()) {
        return;
      }
      if (!change(line, questions)) {
        sitting.say("Type what differs (6 m, no loops, 120 V), or a number, or just press Enter.");
      }
    }
  }

  /**
   * Takes a line that changes something; returns whether it did.
   *
   * @param page the questions that a number refers to; any question can be changed by its name
   */
  public boolean change(String line, List<SiteQuestion> page) {
    if (page.size() == 1 && NoneWords.isSaid(line)) {
      return none(line, page.get(0));
    }
    SiteLine.Heard heard = new SiteLine(inOrder(page), page.size()).read(line);
    if (!heard.said().isEmpty()) {
      List<SiteQuestion> meant =
          heard.said().keySet().stream()
              .filter(q -> !heard.guessed().contains(q) || isMeant(q, heard.said().get(q)))
              .toList();
      meant.forEach(q -> answer(q, heard.said().get(q)));
      if (!meant.isEmpty()) {
        tell(meant);
      }
      heard.unclear().forEach(this::askWhatIsNamed);
      return true;
    }
    Optional<SiteQuestion> named = named(line, line.strip().matches("\\d+") ? page : questions());
    named.ifPresent(this::ask);
    return named.isPresent();
  }

  /**
   * Where one detail is shown: "none" is an answer, and "no" says that what is shown is wrong. So
   * may 0, which elsewhere says that all is right.
   */
  private boolean none(String line, SiteQuestion question) {
    boolean said =
        !line.strip().matches("(?i)0|no?|nope|nah") && question.choices().containsKey(NONE);
    if (said) {
      answer(question, NONE);
      tell(List.of(question));
    } else {
      ask(question);
    }
    return true;
  }

  /**
   * The only one of these questions that a line names: by its number, or by words that are all of
   * its name. Among other words a name does not count: "closes ok" is no word about the slope.
   */
  private static Optional<SiteQuestion> named(String line, List<SiteQuestion> questions) {
    Optional<Integer> number = Prompt.number(line.strip(), questions.size());
    if (number.isPresent()) {
      return number.map(n -> questions.get(n - 1));
    }
    Set<String> words = SiteWords.of(SiteWords.plain(line));
    List<SiteQuestion> same =
        questions.stream().filter(q -> SiteWords.of(q.id()).equals(words)).toList();
    List<SiteQuestion> found =
        same.isEmpty() && !words.isEmpty()
            ? questions.stream().filter(q -> isNamed(q, words)).toList()
            : same;
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }

  /** Whether all of the words begin words of the name of this question. */
  private static boolean isNamed(SiteQuestion question, Set<String> words) {
    Set<String> name = SiteWords.of(question.id() + " " + question.name());
    return words.stream().allMatch(w -> name.stream().anyMatch(n -> n.startsWith(w)));
  }

  /** Asks for the detail that a part of a line names without saying how it is. */
  private void askWhatIsNamed(String part) {
    named(part, questions())
        .ifPresentOrElse(this::ask, () -> sitting.say(Words.quoted(part) + " is not understood."));
  }

  /** Whether a reading without a name, such as "1c", is meant for a detail nobody asked for. */
  private boolean isMeant(SiteQuestion question, String answer) {
    String shown = question.name() + ": " + question.said(answer) + ".";
    return new Choices(sitting).confirm(List.of(question), q -> shown).isPresent();
  }

  /**
   * All questions, those of the page first. A reading without a name belongs to the first one that
   * could have it.
   */
  private List<SiteQuestion> inOrder(List<SiteQuestion> page) {
    return Stream.concat(page.stream(), questions().stream().filter(q -> !page.contains(q)))
        .toList();
  }

  /** Shows the changed lines of the page. */
  private void tell(List<SiteQuestion> changed) {
    sitting.say(
        changed.stream()
                .map(q -> q.name() + ": " + q.said(answers().get(q.id())))
                .collect(Collectors.joining("; "))
            + ".");
  }

  /**
   * Events that store the usual answers as given. From then on they count as known of this gate.
   */
  public List<Event> asUsual(List<SiteQuestion> questions) {
    return questions.stream()
        .filter(q -> !answers().containsKey(q.id()))
        .<Event>map(q -> new Event.SiteAnswered(q.id(), now(q)))
        .toList();
  }

  /** The answer given, or the usual one for such a gate. */
  private String now(SiteQuestion question) {
    return new SiteFacts(sitting.base())
        .answers(answers())
        .getOrDefault(question.id(), question.usual());
  }

  private void answer(SiteQuestion question, String answer) {
    sitting.record(new Event.SiteAnswered(question.id(), answer));
  }

  private void ask(SiteQuestion question) {
    sitting.show(views.question(question, now(question)));
    String unit =
        question
            .measures()
            .filter(m -> !m.unitWord().isEmpty())
            .map(m -> " in " + m.unitWord())
            .orElse("");
    sitting
        .until("Answer" + unit + ", or Enter to leave it", line -> read(question, line))
        .ifPresent(
            answer -> {
              answer(question, answer);
              tell(List.of(question));
            });
  }

  /** Reads an answer; its value is empty if the line leaves it as it is. */
  private static Prompt.Reading<Optional<String>> read(SiteQuestion question, String line) {
    if (line.isEmpty() || Words.isBack(line) || CannotTellWords.answer(line).isPresent()) {
      return Prompt.Reading.of(Optional.empty());
    }
    if (question.measures().isPresent()) {
      HeardAnswer heard =
          HeardAnswer.reading(question.measures().get(), line, question.said(question.usual()));
      Optional<Answer.Read> reading = heard.answer().flatMap(Answer::reading);
      return reading.isPresent()
          ? Prompt.Reading.of(reading.map(Answer.Read::typed))
          : Prompt.Reading.again(heard.complaint());
    }
    List<String> ids = List.copyOf(question.choices().keySet());
    List<Integer> found = ListChoice.pick(line, ids, List.copyOf(question.choices().values()));
    return found.size() == 1
        ? Prompt.Reading.of(Optional.of(ids.get(found.get(0))))
        : Prompt.Reading.again("Type a number from 1 to " + ids.size() + ", or just press Enter.");
  }
}
