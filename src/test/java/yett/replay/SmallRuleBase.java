package yett.replay;

import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import yett.interview.course.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.testing.WithEffects;

/**
 * A rule base of a few cards, so that what a test expects does not move with the shipped cards. The
 * reading of answers is the shipped one.
 */
public final class SmallRuleBase {
  private static final Expertise EXPERTISE =
      Expertise.of(
          // A fingerprint that does not move with the shipped rules.
          RuleBase.read(SmallRuleBase::files).named("5ca1ab1e0000000000000000"),
          Path.of("target/rule-cache"));

  private SmallRuleBase() {}

  public static Expertise expertise() {
    return EXPERTISE;
  }

  public static RuleBase base() {
    return EXPERTISE.base();
  }

  /** The same with one more file of rules. */
  public static Expertise with(String rules) {
    SortedMap<String, String> files = files();
    files.put("rules/more.drl", rules);
    return Expertise.of(RuleBase.read(() -> files), Path.of("target/rule-cache"));
  }

  /** The same with these files changed. */
  public static Expertise changed(Consumer<SortedMap<String, String>> change) {
    SortedMap<String, String> files = files();
    change.accept(files);
    return Expertise.of(RuleBase.read(() -> files), Path.of("target/rule-cache"));
  }

  /** The same with the causes and effects of another one of few cards. */
  public static Expertise withEffects() {
    SortedMap<String, String> files = files();
    files.put("drive.yaml", WithEffects.files().get("drive.yaml"));
    return Expertise.of(RuleBase.read(() -> files), Path.of("target/rule-cache"));
  }

  private static SortedMap<String, String> files() {
    SortedMap<String, String> files =
        new TreeMap<>(
            KnowledgeSource.folder(Path.of("src/test/resources/small-rule-base")).files());
    files.put(
        "rules/core.drl",
        KnowledgeSource.folder(Path.of("knowledge")).files().get("rules/core.drl"));
    return files;
  }
}
