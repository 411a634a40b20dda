package yett.command.diagnose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.command.common.ListChoice;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.interview.Answer;
import yett.interview.Event;
import yett.interview.SiteFacts;
import yett.interview.Step;
import yett.knowledge.SiteQuestion;

/**
 * The gate as installed, all on one page: what is usual or known stands there already. Every line
 * that is changed is stored as soon as it is typed.
 */
public final class SiteForm {
  private final Sitting sitting;
  private final SiteViews views;
  private final Wishes wishes;
  private final Map<String, String> known;

  /**
   * @param known answers kept from an earlier case at this gate
   */
  public SiteForm(Sitting sitting, Wishes wishes, Map<String, String> known) {
    this.sitting = sitting;
    this.views = new SiteViews(sitting.base());
    this.wishes = wishes;
    this.known = known;
  }

  /** Shows the page until it is accepted or a wish leads elsewhere. */
  public void fill() {
    take(known);
    List<SiteQuestion> shown = List.of();
    while (sitting.moment().step() instanceof Step.AskSite) {
      List<SiteQuestion> questions = questions();
      if (!questions.equals(shown)) {
        sitting.show(views.site(questions, answers()));
        shown = questions;
      }
      String line = sitting.line("Enter if all is right, or what differs (? shows all)");
      if (line.isBlank()) {
        sitting.record(new Event.SiteTaken());
      } else if (line.strip().equals("?")) {
        shown = List.of();
      } else if (!wishes.grant(line) && !change(line, questions)) {
        if (!wishes.volunteered().hear(line)) {
          sitting.say(
              "Type what differs (6 m, no loops, 120 V), a number from 1 to "
                  + questions.size()
                  + ", or only Enter.");
        }
      }
    }
  }

  /** Changes lines of the page afterwards, until the person has no more to say. */
  public void correct() {
    sitting.show(views.site(questions(), answers()));
    while (true) {
      List<SiteQuestion> questions = questions();
      String line = sitting.line("What differs, or Enter when all is right");
      if (line.isBlank()) {
        return;
      }
      if (!change(line, questions)) {
        sitting.say("Type what differs (6 m, no loops, 120 V), or a number, or only Enter.");
      }
    }
  }

  private List<SiteQuestion> questions() {
    return new SiteFacts(sitting.base()).questions(answers());
  }

  /** Takes a line that changes something; whether it did. */
  private boolean change(String line, List<SiteQuestion> questions) {
    SiteLine.Heard heard = new SiteLine(questions).read(line);
    if (!heard.said().isEmpty()) {
      heard.said().forEach(this::answer);
      tell(List.copyOf(heard.said().keySet()));
      heard
          .unclear()
          .forEach(part -> sitting.say("\"" + Words.shortened(part) + "\" is not clear."));
      return true;
    }
    List<Integer> found =
        ListChoice.pick(
            line,
            questions.stream().map(SiteQuestion::id).toList(),
            questions.stream().map(SiteQuestion::name).toList());
    if (found.size() == 1) {
      ask(questions.get(found.get(0)));
    }
    return found.size() == 1;
  }

  /** Says how some lines of the page read now. */
  private void tell(List<SiteQuestion> changed) {
    sitting.say(
        changed.stream()
                .map(q -> q.name() + ": " + SiteViews.answer(q, answers().get(q.id())))
                .collect(Collectors.joining("; "))
            + ".");
  }

  /** Takes over what is known and has not been said otherwise in this case. */
  private void take(Map<String, String> known) {
    Event[] news =
        known.entrySet().stream()
            .filter(e -> sitting.base().siteQuestions().containsKey(e.getKey()))
            .filter(e -> !answers().containsKey(e.getKey()))
            .map(e -> new Event.SiteAnswered(e.getKey(), e.getValue()))
            .toArray(Event[]::new);
    if (news.length > 0) {
      sitting.record(news);
    }
  }

  private Map<String, String> answers() {
    return sitting.moment().state().told().site();
  }

  private void answer(SiteQuestion question, String answer) {
    sitting.record(new Event.SiteAnswered(question.id(), answer));
  }

  private void ask(SiteQuestion question) {
    sitting.show(views.question(question, answers().getOrDefault(question.id(), question.usual())));
    String unit = question.measures().map(m -> " in " + m.unitWord()).orElse("");
    sitting
        .until("Answer" + unit + ", or Enter to leave it", line -> read(question, line))
        .ifPresent(
            answer -> {
              answer(question, answer);
              tell(List.of(question));
            });
  }

  /** Empty to leave it as it is. */
  private static Prompt.Reading<Optional<String>> read(SiteQuestion question, String line) {
    if (line.isEmpty()) {
      return Prompt.Reading.of(Optional.empty());
    }
    if (question.measures().isPresent()) {
      Words.Heard heard = Words.reading(question.measures().get(), line);
      Optional<Answer.Read> reading = heard.answer().flatMap(Answer::reading);
      return reading.isPresent()
          ? Prompt.Reading.of(reading.map(Answer.Read::typed))
          : Prompt.Reading.again(heard.complaint());
    }
    List<String> ids = List.copyOf(question.choices().keySet());
    List<Integer> found = ListChoice.pick(line, ids, List.copyOf(question.choices().values()));
    return found.size() == 1
        ? Prompt.Reading.of(Optional.of(ids.get(found.get(0))))
        : Prompt.Reading.again("Type a number from 1 to " + ids.size() + ", or only Enter.");
  }
}
