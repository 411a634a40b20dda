package yett.command.call;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.Sitting;
import yett.command.diagnose.told.ToldAndConfirmed;
import yett.console.Block;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.Telephone;
import yett.saying.Heard;
import yett.saying.Tellings;
import yett.saying.Thing;

/**
 * Reads back what a caller has said besides the complaint. What the caller confirms counts as an
 * answer, so that it is not asked again.
 */
final class SaidBesides {
  /**
   * Least weight of words that are read back. It is low, because a wrong one costs only a line to
   * read.
   */
  private static final double CLEAR = 0.5;

  /**
   * Words that fit an outcome by this much less than a complaint already taken are only another
   * form of that complaint.
   */
  private static final double LESS = 0.1;

  private static final int MOST = 4;

  private final Sitting sitting;
  private final Questions questions;
  private final Predicate<String> over;
  private final ToldAndConfirmed takenUp;
  private final UnheardSentences unheard;
  private boolean again;

  /**
   * @param over whether words say that the gate works again; then they describe the past and answer
   *     nothing
   */
  SaidBesides(Sitting sitting, Questions questions, Predicate<String> over) {
    this.sitting = sitting;
    this.questions = questions;
    this.over = over;
    this.takenUp = new ToldAndConfirmed(sitting);
    this.unheard = new UnheardSentences(sitting);
  }

  /**
   * Begins another call about the case. Of the earlier one nothing is read back any more; in this
   * one a complaint may be new, which nothing else asks for.
   */
  void ringsAgain() {
    again = true;
    unheard.next();
  }

  /**
   * Reads back what was said since the last time.
   *
   * @return whether some of it was confirmed, or the person made a request
   */
  boolean ask() {
    List<Thing> things = things(unheard.next());
    if (things.isEmpty()) {
      return false;
    }
    List<String> texts = things.stream().map(this::words).toList();
    sitting.show(
        Block.heading("Was this said as well?"),
        Block.paragraph(
            "The caller's words may mean this. Read it back, and type the numbers that the"
                + " caller confirms."),
        Block.numbered(texts));
    Optional<List<Integer>> picked =
        questions.severalOrNone(
            "Numbers, or Enter for none",
            things.stream().map(Thing::card).toList(),
            texts,
            () -> sitting.say("Then none of it counts."));
    picked.ifPresent(p -> take(p.stream().map(things::get).toList()));
    return picked.map(p -> !p.isEmpty()).orElse(true);
  }

  /** Complaints go last and together, because a danger is asked about after them. */
  private void take(List<Thing> confirmed) {
    confirmed.stream()
        .filter(this::isOpenLook) // one may have settled another
        .forEach(t -> takenUp.answer(t.card(), answer(t)));
    List<Thing> complaints = confirmed.stream().filter(this::isNewComplaint).toList();
    if (!complaints.isEmpty()) {
      takenUp.take(complaints);
      questions.hearDangersOf(complaints.stream().map(Thing::card).toList());
    }
  }

  private static Answer answer(Thing thing) {
    return new Answer.Chosen(thing.outcome());
  }

  /** The best outcome of each open look that a caller can answer, and what is newly wrong. */
  private List<Thing> things(List<String> said) {
    Tellings tellings = sitting.ears().tellings();
    List<Heard.Found> found = new ArrayList<>();
    for (String words : said.stream().filter(over.negate()).toList()) {
      besides(tellings.hear(words)).forEach(found::add);
      tellings.parts(words).stream()
          .filter(f -> f.weight() >= CLEAR && isOpen(f.thing()))
          .forEach(found::add);
    }
    Set<String> taken = new HashSet<>();
    return found.stream()
        .sorted(Comparator.comparingDouble(Heard.Found::weight).reversed())
        .map(Heard.Found::thing)
        .filter(t -> taken.add(t.card()))
        .limit(MOST)
        .toList();
  }

  /** What was heard and is no other form of a complaint that was heard with it. */
  private Stream<Heard.Found> besides(Heard heard) {
    List<String> complaints = sitting.moment().state().told().complaints().orElse(List.of());
    double complaint =
        heard.findings().stream()
            .filter(f -> f.thing().kind() == Thing.Kind.COMPLAINT)
            .filter(f -> complaints.contains(f.thing().card()))
            .mapToDouble(Heard.Found::weight)
            .max()
            .orElse(0);
    double least = Math.max(CLEAR, complaint - LESS);
    return heard.findings().stream().filter(f -> f.weight() >= least && isOpen(f.thing()));
  }

  private boolean isOpen(Thing thing) {
    return isOpenLook(thing) || isNewComplaint(thing);
  }

  private boolean isNewComplaint(Thing thing) {
    List<String> told = sitting.moment().state().told().complaints().orElse(List.of());
    return again
        && thing.kind() == Thing.Kind.COMPLAINT
        && !told.isEmpty() // else all complaints are asked for
        && !told.contains(thing.card())
        && !sitting.moment().judgement().unavailable().contains(thing.card());
  }

  private boolean isOpenLook(Thing thing) {
    Check check = sitting.base().checks().get(thing.card());
    return thing.kind() == Thing.Kind.OUTCOME
        && check.who() == Role.CALLER
        && !check.id().equals(Telephone.WORKS_AGAIN)
        && check.indexOf(thing.outcome()) > 0
        && sitting.moment().state().answer(check.id()).isEmpty()
        && !sitting.moment().judgement().unavailable().contains(check.id());
  }

  private String words(Thing thing) {
    return takenUp.words(thing);
  }
}
