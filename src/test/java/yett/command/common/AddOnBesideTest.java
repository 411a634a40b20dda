package yett.command.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.testing.Shipped;

class AddOnBesideTest {
  @TempDir private Path folder;

  @Test
  void a_case_of_an_add_on_that_is_not_in_use_says_which() throws IOException {
    Path add = Files.createDirectories(folder.resolve("quay"));
    Files.writeString(add.resolve("add-on.yaml"), "add-on: quay\nname: Quay\n");
    Path file = add.resolve("leaf/one.case.yaml");
    assertThat(AddOnBeside.advice(file, Shipped.BASE))
        .hasValue("It lies in an add-on that is not in use: --add-on " + add);
    RuleBase with =
        RuleBase.read(
            KnowledgeSource.layered(KnowledgeSource.folder(Path.of("knowledge")), List.of(add)));
    assertThat(AddOnBeside.advice(file, with)).isEmpty();
    assertThat(AddOnBeside.advice(folder.resolve("one.case.yaml"), Shipped.BASE)).isEmpty();
  }
}
