package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.Check;
import yett.knowledge.Measures;

/** Tests that every prompt refuses bad input in words and asks again. */
class BadInputIT {
  /** Enter would say that all looks are ordinary, and is not offered any more. */
  private static final String AFTER_A_REFUSED_ROUND =
      "The numbers that differ, or 0 if all others are as listed> ";

  private static final String CTRL_C = "\u0003";
  private static final String CTRL_D = "\u0004";

  /** Ctrl-V makes the terminal take the next key literally, here a backspace. */
  private static final String WITH_A_CONTROL_CHARACTER = "24\u0016\b3 V";

  private static final Set<Screen.Kind> ENTER_MEANS_SOMETHING =
      EnumSet.of(
          Screen.Kind.SITE,
          Screen.Kind.SITE_NEEDED,
          Screen.Kind.SITE_QUESTION,
          Screen.Kind.CAUTIONS,
          Screen.Kind.LOOKS);

  private static final Set<Screen.Kind> CHECKS = EnumSet.of(Screen.Kind.CHECK, Screen.Kind.PROOF);

  @TempDir private Path home;

  @Test
  void every_prompt_refuses_in_words_and_asks_again_and_survives_being_left() {
    Story story = Story.of("timber-wharf-forklift-at-the-guide");
    Set<String> tried = new TreeSet<>();
    try (Visitor visitor = Visitor.at(story, home)) {
      visitor.say("diagnose Chandler's gate");
      while (visitor.kind() != Screen.Kind.CLOSE) {
        String kind =
            visitor.kind()
                + visitor.check().filter(Check::measured).map(c -> " measured").orElse("");
        if (tried.add(kind)) {
          refuses(visitor);
          comesBack(visitor, tried.size() % 2 == 0 ? CTRL_C : CTRL_D);
        }
        if (visitor.kind() == Screen.Kind.SITE && tried.add("SITE_QUESTION")) {
          aSiteQuestion(visitor);
        }
        visitor.answer();
      }
      refuses(visitor);
      comesBack(visitor, CTRL_C);
      visitor.say("close");
      visitor.pty().enter("quit");
      assertThat(visitor.pty().waitForExit(Visitor.PATIENCE)).isZero();
      assertThat(visitor.pty().transcript())
          .doesNotContain("Exception", "\tat ", "made a mistake")
          .contains("Closed. The record: record");
    }
    assertThat(tried)
        .contains(
            "DANGERS",
            "SITE",
            "SITE_QUESTION",
            "COMPLAINTS",
            "HISTORY",
            "LOOKS",
            "CHECK measured",
            "CAUTIONS",
            "SET_UP",
            "REPAIR",
            "RETEST",
            "PROOF");
  }

  /** Bad input at a reading, the mass of the leaf, and then at a choice. */
  private static void aSiteQuestion(Visitor visitor) {
    int mass = visitor.question().numberOf("Mass of the leaf:");
    visitor.say(Integer.toString(mass));
    refuses(visitor, List.of("flurble", "7 ohm", "-5 kg", "900000 kg", WITH_A_CONTROL_CHARACTER));
    visitor.say("");
    assertThat(visitor.kind()).isEqualTo(Screen.Kind.SITE);
    visitor.say(Integer.toString(visitor.say("?").numberOf("Contact edges:")));
    refuses(visitor, List.of("flurble", "7 ohm", "99", "0", "x".repeat(300)));
    visitor.say("");
    assertThat(visitor.kind()).isEqualTo(Screen.Kind.SITE);
  }

  private static void refuses(Visitor visitor) {
    List<String> lines = new ArrayList<>(List.of("flurble", "4711", WITH_A_CONTROL_CHARACTER));
    if (visitor.kind() == Screen.Kind.DANGERS || visitor.kind() == Screen.Kind.CHECK) {
      lines.add("x".repeat(2_001)); // one more than is taken
    }
    if (!ENTER_MEANS_SOMETHING.contains(visitor.kind())) {
      lines.add("");
    }
    visitor.check().flatMap(Check::measures).ifPresent(measures -> lines.addAll(wrong(measures)));
    if (visitor.check().flatMap(Check::measures).isPresent()) {
      lines.remove("4711"); // may be a reading
    }
    refuses(visitor, lines);
  }

  private static List<String> wrong(Measures measures) {
    List<String> lines = new ArrayList<>(List.of("24..3", "5 7", "3 lux", "1e400", "--3"));
    lines.add(measures.unitWord().equals("ohm") ? "3 V" : "3 ohm");
    if (Double.isFinite(measures.most())) {
      lines.add(measures.show(measures.most() * 1_000));
    }
    return lines;
  }

  private static void refuses(Visitor visitor, List<String> lines) {
    String prompt = visitor.question().prompt();
    for (String line : lines) {
      Screen after = visitor.say(line);
      assertThat(after.prompt())
          .as("asked again after \"%.40s\"", line)
          .isIn(prompt, AFTER_A_REFUSED_ROUND);
      // The echo, at least one line of words, and the prompt.
      assertThat(after.text().lines().filter(l -> !l.isBlank()).count())
          .as("words against \"%.40s\" in:%n%s", line, after.text())
          .isGreaterThanOrEqualTo(line.isEmpty() ? 2 : 3);
      assertThat(after.text())
          .doesNotContain("Exception", "\tat ", "Understood as", "made a mistake");
    }
  }

  private static void comesBack(Visitor visitor, String key) {
    Screen.Kind kind = visitor.kind();
    var check = visitor.check();
    Screen saved = visitor.press(key);
    assertThat(saved.shows("Nothing that was answered is lost.")).as(saved.text()).isTrue();
    assertThat(saved.kind()).contains(Screen.Kind.COMMANDS);
    visitor.say("resume");
    if (visitor.kind() == Screen.Kind.COMING_BACK) {
      visitor.answer(); // something is in force, and nobody went away
    }
    if (kind == Screen.Kind.SET_UP && visitor.kind() == Screen.Kind.CAUTIONS) {
      visitor.answer(); // nobody knows any more who read them
    }
    if (kind == Screen.Kind.SURE) {
      assertThat(visitor.kind()).as("an answer that was not confirmed").isIn(CHECKS);
      visitor.answer();
    }
    assertThat(visitor.kind()).isEqualTo(kind);
    assertThat(visitor.check()).isEqualTo(check);
  }

  @Test
  void ctrl_c_and_the_end_of_input_save_and_end_with_status_0() {
    try (Visitor visitor =
        Visitor.at(Story.of("timber-wharf-forklift-at-the-guide"), home, "diagnose", "A")) {
      visitor.until(Screen.Kind.CHECK);
      visitor.pty().type("half an answ").ctrlC();
      assertThat(visitor.pty().waitForExit(Visitor.PATIENCE)).isZero();
      assertThat(visitor.pty().transcript())
          .contains("Nothing that was answered is lost.")
          .doesNotContain("Exception", "\tat ");
    }
    Pipe.Result result = InProcess.run(Map.of("YETT_HOME", home.toString()), "", "resume");
    assertThat(result.exitCode()).isZero();
    assertThat(result.stderr()).isEmpty();
    assertThat(result.stdout())
        .contains("Have you been here all the time")
        .contains("Nothing that was answered is lost.");
  }

  @Test
  void no_name_for_a_gate_is_asked_again_and_the_end_of_input_leaves() {
    Pipe.Result result =
        InProcess.run(
            Map.of("YETT_HOME", home.toString()),
            "\n" + "x".repeat(81) + "\n" + "x".repeat(5_000) + "\n",
            "diagnose");
    assertThat(result.exitCode()).isZero();
    assertThat(result.stderr()).isEmpty();
    assertThat(result.stdout())
        .contains("A name of at most 80 letters, please.", "longer than 2,000 characters")
        .doesNotContain("Case ");
  }
}
