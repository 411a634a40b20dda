package yett.command.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

class SameVersionTest {
  @TempDir private Path directory;

  private RuleBase base(String name, String version, boolean changed) throws IOException {
    Path folder = Files.createDirectory(directory.resolve(name));
    List<Path> files;
    try (Stream<Path> all = Files.list(Path.of("src/test/resources/small-rule-base"))) {
      files = all.toList();
    }
    for (Path file : files) {
      Files.copy(file, folder.resolve(file.getFileName()));
    }
    Files.copy(Path.of("knowledge/rules/core.drl"), folder.resolve("core.drl"));
    if (!version.isEmpty()) {
      Files.writeString(
          folder.resolve("rule-base.yaml"),
          "rule-base: quay\nname: Quay\nversion: \"" + version + "\"\nsource: common practice\n");
    }
    if (changed) {
      Files.writeString(folder.resolve("more.drl"), "// one more remark\n");
    }
    return RuleBase.read(KnowledgeSource.folder(folder));
  }

  @Test
  void changed_cards_under_the_same_version_are_remarked_on() throws IOException {
    RuleBase first = base("first", "1.1", false);
    assertThat(SameVersion.remark(first, base("changed", "1.1", true)).orElseThrow())
        .contains("Both call themselves Quay 1.1", "Raise the version");
    assertThat(SameVersion.remark(first, base("raised", "1.2", true))).isEmpty();
    assertThat(SameVersion.remark(first, base("same", "1.1", false))).isEmpty();
  }

  @Test
  void rule_bases_without_a_version_are_not() throws IOException {
    assertThat(SameVersion.remark(base("one", "", false), base("other", "", true))).isEmpty();
  }
}
