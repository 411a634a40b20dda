package yett.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReplaysTest {
  @TempDir Path folder;
  private List<Path> files;

  @BeforeEach
  void a_dozen_files_of_which_one_is_bad() throws IOException {
    for (int i = 0; i < 12; i++) {
      String complaint = List.of("noisy-chain", "does-nothing", "stays-open").get(i % 3);
      String text =
          """
          case: case-%d
          person: technician
          site: {opening: %d m}
          complaints: [%s]
          answers: {danger-person: nobody, display-lit: steady}
          truth: [chain-slack]
          """
              .formatted(i, i + 2, i == 5 ? "noisy" : complaint);
      Files.writeString(folder.resolve("gate-%02d.case.yaml".formatted(i)), text);
    }
    files = CaseFile.among(List.of(folder));
  }

  @Test
  void several_at_once_give_what_one_after_the_other_gives_in_the_same_order() {
    String single = json(new Replays(SmallRuleBase.expertise(), 1));
    String several = json(new Replays(SmallRuleBase.expertise(), 4));
    String again = json(Replays.onAllProcessors(SmallRuleBase.expertise()));
    assertThat(single.lines()).hasSize(12);
    assertThat(several).isEqualTo(single);
    assertThat(again).isEqualTo(single);
  }

  @Test
  void a_bad_file_is_told_in_its_place_and_does_not_stop_the_others() {
    List<FileReplay> results = new ArrayList<>();
    new Replays(SmallRuleBase.expertise(), 2).run(files, (count, total) -> {}, results::add);
    assertThat(results).hasSize(12);
    assertThat(results.get(5).cases()).isEmpty();
    assertThat(results.get(5).problems())
        .singleElement()
        .satisfies(p -> assertThat(p.message()).isEqualTo("there is no complaint \"noisy\""));
    assertThat(results.get(11).cases()).singleElement();
  }

  @Test
  void progress_is_told_after_each_file() {
    List<String> told = new ArrayList<>();
    new Replays(SmallRuleBase.expertise(), 2)
        .run(
            files.subList(0, 3),
            (count, total) -> told.add(count + " of " + total),
            result -> told.add(result.cases().get(0).name()));
    assertThat(told).containsExactly("case-0", "1 of 3", "case-1", "2 of 3", "case-2", "3 of 3");
  }

  @Test
  void whoever_takes_the_results_can_break_off() {
    Replays replays = new Replays(SmallRuleBase.expertise(), 2);
    assertThatThrownBy(
            () ->
                replays.run(
                    files,
                    (count, total) -> {},
                    result -> {
                      throw new UncheckedIOException(new IOException("no room"));
                    }))
        .hasRootCauseMessage("no room");
  }

  private String json(Replays replays) {
    StringBuilder out = new StringBuilder();
    replays.run(files, (count, total) -> {}, result -> out.append(ReplayJson.lines(result)));
    return out.toString();
  }
}
