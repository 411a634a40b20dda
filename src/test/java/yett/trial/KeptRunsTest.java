package yett.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import yett.files.SealedFiles;
import yett.interview.course.Expertise;
import yett.replay.RecordedCase;

/** A run that was made is not made again, and stands for no other. */
@DisabledOnOs(OS.WINDOWS)
class KeptRunsTest {
  private static final String PROGRAM = "program one";

  @TempDir private Path folder;
  @TempDir private Path home;
  private SmallFolder cards;

  @BeforeEach
  void write() {
    cards = new SmallFolder(folder).noisy();
  }

  private KeptRuns kept(String program) {
    return KeptRuns.of(new SealedFiles(home.resolve("runs"), home.resolve("runs.key")), program);
  }

  private Trial run(KeptRuns kept) {
    return Trial.run(cards.expertise(), cards.cases("").cases(), Map.of(), kept, () -> {});
  }

  /** How many of the cases are found again. */
  private long found(String program) {
    Expertise expertise = cards.expertise();
    KeptRuns.Of runs = kept(program).of(expertise.base());
    return cards.cases("").cases().stream().filter(c -> runs.get(c, Set.of()).isPresent()).count();
  }

  @Test
  void a_run_that_was_made_before_comes_out_as_it_did() {
    Trial made = run(kept(PROGRAM));
    assertThat(found(PROGRAM)).isEqualTo(made.accounts().size()).isPositive();
    assertThat(run(kept(PROGRAM))).isEqualTo(made);
    assertThat(run(KeptRuns.NONE)).isEqualTo(made);
  }

  @Test
  void it_is_one_of_the_same_case_the_same_cards_and_the_same_program() {
    run(kept(PROGRAM));
    assertThat(found("program two")).isZero();
    cards.change("harbour.case.yaml", "noise-kind: slap", "noise-kind: usual");
    assertThat(found(PROGRAM)).as("with one of two cases changed").isLessThanOrEqualTo(1);
    cards.change("harbour.case.yaml", "noise-kind: usual\n  held", "noise-kind: slap\n  held");
    assertThat(found(PROGRAM)).isEqualTo(2);
    cards.change("causes.yaml", "prior: 0.15", "prior: 0.16");
    assertThat(found(PROGRAM)).isZero();
  }

  @Test
  void causes_that_were_not_in_view_are_looked_at_anew() {
    run(kept(PROGRAM));
    Expertise expertise = cards.expertise();
    KeptRuns.Of runs = kept(PROGRAM).of(expertise.base());
    var slack = cards.cases("slack").cases().get(0);
    Account account = runs.get(slack, Set.of()).orElseThrow().account();
    assertThat(runs.get(slack, account.inView())).isPresent();
    String other =
        expertise.base().causes().keySet().stream()
            .filter(c -> !account.inView().contains(c))
            .findFirst()
            .orElseThrow();
    assertThat(runs.get(slack, Set.of(other))).isEmpty();
    assertThat(runs.get(slack, Set.of("no cause of this rule base"))).isPresent();
  }

  @Test
  void a_run_with_another_cause_in_view_stands_for_one_without_it_too() {
    Expertise expertise = cards.expertise();
    List<RecordedCase> cases = cards.cases("").cases();
    Trial own = Trial.run(expertise, cases, Map.of(), KeptRuns.NONE, () -> {});
    Map<Account.Key, Set<String>> all = new HashMap<>();
    cases.forEach(c -> all.put(Account.Key.of(c), expertise.base().causes().keySet()));
    Trial wide = Trial.run(expertise, cases, all, kept(PROGRAM), () -> {});
    assertThat(wide).isNotEqualTo(own);
    KeptRuns.Of runs = kept(PROGRAM).of(expertise.base());
    assertThat(cases).allMatch(c -> runs.get(c, expertise.base().causes().keySet()).isPresent());
    assertThat(Trial.run(expertise, cases, all, kept(PROGRAM), () -> {})).isEqualTo(wide);
    assertThat(Trial.run(expertise, cases, Map.of(), kept(PROGRAM), () -> {})).isEqualTo(own);
  }

  @Test
  void what_somebody_else_wrote_there_counts_for_nothing() throws IOException {
    run(kept(PROGRAM));
    List<Path> files;
    try (var all = Files.list(home.resolve("runs"))) {
      files = all.toList();
    }
    assertThat(files).hasSize(1);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(files.get(0))))
        .isEqualTo("rw-------");
    byte[] sealed = Files.readAllBytes(files.get(0));
    sealed[sealed.length - 3] ^= 1;
    Files.write(files.get(0), sealed);
    assertThat(found(PROGRAM)).isZero();
  }

  @Test
  void old_ones_make_room() {
    for (int i = 0; i < 18; i++) {
      run(kept("program " + i));
    }
    assertThat(home.resolve("runs")).isDirectoryNotContaining("regex:.*never.*");
    assertThat(home.resolve("runs").toFile().list()).hasSize(16);
    assertThat(found("program 17")).isPositive();
  }

  @Test
  void what_was_replayed_before_a_comparison_was_broken_off_is_kept() {
    Comparison.Side side = cards.side("");
    Comparison.Course course =
        new Comparison.Course() {
          @Override
          public void step() {}

          @Override
          public void replayed(Supplier<Comparison> soFar, int open) {
            assertThat(open).isEqualTo(1);
            assertThat(soFar.get().first().cases()).isEqualTo(1);
            throw new IllegalStateException("broken off");
          }
        };
    SmallFolder other = new SmallFolder(home.resolve("cards")).noisy();
    other.change("causes.yaml", "prior: 0.15", "prior: 0.3");
    assertThatThrownBy(() -> Comparison.ofTouched(side, other.side(""), kept(PROGRAM), course))
        .hasMessage("broken off");
    assertThat(found(PROGRAM)).isPositive();
  }
}
