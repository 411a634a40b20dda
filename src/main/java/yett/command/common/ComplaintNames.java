package yett.command.common;

import java.util.List;
import java.util.Optional;
import yett.knowledge.Check;

/** Finds complaints by their exact names: as listed, as read out to a caller, or by id. */
public record ComplaintNames(List<Check> complaints) {

  /** The complaint that has this name; empty if none has. */
  public Optional<Check> named(String line) {
    return complaints.stream()
        .filter(
            c ->
                !ListChoice.same(line, List.of(c.id(), c.id()), List.of(c.ask(), c.spoken()))
                    .isEmpty())
        .findFirst();
  }
}
