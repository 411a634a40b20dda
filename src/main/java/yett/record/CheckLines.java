package yett.record;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import yett.interview.evidence.Chance;
import yett.interview.evidence.Trail;
import yett.interview.evidence.Weight;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState.Answered;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/** Writes the checks of a record: the answer, what it meant, and how it changed the belief. */
record CheckLines(RuleBase base, Wording words, Moment moment, Outline page) {
  /** How many changes of belief are listed for each answer. */
  private static final int MOVES = 3;

  void write() {
    Set<String> dangers = words.dangers();
    List<Answered> answers =
        moment.state().answers().stream()
            .filter(a -> !dangers.contains(a.check()) && !words.isProof(a.check()))
            .filter(a -> a.answer().tells())
            .toList();
    if (answers.isEmpty()) {
      return;
    }
    page.heading("Checks");
    for (int i = 0; i < answers.size(); i++) {
      check(i + 1, answers.get(i));
    }
  }

  private void check(int number, Answered a) {
    String since = a.epoch() == 0 ? "" : " (after repair " + a.epoch() + ")";
    page.item(number, words.ask(a.check()) + since + DoneBy.of(moment.entries()).words(a.by()));
    Check card = base.checks().get(a.check());
    Optional<String> usual = card == null ? Optional.empty() : words.usual(moment, card, a.event());
    page.inner(
        "Answer: "
            + words.answer(a.check(), a.answer())
            + usual.map(u -> "; usual: " + u).orElse(""));
    words.meaning(moment, a).ifPresent(m -> page.inner("Understood as: " + m));
    moment.trail().moves().stream()
        .filter(m -> m.event() == a.event())
        .findFirst()
        .ifPresent(this::moves);
  }

  /** The largest changes among the causes that matter before or after the answer. */
  private void moves(Trail.Move move) {
    double[] before = move.before();
    double[] after = move.after();
    List<String> ids = moment.belief().model().causes();
    IntStream.range(0, before.length)
        .boxed()
        .filter(i -> Math.max(before[i], after[i]) >= CaseRecord.NAMED)
        .filter(i -> Math.abs(Weight.between(before[i], after[i]).decibans()) >= 1)
        .sorted(
            Comparator.comparingDouble(
                i -> -Math.abs(Weight.between(before[i], after[i]).decibans())))
        .limit(MOVES)
        .forEach(
            i -> {
              Weight weight = Weight.between(before[i], after[i]);
              page.inner(
                  Wording.capital(weight.words())
                      + " \""
                      + words.cause(ids.get(i))
                      + "\": "
                      + weight.figure()
                      + ", "
                      + Chance.of(before[i]).percent()
                      + " to "
                      + Chance.of(after[i]).percent());
            });
  }
}
