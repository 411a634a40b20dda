package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.casebook.CaseId;
import yett.casebook.CaseStatus;
import yett.casebook.Casebook;
import yett.casebook.NewEvent;
import yett.casebook.Summary;
import yett.interview.event.Entry;
import yett.interview.event.EventText;
import yett.replay.CaseFile;
import yett.replay.Replayer;
import yett.replay.SmallRuleBase;

/** Tests the review of closed cases against the cards of a folder, in a pipe and at a terminal. */
class ReviewIT {
  private static final String SLACK =
      """
      case: slack
      person: technician
      complaints: [noisy-chain]
      answers: {noise-kind: slap, chain-sag: [190 mm, 84 mm]}
      others: usual
      truth: [chain-slack]
      repairs: [tighten-chain]
      """;

  @TempDir private Path home;
  private Path folder;

  /** A trainer's small rule base, and forty cases that all had a slack chain. */
  @BeforeEach
  void casebook() throws IOException {
    folder = Files.createDirectories(home.resolve("own cards"));
    for (String name : List.of("causes.yaml", "checks.yaml", "work.yaml", "small.drl")) {
      Files.copy(Path.of("src/test/resources/small-rule-base", name), folder.resolve(name));
    }
    Files.copy(Path.of("knowledge/rules/core.drl"), folder.resolve("core.drl"));
    Files.writeString(folder.resolve("slack.case.yaml"), SLACK);
    Path causes = folder.resolve("causes.yaml");
    Files.writeString(
        causes, Files.readString(causes).replaceFirst("prior: 0.15", "prior: 0.15   # a guess"));
    CaseFile file = CaseFile.read("slack.case.yaml", SLACK, SmallRuleBase.base());
    List<Entry> entries =
        new Replayer(SmallRuleBase.expertise()).run(file.cases().get(0)).moment().entries();
    NewEvent[] events =
        entries.stream()
            .map(e -> new NewEvent(e.at(), e.by().word(), "kept", EventText.write(e.event())))
            .toArray(NewEvent[]::new);
    try (Casebook casebook = Casebook.open(home.resolve("casebook.db"))) {
      for (int i = 0; i < 40; i++) {
        CaseId id = casebook.newCase("slipway", Instant.EPOCH);
        casebook.append(id, 0, events);
        casebook.summarise(
            id, events.length, new Summary(CaseStatus.CLOSED, "slack", "chain-slack"));
      }
    }
  }

  private Pipe.Result run(String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString(), "COLUMNS", "80"), "", words);
  }

  @Test
  void what_cases_speak_against_is_shown_tried_and_written() throws IOException {
    assertThat(run("knowledge", "trust", folder.toString()).exitCode()).isZero();
    String checked = run("knowledge", "check", folder.toString()).stdout();
    Pipe.Result shown = run("knowledge", "review", folder.toString());
    assertThat(shown.exitCode()).as(shown.stderr()).isZero();
    assertThat(shown.stdout())
        .doesNotContain("\u001b")
        .contains("Closed cases: 40; of these 40", "prior/chain-slack", "40 of 40 cases")
        .contains("Nothing was accepted");
    assertThat(shown.stdout().lines()).allMatch(line -> line.length() <= 80);
    Pipe.Result refused =
        run("knowledge", "review", folder.toString(), "--accept", "prior/chian-slack");
    assertThat(refused.exitCode()).isEqualTo(64);
    assertThat(refused.stderr()).contains("Maybe \"prior/chain-slack\"");

    String before = Files.readString(folder.resolve("causes.yaml"));
    try (Pty pty =
        Pty.start(
            Programs.packaged("knowledge", "review", folder.toString()),
            Map.of("YETT_HOME", home.toString()),
            80,
            24)) {
      pty.expect("Numbers to accept", Visitor.PATIENCE);
      pty.enter("99");
      pty.expect("Type numbers from 1 to", Visitor.PATIENCE);
      pty.enter("1");
      pty.expect("Write this into the cards? yes or no> ", Visitor.PATIENCE);
      pty.enter("yes");
      assertThat(pty.waitForExit(Visitor.PATIENCE)).isZero();
      assertThat(pty.transcript()).contains("Before:", "After:", "Written: causes.yaml");
    }
    String after = Files.readString(folder.resolve("causes.yaml"));
    assertThat(after).isNotEqualTo(before).contains("   # a guess");
    assertThat(after.replaceFirst("prior: 0\\.[0-9]+ ", "prior: 0.15 ")).isEqualTo(before);
    assertThat(run("knowledge", "check", folder.toString()).stdout()).isEqualTo(checked);
  }
}
