package yett.study;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * Results of a study in a file, a line for each case as soon as it is played, so that a study that
 * was broken off goes on where it stopped. Each program with its rule base has a file of its own.
 */
final class Ledger {
  private static final JsonMapper JSON = JsonMapper.shared();

  private final Path file;

  /** By kind of case, by number of the case, what became of it under each policy. */
  private final Map<String, TreeMap<Long, Map<String, Played>>> done = new LinkedHashMap<>();

  private record Line(String kind, long number, Map<String, Played> played) {}

  /**
   * @param madeWith names rule base and program; results of others are not mixed with these
   */
  Ledger(Path folder, String madeWith) throws IOException {
    file = folder.resolve(madeWith + ".jsonl");
    Files.createDirectories(folder);
    String before = Files.exists(file) ? Files.readString(file) : "";
    if (!before.isEmpty() && !before.endsWith("\n")) {
      Files.writeString(file, "\n", StandardOpenOption.APPEND);
    }
    for (String line : before.lines().toList()) {
      try {
        keep(JSON.readValue(line, Line.class));
      } catch (JacksonException e) {
        // The last line of a run that was broken off; that case is played again.
      }
    }
  }

  private void keep(Line line) {
    done.computeIfAbsent(line.kind(), k -> new TreeMap<>()).put(line.number(), line.played());
  }

  synchronized boolean has(String kind, long number) {
    return done.getOrDefault(kind, new TreeMap<>()).containsKey(number);
  }

  synchronized void add(String kind, long number, Map<String, Played> played) {
    Line line = new Line(kind, number, played);
    try {
      Files.writeString(
          file,
          JSON.writeValueAsString(line) + "\n",
          StandardOpenOption.CREATE,
          StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    keep(line);
  }

  /** By number, the cases of a kind under a policy. */
  synchronized Map<Long, Played> of(String kind, String policy) {
    Map<Long, Played> played = new TreeMap<>();
    done.getOrDefault(kind, new TreeMap<>()).forEach((n, p) -> played.put(n, p.get(policy)));
    return played;
  }

  /** By policy, the cases of a kind, in the order of their numbers. */
  synchronized Map<String, List<Played>> of(String kind) {
    Map<String, List<Played>> byPolicy = new LinkedHashMap<>();
    for (Map<String, Played> one : done.getOrDefault(kind, new TreeMap<>()).values()) {
      one.forEach((p, played) -> byPolicy.computeIfAbsent(p, k -> new ArrayList<>()).add(played));
    }
    return byPolicy;
  }
}
