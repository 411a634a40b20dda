package yett.command.cases;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.casebook.CaseSearch;
import yett.casebook.CaseStatus;
import yett.command.common.ListChoice;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.knowledge.Cause;
import yett.knowledge.Names;
import yett.knowledge.RuleBase;

/**
 * The criteria of a search for cases, as typed on the command line; those not given are null.
 *
 * @param site the name of a gate, or a part of it
 * @param cause by name or id
 * @param since a day, such as 2026-11-25
 * @param until a day, which is included
 * @param state open or closed
 */
public record CaseSearchOptions(
    String site, String cause, String since, String until, String state) {
  public static final String WORDS =
      "[--site GATE] [--cause CAUSE] [--since DAY] [--until DAY] [--state open|closed]. DAY is a"
          + " date such as 2026-11-25; --until includes it.";

  public static final String SITE = "the name of a gate, or a part of it";
  public static final String CAUSE = "a cause, by name or id";
  public static final String SINCE = "opened on that day or later";
  public static final String UNTIL = "opened on that day or earlier";
  public static final String STATE = "open or closed";

  public boolean isEmpty() {
    return Stream.of(site, cause, since, until, state).allMatch(o -> o == null);
  }

  /**
   * The search that these options describe.
   *
   * @throws UsageException if the cause, a day or the state is not valid
   */
  public CaseSearch in(RuleBase base, Optional<String> text) {
    return new CaseSearch(
        text(site),
        text(cause).map(c -> causes(base, c)).orElse(Set.of()),
        text,
        text(since).map(d -> start(day(d))),
        text(until).map(d -> start(day(d).plusDays(1))),
        text(state).map(CaseSearchOptions::state));
  }

  private static Optional<String> text(String option) {
    return Optional.ofNullable(option).map(String::strip);
  }

  private static Set<String> causes(RuleBase base, String typed) {
    List<Cause> all = List.copyOf(base.causes().values());
    List<Integer> found =
        ListChoice.pick(
            typed, all.stream().map(Cause::id).toList(), all.stream().map(Cause::name).toList());
    if (found.isEmpty() || typed.matches("\\d+")) {
      throw new UsageException(
          Words.quoted(typed)
              + " is not a known cause. "
              + Names.advice(typed, all.stream().map(Cause::id).toList()));
    }
    return found.stream().map(i -> all.get(i).id()).collect(Collectors.toSet());
  }

  private static CaseStatus state(String typed) {
    return switch (typed.toLowerCase(Locale.ROOT)) {
      case "open" -> CaseStatus.OPEN;
      case "closed" -> CaseStatus.CLOSED;
      default ->
          throw new UsageException(Words.quoted(typed) + " is not a state: use open or closed.");
    };
  }

  private static LocalDate day(String typed) {
    try {
      return LocalDate.parse(typed);
    } catch (DateTimeException e) {
      throw new UsageException(
          Words.quoted(typed) + " is not a date. Write year-month-day: 2026-11-25.");
    }
  }

  private static Instant start(LocalDate day) {
    return day.atStartOfDay(ZoneId.systemDefault()).toInstant();
  }
}
