package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.KnowledgeSource;

/**
 * Tests a trainer's work in a pipe and at a terminal: those parts of docs/trainer.md that do not
 * take long.
 */
class TrainerIT {
  @TempDir private Path home;

  private Path folder;

  @BeforeEach
  void an_add_on() throws IOException {
    folder = Files.createDirectory(home.resolve("harrow-quay"));
    Files.writeString(folder.resolve("add-on.yaml"), "add-on: harrow-quay\nname: Harrow Quay\n");
  }

  private Pipe.Result run(String... words) {
    return InProcess.run(environment(), "", words);
  }

  private Map<String, String> environment() {
    return Map.of("YETT_HOME", home.resolve("settings").toString());
  }

  private Pty start(String... words) {
    return Pty.start(Programs.packaged(words), environment(), 100, 40);
  }

  @Test
  void a_cause_is_written_checked_and_shown_in_a_pipe() throws IOException {
    String place = folder.toString();
    Pipe.Result refused = run("knowledge", "new", "cause", place, "id=Bracket", "area=chain");
    assertThat(refused.exitCode()).isEqualTo(64);
    assertThat(refused.stderr())
        .contains("id: \"Bracket\" cannot be an id", "name=… is missing", "repair=… is missing")
        .doesNotContain("Exception");
    assertThat(folder.resolve("chain")).doesNotExist();

    String[] good = {
      "knowledge",
      "new",
      "cause",
      place,
      "id=chain-bracket-cracked",
      "name=Chain bracket cracked",
      "area=chain",
      "prior=0.5",
      "like=chain-slack",
      "complaints=noisy-chain often",
      "chain-sag=slack usually",
      "repair=replace-bracket"
    };
    Pipe.Result written = run(good);
    assertThat(written.exitCode()).as(written.stderr()).isZero();
    Path card = folder.resolve("chain/chain-bracket-cracked.yaml");
    assertThat(card).content().contains("  chain-sag: {slack: usually}");
    assertThat(run(good).stderr()).contains("There is a cause \"chain-bracket-cracked\" already");

    Pipe.Result sound = run("knowledge", "check", place);
    assertThat(sound.stdout()).contains("No problem found", "adds cause chain-bracket-cracked");
    assertThat(sound.exitCode()).isZero();
    Pipe.Result shown = run("knowledge", "show", "chain-bracket-cracked", place);
    assertThat(shown.stdout()).contains("slack 0.75", "removed by replace-bracket");
    String page = home.resolve("bracket.html").toString();
    String[] paged = {"knowledge", "show", "chain-bracket-cracked", place, "--html", page};
    assertThat(run(paged).stdout()).contains(page + " is written.");
    assertThat(Path.of(page)).content().contains("<h1>Chain bracket cracked</h1>", "<svg ");
    assertThat(run(paged).stderr()).contains("exists already. Name another file");

    String text = Files.readString(card);
    Files.writeString(card, text.replace("chain-sag: {slack", "chain-sga: {slack"));
    Pipe.Result broken = run("knowledge", "check", place);
    assertThat(broken.exitCode()).isEqualTo(65);
    assertThat(broken.stdout())
        .contains(
            "there is no check, complaint or proof \"chain-sga\"\n"
                + "      chain-sga: {slack: usually}\n"
                + "      ^\n"
                + "  Maybe \"chain-sag\".")
        .contains("1 problem in 1 file.");
  }

  @Test
  void a_new_answer_is_told_in_a_rule_base_of_ones_own_too() throws IOException {
    Path own = home.resolve("own");
    KnowledgeSource.folder(Path.of("knowledge"))
        .files()
        .forEach((name, text) -> write(own.resolve(name), text));
    Path supply = own.resolve("site/supply.yaml");
    write(
        supply,
        Files.readString(supply).replace("{agm: ", "{nickel: nickel-cadmium blocks, agm: "));
    assertThat(run("knowledge", "check", own.toString()).stdout())
        .contains("No problem found", "The answer nickel of batteries is new");
  }

  private static void write(Path file, String text) {
    try {
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void rules_are_looked_at_before_they_run() throws IOException {
    String place = folder.toString();
    String good =
        """
        package yett.rules.quay
        import yett.rules.Fact.Done
        import yett.rules.Conclusion.FollowUp
        import static yett.rules.Reason.because
        rule "a slack chain is looked at again"
        when
          Done(repair == "tighten-chain")
        then
          insertLogical(new FollowUp("tighten-chain", "chain-looks", because(drools)));
        end
        """;
    Path rules = folder.resolve("follow-ups.drl");
    Files.writeString(rules, good.replace("chain\")", "chain\""));
    assertThat(run("knowledge", "check", place).stdout())
        .contains("follow-ups.drl:8:1: mismatched input 'then' in rule \"a slack chain is looked");
    Files.writeString(rules, good.replace("\"chain-looks\"", "\"chain-lokos\""));
    assertThat(run("knowledge", "check", place).stdout())
        .contains("\"chain-lokos\" is not a card, so rule \"a slack chain is looked at again\"");
    Files.writeString(rules, good);
    Pipe.Result untrusted = run("knowledge", "check", place);
    assertThat(untrusted.exitCode()).isZero();
    assertThat(untrusted.stdout()).contains("Not compiled, because nobody has trusted them yet:");

    assertThat(run("knowledge", "trust", place).stdout())
        .contains("  rule \"a slack chain is looked at again\"\n", "Trusted from now on");
    String wrong = good.replace("repair ==", "repiar ==");
    Files.writeString(rules, wrong);
    assertThat(run("knowledge", "trust", place).stdout())
        .contains("what changed", "  -   Done(repair ==", "  +   Done(repiar ==");
    Pipe.Result compiled = run("knowledge", "check", place);
    assertThat(compiled.exitCode()).isEqualTo(65);
    assertThat(compiled.stdout())
        .contains("follow-ups.drl:7:1: rule \"a slack chain is looked at again\": ", "repiar");
  }

  @Test
  void a_check_is_asked_for_at_a_terminal() throws IOException {
    List<String[]> dialogue =
        List.of(
            new String[] {"Id of the check", "Bracket look"},
            new String[] {"cannot be an id", "bracket-crack-look"},
            new String[] {"The question that is asked", "back"},
            new String[] {"(Enter: bracket-crack-look)", ""},
            new String[] {"The question that is asked", "Is there a crack in the bracket?"},
            new String[] {"How it is done", ""},
            new String[] {"Area", "chain"},
            new String[] {"Can it be made only at some gates?", ""},
            new String[] {"Is it measured?", ""},
            new String[] {"Answers, from what", "sound: no crack; cracked: a crack"},
            new String[] {"Which causes does it tell?", "? bracket"},
            new String[] {"chain-bracket-loose:", "chain-bracket-loos"},
            new String[] {"Maybe \"chain-bracket-loose\"", "chain-bracket-loose"},
            new String[] {"What does it show with chain-bracket-loose", "cracked sometimes"},
            new String[] {"And on a gate without", ""},
            new String[] {"How many minutes", "2"},
            new String[] {"Set-ups that it needs", "locked-off"},
            new String[] {"Who may do it", ""},
            new String[] {"What can hurt", "pinch-point"},
            new String[] {"Where do you know it from", ""});
    try (Pty pty = start("knowledge", "new", "check", folder.toString())) {
      for (String[] turn : dialogue) {
        pty.expect(turn[0], Visitor.PATIENCE).expect("> ", Visitor.PATIENCE).enter(turn[1]);
      }
      pty.expect("Written: ", Visitor.PATIENCE);
      assertThat(pty.waitForExit(Visitor.PATIENCE)).isZero();
    }
    assertThat(folder.resolve("chain/bracket-crack-look.yaml"))
        .content()
        .contains("  chain-bracket-loose: {cracked: sometimes}\notherwise: {sound: nearly always}");
  }

  @Test
  void a_session_stays_in_its_folder() throws IOException {
    Files.writeString(
        folder.resolve("paint.yaml"),
        "history: new-paint\nname: Painted\nodds: {chain-slack: 2}\nsource: considered judgement\n");
    try (Pty pty = start("knowledge", folder.toString())) {
      pty.expect("Working in ", Visitor.PATIENCE).expect("harrow-quay> ", Visitor.PATIENCE);
      pty.enter("check").expect("No problem found", Visitor.PATIENCE);
      pty.expect("adds history new-paint", Visitor.PATIENCE)
          .expect("harrow-quay> ", Visitor.PATIENCE);
      pty.enter("find painted").expect("new-paint", Visitor.PATIENCE);
      pty.expect("harrow-quay> ", Visitor.PATIENCE).enter("show chain-slack");
      pty.expect("looks like", Visitor.PATIENCE).expect("harrow-quay> ", Visitor.PATIENCE);
      pty.enter("test --only nowhere/").expect("No case's path or name begins", Visitor.PATIENCE);
      pty.expect("harrow-quay> ", Visitor.PATIENCE).enter("quit");
      pty.waitForExit(Visitor.PATIENCE);
    }
  }

  @Test
  void a_watched_folder_is_looked_at_again_at_every_save() throws IOException {
    Path card = folder.resolve("note.yaml");
    try (Pty pty = start("knowledge", "check", folder.toString(), "--watch")) {
      pty.expect("No problem found", Visitor.PATIENCE).expect("Watching", Visitor.PATIENCE);
      Files.writeString(card, "history: new-paint\nnmae: Painted\nsource: considered judgement\n");
      pty.expect("Saved: note.yaml", Visitor.PATIENCE)
          .expect("note.yaml:2:1", Visitor.PATIENCE)
          .expect("Watching", Visitor.PATIENCE);
      Files.writeString(card, "history: new-paint\nname: Painted\nsource: considered judgement\n");
      pty.expect("No problem found", Visitor.PATIENCE).expect("Watching", Visitor.PATIENCE);
      pty.type("\u0004");
      assertThat(pty.waitForExit(Visitor.PATIENCE)).isZero();
    }
  }
}
