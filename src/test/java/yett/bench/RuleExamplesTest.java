package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.interview.course.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

/** A rule or row of one's own that no case tries is remarked on, with a case to start from. */
class RuleExamplesTest {
  @TempDir private Path mole;

  private List<String> remarks() throws IOException {
    Files.writeString(mole.resolve("add-on.yaml"), "add-on: mole\nname: The mole\n");
    Files.writeString(
        mole.resolve("odds.table.csv"),
        "rule,if leaf-face,happened,odds,because,source\n"
            + "a boarded leaf at the mole,boarded,strong-wind,wind-on-leaf 2,the mole has no"
            + " lee,considered judgement\n");
    KnowledgeSource source =
        KnowledgeSource.layered(KnowledgeSource.folder(Path.of("knowledge")), List.of(mole));
    SortedMap<String, String> files = source.files();
    RuleBase base = RuleBase.read(source);
    return RuleExamples.remarks(Expertise.of(base, Path.of("target/rule-cache")), files);
  }

  @Test
  void the_example_that_it_offers_settles_it() throws IOException {
    List<String> remarks = remarks();
    assertThat(remarks).hasSize(1);
    String remark = remarks.get(0);
    assertThat(remark)
        .contains("\"a boarded leaf at the mole\"", "odds.case.yaml")
        .contains("site: {leaf-face: boarded}", "history: [strong-wind]", "truth: [wind-on-leaf]");
    Files.writeString(
        mole.resolve("odds.case.yaml"), remark.substring(remark.indexOf("case: ")) + "\n");
    assertThat(remarks()).isEmpty();
  }
}
