package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.casebook.CaseId;
import yett.casebook.Casebook;
import yett.testing.PostgresServer;

/**
 * Tests calls that begin while the server is away, on a real PostgreSQL server that is stopped and
 * started.
 */
class CallsAwayTest {
  private static final PostgresServer SERVER = PostgresServer.own();

  /** What is typed for a caller who knows nothing; at the end of the call somebody is sent. */
  private static final String KNOWS_NOTHING =
      """
      it does not open
      0
      Ina Teal, quay 4, 555 0107
      1
      0
      0
      """
          + "d\n".repeat(5)
          + "send\nTom, in 40 min\n";

  @TempDir private Path home;
  private final String url = SERVER.newCasebook();

  @AfterAll
  static void end() {
    SERVER.close();
  }

  private Pipe.Result run(String stdin, String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString(), "YETT_CASEBOOK", url), stdin, words);
  }

  @Test
  void a_call_begun_with_the_server_down_arrives_once() throws IOException {
    run("the gate will not open\n0\n\n1\n0\n0\nx\n", "call", "Fish dock");
    SERVER.crash();

    Pipe.Result call = run(KNOWS_NOTHING, "call", "Fish dock");

    assertThat(call.exitCode()).as(call.stdout() + call.stderr()).isZero();
    assertThat(call.stderr())
        .contains("this call is kept on this computer", "The call waits on this computer");
    assertThat(call.stdout())
        .as("on the server this number is another case")
        .contains("the sheet for whoever goes is: dispatch 2026-0001")
        .doesNotContain("resume 2026-0001", "calls sent 2026-0001");
    Pipe.Result calls = run("", "calls");
    assertThat(calls.stdout()).contains("Fish dock", "1 call is open.");
    assertThat(calls.stderr()).contains("only calls that wait on this computer can be seen");
    assertThat(run("the gate will not open\n", "call", "Ice house").stdout())
        .contains("Saved on this computer.", "under the number that it gets there")
        .doesNotContain("Go on with: resume");
    assertThat(run("", "dispatch", "1").stdout())
        .contains(" of this computer: Fish dock", "Ina Teal, 555 0107");
    Pipe.Result cases = run("", "cases");
    assertThat(cases.exitCode()).isEqualTo(74);
    assertThat(cases.stderr()).contains("set YETT_CASEBOOK to nothing to work on this computer's");
    Path kept = kept().orElseThrow();
    Path copy = Files.copy(kept, home.resolve("copy.db"));

    SERVER.start();
    assertThat(run("", "calls").stderr())
        .contains("is delivered: case 2026-0002. Whoever goes opens it with: resume 2026-0002")
        .contains("Also open at this gate: 2026-0001. See that nobody is sent twice");
    assertThat(kept()).isEmpty();
    assertThat(run("", "calls").stderr()).doesNotContain("delivered");
    Files.copy(copy, kept); // a computer that died between delivering and deleting
    run("", "calls");

    try (Casebook casebook = Casebook.open(url)) {
      assertThat(casebook.cases()).hasSize(3);
      CaseId id =
          casebook.cases().stream()
              .filter(c -> c.siteId().equals("Fish dock"))
              .filter(c -> !c.id().toString().equals("2026-0001"))
              .findFirst()
              .orElseThrow()
              .id();
      assertThat(casebook.people(id)).extracting(p -> p.name()).containsExactly("Ina Teal");
      assertThat(casebook.events(id)).anyMatch(e -> e.body().contains("Tom, in 40 min"));
    }
    assertThat(kept()).isEmpty();
  }

  @Test
  void a_call_that_loses_its_server_says_when_it_can_be_gone_on_with() {
    Casebook.open(url).close();

    Pipe.Result call =
        InProcess.run(
            Map.of("YETT_HOME", home.toString(), "YETT_CASEBOOK", url),
            Clock.systemUTC(),
            new SequenceInputStream(
                Collections.enumeration(
                    List.of(lines("it does not open\n0\n\n"), crash(), lines("1\n0\nx\n")))),
            "call",
            "Fish dock");

    assertThat(call.stdout())
        .contains("Go on with: resume 2026-0001, once the server answers.")
        .contains("If they ring back before that, call takes it down as a new")
        .doesNotContain("is the sheet");
    SERVER.start();
    assertThat(run("", "calls").stderr()).contains("that waited on this computer delivered.");
  }

  private static InputStream lines(String typed) {
    return new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8));
  }

  /** Nothing is typed, but the server dies. */
  private static InputStream crash() {
    return new InputStream() {
      @Override
      public int read() {
        SERVER.crash();
        return -1;
      }
    };
  }

  /** The casebook with the calls kept on this computer, if there is one. */
  private Optional<Path> kept() throws IOException {
    try (Stream<Path> files = Files.walk(home.resolve("away"))) {
      return files.filter(f -> f.getFileName().toString().equals("calls.db")).findFirst();
    }
  }
}
