package yett.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import tools.jackson.core.type.TypeReference;
import tools.jackson.dataformat.yaml.YAMLMapper;
import yett.interview.Answer;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Expertise;
import yett.interview.Interview;
import yett.interview.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;

/** The test cases beside the cards, answered to the end by a technician who can do everything. */
final class RecordedInterviews {
  private static final int MOST_STEPS = 150;

  private RecordedInterviews() {}

  /** One interview from each case file, as lists of events. */
  static List<List<Entry>> all(Expertise expertise) {
    try (Stream<Path> files = Files.walk(Path.of("knowledge"))) {
      return files
          .filter(file -> file.toString().endsWith(".case.yaml"))
          .sorted()
          .map(RecordedInterviews::first)
          .filter(story -> "technician".equals(story.get("person")))
          .map(story -> recorded(expertise, story))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, Object> first(Path file) {
    try {
      String text = Files.readString(file).split("(?m)^---\\R")[0];
      return new YAMLMapper().readValue(text, new TypeReference<Map<String, Object>>() {});
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Entry> recorded(Expertise expertise, Map<String, Object> story) {
    List<Entry> entries = new ArrayList<>();
    add(entries, new Event.Opened("harrow-quay", Role.TECHNICIAN, expertise.base().fingerprint()));
    Set<String> repaired = new HashSet<>();
    try (Interview interview = expertise.newInterview()) {
      for (int i = 0; i < MOST_STEPS; i++) {
        List<Event> next = answers(interview.at(entries).step(), story, repaired);
        if (next.isEmpty()) {
          break;
        }
        next.forEach(event -> add(entries, event));
      }
    }
    return entries;
  }

  private static void add(List<Entry> entries, Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, event));
  }

  /** Empty where the interview ends. */
  private static List<Event> answers(Step step, Map<String, Object> story, Set<String> repaired) {
    if (step instanceof Step.AskDangers dangers) {
      return dangers.dangers().stream().map(check -> (Event) answer(check, story)).toList();
    } else if (step instanceof Step.AskSite) {
      List<Event> events = new ArrayList<>();
      map(story, "site").forEach((q, a) -> events.add(new Event.SiteAnswered(q, a)));
      events.add(new Event.SiteTaken());
      return events;
    } else if (step instanceof Step.AskComplaints) {
      return List.of(new Event.Complained(list(story, "complaints")));
    } else if (step instanceof Step.AskHistory) {
      return List.of(new Event.Happened(list(story, "history")));
    } else if (step instanceof Step.Ask ask) {
      return List.of(answer(ask.check(), story));
    } else if (step instanceof Step.Enter enter) {
      return List.of(enter.done());
    } else if (step instanceof Step.Leave leave) {
      return List.of(leave.done());
    } else if (step instanceof Step.Mend mend) {
      repaired.add(mend.repair().id());
      return List.of(new Event.Repaired(mend.repair().id(), true));
    } else if (step instanceof Step.Retest) {
      return List.of(new Event.Retested(repaired.containsAll(list(story, "repairs"))));
    } else if (step instanceof Step.Settle settle) {
      return List.of(
          new Event.Kept(settle.contradiction().first(), settle.contradiction().second()));
    }
    return List.of();
  }

  private static Event.Answered answer(Check check, Map<String, Object> story) {
    String known = map(story, "answers").get(check.id());
    Answer answer;
    if (known == null) {
      answer =
          check.danger() || check.kind() == Check.Kind.PROOF
              ? new Answer.Chosen(check.outcomes().get(0).id())
              : new Answer.CannotTell();
    } else {
      answer =
          check
              .measures()
              .<Answer>map(m -> new Answer.Read(known, m.parse(known)))
              .orElseGet(() -> new Answer.Chosen(known));
    }
    return new Event.Answered(check.id(), answer);
  }

  private static Map<String, String> map(Map<String, Object> story, String field) {
    return story.get(field) == null
        ? Map.of()
        : new YAMLMapper()
            .convertValue(story.get(field), new TypeReference<Map<String, String>>() {});
  }

  private static List<String> list(Map<String, Object> story, String field) {
    return story.get(field) == null
        ? List.of()
        : new YAMLMapper().convertValue(story.get(field), new TypeReference<List<String>>() {});
  }
}
