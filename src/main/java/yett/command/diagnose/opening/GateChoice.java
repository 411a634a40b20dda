package yett.command.diagnose.opening;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.casebook.SiteRecord;
import yett.command.common.GateNames;
import yett.command.common.NearNames;
import yett.command.common.Prompt;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.desk.GateMemory;
import yett.knowledge.Role;

/** Finds the gate for a new case: by its name or number, or from earlier calls. */
record GateChoice(Casebook casebook, Console console, EarlierCalls earlier) {
  /**
   * The gate's name: from the command line, from those known, or typed; empty if the person leaves.
   */
  Optional<String> of(String typed, Role role) {
    List<SiteRecord> sites = casebook.sites();
    List<String> open =
        casebook.cases(CaseStatus.OPEN).stream().map(CaseSummary::siteId).distinct().toList();
    if (!typed.isEmpty()) {
      if (!GateNames.isName(typed)) {
        throw new UsageException(GateNames.refusal(typed));
      }
      return meant(typed, sites, open, role);
    }
    List<String> known = inUse(sites, open);
    console.show(Block.heading("Which gate?"));
    if (!known.isEmpty()) {
      console.show(Block.numbered(known));
    }
    return Prompt.forWords(console)
        .until(
            known.isEmpty() ? "Name of the gate> " : "Number, or the name of another gate> ",
            known,
            line -> gate(line.replaceAll("\s+", " "), known))
        .flatMap(gate -> known.contains(gate) ? Optional.of(gate) : meant(gate, sites, open, role));
  }

  /** The gates that somebody may mean: those kept, and those of open cases. */
  private static List<String> inUse(List<SiteRecord> sites, List<String> open) {
    return Stream.concat(
            sites.stream().filter(s -> GateMemory.retired(s).isEmpty()).map(SiteRecord::id),
            open.stream())
        .distinct()
        .toList();
  }

  /**
   * The gate that the typed words mean: by its name and, on a call, by earlier callers and its
   * place.
   */
  private Optional<String> meant(
      String typed, List<SiteRecord> sites, List<String> open, Role role) {
    boolean named = open.contains(typed) || sites.stream().anyMatch(s -> s.id().equals(typed));
    List<String> may = named || role != Role.CALLER ? List.of() : mayBe(typed, inUse(sites, open));
    if (may.isEmpty()) {
      return new GateNames(console, sites).meant(typed);
    }
    return earlier.pick(may).map(picked -> picked.orElse(typed));
  }

  /**
   * Gates with a similar name, and those of earlier calls; also by a part of the words, such as a
   * number before a comma.
   */
  private List<String> mayBe(String typed, List<String> inUse) {
    return Stream.concat(Stream.of(typed), Arrays.stream(typed.split("[,;]")).map(String::strip))
        .distinct()
        .flatMap(
            part -> Stream.concat(NearNames.of(part, inUse).stream(), earlier.gates(part).stream()))
        .distinct()
        .limit(EarlierCalls.MOST)
        .toList();
  }

  private static Prompt.Reading<String> gate(String text, List<String> known) {
    Optional<String> numbered = Prompt.number(text, known.size()).map(n -> known.get(n - 1));
    return numbered.isPresent()
        ? Prompt.Reading.of(numbered.get())
        : text.isEmpty() || !GateNames.isName(text)
            ? Prompt.Reading.again(text.isEmpty() ? "" : GateNames.refusal(text))
            : Prompt.Reading.of(text);
  }
}
