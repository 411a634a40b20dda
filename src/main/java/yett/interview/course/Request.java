package yett.interview.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.search.BestWork;
import yett.interview.step.SomeSteps;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.rules.Conclusion.Unavailable;

/**
 * Decides whether a check that somebody asks for can come next. The fixed order and the rules apply
 * as always: the request is tried on the case before it is recorded.
 */
public final class Request {
  private final Interview interview;
  private final Moment moment;

  public Request(Interview interview, Moment moment) {
    this.interview = interview;
    this.moment = moment;
  }

  /** The result of a request. */
  public sealed interface Verdict {
    /** Calls the consumer for this result. */
    void settle(Consumer<Event> granted, Consumer<String> refused, Consumer<Step> later);
  }

  /** The check comes next, after its set-ups. */
  public record Granted(Event.AskedFor event) implements Verdict {
    @Override
    public void settle(Consumer<Event> granted, Consumer<String> refused, Consumer<Step> later) {
      granted.accept(event);
    }
  }

  /**
   * The check cannot come.
   *
   * @param because a clause without capital and full stop
   */
  public record Refused(String because) implements Verdict {
    @Override
    public void settle(Consumer<Event> granted, Consumer<String> refused, Consumer<Step> later) {
      refused.accept(because);
    }
  }

  /** Another step has to come before it. */
  public record Later(Step first) implements Verdict {
    @Override
    public void settle(Consumer<Event> granted, Consumer<String> refused, Consumer<Step> later) {
      later.accept(first);
    }
  }

  public Verdict of(Check check) {
    Optional<String> against = against(check);
    if (against.isPresent()) {
      return new Refused(against.get());
    }
    Event.AskedFor event = new Event.AskedFor(check.id());
    List<Entry> tried = new ArrayList<>(moment.entries());
    tried.add(
        new Entry(moment.next(), tried.get(tried.size() - 1).at(), moment.state().role(), event));
    Step next = interview.asFarAsPossible(tried, moment.state().role()).step();
    return next.accept(LEADS_TO).equals(check.id()) ? new Granted(event) : new Later(next);
  }

  private Optional<String> against(Check check) {
    Optional<String> forbidden = forbidden(moment, check);
    if (forbidden.isPresent()) {
      return forbidden;
    }
    if (check.danger()) {
      return Optional.of("dangers are gone through together; type danger");
    }
    return switch (check.kind()) {
      case PROOF -> Optional.of("all proofs come once the gate runs again");
      case COMPLAINT -> Optional.of("it is something noticed, not checked; report it with tell");
      case CHECK -> answered(check);
    };
  }

  private Optional<String> answered(Check check) {
    Expertise expertise = interview.expertise();
    return BestWork.at(moment, expertise.base(), expertise.planner())
            .checks(true)
            .contains(check.id())
        ? Optional.empty()
        : Optional.of(
            "it was answered, and nothing done since can have changed it; type correct to"
                + " change an answer");
  }

  /** Why the rules forbid a check to everybody or to this person; empty if they do not. */
  public static Optional<String> forbidden(Moment moment, Check check) {
    return moment.judgement().unavailabilities().stream()
        .filter(u -> u.card().equals(check.id()))
        .map(Unavailable::reason)
        .map(r -> r.words())
        .findFirst();
  }

  /** The card that a step is about or prepares for; empty for any other step. */
  private static final SomeSteps<String> LEADS_TO =
      new SomeSteps<>() {
        @Override
        public String ask(Step.Ask step) {
          return step.check().id();
        }

        @Override
        public String enter(Step.Enter step) {
          return step.purpose().card();
        }

        @Override
        public String leave(Step.Leave step) {
          return step.purpose().card();
        }

        @Override
        public String other(Step step) {
          return "";
        }
      };
}
