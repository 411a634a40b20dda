package yett.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchSessionTest {
  private static final Set<String> COMMANDS =
      Set.of(
          "diagnose",
          "knowledge check",
          "knowledge test",
          "knowledge new",
          "knowledge show",
          "knowledge find",
          "knowledge hears",
          "knowledge table",
          "knowledge compare");

  @TempDir private Path folder;

  private String whole(String line) {
    BenchSession session = BenchSession.of(List.of("knowledge", folder.toString())).orElseThrow();
    return String.join(" ", session.whole(CommandLine.words(line), COMMANDS::contains))
        .replace(folder.toString(), "F");
  }

  @Test
  void what_may_be_left_out_is_put_in() throws IOException {
    assertThat(whole("check")).isEqualTo("knowledge check F");
    assertThat(whole("test --only chain/")).isEqualTo("knowledge test F --only chain/");
    assertThat(whole("compare other")).isEqualTo("knowledge compare other");
    assertThat(whole("new cause id=x")).isEqualTo("knowledge new cause F id=x");
    assertThat(whole("new")).isEqualTo("knowledge new");
    assertThat(whole("show chain-slack")).isEqualTo("knowledge show chain-slack F");
    assertThat(whole("knowledge show chain-slack G")).isEqualTo("knowledge show chain-slack G");
    assertThat(whole("find brake")).isEqualTo("knowledge find brake --knowledge F");
    assertThat(whole("table --out t.csv")).isEqualTo("knowledge table F --out t.csv");
    assertThat(whole("hears howls")).isEqualTo("knowledge hears howls --knowledge F");
    Files.writeString(folder.resolve("add-on.yaml"), "add-on: a\nname: A\n");
    assertThat(whole("find brake")).isEqualTo("knowledge find brake --add-on F");
    assertThat(whole("diagnose")).isEqualTo("diagnose");
    assertThat(whole("")).isEmpty();
  }

  @Test
  void only_a_folder_opens_one() {
    assertThat(BenchSession.of(List.of("knowledge", "check"))).isEmpty();
    assertThat(BenchSession.of(List.of("knowledge"))).isEmpty();
    assertThat(BenchSession.of(List.of("practice", folder.toString()))).isEmpty();
  }
}
