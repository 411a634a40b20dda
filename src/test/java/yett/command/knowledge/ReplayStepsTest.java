package yett.command.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.console.Block;
import yett.console.Layout;
import yett.console.PlainConsole;
import yett.replay.CaseFile;
import yett.replay.Replayed;
import yett.replay.Replayer;
import yett.replay.SmallRuleBase;

class ReplayStepsTest {
  private static final String CASE =
      """
      case: slack
      story: The chain of the Ferry gate slaps.
      person: technician
      site: {opening: 6 m}
      complaints: [noisy-chain]
      answers:
        danger-person: nobody
        display-lit: steady
        noise-kind: slap
        held-open: not-meant
        chain-sag: [190 mm, 84 mm]
        limits-hold: pass
      truth: [chain-slack]
      repairs: [tighten-chain]
      """;

  private static String shown(List<Block> blocks) {
    ByteArrayOutputStream screen = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(screen, true, StandardCharsets.UTF_8);
    new PlainConsole(InputStream.nullInputStream(), out, out, new Layout(110, false, true), false)
        .show(blocks);
    return screen.toString(StandardCharsets.UTF_8).replace('\u00a0', ' ');
  }

  @Test
  void a_case_is_told_step_by_step_with_minutes_and_first_causes() {
    Replayed replayed =
        new Replayer(SmallRuleBase.expertise())
            .run(CaseFile.read("ferry.case.yaml", CASE, SmallRuleBase.base()).cases().get(0));
    String text = shown(ReplaySteps.blocks(replayed));
    assertThat(text)
        .startsWith("slack (ferry.case.yaml)")
        .contains("The chain of the Ferry gate slaps.")
        .containsPattern("\\d+ +complaints: noisy-chain – after [^;]+; chain-slack \\d+ %, ")
        .containsPattern("\\d+ +repair tighten-chain: done – after \\d+ min")
        .containsPattern("\\d+ +chain-sag: 84 mm, understood as ordinary – after \\d+ min")
        .contains("Ended: every proof passed.");
    // The last step has all the minutes that the summary of the case tells.
    String last = text.lines().filter(l -> l.contains(" close: ")).findFirst().orElseThrow();
    assertThat(last).contains("after " + Math.round(replayed.spentMinutes()) + " min");
  }
}
