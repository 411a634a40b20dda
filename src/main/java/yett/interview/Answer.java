package yett.interview;

import static java.util.Objects.requireNonNull;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;

/** What the person said to a check. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
  @JsonSubTypes.Type(value = Answer.Chosen.class, name = "outcome"),
  @JsonSubTypes.Type(value = Answer.Read.class, name = "reading"),
  @JsonSubTypes.Type(value = Answer.CannotTell.class, name = "cannot-tell"),
  @JsonSubTypes.Type(value = Answer.NotNow.class, name = "not-now")
})
public sealed interface Answer {

  /** An outcome by its id. */
  record Chosen(String outcome) implements Answer {
    public Chosen {
      requireNonNull(outcome, "outcome");
    }
  }

  /**
   * A reading.
   *
   * @param typed as the person typed it
   * @param value in the canonical unit of the quantity
   */
  record Read(String typed, double value) implements Answer {
    public Read {
      requireNonNull(typed, "typed");
    }
  }

  /** It cannot be found out; the check is not asked again. */
  record CannotTell() implements Answer {}

  /** Later perhaps; the check comes again when little else is left. */
  record NotNow() implements Answer {}
}
