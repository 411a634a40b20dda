package yett.command.call;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.casebook.Person;

/** The callers as the sheet names them; of several, each number says whose it is. */
record CallersOnSheet(List<Person> callers) {
  Optional<String> names() {
    return told(callers.stream().map(Person::name).filter(n -> !n.isEmpty()).toList(), " and ");
  }

  Optional<String> phones() {
    return told(callers.stream().filter(p -> !p.phone().isEmpty()).map(this::phone).toList(), ", ");
  }

  private String phone(Person caller) {
    return callers.size() == 1
        ? caller.phone()
        : caller.phone()
            + " ("
            + (caller.name().isEmpty() ? caller.part().words() : caller.name())
            + ")";
  }

  private static Optional<String> told(List<String> parts, String between) {
    return Optional.of(parts.stream().collect(Collectors.joining(between)))
        .filter(t -> !t.isEmpty());
  }
}
