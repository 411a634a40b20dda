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
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandOption;
import yett.casebook.CaseSearch;
import yett.casebook.CaseStatus;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Words;
import yett.knowledge.Cause;
import yett.knowledge.Names;
import yett.knowledge.RuleBase;

/** Reads from a command line which cases are sought. */
public final class CaseSearchOptions {
  public static final String WORDS =
      "[--site GATE] [--cause CAUSE] [--since DAY] [--until DAY] [--state open|closed]. DAY is such"
          + " as 2026-11-25; --until includes it.";

  private final CommandContext context;
  private final ZoneId zone;

  public CaseSearchOptions(CommandContext context, ZoneId zone) {
    this.context = context;
    this.zone = zone;
  }

  public static CommandOption[] options() {
    return new CommandOption[] {
      Verb.value("site", "the name of a gate, or a part of it"),
      Verb.value("cause", "a cause, by name or id"),
      Verb.value("since", "opened on that day or later"),
      Verb.value("until", "opened on that day or earlier"),
      Verb.value("state", "open or closed"),
    };
  }

  public CaseSearch search(RuleBase base, Optional<String> text) {
    return new CaseSearch(
        text("site"),
        text("cause").map(c -> causes(base, c)).orElse(Set.of()),
        text,
        text("since").map(d -> start(day(d))),
        text("until").map(d -> start(day(d).plusDays(1))),
        text("state").map(CaseSearchOptions::state));
  }

  private Optional<String> text(String option) {
    return Verb.has(context, option)
        ? Optional.of(Verb.option(context, option, "").strip())
        : Optional.empty();
  }

  private static Set<String> causes(RuleBase base, String typed) {
    List<Cause> all = List.copyOf(base.causes().values());
    List<Integer> found =
        Words.pick(
            typed, all.stream().map(Cause::id).toList(), all.stream().map(Cause::name).toList());
    if (found.isEmpty() || typed.matches("\\d+")) {
      throw new UsageException(
          "\""
              + Words.shortened(typed)
              + "\" is no cause. "
              + Names.advice(typed, all.stream().map(Cause::id).toList()));
    }
    return found.stream().map(i -> all.get(i).id()).collect(Collectors.toSet());
  }

  private static CaseStatus state(String typed) {
    return switch (typed.toLowerCase(Locale.ROOT)) {
      case "open" -> CaseStatus.OPEN;
      case "closed" -> CaseStatus.CLOSED;
      default ->
          throw new UsageException(
              "\"" + Words.shortened(typed) + "\" is no state: open or closed.");
    };
  }

  private static LocalDate day(String typed) {
    try {
      return LocalDate.parse(typed);
    } catch (DateTimeException e) {
      throw new UsageException(
          "\"" + Words.shortened(typed) + "\" is no day. Write year, month, day: 2026-11-25.");
    }
  }

  private Instant start(LocalDate day) {
    return day.atStartOfDay(zone).toInstant();
  }
}
