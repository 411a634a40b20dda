package yett.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.course.Interview.RankedCause;
import yett.interview.danger.SafeNow;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.SomeEvents;
import yett.interview.evidence.Chance;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.interview.state.CouldNotBeDone;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.plan.Planner;
import yett.wording.StepWords;
import yett.wording.Wording;

/**
 * Writes, on one page, what the person at the next level needs to continue: what is believed, what
 * was asked and tried, what comes next and why it could not be done here, and how the gate was
 * left.
 */
public final class HandOverSheet {
  private final RuleBase base;
  private final Planner planner;
  private final Wording words;

  public HandOverSheet(Expertise expertise) {
    this.base = expertise.base();
    this.planner = expertise.planner();
    this.words = new Wording(base);
  }

  /**
   * @param caseId number of the case in the casebook
   * @param siteName the gate's name as people say it
   */
  public String markdown(Moment moment, String caseId, String siteName) {
    Markdown page = new Markdown();
    new Page(moment, page).write(caseId, siteName, false);
    return page.toString();
  }

  /** Writes onto a page of any kind. Of the answers, only those that were out of the ordinary. */
  public void writeBriefly(Outline page, Moment moment, String caseId, String siteName) {
    new Page(moment, page).write(caseId, siteName, true);
  }

  /** One sheet while it is being written. */
  private final class Page {
    private final Moment moment;
    private final CaseState state;
    private final Outline page;

    Page(Moment moment, Outline page) {
      this.moment = moment;
      this.page = page;
      this.state = moment.state();
    }

    void write(String caseId, String siteName, boolean briefly) {
      page.title(
          (briefly ? "For the next technician, case " : "Hand-over of case ")
              + caseId
              + ": "
              + siteName);
      page.paragraph(lead());
      dangers();
      believed();
      new ToldLines(base, words, moment, page).write(briefly);
      tried();
      new NextWork(base, planner, words, moment, page).write();
      left();
      page.list(
          "Notes", state.notes().stream().map(e -> ((Event.Noted) e.event()).text()).toList());
      page.list(
          "Kept, but not used in the reasoning",
          moment.apart().stream().map(Wording::apart).toList());
    }

    private String lead() {
      List<Entry> entries = moment.entries();
      String when =
          entries.isEmpty() ? "" : ", " + Wording.dayAndTime(entries.get(entries.size() - 1).at());
      return "From " + Wording.aPerson(state.role()) + when + because() + ".";
    }

    /**
     * Why the case is handed over: as it was said when the case closed, or as it would be said now.
     */
    private String because() {
      if (moment.step() instanceof Step.HandOver step) {
        return ": " + StepWords.because(step.because());
      }
      if (state.gaveUp().isPresent()) {
        return ": " + state.gaveUp().get();
      }
      return state.closed().filter(Ending.HANDED_OVER::equals).isPresent()
          ? ": "
              + StepWords.nothingLeft(state.role(), !CouldNotBeDone.of(moment.entries()).isEmpty())
          : "";
    }

    private void dangers() {
      List<String> stops =
          moment.judgement().stops().stream().map(s -> s.stop()).distinct().toList();
      if (stops.isEmpty()) {
        return;
      }
      page.heading("Danger");
      for (String stop : stops) {
        boolean safe = SafeNow.is(stop, moment, base);
        page.item(
            words.stop(stop)
                + (safe
                    ? ": what has to be done at once was done or passed on"
                    : ": NOT yet made safe"));
        if (!safe && base.stops().containsKey(stop)) {
          base.stops()
              .get(stop)
              .now(state.role(), moment.judgement().withheld())
              .forEach(page::inner);
        }
      }
    }

    private void believed() {
      page.heading("Probable causes");
      ToDoubleFunction<RankedCause> left = r -> NextWork.remaining(moment, r.cause().id());
      boolean repaired = state.work().epoch() > 0;
      // The next person looks for the causes that remain.
      Comparator<RankedCause> leftFirst =
          Comparator.comparingDouble(
              r ->
                  repaired && left.applyAsDouble(r) >= CaseRecord.NAMED
                      ? -left.applyAsDouble(r)
                      : 0);
      List<RankedCause> ranking =
          Interview.ranking(moment, base).stream().sorted(leftFirst).toList();
      List<RankedCause> named =
          ranking.stream()
              .filter(r -> Math.max(r.chance(), left.applyAsDouble(r)) >= CaseRecord.NAMED)
              .toList();
      for (RankedCause r : named.isEmpty() ? ranking.subList(0, 1) : named) {
        String line = r.cause().name() + ": " + Chance.of(r.chance());
        page.item(
            repaired
                ? line + " at the call-out, " + Chance.of(left.applyAsDouble(r)) + " now"
                : line);
      }
    }

    private void tried() {
      List<String> lines = new ArrayList<>();
      for (Entry deed : state.work().deeds()) {
        deed.event().accept(deeds).ifPresent(lines::add);
      }
      CouldNotBeDone.of(moment.entries())
          .forEach(
              (repair, e) ->
                  lines.add(words.repair(repair) + ": " + ((Event.Repaired) e.event()).words()));
      page.list("What was tried", lines);
    }

    private final SomeEvents<Optional<String>> deeds =
        new SomeEvents<>() {
          @Override
          public Optional<String> repaired(Event.Repaired event) {
            return Optional.of(words.repair(event.repair()) + ": done");
          }

          @Override
          public Optional<String> retested(Event.Retested event) {
            return Optional.of("Then the gate " + words.tried(event) + ".");
          }

          @Override
          public Optional<String> other(Event event) {
            return Optional.empty();
          }
        };

    private void left() {
      page.heading("How the gate stands");
      if (state.work().cured()) {
        page.item("It runs.");
      } else {
        page.item(
            state.work().deeds().stream().anyMatch(d -> d.event() instanceof Event.Retested)
                ? "It still fails."
                : "It fails as reported; no repair was tried out.");
      }
      moment
          .judgement()
          .whyForbidden(SetUp.GATE_RUNNING)
          .forEach(why -> page.item("Nobody runs it: " + why + "."));
      if (state.work().setUps().isEmpty()) {
        page.item("No set-up is in force: nothing is locked off, opened or released.");
      }
      state.work().setUps().forEach(s -> page.item("In force: " + words.setUp(s)));
      List<Check> open = words.openProofs(moment);
      if (!open.isEmpty()) {
        page.item(
            "Proofs still to pass before it returns to service: "
                + open.size()
                + (open.size() == 1 ? " proof" : " proofs"));
      }
      state.closed().ifPresent(e -> page.item("Case closed here: " + e.words() + "."));
    }
  }
}
