package yett.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import yett.casebook.CarriedCase;
import yett.casebook.CarriedSite;
import yett.casebook.CaseStatus;
import yett.casebook.NewEvent;
import yett.casebook.SiteRecord;
import yett.casebook.StoredEvent;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.intake.Sense;
import yett.interview.site.SiteFacts;
import yett.interview.state.CaseState;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/** Checks that cases and gates from a file contain only what somebody could have entered here. */
public final class ImportCheck {
  private static final int MOST_EVENTS = 10_000;
  private static final Pattern ID = Pattern.compile("[a-z0-9]*(-[a-z0-9]+)*");
  private static final Pattern LINE = Pattern.compile("[^\\p{Cc}\\p{Zl}\\p{Zp}]{0,300}");
  private static final Pattern NAME = Pattern.compile("[^\\p{Cc}\\p{Zl}\\p{Zp}]{1,200}");
  private static final String FORGOTTEN = "-forgotten";

  private final RuleBase base;
  private final Sense sense;

  public ImportCheck(RuleBase base) {
    this.base = base;
    this.sense = new Sense(base);
  }

  /**
   * Why a case cannot be imported; empty if it can. The reason quotes nothing from the file except
   * numbers.
   */
  public Optional<String> against(CarriedCase carried) {
    List<NewEvent> events = carried.events();
    if (events.size() > MOST_EVENTS) {
      return Optional.of("it has more events than a case can have");
    }
    if (!NAME.matcher(carried.siteId()).matches()) {
      return Optional.of("its gate has no name that anybody could have typed");
    }
    if (!ID.matcher(carried.summary().cause()).matches()
        || !LINE.matcher(carried.summary().title()).matches()) {
      return Optional.of("its title or cause is none that this program writes");
    }
    if (carried.people().stream()
        .anyMatch(p -> !LINE.matcher(p.name()).matches() || !LINE.matcher(p.phone()).matches())) {
      return Optional.of("what it tells of people is nothing that anybody could have typed");
    }
    List<StoredEvent> stored =
        IntStream.range(0, events.size())
            .mapToObj(
                i -> {
                  NewEvent e = events.get(i);
                  return new StoredEvent(i + 1L, e.at(), e.by(), e.type(), e.body());
                })
            .toList();
    List<Entry> entries = StoredEntries.readable(stored);
    return unreadable(entries).or(() -> doubtful(carried, stored, entries));
  }

  private static Optional<String> unreadable(List<Entry> entries) {
    return entries.stream()
        .filter(e -> e.event() instanceof Event.Unread)
        .map(e -> "event " + e.number() + StoredEntries.unreadable(e))
        .findFirst();
  }

  private Optional<String> doubtful(
      CarriedCase carried, List<StoredEvent> stored, List<Entry> entries) {
    for (int i = 0; i < stored.size(); i++) {
      String type = OpenCase.type(entries.get(i).event());
      if (!List.of(type, type + FORGOTTEN).contains(stored.get(i).type())) {
        return Optional.of("event " + (i + 1) + " is not of the kind that it says");
      }
    }
    List<Sense.Doubt> doubts = sense.doubts(entries);
    if (!doubts.isEmpty()) {
      return Optional.of("event " + doubts.get(0).event() + ": " + doubts.get(0).words());
    }
    boolean closed = CaseState.of(entries).closed().isPresent();
    return closed == (carried.summary().state() == CaseStatus.CLOSED)
        ? Optional.empty()
        : Optional.of(
            "it says that it is " + (closed ? "open, and was closed" : "closed, and was not"));
  }

  /** Why the data of a gate cannot be imported; empty if they can. */
  public Optional<String> against(CarriedSite site) {
    for (SiteRecord revision : site.revisions()) {
      if (!NAME.matcher(revision.name()).matches() || !NAME.matcher(site.id()).matches()) {
        return Optional.of("it has no name that anybody could have typed");
      }
      for (Map.Entry<String, String> answer : GateMemory.answers(revision).entrySet()) {
        SiteQuestion question = base.siteQuestions().get(answer.getKey());
        if (question != null && !SiteFacts.canBe(question, answer.getValue())) {
          return Optional.of(question.id() + " has no such answer");
        }
      }
    }
    return Optional.empty();
  }
}
