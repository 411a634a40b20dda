package yett.command.diagnose.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.command.diagnose.TypedCase;
import yett.console.Layout;
import yett.console.PlainConsole;
import yett.interview.evidence.Trail;
import yett.knowledge.Role;
import yett.replay.SmallRuleBase;
import yett.testing.WithEffects;

class EffectViewsTest {
  private static final double[] NOTHING = {};

  private static List<String> screen(String cause, String... looks) {
    Trail trail =
        new Trail(
            NOTHING,
            Arrays.stream(looks)
                .map(look -> look.split(" "))
                .map(l -> new Trail.Move(1, l[0], l[1], "", "", NOTHING, NOTHING))
                .toList());
    ByteArrayOutputStream screen = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(screen, true, StandardCharsets.UTF_8);
    new PlainConsole(
            new ByteArrayInputStream(new byte[0]), out, out, new Layout(80, false, true), false)
        .show(new EffectViews(WithEffects.BASE).of(trail, WithEffects.BASE.causes().get(cause)));
    return screen.toString(StandardCharsets.UTF_8).lines().filter(l -> !l.isBlank()).toList();
  }

  @Test
  void the_effects_of_a_cause_are_told_in_a_few_lines_of_80_columns() {
    List<String> screen =
        screen(
            "rollers-worn",
            "slow said",
            "noisy said",
            "running-current high",
            "motor-touch cool",
            "leaf-look shakes");
    assertThat(screen)
        .containsExactly(
            "Rollers worn: how the machine behaves",
            "  Seen:      The drive needs more force: it runs slower than it did; running",
            "             current (more) (expected)",
            "  Seen:      The leaf shakes: it makes more noise than it did; leaf look (it",
            "             shakes) (expected)",
            "  Not seen:  The drive gets hot: motor touch (hand-warm at most)")
        .allMatch(line -> line.length() <= 80);
  }

  @Test
  void what_speaks_against_an_effect_that_is_seen_stands_beside_it() {
    assertThat(screen("rollers-worn", "slow said", "running-current ordinary"))
        .contains(
            "  Seen:  The drive needs more force: it runs slower than it did; against it:",
            "         running current (as it should) (expected)");
  }

  @Test
  void of_an_effect_that_is_not_expected_it_is_said_how_often_the_cause_has_it() {
    assertThat(screen("track-dirty", "noisy said"))
        .contains("  Seen:  The leaf shakes: it makes more noise than it did (in 25 % of cases)");
  }

  @Test
  void a_cause_without_effects_has_no_such_part() {
    assertThat(screen("chain-slack", "slow said")).isEmpty();
    assertThat(screen("rollers-worn", "chain-looks low")).isEmpty();
  }

  @Test
  void why_and_belief_end_with_the_effects_of_the_leading_cause(@TempDir Path folder) {
    try (TypedCase typed = new TypedCase(folder, SmallRuleBase.withEffects(), Role.TECHNICIAN)) {
      typed.type("0", "", "slow", "0", "why", "belief");
      String part =
          "Track dirty: how the machine behaves Seen: The drive needs more force: it runs slower"
              + " than it did (expected)";
      assertThat(typed.screen().split(Pattern.quote(part), -1)).hasSize(3);
      assertThat(typed.screen())
          .containsSubsequence("Why this question", part, "Probable causes", part);
    }
  }
}
