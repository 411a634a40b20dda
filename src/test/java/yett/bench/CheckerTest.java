package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Problem;

class CheckerTest {
  private static final Path CARDS = Path.of("src/test/resources/every-field");

  /** Shipped repairs whose steps speak of running the gate in a set-up where it cannot. */
  private static final List<String> AT_RISK =
      List.of(
          "teach-transmitter",
          "mend-interlock",
          "set-auto-close",
          "shade-beam",
          "look-over-after-blow");

  private static SortedMap<String, String> files() {
    SortedMap<String, String> files = new TreeMap<>(KnowledgeSource.folder(CARDS).files());
    files.put(
        "stops.drl",
        "import yett.rules.Fact.Given\nimport yett.rules.Conclusion.StopNow\nrule \"hurt\"\nwhen\n  Given(check == \"danger-person\", outcome == \"hurt\")\nthen\n"
            + "  insertLogical(new StopNow(\"person-trapped\", because(drools)));\nend\n");
    return files;
  }

  private static List<String> problems(Checker checker, SortedMap<String, String> files) {
    return checker.check(files).problems().stream().map(CheckerTest::first).toList();
  }

  private static String first(Problem problem) {
    return problem.toString().lines().findFirst().orElse("");
  }

  @Test
  void one_run_tells_the_slips_of_all_files_in_their_order() {
    SortedMap<String, String> files = files();
    files.compute("battery.yaml", (n, t) -> t.replace("{batteries-low: 0.85}", "{bateries: 0.85}"));
    files.compute("battery.yaml", (n, t) -> t.replace("minutes: 35", "minutes 35"));
    files.compute("people.yaml", (n, t) -> t.replace("urgency: today", "urgency: tomorrow"));
    files.compute("site.yaml", (n, t) -> t.replace("default: 5 m\n", "default: 5 kg\n"));
    files.put("a.drl", "rule \"x\"\nwhen\n  Given(check == \"lamp-sen\")\nthen\nend\n");
    assertThat(problems(new Checker(), files))
        .containsExactly(
            "battery.yaml:5:16: \"bateries\" in \"consequences\" is not known",
            "battery.yaml:69:1: this is not YAML: while scanning a simple key, no colon follows a"
                + " name",
            "people.yaml:76:1: \"tomorrow\" is not known here",
            "site.yaml:23:1: \"kg\" is a mass; this asks for a length in m, e.g. 190 mm or 7 1/2"
                + " in.");
  }

  @Test
  void a_repair_without_a_proof_is_remarked_on() {
    assertThat(new Checker().check(files()).remarks())
        .hasSize(2)
        .allMatch(r -> r.matches("Repair (charge-batteries|explain-use): .* names no proof.*"));
    SortedMap<String, String> shipped = KnowledgeSource.folder(Path.of("knowledge")).files();
    assertThat(new Checker().check(shipped).remarks())
        .allMatch(r -> r.matches("Repair (" + String.join("|", AT_RISK) + "): its step .*"));
  }

  /** Whoever writes an add-on cannot change the cards below it. */
  @Test
  void of_an_add_on_only_its_own_cards_are_remarked_on() {
    SortedMap<String, String> files = files();
    files.put("quay/add-on.yaml", "add-on: quay\nname: The quay\n");
    Checked checked = new Checker().check(files);
    assertThat(checked.problems()).isEmpty();
    assertThat(checked.remarks()).isEmpty();
  }

  /** A repair laid over the shipped cards, with the steps that a stranger got past the checker. */
  private static List<String> remarks(String work) {
    SortedMap<String, String> files = KnowledgeSource.folder(Path.of("knowledge")).files();
    files = new TreeMap<>(files);
    files.put(
        "drive/mend-x.yaml",
        "repair: mend-x\nname: Mend it\nremoves: {chain-slack: 0.5}\nminutes: 5\n"
            + "proofs: [usual-run]\nsource: test\n"
            + work);
    Checked checked = new Checker().check(files);
    assertThat(checked.problems()).isEmpty();
    return checked.remarks().stream().filter(r -> r.contains("mend-x")).toList();
  }

  @Test
  void steps_that_speak_of_what_the_set_ups_and_hazards_do_not_match_are_remarked_on() {
    assertThat(remarks("who: technician\nsteps: [Run the gate with the cover off and reach in]\n"))
        .containsExactly(
            "Repair mend-x: its step 1 speaks of running the gate, and the card names no set-up in"
                + " which it can run and no hazard moving-leaf.",
            "Repair mend-x: its step 1 speaks of an open operator, and the card names no set-up for"
                + " it and no hazard battery or live-mains or mains.");
    assertThat(
            remarks(
                "who: technician\nneeds: [locked-off]\nhazards: [pinch-point, moving-leaf]\n"
                    + "steps: [Slacken the chain, \"unlock, try\"]\n"))
        .containsExactly(
            "Repair mend-x: its step 2 speaks of running the gate, and the card names no set-up in"
                + " which it can run.");
    assertThat(
            remarks(
                "who: technician\nneeds: [locked-off]\nhazards: [mains]\n"
                    + "steps: [Measure the peak current of the gate at the start]\n"))
        .containsExactly(
            "Repair mend-x: its step 1 speaks of running the gate, and the card names no set-up in"
                + " which it can run and no hazard moving-leaf.");
    assertThat(
            remarks(
                "who: technician\nneeds: [locked-off]\n"
                    + "steps: [jack up the leaf and take the carriage out, Refit the lithium pack]\n"))
        .containsExactly(
            "Repair mend-x: its step 1 speaks of a raised leaf, and the card names no hazard"
                + " raised-leaf.",
            "Repair mend-x: its step 2 speaks of handling a battery, and the card names no hazard"
                + " battery.");
    assertThat(
            remarks(
                "who: technician\nneeds: [locked-off]\nhazards: [pinch-point]\n"
                    + "steps: [Oil the chain; never reach into the cabinet., \"Once the power is"
                    + " back, run the gate twice.\"]\n"))
        .isEmpty();
  }

  @Test
  void a_prior_that_no_other_cause_comes_near_is_remarked_on() {
    SortedMap<String, String> files = files();
    files.compute("battery.yaml", (n, t) -> t.replaceFirst("prior: [0-9.]+", "prior: 0.8"));
    assertThat(new Checker().check(files).remarks())
        .anyMatch(
            r ->
                r.matches(
                    "Cause .*: its prior says that it is there at 80 of a hundred faulty gates\\. The highest of the other causes, .*"));
  }

  @Test
  void names_in_rules_and_cases_are_looked_at_as_well() {
    SortedMap<String, String> files = files();
    files.put(
        "a.drl",
        "rule \"x\"\n"
            + "when\n"
            + "  Given(check == \"lamp-seen\", outcome in (\"drak\", \"lit\"))\n"
            + "  Site(question == \"opning\")\n"
            + "then\n"
            + "  insert(new Odds(\"charger-ded\", 2));\n"
            + "end\n");
    files.put("a.case.yaml", "case: a\nperson: caller\nanswers: {lamp-seen: drak}\n");
    assertThat(problems(new Checker(), files))
        .containsExactly(
            "a.case.yaml:3:11: \"drak\" is not an outcome of \"lamp-seen\"",
            "a.drl:3:43: \"drak\" is not an outcome of \"lamp-seen\", so rule \"x\" never fires",
            "a.drl:4:20: \"opning\" is not a card, so rule \"x\" never fires",
            "a.drl:6:19: \"charger-ded\" is not a card, so rule \"x\" concludes it to no effect");
  }

  @Test
  void a_misspelt_fact_or_conclusion_is_found_before_anybody_trusts_the_rule() {
    SortedMap<String, String> files = files();
    files.put(
        "a.drl",
        "import yett.rules.Conclusion.Remark\nimport yett.rules.Fact.Gievn\n"
            + "import static yett.rules.Reason.because\n"
            + "rule \"x\"\nwhen\n  Done(repair == \"charge-batteries\")\n"
            + "  not Givn(check == \"lamp-seen\")\nthen\n"
            + "  insertLogical(new Remrak(\"so\", because(drools)));\nend\n");
    List<Problem> problems =
        new Checker()
            .check(files).problems().stream().filter(p -> p.file().equals("a.drl")).toList();
    assertThat(problems.stream().map(CheckerTest::first))
        .containsExactly(
            "a.drl:2:24: \"Gievn\" is no fact or conclusion of rules, so this file cannot be"
                + " compiled",
            "a.drl:7:7: \"Givn\" is no fact or conclusion, so rule \"x\" cannot be compiled",
            "a.drl:9:21: \"Remrak\" is no fact or conclusion, so rule \"x\" cannot be compiled");
    assertThat(problems.get(2).advice()).startsWith("Maybe \"Remark\".");
  }

  @Test
  void a_change_is_seen_in_the_files_that_it_touches() {
    Checker checker = new Checker();
    SortedMap<String, String> files = files();
    files.put("a.case.yaml", "case: a\nperson: caller\nanswers: {lamp-seen: dark}\n");
    assertThat(problems(checker, files)).isEmpty();
    files.compute("people.yaml", (n, t) -> t.replace("dark", "black"));
    assertThat(problems(checker, files))
        .containsExactly("a.case.yaml:3:11: \"dark\" is not an outcome of \"lamp-seen\"");
    files.compute("people.yaml", (n, t) -> t.replace("black", "dark"));
    assertThat(problems(checker, files)).isEmpty();
  }

  @Test
  void a_watched_folder_reads_again_what_was_saved(@TempDir Path folder) throws Exception {
    Path cards = Files.createDirectory(folder.resolve("chain"));
    write(cards.resolve("a.yaml"), "one");
    CompletableFuture<List<String>> waiting;
    try (WatchedFolder watched = new WatchedFolder(folder)) {
      assertThat(watched.files()).containsOnlyKeys("chain/a.yaml");
      write(cards.resolve("a.yaml"), "two");
      write(cards.resolve("notes.txt"), "no card");
      assertThat(next(watched)).containsExactly("chain/a.yaml");
      assertThat(watched.files()).containsEntry("chain/a.yaml", "two");

      Path fresh = Files.createDirectory(folder.resolve("leaf"));
      write(fresh.resolve("b.yaml"), "three");
      assertThat(next(watched)).containsExactly("leaf/b.yaml");
      Files.delete(cards.resolve("a.yaml"));
      assertThat(next(watched)).containsExactly("chain/a.yaml");
      assertThat(watched.files()).containsOnlyKeys("leaf/b.yaml");

      waiting = CompletableFuture.supplyAsync(watched::await);
    }
    assertThat(waiting.get(20, TimeUnit.SECONDS)).as("after the end").isEmpty();
  }

  @Test
  void what_is_saved_is_read_as_carefully_as_the_rest(@TempDir Path home) throws Exception {
    Path folder = Files.createDirectory(home.resolve("cards"));
    Path secret = Files.writeString(home.resolve("secret.yaml"), "password: hunter2");
    write(folder.resolve("a.yaml"), "one");
    try (WatchedFolder watched = new WatchedFolder(folder)) {
      Files.createSymbolicLink(folder.resolve("link.yaml"), secret);
      assertThat(next(watched)).containsExactly("link.yaml");
      assertThat(watched.files()).containsOnlyKeys("a.yaml");
      assertThat(watched.refused())
          .extracting(Problem::message)
          .containsExactly("this is a link to a file outside the folder");
      Files.delete(folder.resolve("link.yaml"));
      assertThat(next(watched)).containsExactly("link.yaml");
      assertThat(watched.refused()).isEmpty();

      write(folder.resolve("a.yaml"), "x".repeat((1 << 20) + 1));
      assertThat(next(watched)).containsExactly("a.yaml");
      assertThat(watched.files()).isEmpty();
      assertThat(watched.refused())
          .extracting(Problem::message)
          .containsExactly("this file is larger than 1 MiB");
    }
  }

  private static List<String> next(WatchedFolder watched) throws Exception {
    return CompletableFuture.supplyAsync(watched::await).get(20, TimeUnit.SECONDS);
  }

  private static void write(Path file, String text) throws IOException {
    Files.writeString(file, text);
  }
}
