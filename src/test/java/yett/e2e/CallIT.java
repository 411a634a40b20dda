package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A call, its dispatch sheet, and a technician who goes on with the case in another process. */
class CallIT {
  private static final Pattern READ_OUT = Pattern.compile("Read out: ([^?]*\\?)");
  private static final int MOST_PROMPTS = 40;

  @TempDir private Path home;

  @Test
  void somebody_calls_and_a_technician_goes_on_with_the_case() {
    Map<String, String> asked = new LinkedHashMap<>();
    try (Pty desk = start("call", "Fish dock")) {
      String screen = "";
      for (int i = 0; i < MOST_PROMPTS && !screen.contains("\"send\" when"); i++) {
        screen = desk.readTo(Screen.PROMPT, Visitor.PATIENCE);
        desk.enter(answer(screen, asked));
      }
      assertThat(screen).contains("\"send\" when");
      assertThat(desk.waitForExit(Visitor.PATIENCE)).isZero();
      assertThat(desk.transcript())
          .contains("Send somebody", "until somebody comes", "dispatch 2026-", "--as technician")
          .doesNotContain("Exception", "Travel", "Set-up:");
    }
    assertThat(asked).as("questions before somebody is sent").isNotEmpty();

    assertThat(run("dispatch", "1"))
        .startsWith("# Dispatch, case ")
        .contains(
            "At once",
            "somebody is shut in",
            "Parts to bring",
            "the chian has come off and the moter")
        .contains("connecting link for the chain size", "Until somebody comes");
    assertThat(run("dispatch", "1", "--json")).startsWith("{").contains("\"urgency\"");

    try (Pty technician = start("resume", "1", "--as", "technician")) {
      String screen = technician.readTo(Screen.PROMPT, Visitor.PATIENCE);
      assertThat(screen).contains("Told on the telephone", "Look for each danger");
      for (int i = 0; i < MOST_PROMPTS && !screen.matches("(?s).*(Check|Set-up|Repair).*"); i++) {
        technician.enter("");
        screen = technician.readTo(Screen.PROMPT, Visitor.PATIENCE);
      }
      assertThat(screen).contains("·").doesNotContain("What is wrong", "What happened lately");
      for (Map.Entry<String, String> e : asked.entrySet()) {
        if (!e.getValue().equals("d")) {
          assertThat(screen.replaceAll("\\s+", " ")).doesNotContain(e.getKey());
        }
      }
      technician.enter("save");
      assertThat(technician.waitForExit(Visitor.PATIENCE)).isZero();
    }
  }

  /** The first question cannot be told, the others are as on a sound gate. */
  private static String answer(String screen, Map<String, String> asked) {
    if (screen.contains("In the caller's own words")) {
      return "the chian has come off and the moter just spins";
    } else if (screen.contains("yes to keep it")) {
      return "yes";
    } else if (screen.contains("Understood")) {
      return "1 2";
    } else if (screen.contains("How urgent")) {
      return "1";
    } else if (screen.contains("\"send\" when")) {
      return "send";
    } else if (screen.contains("Two answers that do not agree")) {
      return "3";
    }
    Matcher question = READ_OUT.matcher(screen.replaceAll("\\s+", " "));
    if (screen.contains("Question ") && question.find()) {
      String answer = asked.isEmpty() ? "d" : "1";
      asked.put(question.group(1), answer);
      return answer;
    }
    return screen.contains("\"done\" when") ? "cannot" : "0";
  }

  private Pty start(String... words) {
    return Pty.start(Programs.packaged(words), Map.of("YETT_HOME", home.toString()), 80, 24);
  }

  private String run(String... words) {
    Pipe.Result result =
        Pipe.run(
            Programs.packaged(words), Map.of("YETT_HOME", home.toString()), "", Visitor.PATIENCE);
    assertThat(result.exitCode()).as(result.stderr()).isZero();
    return result.stdout();
  }
}
