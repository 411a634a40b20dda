package yett.e2e;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import yett.interview.Answer;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Interview;
import yett.interview.Moment;
import yett.interview.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.rules.Interpretation;
import yett.testing.Shipped;

/** What somebody types who inspects a gate in order, from wherever the inspection stands. */
final class OrdinaryGate {
  private final List<Entry> entries;
  private final List<String> lines = new ArrayList<>();
  private final Set<String> cautions = new HashSet<>();

  private OrdinaryGate(List<Entry> stored) {
    entries = new ArrayList<>(stored);
  }

  /** The lines that are left, the last of which closes it. */
  static List<String> lines(List<Entry> stored) {
    OrdinaryGate gate = new OrdinaryGate(stored);
    try (Interview interview = Shipped.QUICK.newInterview()) {
      Moment moment = interview.at(gate.entries);
      while (!(moment.step() instanceof Step.Finished)) {
        gate.type(moment);
        moment = interview.at(gate.entries);
      }
    }
    return gate.lines;
  }

  private void type(Moment moment) {
    Step step = moment.step();
    if (step instanceof Step.AskDangers s) {
      s.dangers().forEach(d -> enter(ordinary(moment, d)));
      lines.add("0");
    } else if (step instanceof Step.AskSite) {
      enter(new Event.SiteTaken());
      lines.add("");
    } else if (step instanceof Step.LookRound s) {
      s.looks().forEach(l -> enter(ordinary(moment, l.check())));
      lines.add("");
    } else if (step instanceof Step.Ask s) {
      Event answer = ordinary(moment, s.check());
      enter(answer);
      lines.add(((Event.Answered) answer).answer().reading().map(Answer.Read::typed).orElse("1"));
    } else if (step instanceof Step.Enter s) {
      if (cautions.add(s.setUp().id())) {
        lines.add("");
      }
      enter(s.done());
      lines.add("done");
    } else if (step instanceof Step.Leave s) {
      enter(s.done());
      lines.add("done");
    } else if (step instanceof Step.CloseRepaired s) {
      enter(new Event.Closed(s.ending()));
      lines.add("close");
    } else {
      throw new AssertionError("a gate in order does not come to " + step);
    }
  }

  private static Event ordinary(Moment moment, Check check) {
    if (!check.measured()) {
      return new Event.Answered(check.id(), new Answer.Chosen(check.outcomes().get(0).id()));
    }
    double[] ends = Interpretation.range(check, 0, moment.judgement().expectation(check.id()));
    double low = Math.max(ends[0], check.measures().orElseThrow().least());
    double high = Math.min(ends[1], check.measures().orElseThrow().most());
    double value =
        check.id().equals("battery-running-voltage") ? low + 0.5 : (low + high) / 2; // sags a bit
    String typed = check.measures().orElseThrow().showRounded(value);
    return new Event.Answered(
        check.id(), new Answer.Read(typed, check.measures().orElseThrow().parse(typed)));
  }

  private void enter(Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, event));
  }
}
