package yett.shell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yett.interview.Answer;
import yett.interview.Event;
import yett.interview.SiteFacts;
import yett.interview.Step;
import yett.knowledge.SiteQuestion;

/** The gate as installed, all on one page: what is usual or known stands there already. */
final class SiteForm {
  private final Sitting sitting;
  private final Wishes wishes;
  private final Map<String, String> answers;

  /**
   * @param known answers kept from an earlier case at this gate
   */
  SiteForm(Sitting sitting, Wishes wishes, Map<String, String> known) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.answers = new LinkedHashMap<>(known);
    answers.keySet().retainAll(sitting.base().siteQuestions().keySet());
  }

  /** Shows the page until it is accepted or a wish leads elsewhere. */
  void fill() {
    answers.putAll(sitting.moment().state().site());
    while (sitting.moment().step() instanceof Step.AskSite) {
      List<SiteQuestion> questions = new SiteFacts(sitting.base()).questions(answers);
      sitting.show(sitting.views().site(questions, answers));
      String line = sitting.line("Enter if all is right, or a number to change");
      if (line.isBlank()) {
        List<Event> events = new ArrayList<>();
        answers.forEach((q, a) -> events.add(new Event.SiteAnswered(q, a)));
        events.add(new Event.SiteTaken());
        sitting.record(events.toArray(Event[]::new));
      } else if (!wishes.grant(line)) {
        List<Integer> found =
            Words.pick(
                line,
                questions.stream().map(SiteQuestion::id).toList(),
                questions.stream().map(SiteQuestion::name).toList());
        if (found.size() == 1) {
          ask(questions.get(found.get(0)));
        } else {
          sitting.say("Type a number from 1 to " + questions.size() + ", or only Enter.");
        }
      }
    }
  }

  private void ask(SiteQuestion question) {
    sitting.show(
        sitting
            .views()
            .siteQuestion(question, answers.getOrDefault(question.id(), question.usual())));
    String unit = question.measures().map(m -> " in " + m.unitWord()).orElse("");
    while (true) {
      String line = sitting.line("Answer" + unit + ", or Enter to leave it").strip();
      if (line.isEmpty()) {
        return;
      }
      if (question.measures().isPresent()) {
        Words.Heard heard = Words.reading(question.measures().get(), line);
        if (heard.answer().isPresent()) {
          answers.put(question.id(), ((Answer.Read) heard.answer().get()).typed());
          return;
        }
        sitting.say(heard.complaint());
      } else {
        List<String> ids = List.copyOf(question.choices().keySet());
        List<Integer> found = Words.pick(line, ids, List.copyOf(question.choices().values()));
        if (found.size() == 1) {
          answers.put(question.id(), ids.get(found.get(0)));
          return;
        }
        sitting.say("Type a number from 1 to " + ids.size() + ", or only Enter.");
      }
    }
  }
}
