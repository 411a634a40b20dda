package yett.command.call;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import yett.casebook.CaseStatus;
import yett.casebook.CasebookException;
import yett.command.common.NearNames;
import yett.command.common.Prompt;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.interview.state.CallLog;

/** The names of those who work at the desk, so that "Maud" and "Maud O'Hare" are not two people. */
record AgentNames(Desk desk, Console console) {
  /**
   * The name that is meant. One that is known is taken as it was typed first; a part of exactly one
   * known name, or one that may be misspelt, is asked about. What was answered makes the name
   * known, so it is asked once.
   *
   * @throws UsageException if the input ends instead of an answer
   */
  String meant(String typed) {
    List<String> known = known();
    Optional<String> same = known.stream().filter(k -> k.equalsIgnoreCase(typed)).findFirst();
    if (same.isPresent()) {
      return same.get();
    }
    List<String> part = words(typed);
    List<String> longer =
        part.isEmpty()
            ? List.of()
            : known.stream()
                .filter(
                    k -> words(k).containsAll(part) || NearNames.of(typed, List.of(k)).size() == 1)
                .toList();
    return longer.size() == 1 && isMeant(longer.get(0)) ? longer.get(0) : typed;
  }

  private boolean isMeant(String name) {
    return Prompt.forWords(console)
        .until("Is this " + name + "? yes or no> ", List.of(), Prompt::yesOrNo)
        .orElseThrow(
            () -> new UsageException("Nothing was changed. Type the whole name: " + name + "."));
  }

  /** Who works at this computer, and who has had an open call. */
  private List<String> known() {
    TreeSet<String> names = new TreeSet<>();
    desk.agent().ifPresent(names::add);
    try {
      desk.casebook()
          .forEach(
              desk.casebook().cases(CaseStatus.OPEN),
              (line, events) -> names.addAll(CallLog.of(OpenCase.entries(events)).holders()));
    } catch (CasebookException e) {
      // The server is away: then only the name at this computer is known.
    }
    return List.copyOf(names);
  }

  /** The words of a person's name in small letters. */
  static List<String> words(String name) {
    return Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
        .filter(w -> !w.isEmpty())
        .toList();
  }
}
