package yett.testing;

import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

/** A small rule base in which two causes lead to the same effects. */
public final class WithEffects {
  public static final RuleBase BASE = RuleBase.read(WithEffects::files);

  private WithEffects() {}

  /** Its files by path. */
  public static SortedMap<String, String> files() {
    Path resources = Path.of("src/test/resources");
    SortedMap<String, String> files =
        new TreeMap<>(KnowledgeSource.folder(resources.resolve("sound-knowledge")).files());
    files.putAll(KnowledgeSource.folder(resources.resolve("effects-knowledge")).files());
    return files;
  }
}
