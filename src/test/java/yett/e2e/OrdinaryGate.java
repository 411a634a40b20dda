package yett.e2e;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.site.SiteFacts;
import yett.interview.site.SiteNeeds;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.SiteQuestion;
import yett.rules.Conclusion.Expectation;
import yett.rules.Interpretation;
import yett.testing.Shipped;

/**
 * What somebody types at a gate in order, or at one with a single fault, from the present state of
 * the visit.
 */
final class OrdinaryGate {
  private static final Story IN_ORDER = new Story(List.of(), List.of(), Map.of(), true, List.of());

  private final List<Entry> entries;
  private final Story story;
  private final Map<String, String> readings;
  private final List<String> lines = new ArrayList<>();
  private final Set<String> cautions = new HashSet<>();
  private boolean cured;

  private OrdinaryGate(List<Entry> stored, Story story, Map<String, String> readings) {
    this.entries = new ArrayList<>(stored);
    this.story = story;
    this.readings = readings;
  }

  /** The remaining lines; the last one closes the case. */
  static List<String> lines(List<Entry> stored) {
    return lines(stored, Map.of());
  }

  /**
   * The same for a gate with these readings.
   *
   * @param readings by check; all others are in the middle of the usual range
   */
  static List<String> lines(List<Entry> stored, Map<String, String> readings) {
    return lines(stored, IN_ORDER, readings, Shipped.QUICK);
  }

  /**
   * The same for a gate with a fault.
   *
   * @param story the answers until the fault is repaired; what it does not mention is as at a gate
   *     in order
   * @param readings of the gate in order
   * @param expertise by which the next step is chosen
   */
  static List<String> lines(
      List<Entry> stored, Story story, Map<String, String> readings, Expertise expertise) {
    OrdinaryGate gate = new OrdinaryGate(stored, story, readings);
    try (Interview interview = expertise.newInterview()) {
      Moment moment = interview.at(gate.entries);
      while (!(moment.step() instanceof Step.Finished)) {
        gate.type(moment);
        moment = interview.at(gate.entries);
      }
    }
    return gate.lines;
  }

  private void type(Moment moment) {
    List<SiteQuestion> open = new SiteNeeds(Shipped.BASE, moment).open();
    if (open.isEmpty() || moment.state().isInspection()) {
      type(moment, moment.step());
    } else {
      Map<String, String> usual = new SiteFacts(Shipped.BASE).answers(moment.state().told().site());
      open.forEach(
          q -> enter(new Event.SiteAnswered(q.id(), usual.getOrDefault(q.id(), q.usual()))));
      lines.add("");
    }
  }

  private void type(Moment moment, Step step) {
    if (step instanceof Step.AskDangers s) {
      s.dangers().forEach(d -> enter(answer(moment, d)));
      lines.add("0");
    } else if (step instanceof Step.AskSite) {
      enter(new Event.SiteTaken());
      lines.add("");
    } else if (step instanceof Step.AskComplaints) {
      enter(new Event.Complained(story.complaints()));
      lines.add(String.join(", ", story.complaints()));
    } else if (step instanceof Step.AskHistory) {
      enter(new Event.Happened(List.of()));
      lines.add("0");
    } else if (step instanceof Step.LookRound s) {
      look(moment, s);
    } else if (step instanceof Step.Ask s) {
      Event.Answered answered = answer(moment, s.check());
      enter(answered);
      lines.add(
          answered
              .answer()
              .reading()
              .map(Answer.Read::typed)
              .orElseGet(() -> String.valueOf(1 + outcome(s.check(), answered))));
    } else if (step instanceof Step.Enter s) {
      if (cautions.add(s.setUp().id())) {
        lines.add("");
      }
      enter(s.done());
      lines.add("done");
    } else if (step instanceof Step.Leave s) {
      enter(s.done());
      lines.add("done");
    } else if (step instanceof Step.Mend s) {
      cured = cured || story.repairs().contains(s.repair().id());
      enter(new Event.Repaired(s.repair().id(), true));
      lines.add("done");
    } else if (step instanceof Step.Retest) {
      enter(new Event.Retested(cured));
      lines.add(cured ? "1" : "2");
    } else if (step instanceof Step.CloseRepaired s) {
      enter(new Event.Closed(s.ending()));
      lines.add("close");
    } else {
      throw new AssertionError("a gate in order does not come to " + step);
    }
  }

  /**
   * One line for a place: the number of each look that is out of the ordinary, and the letter of
   * its outcome.
   */
  private void look(Moment moment, Step.LookRound round) {
    List<String> unusual = new ArrayList<>();
    for (int i = 0; i < round.looks().size(); i++) {
      Check check = round.looks().get(i).check();
      Event.Answered answered = answer(moment, check);
      enter(answered);
      int outcome = outcome(check, answered);
      if (outcome > 0) {
        unusual.add((i + 1) + Character.toString('a' + outcome));
      }
    }
    lines.add(String.join(", ", unusual));
  }

  private static int outcome(Check check, Event.Answered answered) {
    return check.indexOf(((Answer.Chosen) answered.answer()).outcome());
  }

  private Event.Answered answer(Moment moment, Check check) {
    String told = cured ? null : story.answers().get(check.id());
    if (!check.measured()) {
      String usual = check.outcomes().get(0).id();
      return new Event.Answered(check.id(), new Answer.Chosen(told == null ? usual : told));
    }
    String typed = told == null ? readings.get(check.id()) : told;
    typed = typed == null ? usual(moment, check) : typed;
    return new Event.Answered(
        check.id(), new Answer.Read(typed, check.measures().orElseThrow().parse(typed)));
  }

  private static String usual(Moment moment, Check check) {
    Optional<Expectation> usual = moment.judgement().expectation(check.id());
    double[] ends = Interpretation.range(check, 0, usual);
    double least = usual.map(Expectation::low).orElse(check.measures().orElseThrow().least());
    double most = usual.map(Expectation::high).orElse(check.measures().orElseThrow().most());
    double low = Math.max(ends[0], least);
    double high = Math.min(ends[1], most);
    double value =
        check.id().equals("battery-running-voltage") ? low + 0.5 : (low + high) / 2; // sags a bit
    return check.measures().orElseThrow().showRounded(value);
  }

  private void enter(Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, event));
  }
}
