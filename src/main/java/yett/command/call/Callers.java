package yett.command.call;

import java.util.List;
import java.util.Optional;
import yett.casebook.Person;
import yett.casebook.Person.Part;
import yett.command.diagnose.sitting.Sitting;

/** The callers of a case as they are kept: the first one, and the latest of the others. */
record Callers(Sitting sitting) {
  Optional<String> first() {
    return all().stream().map(Person::name).filter(n -> !n.isEmpty()).findFirst();
  }

  boolean hasNumber() {
    return all().stream().anyMatch(p -> !p.phone().isEmpty());
  }

  /**
   * Keeps a name or a number. A number alone is that of whoever is on the line, the last who rang;
   * another name is another person, and whom they call back stays known.
   */
  void keep(CallerDetails who) {
    if (who.name().isEmpty() && who.phone().isEmpty()) {
      return;
    }
    List<Person> all = all();
    Optional<Person> same = all.stream().filter(p -> isSame(p, who)).reduce((a, b) -> b);
    Part part = same.map(Person::part).orElse(all.isEmpty() ? Part.CALLER : Part.OTHER_CALLER);
    String name =
        same.map(Person::name).filter(n -> n.length() > who.name().length()).orElse(who.name());
    String phone = who.phone().isEmpty() ? same.map(Person::phone).orElse("") : who.phone();
    sitting.open().keepCaller(new Person(part, name, phone));
  }

  private static boolean isSame(Person known, CallerDetails who) {
    if (!who.name().isEmpty() && !known.name().isEmpty()) {
      List<String> one = AgentNames.words(known.name());
      List<String> other = AgentNames.words(who.name());
      return one.containsAll(other) || other.containsAll(one);
    }
    return known.phone().isEmpty() && who.name().isEmpty()
        || digits(known.phone()).equals(digits(who.phone()));
  }

  private static String digits(String phone) {
    return phone.replaceAll("\\D", "");
  }

  private List<Person> all() {
    return sitting.open().callers();
  }
}
