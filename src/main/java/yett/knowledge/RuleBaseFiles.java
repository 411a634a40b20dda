package yett.knowledge;

import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Reads a rule base again and again, as while somebody edits it: a file is parsed again only when
 * its text has changed.
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
    parsed.keySet().retainAll(files.keySet());
    return new RuleBaseReader(files, this::parsed).read();
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
