package yett.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.Answer;
import yett.interview.CaseState;
import yett.interview.CaseState.Answered;
import yett.interview.Chance;
import yett.interview.Ending;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Expertise;
import yett.interview.Interview;
import yett.interview.Interview.RankedCause;
import yett.interview.Moment;
import yett.interview.Site;
import yett.interview.SiteFacts;
import yett.interview.SomeEvents;
import yett.interview.Step;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.plan.Advice;
import yett.plan.Planner;
import yett.wording.StepWords;
import yett.wording.Wording;

/**
 * What the next level needs to carry on: what is believed, what was asked and tried, what comes
 * next and why it could not be done here, and how the gate was left. One page.
 */
public final class HandOverSheet {
  private static final double UNKNOWN_MATTERS = 0.2;
  private static final int SUGGESTIONS = 3;

  private final RuleBase base;
  private final Planner planner;
  private final Wording words;

  public HandOverSheet(Expertise expertise) {
    this.base = expertise.base();
    this.planner = expertise.planner();
    this.words = new Wording(base);
  }

  /**
   * @param caseId as the casebook calls it
   * @param siteName the gate's name as people say it
   */
  public String markdown(Moment moment, String caseId, String siteName) {
    Markdown page = new Markdown();
    new Page(moment, page).write(caseId, siteName, false);
    return page.toString();
  }

  /** Writes it onto a page of any kind; of what was asked, only what was out of the ordinary. */
  public void writeBriefly(Outline page, Moment moment, String caseId, String siteName) {
    new Page(moment, page).write(caseId, siteName, true);
  }

  /** One sheet while it is written. */
  private final class Page {
    private final Moment moment;
    private final CaseState state;
    private final Site site;
    private final double[] remaining;
    private final Outline page;

    Page(Moment moment, Outline page) {
      this.moment = moment;
      this.page = page;
      this.state = moment.state();
      this.site = new SiteFacts(base).site(state.told().site());
      this.remaining = moment.belief().remaining();
    }

    void write(String caseId, String siteName, boolean briefly) {
      page.title("Hand-over of case " + caseId + ": " + siteName);
      page.paragraph(lead());
      dangers();
      believed();
      reported();
      if (briefly) {
        outOfTheOrdinary();
      } else {
        asked();
      }
      tried();
      next();
      left();
      page.list(
          "Notes", state.notes().stream().map(e -> ((Event.Noted) e.event()).text()).toList());
      page.list(
          "Kept, and left out of the reasoning",
          moment.apart().stream().map(Wording::apart).toList());
    }

    private String lead() {
      List<Entry> entries = moment.entries();
      String when =
          entries.isEmpty() ? "" : ", " + Wording.dayAndTime(entries.get(entries.size() - 1).at());
      return "From " + Wording.aPerson(state.role()) + when + because() + ".";
    }

    /** As it was said when the case closed, or as it would be now. */
    private String because() {
      if (moment.step() instanceof Step.HandOver step) {
        return ": " + StepWords.because(step.because());
      }
      if (state.gaveUp().isPresent()) {
        return ": " + state.gaveUp().get();
      }
      return state.closed().filter(Ending.HANDED_OVER::equals).isPresent()
          ? ": " + StepWords.nothingLeft(state.role())
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
        boolean safe = state.madeSafe().containsKey(stop);
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
      page.heading("What is believed");
      ToDoubleFunction<RankedCause> left = r -> remaining(r.cause().id());
      boolean repaired = state.work().epoch() > 0;
      // Whoever comes next looks for what is left.
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

    private void reported() {
      List<String> lines = new ArrayList<>();
      state.told().complaints().orElse(List.of()).forEach(c -> lines.add(words.complaint(c)));
      state
          .told()
          .histories()
          .orElse(List.of())
          .forEach(h -> lines.add("Lately: " + words.history(h)));
      site.answers()
          .forEach(
              (id, answer) -> {
                if (answer.equals(state.told().site().get(id))) {
                  var question = base.siteQuestions().get(id);
                  lines.add(question.name() + ": " + Wording.site(question, answer));
                }
              });
      page.list("What was reported", lines);
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

    /** Readings are not among it: they stand in a table, with their ranges. */
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
      page.list("What was out of the ordinary, or could not be told", lines);
      page.paragraph("Asked and measured besides: " + others + ".");
    }

    private boolean isOrdinary(Answered a) {
      Check check = base.checks().get(a.check());
      return check != null && a.answer().choice().filter(c -> check.indexOf(c) == 0).isPresent();
    }

    private void tried() {
      List<String> lines = new ArrayList<>();
      for (Entry deed : state.work().deeds()) {
        deed.event().accept(deeds).ifPresent(lines::add);
      }
      state.work().declined().keySet().stream()
          .sorted()
          .forEach(r -> lines.add(words.repair(r) + ": could not be done"));
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

    private void next() {
      page.heading("What comes next");
      if (!moment.judgement().stops().isEmpty()) {
        page.paragraph("Nothing before the danger is dealt with.");
        return;
      }
      Set<String> checks = openChecks();
      Advice advice =
          planner.advise(
              moment.belief(),
              new Planner.Options(
                  checks, openRepairs(), state.work().setUps(), state.work().cured()));
      List<String> lines = new ArrayList<>();
      if (advice.kind() == Advice.Kind.ASK) {
        advice.candidates().stream()
            .filter(c -> c.saves() > 0)
            .limit(SUGGESTIONS)
            .forEach(c -> lines.add(check(base.checks().get(c.check()))));
      }
      advice.jobs().stream()
          .map(j -> base.repairs().get(j.repair()))
          .filter(r -> against(r).findAny().isPresent())
          .limit(SUGGESTIONS)
          .forEach(r -> lines.add(repair(r)));
      double unknown = remaining(Cause.NOT_IN_RULE_BASE);
      if (unknown >= UNKNOWN_MATTERS) {
        lines.add("It may be something that is not in this rule base: " + Chance.of(unknown) + ".");
      }
      words.openProofs(moment).stream()
          .filter(p -> state.work().cured())
          .forEach(p -> lines.add("Proof to be made: " + p.ask() + here(p.who(), p.id())));
      if (lines.isEmpty()) {
        page.paragraph("Nothing in this rule base is worth its cost any more.");
      } else {
        page.items(lines);
      }
    }

    private double remaining(String cause) {
      int at = moment.belief().model().causes().indexOf(cause);
      return at < 0 ? 0 : remaining[at];
    }

    private Set<String> openChecks() {
      return base.ordinaryChecks()
          .filter(c -> !c.danger() && site.allows(c))
          .filter(
              c ->
                  state.latest(c.id()).map(a -> a.answer().putOff()).orElse(true)
                      || couldNotHere(c))
          .map(Check::id)
          .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Somebody better qualified may find out what this person could not. */
    private boolean couldNotHere(Check check) {
      return state.latest(check.id()).map(a -> a.answer().hopeless()).orElse(false)
          && state.role() == Role.CALLER;
    }

    private Set<String> openRepairs() {
      Set<String> done = new HashSet<>();
      for (Entry deed : state.work().deeds()) {
        if (deed.event() instanceof Event.Repaired e) {
          done.add(e.repair());
        }
      }
      return base.repairs().values().stream()
          .filter(r -> !done.contains(r.id()) && site.allows(r))
          .map(Repair::id)
          .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private String check(Check check) {
      return "Check: " + check.ask() + here(check.who(), check.id());
    }

    /** Causes that matter and that the repair removes. */
    private Stream<String> against(Repair repair) {
      return repair.removes().keySet().stream().filter(c -> remaining(c) >= CaseRecord.NAMED);
    }

    private String repair(Repair repair) {
      String causes =
          against(repair)
              .map(c -> words.cause(c) + ", " + Chance.of(remaining(c)).percent())
              .collect(Collectors.joining("; "));
      String parts =
          repair.parts().stream().map(Repair.Part::part).collect(Collectors.joining("; "));
      return "Repair: "
          + repair.name()
          + " (against: "
          + causes
          + ")"
          + "."
          + (parts.isEmpty() ? "" : " Bring: " + parts + ".")
          + here(repair.who(), repair.id());
    }

    /** Why it could not be done here. */
    private String here(Role who, String id) {
      if (!state.role().may(who)) {
        return " Reserved for " + Wording.aPerson(who) + ".";
      }
      if (state.work().declined().containsKey(id)) {
        return " It could not be done here.";
      }
      Optional<Answer> last = state.latest(id).map(Answered::answer);
      if (last.filter(Answer::putOff).isPresent()) {
        return " It was put off here.";
      }
      if (last.filter(Answer::hopeless).isPresent()) {
        return " It could not be told here.";
      }
      return " It was not reached here.";
    }

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
