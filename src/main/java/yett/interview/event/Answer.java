package yett.interview.event;

import static java.util.Objects.requireNonNull;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import yett.knowledge.Check;

/** What the person answered to a check. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
  @JsonSubTypes.Type(value = Answer.Chosen.class, name = "outcome"),
  @JsonSubTypes.Type(value = Answer.Read.class, name = "reading"),
  @JsonSubTypes.Type(value = Answer.CannotTell.class, name = "cannot-tell"),
  @JsonSubTypes.Type(value = Answer.DoesNotApply.class, name = "does-not-apply"),
  @JsonSubTypes.Type(value = Answer.NotNow.class, name = "not-now")
})
public sealed interface Answer {

  /**
   * Applies the function for this kind of answer. Every kind needs a function, so none can be
   * forgotten.
   */
  <R> R map(
      Function<Chosen, R> chosen,
      Function<Read, R> read,
      Supplier<R> cannotTell,
      Supplier<R> notNow);

  /** Whether it says something about the gate: an outcome or a reading. */
  default boolean tells() {
    return map(c -> true, r -> true, () -> false, () -> false);
  }

  /**
   * The id of the chosen outcome, of several the one furthest down the card; empty for a reading or
   * no answer.
   */
  default Optional<String> choice() {
    return map(
        c -> Optional.of(c.outcome()), r -> Optional.empty(), Optional::empty, Optional::empty);
  }

  /** The ids of all chosen outcomes, in the order of the card; none for a reading or no answer. */
  default List<String> choices() {
    return map(Chosen::all, r -> List.of(), List::of, List::of);
  }

  /** Whether this outcome was chosen, alone or with others. */
  default boolean is(String outcome) {
    return choices().contains(outcome);
  }

  /** The reading; empty for other kinds of answer. */
  default Optional<Read> reading() {
    return map(c -> Optional.empty(), Optional::of, Optional::empty, Optional::empty);
  }

  /** Whether the person said that it cannot be found out. */
  default boolean hopeless() {
    return map(c -> false, r -> false, () -> true, () -> false);
  }

  /** Whether the person said that the question has no sense at this gate. */
  default boolean senseless() {
    return false;
  }

  /** Whether the person put the check off. */
  default boolean putOff() {
    return map(c -> false, r -> false, () -> false, () -> true);
  }

  /**
   * A chosen outcome, by its id.
   *
   * @param outcome of several that are true at once, the one furthest down the card
   * @param also the others, in the order of the card
   */
  record Chosen(String outcome, @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> also)
      implements Answer {
    public Chosen {
      requireNonNull(outcome, "outcome");
      also = also == null ? List.of() : List.copyOf(also); // null in events before there was any
    }

    public Chosen(String outcome) {
      this(outcome, List.of());
    }

    /**
     * Outcomes that are true at once.
     *
     * @param outcomes ids, in any order
     * @throws IllegalArgumentException if there is none, or if these cannot be true at once
     */
    public static Chosen of(Check check, List<String> outcomes) {
      List<String> rising =
          check.outcomes().stream().map(Check.Outcome::id).filter(outcomes::contains).toList();
      int last = rising.size() - 1;
      if (last < 0 || !rising.containsAll(outcomes) || !canBe(check, rising)) {
        throw new IllegalArgumentException(outcomes + " is no answer to " + check.id());
      }
      return new Chosen(rising.get(last), rising.subList(0, last));
    }

    /** Whether outcomes of a check can be true at once: the ordinary one goes with no other. */
    public static boolean canBe(Check check, List<String> outcomes) {
      return outcomes.stream().distinct().count() == outcomes.size()
          && (outcomes.size() == 1
              || check.several() && outcomes.stream().allMatch(o -> check.indexOf(o) > 0));
    }

    /** All outcomes, in the order of the card. */
    public List<String> all() {
      return Stream.concat(also.stream(), Stream.of(outcome)).toList();
    }

    @Override
    public <R> R map(
        Function<Chosen, R> chosen,
        Function<Read, R> read,
        Supplier<R> cannotTell,
        Supplier<R> notNow) {
      return chosen.apply(this);
    }
  }

  /**
   * A measured value.
   *
   * @param typed as the person typed it
   * @param value in the canonical unit of the quantity
   */
  record Read(String typed, double value) implements Answer {
    public Read {
      requireNonNull(typed, "typed");
    }

    @Override
    public <R> R map(
        Function<Chosen, R> chosen,
        Function<Read, R> read,
        Supplier<R> cannotTell,
        Supplier<R> notNow) {
      return read.apply(this);
    }
  }

  /** Nothing was found out, and the check is not asked again. */
  sealed interface Untold extends Answer {
    @Override
    default <R> R map(
        Function<Chosen, R> chosen,
        Function<Read, R> read,
        Supplier<R> cannotTell,
        Supplier<R> notNow) {
      return cannotTell.get();
    }
  }

  /** The person says that it cannot be found out. */
  record CannotTell() implements Untold {}

  /**
   * The person says that the question has no sense at this gate, such as the speed of a leaf that
   * does not move. It counts like {@link CannotTell} everywhere.
   */
  record DoesNotApply() implements Untold {
    @Override
    public boolean senseless() {
      return true;
    }
  }

  /** The person puts the check off; it comes again when little else is left. */
  record NotNow() implements Answer {
    @Override
    public <R> R map(
        Function<Chosen, R> chosen,
        Function<Read, R> read,
        Supplier<R> cannotTell,
        Supplier<R> notNow) {
      return notNow.get();
    }
  }
}
