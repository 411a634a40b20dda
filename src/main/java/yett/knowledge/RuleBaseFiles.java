package yett.knowledge;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Reads a rule base repeatedly, for example while somebody edits it. A file is parsed again only
 * when its text has changed.
 */
public final class RuleBaseFiles {
  private final Map<String, ParsedFile> parsed = new ConcurrentHashMap<>();

  /**
   * Reads and checks a rule base.
   *
   * @param files contents by path
   * @throws KnowledgeException with every problem found
   */
  public RuleBase read(SortedMap<String, String> files) {
    Look look = look(files);
    if (!look.problems().isEmpty()) {
      throw new KnowledgeException(look.problems());
    }
    return look.base();
  }

  /**
   * The readable part of a rule base with all its problems.
   *
   * @param whole whether every card could be parsed; otherwise names may be missing that exist
   */
  public record Look(RuleBase base, List<Problem> problems, boolean whole) {}

  /** Reads a rule base as far as possible. */
  public Look look(SortedMap<String, String> files) {
    parsed.keySet().retainAll(files.keySet());
    RuleBaseReader reader = new RuleBaseReader(files, "", this::parsed);
    RuleBase base = reader.readAsFarAsPossible();
    return new Look(base, List.copyOf(reader.problems()), reader.wasReadable());
  }

  private ParsedFile parsed(String name, String text) {
    ParsedFile kept = parsed.get(name);
    if (kept != null && kept.text().equals(text)) {
      return kept;
    }
    ParsedFile fresh = ParsedFile.of(name, text);
    parsed.put(name, fresh);
    return fresh;
  }
}
