package yett.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import yett.interview.moment.Moment;
import yett.interview.site.SiteFacts;
import yett.interview.state.CaseState;
import yett.interview.state.CaseState.Answered;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.wording.Wording;

/** Writes what was reported, and what was asked and answered since. */
final class ToldLines {
  private final RuleBase base;
  private final Wording words;
  private final Moment moment;
  private final CaseState state;
  private final Outline page;

  ToldLines(RuleBase base, Wording words, Moment moment, Outline page) {
    this.base = base;
    this.words = words;
    this.moment = moment;
    this.state = moment.state();
    this.page = page;
  }

  /**
   * @param briefly whether to list only answers that were out of the ordinary
   */
  void write(boolean briefly) {
    reported(briefly);
    if (briefly) {
      outOfTheOrdinary();
    } else {
      asked();
    }
  }

  private void reported(boolean briefly) {
    List<String> lines = new ArrayList<>();
    state.told().complaints().orElse(List.of()).forEach(c -> lines.add(words.complaint(c)));
    state
        .told()
        .histories()
        .orElse(List.of())
        .forEach(h -> lines.add("Lately: " + words.history(h)));
    List<String> site = site(briefly);
    if (briefly && !site.isEmpty()) {
      lines.add(String.join("; ", site) + ". All else is as usual, told or assumed.");
    } else {
      lines.addAll(site);
    }
    page.list("What was reported", lines);
  }

  /**
   * The details of the gate.
   *
   * @param briefly whether to list only details that differ from the usual
   */
  private List<String> site(boolean briefly) {
    List<String> lines = new ArrayList<>();
    Map<String, String> told = state.told().site();
    SiteFacts facts = new SiteFacts(base);
    facts
        .answers(told)
        .forEach(
            (id, answer) -> {
              SiteQuestion question = base.siteQuestions().get(id);
              boolean news = !briefly || !question.same(answer, facts.usual(question, told));
              if (answer.equals(told.get(id)) && news) {
                lines.add(question.name() + ": " + Wording.site(question, answer));
              }
            });
    return lines;
  }

  private void asked() {
    List<String> lines = new ArrayList<>();
    for (Answered a : state.answers()) {
      String line = words.ask(a.check()) + " " + words.answer(a.check(), a.answer());
      String since = a.epoch() == 0 ? "" : " (after repair " + a.epoch() + ")";
      lines.add(line + words.meaning(moment, a).map(m -> ": " + m).orElse("") + since);
    }
    page.list("What was asked", lines);
  }

  /**
   * Lists looks that were out of the ordinary. Readings are left out, because they are in a table
   * with their ranges.
   */
  private void outOfTheOrdinary() {
    List<String> lines = new ArrayList<>();
    int others = 0;
    for (Answered a : state.answers()) {
      boolean telling = words.isProof(a.check()) ? !a.answer().is(Check.PASS) : !isOrdinary(a);
      if (a.answer().reading().isEmpty() && telling) {
        lines.add(words.ask(a.check()) + " " + words.answer(a.check(), a.answer()));
      } else {
        others++;
      }
    }
    page.list("What was out of the ordinary or not known", lines);
    page.paragraph("Also asked or measured: " + others + ".");
  }

  private boolean isOrdinary(Answered a) {
    Check check = base.checks().get(a.check());
    return check != null && a.answer().choice().filter(c -> check.indexOf(c) == 0).isPresent();
  }
}
