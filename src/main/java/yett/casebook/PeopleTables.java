package yett.casebook;

import java.util.List;
import java.util.Locale;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The SQL of what is known of people; the caller holds the transaction. */
record PeopleTables(JdbcClient client) {
  /** Replaces what was stored of that person; a person without any data is deleted. */
  Person save(CaseId id, Person person) {
    client
        .sql("delete from case_person where case_id = ? and part = ?")
        .params(id.toString(), person.part().name())
        .update();
    if (!person.name().isBlank() || !person.phone().isBlank()) {
      client
          .sql("insert into case_person (case_id, part, name, phone) values (?, ?, ?, ?)")
          .params(id.toString(), person.part().name(), person.name(), person.phone())
          .update();
    }
    return person;
  }

  List<Person> of(CaseId id) {
    return client
        .sql("select part, name, phone from case_person where case_id = ? order by part")
        .param(id.toString())
        .query(
            (row, n) ->
                new Person(
                    Person.Part.valueOf(row.getString("part")),
                    row.getString("name"),
                    row.getString("phone")))
        .list();
  }

  int forget(CaseId id) {
    return client.sql("delete from case_person where case_id = ?").param(id.toString()).update();
  }

  /** The cases that know somebody with this name or number, ignoring capitals. */
  List<CaseId> knowing(String nameOrPhone) {
    String sought = nameOrPhone.strip().toLowerCase(Locale.ROOT);
    return client
        .sql("select case_id, name, phone from case_person")
        .query(
            (row, n) ->
                same(row.getString("name"), sought) || samePhone(row.getString("phone"), sought)
                    ? CaseId.parse(row.getString("case_id")).orElse(null)
                    : null)
        .list()
        .stream()
        .filter(java.util.Objects::nonNull)
        .distinct()
        .sorted()
        .toList();
  }

  private static boolean same(String kept, String sought) {
    return kept.strip().toLowerCase(Locale.ROOT).equals(sought);
  }

  /** Compares numbers without blanks and hyphens. */
  private static boolean samePhone(String kept, String sought) {
    String digits = digits(sought);
    return digits.length() >= 3 && digits(kept).equals(digits);
  }

  private static String digits(String phone) {
    return phone.replaceAll("[\\s()/.-]", "");
  }
}
