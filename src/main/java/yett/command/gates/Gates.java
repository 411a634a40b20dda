package yett.command.gates;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import yett.casebook.CaseSummary;
import yett.casebook.SiteName;
import yett.casebook.SiteRecord;
import yett.command.common.PastCases;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.console.Progress;
import yett.desk.Desk;
import yett.desk.GateMemory;
import yett.figures.GateHistory;
import yett.knowledge.Names;

/**
 * The gates of a casebook: those that somebody described, and those that are only named in cases.
 */
record Gates(Desk desk, Console console) {
  /**
   * A gate with what is known of it.
   *
   * @param told answers about it; empty if nobody described it yet
   * @param unread cases that a newer program wrote
   * @param retired since when it is no longer looked after; empty if it is looked after
   */
  record Gate(
      String name,
      Optional<Map<String, String>> told,
      GateHistory history,
      int unread,
      Optional<LocalDate> retired) {}

  /** All gates in the order of their names. */
  List<Gate> all() {
    return read(name -> true);
  }

  /** The gate with this name. */
  Gate named(String name) {
    return read(name::equals).get(0);
  }

  /**
   * The name of the gate that somebody means, from its name or the beginning of it.
   *
   * @throws UsageException if there is none; the message gives the nearest names
   */
  String meant(String typed) {
    String letters = SiteName.letters(typed);
    List<String> begun =
        names().stream()
            .filter(n -> !letters.isEmpty() && SiteName.letters(n).startsWith(letters))
            .toList();
    return begun.size() == 1 && desk.casebook().formerly(typed).isEmpty()
        ? begun.get(0)
        : exactly(typed);
  }

  /**
   * The gate with this name, ignoring punctuation and capitals.
   *
   * @throws UsageException if there is none; the message gives the nearest names
   */
  String exactly(String typed) {
    List<String> names = names();
    if (names.contains(typed)) {
      return typed;
    }
    List<String> formerly = desk.casebook().formerly(typed);
    if (!formerly.isEmpty()) {
      throw new UsageException(
          "\"" + typed + "\" has another name now: " + String.join("; ", formerly) + ".");
    }
    String letters = SiteName.letters(typed);
    List<String> near =
        names.stream()
            .filter(n -> !letters.isEmpty() && SiteName.letters(n).equals(letters))
            .toList();
    if (near.size() == 1) {
      return near.get(0);
    }
    throw new UsageException(
        names.isEmpty()
            ? "The casebook has no gates yet. A gate is added with its first case: diagnose."
            : "There is no gate \"" + typed + "\". " + Names.advice(typed, names));
  }

  List<String> names() {
    List<String> names = new ArrayList<>();
    desk.casebook().sites().forEach(s -> names.add(s.id()));
    desk.casebook().cases().forEach(c -> names.add(c.siteId()));
    return names.stream().distinct().sorted().toList();
  }

  private List<Gate> read(Predicate<String> wanted) {
    GateMemory memory = new GateMemory(desk.casebook(), desk.clock());
    Map<String, SiteRecord> described =
        desk.casebook().sites().stream()
            .filter(s -> wanted.test(s.id()))
            .collect(Collectors.toMap(SiteRecord::id, s -> s));
    List<CaseSummary> lines =
        desk.casebook().cases().stream().filter(line -> wanted.test(line.siteId())).toList();
    Map<String, List<GateHistory.Past>> past = new TreeMap<>();
    Map<String, Integer> unread = new HashMap<>();
    described.keySet().forEach(name -> past.put(name, new ArrayList<>()));
    lines.forEach(line -> past.computeIfAbsent(line.siteId(), n -> new ArrayList<>()));
    lines.forEach(line -> unread.merge(line.siteId(), 1, Integer::sum));
    try (Progress progress = console.start("cases", lines.size())) {
      desk.casebook()
          .forEach(
              lines,
              (line, events) -> {
                PastCases.of(line, events)
                    .ifPresent(
                        p -> {
                          past.get(line.siteId()).add(p);
                          unread.merge(line.siteId(), -1, Integer::sum);
                        });
                progress.step();
              });
    }
    return past.entrySet().stream()
        .map(
            e ->
                new Gate(
                    e.getKey(),
                    Optional.ofNullable(described.get(e.getKey())).map(memory::now),
                    new GateHistory(e.getValue()),
                    unread.getOrDefault(e.getKey(), 0),
                    Optional.ofNullable(described.get(e.getKey())).flatMap(GateMemory::retired)))
        .toList();
  }
}
