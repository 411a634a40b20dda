package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.KnowledgeException;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.knowledge.RuleBaseFiles;

/** A folder of data tries to run a program of its own. */
class HostileTablesTest {
  @TempDir private Path folder;

  /** An add-on without rules: a choice that is no word, and a table that says it again. */
  private SortedMap<String, String> addOn(Path touched) {
    String choice =
        "green\"), java.lang.Runtime.getRuntime().exec(\"touch "
            + touched
            + "\") != null, choice in (\"green";
    SortedMap<String, String> files =
        new TreeMap<>(KnowledgeSource.folder(Path.of("knowledge")).files());
    files.put("quay/add-on.yaml", "add-on: quay\nname: Quay\n");
    files.put(
        "quay/colour.yaml",
        """
        site: colour
        name: colour of the leaf
        ask: What colour is the leaf?
        choices:
          green: green
          '%s': any other
        default: green
        """
            .formatted(choice));
    files.put(
        "quay/ranges.table.csv",
        "rule,check,if colour,low,high,how,because,source\nby its colour,coasting,\""
            + choice.replace("\"", "\"\"")
            + "\",0 mm,10 mm,so,it is so,common practice\n");
    return files;
  }

  @Test
  void a_choice_that_holds_a_program_is_refused_where_it_stands() {
    SortedMap<String, String> files = addOn(folder.resolve("touched"));
    assertThatThrownBy(() -> RuleBase.read(() -> files))
        .isInstanceOf(KnowledgeException.class)
        .hasMessageContaining("quay/colour.yaml:6:")
        .hasMessageContaining("cannot be an id");
  }

  @Test
  void and_runs_nothing_even_where_nobody_refuses_it() throws InterruptedException {
    Path touched = folder.resolve("touched");
    RuleBase base = new RuleBaseFiles().look(addOn(touched)).base();
    RuleEngine engine = RuleEngine.of(base, new RuleCache(folder.resolve("cache")));
    try (Judge judge = engine.newJudge()) {
      judge.judge(Set.of(Fact.Site.chosen("colour", "green")));
    }
    Thread.sleep(500); // a command that was started takes a moment
    assertThat(Files.exists(touched)).isFalse();
  }
}
