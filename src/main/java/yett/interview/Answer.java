package yett.interview;

import static java.util.Objects.requireNonNull;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** What the person answered to a check. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
  @JsonSubTypes.Type(value = Answer.Chosen.class, name = "outcome"),
  @JsonSubTypes.Type(value = Answer.Read.class, name = "reading"),
  @JsonSubTypes.Type(value = Answer.CannotTell.class, name = "cannot-tell"),
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

  /** The id of the chosen outcome; empty for a reading or no answer. */
  default Optional<String> choice() {
    return map(
        c -> Optional.of(c.outcome()), r -> Optional.empty(), Optional::empty, Optional::empty);
  }

  /** Whether this outcome was chosen. */
  default boolean is(String outcome) {
    return choice().filter(outcome::equals).isPresent();
  }

  /** The reading; empty for other kinds of answer. */
  default Optional<Read> reading() {
    return map(c -> Optional.empty(), Optional::of, Optional::empty, Optional::empty);
  }

  /** Whether the person said that it cannot be found out. */
  default boolean hopeless() {
    return map(c -> false, r -> false, () -> true, () -> false);
  }

  /** Whether the person put the check off. */
  default boolean putOff() {
    return map(c -> false, r -> false, () -> false, () -> true);
  }

  /** A chosen outcome, by its id. */
  record Chosen(String outcome) implements Answer {
    public Chosen {
      requireNonNull(outcome, "outcome");
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

  /** The person says that it cannot be found out; the check is not asked again. */
  record CannotTell() implements Answer {
    @Override
    public <R> R map(
        Function<Chosen, R> chosen,
        Function<Read, R> read,
        Supplier<R> cannotTell,
        Supplier<R> notNow) {
      return cannotTell.get();
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
