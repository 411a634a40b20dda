package yett.testing;

import java.nio.file.Path;
import yett.interview.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

/** The rule base of this project, read and compiled once for all tests of a process. */
public final class Shipped {
  private static final RuleBase BASE = RuleBase.read(KnowledgeSource.folder(Path.of("knowledge")));
  private static Expertise expertise;

  private Shipped() {}

  public static RuleBase base() {
    return BASE;
  }

  public static synchronized Expertise expertise() {
    if (expertise == null) {
      expertise = Expertise.of(BASE, Path.of("target/rule-cache"));
    }
    return expertise;
  }
}
