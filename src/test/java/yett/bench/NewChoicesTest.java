package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

class NewChoicesTest {
  private static final Path CARDS = Path.of("src/test/resources/every-field");

  private static RuleBase base(String more) {
    SortedMap<String, String> files = KnowledgeSource.folder(CARDS).files();
    String name =
        files.keySet().stream()
            .filter(f -> files.get(f).contains("site: batteries"))
            .findFirst()
            .orElseThrow();
    files.compute(
        name, (n, text) -> text.replaceFirst("(site: batteries(?s:.*?)choices:\n)", "$1" + more));
    return RuleBase.read(() -> files);
  }

  @Test
  void an_answer_that_is_new_is_told_with_what_leaves_it_out() {
    List<String> remarks = NewChoices.remarks(base(""), base("  lithium: lithium\n"));
    assertThat(remarks)
        .first()
        .isEqualTo("The answer lithium of batteries is new, and nothing depends on it yet.");
    assertThat(remarks.get(1))
        .startsWith("The answer lithium of batteries is new; at such a gate these are left out");
    assertThat(NewChoices.remarks(base(""), base(""))).isEmpty();
  }
}
