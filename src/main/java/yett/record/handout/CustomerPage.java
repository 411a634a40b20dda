package yett.record.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yett.interview.course.Interview;
import yett.interview.course.Interview.RankedCause;
import yett.interview.danger.SafeNow;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.SomeEvents;
import yett.interview.evidence.Chance;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.interview.state.CaseState.Answered;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.paper.Markup;
import yett.record.drawing.Elevation;
import yett.record.drawing.Spot;
import yett.wording.Wording;

/**
 * Writes the page for the owner of the gate in plain words: what was wrong, what was done, what was
 * measured and proved, and what is left to do.
 */
final class CustomerPage {
  private static final double CERTAIN = 0.95;

  private final RuleBase base;
  private final LetterheadLines head;
  private final Visit visit;
  private final Moment moment;
  private final CaseState state;
  private final Wording words;
  private final Findings findings;

  CustomerPage(RuleBase base, LetterheadLines head, Visit visit, Findings findings) {
    this.base = base;
    this.head = head;
    this.visit = visit;
    this.moment = visit.moment();
    this.state = moment.state();
    this.words = new Wording(base);
    this.findings = findings;
  }

  void write(Markup page) {
    head.write(page);
    page.leaf("h1", "Record of work");
    visit.facts(page, base);
    Outcome outcome = Outcome.of(state);
    List<String> left = new LeftToDo(base, moment, findings).lines();
    page.leaf(
        "p",
        outcome.words() + (outcome.inUse() && !left.isEmpty() ? " Some work is left to do." : ""),
        "class",
        outcome.inUse() ? "state" : "state stop");
    HtmlOutline lines = new HtmlOutline(page);
    lines.list("Danger", dangers());
    lines.list("What you told us", told());
    lines.end();
    wrong(page, lines);
    lines.list("What was done", done());
    lines.end();
    measured(page);
    lines.list("Note", CustomerNotes.of(state));
    lines.end();
    proofs(page);
    ForceSection.write(page, moment);
    lines.list("What is left to do", left);
    lines.end();
    Signatures.write(page);
  }

  private List<String> dangers() {
    return moment.judgement().stops().stream()
        .map(s -> s.stop())
        .distinct()
        .map(
            s ->
                words.stop(s)
                    + (SafeNow.is(s, moment, base)
                        ? ": what had to be done at once was done or passed on."
                        : ": not yet made safe."))
        .toList();
  }

  private List<String> told() {
    return Stream.of(
            state.told().complaints().orElse(List.of()).stream().map(this::complaint),
            answersOfTheReport(),
            state.told().histories().orElse(List.of()).stream().map(words::history))
        .flatMap(lines -> lines)
        .toList();
  }

  /**
   * What was said beside the complaints, such as when it fails. It came before the first check: the
   * report ends with what happened lately. What an inspection found before that, nobody reported.
   */
  private Stream<String> answersOfTheReport() {
    long end =
        Entry.valid(moment.entries()).stream()
            .filter(e -> e.event() instanceof Event.Happened)
            .mapToLong(Entry::number)
            .min()
            .orElse(Long.MAX_VALUE);
    return state.answers().stream()
        .filter(a -> a.event() < end && a.answer().choice().isPresent())
        .filter(a -> a.taken().isEmpty())
        .filter(a -> base.checks().containsKey(a.check()))
        .filter(a -> !base.checks().get(a.check()).danger() && !words.isProof(a.check()))
        .map(
            a ->
                base.checks().get(a.check()).spoken()
                    + " "
                    + Wording.capital(words.answer(a.check(), a.answer())));
  }

  private String complaint(String id) {
    Check card = base.checks().get(id);
    return card == null ? words.complaint(id) : card.spoken();
  }

  private void wrong(Markup page, HtmlOutline lines) {
    lines.heading("What was wrong");
    if (state.told().complaints().isEmpty()) {
      lines.paragraph("The cause was not looked for.");
    } else if (findings.causes().isEmpty()) {
      lines.paragraph(
          "The cause is not certain yet. Most probable so far: "
              + name(Interview.ranking(moment, base).get(0).cause())
              + ".");
    }
    for (RankedCause r : findings.causes()) {
      Optional<Integer> number = findings.spots().number(Spot.of(r.cause()));
      lines.paragraph(
          name(r.cause()) + number.map(n -> " (" + n + " in the drawing)").orElse(""),
          sure(r.chance())
              + (r.cause().arises().isEmpty()
                  ? ""
                  : " How such a thing comes about: " + r.cause().arises())
              + (r.cause().prevent().isEmpty()
                  ? ""
                  : " What guards against such a thing: " + r.cause().prevent()));
    }
  }

  private static String sure(double chance) {
    return chance >= CERTAIN ? "found." : Chance.of(chance).words() + ".";
  }

  private static String name(Cause cause) {
    return cause.id().equals(Cause.NOT_IN_RULE_BASE)
        ? "a cause that has no name yet"
        : cause.name();
  }

  private List<String> done() {
    List<String> lines = new ArrayList<>();
    for (Entry deed : state.work().deeds()) {
      deed.event().accept(new Done()).ifPresent(lines::add);
    }
    return lines;
  }

  /** Says what the customer is told of the work. */
  private final class Done implements SomeEvents<Optional<String>> {
    @Override
    public Optional<String> repaired(Event.Repaired event) {
      return Optional.of(words.repair(event.repair()) + ".");
    }

    @Override
    public Optional<String> retested(Event.Retested event) {
      return Optional.of("The gate was tried: it " + words.tried(event) + ".");
    }

    @Override
    public Optional<String> other(Event event) {
      return Optional.empty();
    }
  }

  private void measured(Markup page) {
    Tables.measured(page, findings);
    if (!findings.spots().numbers().isEmpty()) {
      page.open("div", "class", "drawing");
      new Elevation(findings.shape(), findings.spots()).draw(page);
      page.leaf("p", findings.spots().legend() + ".", "class", "note");
      page.leaf(
          "p",
          "Not measured, drawn as is usual: " + String.join("; ", findings.shape().assumed()) + ".",
          "class",
          "note");
      page.close();
    }
  }

  private void proofs(Markup page) {
    List<Answered> proofs =
        state.answers().stream()
            .filter(a -> words.isProof(a.check()))
            .filter(a -> state.latest(a.check()).filter(a::equals).isPresent()) // the last counts
            .toList();
    if (proofs.isEmpty()) {
      return;
    }
    page.open("div", "class", "together"); // not a few of them alone on a page
    page.leaf("h2", "Safety tests");
    page.open("table").open("tbody");
    for (Answered a : proofs) {
      boolean passed = a.answer().is(Check.PASS);
      boolean failed = a.answer().is(Check.FAIL);
      page.open("tr").leaf("td", words.ask(a.check()));
      page.leaf(
          "td",
          passed ? "passed" : failed ? "failed" : "not made",
          "class",
          passed ? "short good" : "short bad");
      page.close();
    }
    page.close().close().close();
  }
}
