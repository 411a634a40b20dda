package yett.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.interview.danger.SafeNow;
import yett.interview.evidence.Chance;
import yett.interview.evidence.Trail;
import yett.interview.moment.Moment;
import yett.interview.site.SiteFacts;
import yett.interview.state.CaseState.Answered;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/** Writes what was known before the search: the gate, what was reported, and dangers. */
record StartLines(RuleBase base, Wording words, Moment moment, Outline page) {
  /** How many causes are named before any check. */
  private static final int FIRST = 3;

  void site() {
    page.heading("Site");
    Map<String, String> given = moment.state().told().site();
    new SiteFacts(base)
        .answers(given)
        .forEach(
            (id, answer) ->
                page.item(
                    base.siteQuestions().get(id).name()
                        + ": "
                        + Wording.site(base.siteQuestions().get(id), answer)
                        + usual(answer, given.get(id))));
  }

  /**
   * The remark that the usual answer is assumed. An answer that is not valid counts as not given.
   */
  private static String usual(String answer, String given) {
    if (given == null) {
      return " (the usual)";
    }
    return given.equals(answer) ? "" : " (the usual; what was entered is not an answer)";
  }

  void reported() {
    page.heading("Complaint and history");
    if (moment.state().told().complaints().isEmpty()) {
      page.item("Not asked");
    }
    page.items(
        moment.state().told().complaints().orElse(List.of()).stream()
            .map(words::complaint)
            .toList());
    moment
        .state()
        .told()
        .histories()
        .ifPresent(h -> h.forEach(id -> page.item("Lately: " + words.history(id))));
    Trail trail = moment.trail();
    double[] before =
        trail.moves().stream()
            .filter(m -> m.event() == 0)
            .reduce((a, b) -> b)
            .map(Trail.Move::after)
            .orElse(trail.prior());
    List<String> ids = moment.belief().model().causes();
    String leading =
        IntStream.range(0, before.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -before[i]))
            .limit(FIRST)
            .map(i -> words.cause(ids.get(i)) + " " + Chance.of(before[i]).percent())
            .collect(Collectors.joining("; "));
    page.paragraph("Before any check: " + leading + ".");
  }

  void dangers() {
    Set<String> dangers = words.dangers();
    List<String> lines = new ArrayList<>();
    for (Answered a : moment.state().answers()) {
      if (dangers.contains(a.check())) {
        String since = a.epoch() == 0 ? "" : " (after repair " + a.epoch() + ")";
        lines.add(words.ask(a.check()) + " " + words.answer(a.check(), a.answer()) + since);
      }
    }
    moment.judgement().stops().stream()
        .map(s -> s.stop())
        .distinct()
        .forEach(
            s ->
                lines.add(
                    "STOP: "
                        + words.stop(s)
                        + (SafeNow.is(s, moment, base) ? ", made safe" : ", not yet made safe")));
    page.list("Dangers asked", lines);
  }
}
