package yett.interview;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

class SmokeTest {
  @Test
  void runs() {
    long t0 = System.nanoTime();
    RuleBase base = RuleBase.read(KnowledgeSource.folder(Path.of("knowledge")));
    System.out.println("read " + (System.nanoTime() - t0) / 1e6);
    Expertise expertise = Expertise.of(base, Path.of("target/rule-cache"));
    System.out.println("expert " + (System.nanoTime() - t0) / 1e6);
    try (Interview interview = expertise.newInterview()) {
      List<Entry> entries = new ArrayList<>();
      add(entries, new Event.Opened("x", Role.TECHNICIAN, "f"));
      for (int i = 0; i < 40; i++) {
        t0 = System.nanoTime();
        Moment m = interview.at(entries);
        double ms = (System.nanoTime() - t0) / 1e6;
        String s = m.step().toString();
        if (m.step() instanceof Step.Ask a)
          s =
              "ASK "
                  + a.check().id()
                  + " "
                  + a.advice()
                      .map(
                          x ->
                              x.candidates().subList(0, Math.min(3, x.candidates().size()))
                                  + " jobs "
                                  + x.jobs()
                                  + " "
                                  + x.expected()
                                  + " "
                                  + x.repairingNow())
                      .orElse("");
        if (m.step() instanceof Step.Mend a) s = "MEND " + a.repair().id() + " " + a.plan();
        System.out.printf(
            "%.0f ms h=%d d=%d neg=%.4f %s%n",
            ms,
            m.belief().hypotheses(),
            m.belief().depth(),
            m.belief().neglected(),
            s.substring(0, Math.min(500, s.length())));
        System.out.println(
            "   "
                + Interview.ranking(m, base).subList(0, 4).stream()
                    .map(r -> r.cause().id() + " " + Math.round(r.chance() * 1000) / 10.0)
                    .toList());
        if (m.step() instanceof Step.AskDangers d)
          d.dangers()
              .forEach(
                  c ->
                      add(
                          entries,
                          new Event.Answered(c.id(), new Answer.Chosen(c.outcomes().get(0).id()))));
        else if (m.step() instanceof Step.AskSite) add(entries, new Event.SiteTaken());
        else if (m.step() instanceof Step.AskComplaints)
          add(
              entries,
              new Event.Complained(List.of("lost-after-power-cut", "stops-in-wrong-place")));
        else if (m.step() instanceof Step.AskHistory) add(entries, new Event.Happened(List.of()));
        else if (m.step() instanceof Step.Enter e)
          add(entries, new Event.SetUpEntered(e.setUp().id()));
        else if (m.step() instanceof Step.Leave e)
          add(entries, new Event.SetUpLeft(e.setUp().id()));
        else if (m.step() instanceof Step.Ask a)
          add(
              entries,
              new Event.Answered(
                  a.check().id(),
                  a.check().measured()
                      ? new Answer.CannotTell()
                      : new Answer.Chosen(a.check().outcomes().get(0).id())));
        else if (m.step() instanceof Step.Mend a)
          add(entries, new Event.Repaired(a.repair().id(), true));
        else if (m.step() instanceof Step.Retest a) add(entries, new Event.Retested(true));
        else break;
      }
    }
  }

  static void add(List<Entry> entries, Event e) {
    entries.add(new Entry(entries.size() + 1, Instant.EPOCH, Role.TECHNICIAN, e));
  }
}
