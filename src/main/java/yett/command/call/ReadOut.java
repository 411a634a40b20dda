package yett.command.call;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What was read out to the caller because of dangers, at this sitting. */
final class ReadOut {
  private final Set<String> lines = new HashSet<>();

  void add(Collection<String> read) {
    lines.addAll(read);
  }

  /** Those of the lines that the caller has not heard. */
  List<String> notYet(List<String> all) {
    return all.stream().filter(line -> !lines.contains(line)).toList();
  }
}
