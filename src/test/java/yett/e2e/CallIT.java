package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.Check;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.testing.PostgresServer;

/**
 * Tests a call, its dispatch sheet, and a technician who continues the case, each in a process of
 * its own on one PostgreSQL server.
 */
class CallIT {
  private static final Pattern READ_OUT = Pattern.compile(".*Read out: ([^?]*\\?)");
  private static final int MOST_PROMPTS = 40;

  private static final Duration PATIENCE = Visitor.PATIENCE;

  private static final RuleBase BASE = RuleBase.read(KnowledgeSource.folder(Path.of("knowledge")));
  private static final Map<String, Check> BY_WORDS =
      BASE.checks().values().stream()
          .filter(c -> !c.lay().isEmpty())
          .collect(Collectors.toMap(Check::lay, c -> c, (a, b) -> a));

  @TempDir private Path home;
  private final String url = PostgresServer.shared().newCasebook();

  /** What was asked, and what the caller answered. */
  private final Map<Check, String> asked = new LinkedHashMap<>();

  @Test
  void somebody_calls_and_a_technician_goes_on_with_the_case_and_is_asked_nothing_twice() {
    call();
    sheet();
    resume();
  }

  private void call() {
    try (Pty desk = start("call", "Fish dock")) {
      String screen = "";
      for (int i = 0; i < MOST_PROMPTS && !screen.contains("\"send\" once"); i++) {
        screen = desk.readTo(Screen.PROMPT, PATIENCE);
        desk.enter(answer(screen));
      }
      assertThat(screen).contains("\"send\" once");
      assertThat(desk.readTo(Screen.PROMPT, PATIENCE)).contains("Who goes, and by when?");
      desk.enter("Tom, in 40 min");
      assertThat(desk.readTo(Screen.PROMPT, PATIENCE)).contains("Number to call back, or none");
      desk.enter("none");
      assertThat(desk.waitForExit(PATIENCE)).isZero();
      assertThat(desk.transcript())
          .contains(
              "Send somebody",
              "somebody will be there by",
              "until somebody comes",
              "dispatch 2026-",
              "--as technician")
          .doesNotContain("Exception", "Set-up:", "Plan of work");
    }
    assertThat(asked).as("questions before somebody is sent").hasSizeBetween(2, 12);
    assertThat(asked.keySet()).allSatisfy(c -> assertThat(c.who().word()).isEqualTo("caller"));
  }

  /**
   * Tests, at another desk, the sheet, who called, and that the person and their words can be
   * deleted.
   */
  private void sheet() {
    Pipe.Result other =
        InProcess.run(
            casebook(),
            """
            cases people 1 --caller "Ina Teal" --phone "555 0107"
            dispatch 1
            cases find somtimes
            cases forget --open --person "ina teal"
            cases people 1
            cases find somtimes
            quit
            """);
    assertThat(other.exitCode()).as(other.stderr()).isZero();
    assertThat(other.stderr()).doesNotContain("Teal", "0107", "somtimes");
    assertThat(other.stdout())
        .containsSubsequence(
            "Ina Teal, 555 0107",
            "# Dispatch, case ",
            "At once",
            "somebody is shut in",
            "Called by: Ina Teal, 555 0107",
            "Sent: at once, Tom, in 40 min, there by ",
            "somtimes it goes",
            "## Parts and tools to bring",
            "enough in ",
            "until somebody comes",
            "1 case.",
            "1 entry on people forgotten in 1 case, and what the caller said",
            "No people are on file",
            "There is no such case.");
  }

  private void resume() {
    try (Pty technician = start("resume", "1", "--as", "technician")) {
      String screen = technician.readTo(Screen.PROMPT, PATIENCE);
      assertThat(screen.replaceAll("\\s+", " "))
          .contains(
              "Answers on the telephone", "Look for each danger", "callers see this right in");
      assertThat(screen).doesNotContain("What is wrong with the gate?");
      for (int i = 0; i < MOST_PROMPTS && !screen.contains("Answer"); i++) {
        technician.enter(screen.contains("hand it over") ? "save" : doing(screen));
        screen = technician.readTo(Screen.PROMPT, PATIENCE);
      }
      String flat = technician.transcript().replaceAll("\\s+", " ");
      assertThat(flat).doesNotContain("What happened lately");
      asked.forEach(
          (check, answer) -> {
            if (answer.equals("1")) {
              assertThat(screenAfterTold(flat)).doesNotContain(check.ask());
            }
          });
      checkAgain(technician);
      technician.enter("save");
      assertThat(technician.waitForExit(PATIENCE)).isZero();
    }
  }

  /**
   * Tests that an answer from the telephone weighs less than what is seen at the gate, and is
   * replaced by it.
   */
  private void checkAgain(Pty technician) {
    Check told =
        asked.keySet().stream()
            .filter(c -> asked.get(c).equals("1") && !c.reliability().isEmpty())
            .findFirst()
            .orElseThrow();
    technician.enter("correct");
    String list = technician.readTo(Screen.PROMPT, PATIENCE).replaceAll("\\s+", " ");
    Matcher number = Pattern.compile("(\\d+) " + Pattern.quote(told.ask())).matcher(list);
    assertThat(number.find()).as(list).isTrue();
    technician.enter(number.group(1));
    technician.readTo(Screen.PROMPT, PATIENCE);
    technician.enter("2");
    String taken = technician.readTo(Screen.PROMPT, PATIENCE);
    if (taken.contains("yes to keep it")) {
      technician.enter("yes");
      taken = technician.readTo(Screen.PROMPT, PATIENCE);
    }
    assertThat(taken).contains("Understood as: " + told.outcomes().get(1).text().split(",")[0]);
  }

  private static String screenAfterTold(String flat) {
    return flat.substring(flat.indexOf("Look for each danger"));
  }

  /** What the technician types before the first check. */
  private static String doing(String screen) {
    return screen.contains("\"done\" when") ? "done" : "";
  }

  /**
   * The answer to the question on the screen: the first one cannot be told, the others are as on a
   * sound gate.
   */
  private String answer(String screen) {
    if (screen.contains("In the caller's own words")) {
      return "somtimes it goes somtimes not";
    } else if (screen.contains("yes to keep it")) {
      return "yes";
    } else if (screen.contains("Numbers that apply") || screen.contains("How urgent")) {
      return "1";
    } else if (screen.contains("\"send\" once")) {
      return "send";
    } else if (screen.contains("Two answers contradict each other")) {
      return "3";
    } else if (screen.contains("if they can't")) {
      return "g";
    }
    Matcher question = READ_OUT.matcher(screen.replaceAll("\\s+", " "));
    if (screen.contains("Question ") && question.find()) {
      Check check = BY_WORDS.get(question.group(1));
      assertThat(check).as(question.group(1)).isNotNull();
      assertThat(asked).as("asked before").doesNotContainKey(check);
      boolean well = check.id().equals("as-usual-again"); // it does not, or nobody would be sent
      String answer = asked.isEmpty() ? "d" : well ? "2" : "1";
      asked.put(check, answer);
      return answer;
    }
    return "0";
  }

  private Map<String, String> casebook() {
    return Map.of("YETT_HOME", home.toString(), "YETT_CASEBOOK", url);
  }

  private Pty start(String... words) {
    return Pty.start(Programs.packaged(words), casebook(), 80, 24);
  }
}
