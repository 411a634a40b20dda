package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Tests that a caller can be shown everything that is known of them, and that it can be deleted.
 */
class PersonTest {
  /**
   * What is typed for a caller who can tell nothing: at most five questions, and then somebody is
   * sent.
   */
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

  private Pipe.Result run(String stdin, String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString()), stdin, words);
  }

  @Test
  void all_that_is_known_of_a_caller_is_shown_taken_along_and_erased() throws IOException {
    Pipe.Result call = run(KNOWS_NOTHING, "call", "Fish dock");
    assertThat(call.stdout() + call.stderr())
        .contains("Send somebody", "somebody will be there by");

    Pipe.Result shown = run("", "cases", "people", "--person", "ina teal");
    assertThat(shown.stdout())
        .contains(
            "Fish dock", "Ina Teal, 555 0107", "it does not open", "quay 4", "Tom, in 40 min");
    String taken = run("", "cases", "people", "--person", "555 0107", "--json").stdout();
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Path.of("shared/people.schema.json")));
    assertThat(schema.validate(taken, InputFormat.JSON)).isEmpty();
    assertThat(taken).contains("Ina Teal", "it does not open", "quay 4");

    run("", "calls", "note", "1", "told Ina to stay back, on 5550107");
    run("", "calls", "note", "1", "told the inagent man to stay back");

    Pipe.Result refused = run("", "cases", "forget", "--person", "ina teal");
    assertThat(refused.stderr()).contains("Nothing was forgotten. Still open: case 2026-0001");
    assertThat(run("", "cases", "people", "--person", "ina teal").stdout()).contains("quay 4");

    run("", "calls", "give", "1", "Ana Brook");
    Pipe.Result forgotten = run("", "cases", "forget", "--person", "ina teal", "--open");
    assertThat(run("", "calls").stdout()).contains("with Ana Brook");
    assertThat(forgotten.stdout().split(", event ")).as(forgotten.stdout()).hasSize(2);

    assertThat(run("", "cases", "people", "--person", "ina teal").stdout())
        .contains("No case knows anybody of this name or number.");
    assertThat(run("", "cases", "people", "1", "--json").stdout())
        .doesNotContain("Teal", "quay 4", "it does not open");
  }

  /** Of a note only the name goes, and only if whoever deletes says so. */
  @Test
  void notes_that_name_a_person_are_shown_and_asked_about() {
    run("it does not open\n0\nBo Marsh, 555 0188\n1\n0\n0\nx\n", "call", "Slipway");
    run(KNOWS_NOTHING, "call", "Fish dock");
    run("", "calls", "note", "2", "told Ina to stay back, on 5550107");
    run("", "calls", "note", "2", "the key is at the bakery");
    run("", "calls", "note", "1", "Ina Teal has the key");

    Pipe.Result forgotten = run("all\n", "cases", "forget", "--person", "ina teal", "--open");

    assertThat(forgotten.stdout())
        .contains("Notes that may name them", "told Ina to stay back", "Ina Teal has the key")
        .contains("Taken out of 2 notes.")
        .doesNotContain("bakery", "stands in the case itself");
    assertThat(run("", "dispatch", "2").stdout())
        .contains("told … to stay back, on …", "the key is at the bakery");
    assertThat(run("", "dispatch", "1").stdout()).contains("… has the key", "Bo Marsh");
    assertThat(run("", "cases", "verify").exitCode()).isZero();
  }

  /**
   * What the desk did about the call of somebody else, and why a case was given away, name people.
   */
  @Test
  void what_the_desk_did_elsewhere_is_searched_for_the_name_too() {
    run("it does not open\n0\nBo Marsh, 555 0188\n1\n0\n0\nx\n", "call", "Slipway");
    run(KNOWS_NOTHING, "call", "Fish dock");
    run("", "calls", "sent", "1", "Tom with the key of Ina Teal, 14:30");

    Pipe.Result forgotten = run("all\n", "cases", "forget", "2", "--open");

    assertThat(forgotten.stdout()).contains("Notes that may name them", "the key of Ina Teal");
    assertThat(run("", "calls").stdout()).contains("Tom with the key of …");
    assertThat(run("", "cases", "people", "1").stdout()).contains("Bo Marsh");
    assertThat(run("", "cases", "verify").exitCode()).isZero();
  }
}
