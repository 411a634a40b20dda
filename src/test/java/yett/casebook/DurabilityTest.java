package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Store.class)
class DurabilityTest {
  @TempDir Path directory;

  @Parameter Store store;
  private String address;
  private CaseId id;

  @BeforeEach
  void begin() {
    address = store.newCasebook(directory);
    try (var casebook = Store.open(address)) {
      id = casebook.newCase("harrow-quay-3", Writer.AT);
    }
  }

  @Test
  void a_killed_program_loses_at_most_the_event_it_was_writing() throws Exception {
    Process child = Writer.start(address, "append-for-ever", id.toString());

    long lastTold = tellings(child, 60);

    try (var casebook = Store.open(address)) {
      var events = casebook.events(id);
      assertThat((long) events.size()).isBetween(lastTold, lastTold + 1);
      assertThat(events)
          .allSatisfy(
              event -> assertThat(event.body()).isEqualTo("{\"n\":" + (event.seq() - 1) + "}"));
      assertThat(casebook.summary(id).lastSeq()).isEqualTo(events.size());
      casebook.append(id, events.size(), Writer.event("resumed", 0));
    }
  }

  /** Kills the child once it has told so many times, and reads what it had still told. */
  private static long tellings(Process child, long killAfter) throws Exception {
    try (var out = child.inputReader(StandardCharsets.US_ASCII)) {
      long last = 0;
      // The kill may cut the last line short, which then reads as a smaller number.
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        last = Math.max(last, Writer.told(line).mapToLong(Long::parseLong).sum());
        if (last == killAfter) {
          // By its handle, because a Process closes its output when it is destroyed.
          child.toHandle().destroyForcibly();
        }
      }
      child.waitFor();
      return last;
    }
  }
}
