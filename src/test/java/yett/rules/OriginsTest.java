package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

class OriginsTest {
  private static final String RULE =
      """
      package %s
      import yett.rules.Conclusion.Remark
      import yett.rules.Fact.ComplaintsTaken
      import static yett.rules.Reason.because
      rule "taken"
        @Source("common practice")
      when
        ComplaintsTaken()
      then
        insertLogical(new Remark("%s", because(drools)));
      end
      """;

  @TempDir private Path folder;

  @Test
  void a_rule_of_an_add_on_says_where_it_comes_from_and_its_text_stays_as_it_was() {
    SortedMap<String, String> files =
        new TreeMap<>(
            KnowledgeSource.folder(Path.of("src/test/resources/sound-knowledge")).files());
    files.put("base.drl", RULE.formatted("base", "of the base"));
    files.put("quay/add-on.yaml", "add-on: quay\nname: The \"quay\" $1 \\\n");
    String own = RULE.formatted("own", "of the quay");
    files.put("quay/own.drl", own);
    RuleBase base = RuleBase.read(() -> files);
    assertThat(base.rules()).containsEntry("quay/own.drl", own);
    try (Judge judge = RuleEngine.of(base, new RuleCache(folder)).newJudge()) {
      assertThat(judge.judge(Set.of(new Fact.ComplaintsTaken())).remarks())
          .extracting(r -> r.text() + ": " + r.reason().source())
          .containsExactly(
              "of the base: common practice",
              "of the quay: common practice; add-on The \"quay\" $1 \\");
    }
  }
}
