package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutboxTest {
  private static final String WHERE = "jdbc:postgresql://casebook.example/yett";

  @TempDir Path directory;
  private Outbox outbox;
  private Parcel parcel;

  @BeforeEach
  void begin() {
    outbox = new Outbox(directory, WHERE);
    parcel = outbox.newParcel(new CaseId(2026, 7));
  }

  private Path file() throws Exception {
    try (Stream<Path> files = Files.walk(directory)) {
      return files.filter(f -> f.toString().endsWith(".jsonl")).findFirst().orElseThrow();
    }
  }

  @Test
  void what_is_added_is_found_by_the_next_program_in_order() {
    parcel.add(4, List.of(Writer.event("caller", 1), Writer.event("caller", 2)));
    parcel.add(4, List.of(new NewEvent(Writer.AT, "caller", "noted", "\"Möwe\n'鎖'\"")));

    Parcel found = new Outbox(directory, WHERE).parcels().get(0);

    assertThat(found.caseId()).hasToString("2026-0007");
    assertThat(found.content())
        .isEqualTo(
            new Parcel.Content(
                4,
                List.of(
                    Writer.event("caller", 1),
                    Writer.event("caller", 2),
                    new NewEvent(Writer.AT, "caller", "noted", "\"Möwe\n'鎖'\""))));
    assertThat(new Outbox(directory, "another casebook").parcels()).isEmpty();
  }

  @Test
  void two_programs_on_one_case_have_a_parcel_each() {
    parcel.add(4, List.of(Writer.event("caller", 1)));
    outbox.newParcel(new CaseId(2026, 7)).add(4, List.of(Writer.event("technician", 1)));

    assertThat(outbox.parcels()).hasSize(2);
  }

  @Test
  void a_parcel_of_which_no_line_was_finished_is_none() throws Exception {
    parcel.add(4, List.of(Writer.event("caller", 1)));
    Files.writeString(file(), "{\"after\":4,");
    assertThat(outbox.parcels()).isEmpty();
  }

  @Test
  void the_parcels_come_in_the_order_of_the_cases() {
    outbox.newParcel(new CaseId(2026, 20)).add(4, List.of(Writer.event("caller", 1)));
    outbox.newParcel(new CaseId(2025, 30)).add(4, List.of(Writer.event("caller", 2)));
    parcel.add(4, List.of(Writer.event("caller", 3)));
    assertThat(outbox.parcels().stream().map(p -> p.caseId().toString()))
        .containsExactly("2025-0030", "2026-0007", "2026-0020");
  }

  @Test
  void what_cannot_be_kept_is_told_at_once() throws Exception {
    Files.writeString(directory.resolve("waiting"), "no folder");
    assertThatThrownBy(() -> parcel.add(4, List.of(Writer.event("caller", 1))))
        .isInstanceOf(CasebookException.class)
        .hasMessageContaining("The last entry was not kept.");
  }

  @Test
  void a_line_cut_short_by_the_power_is_passed_over() throws Exception {
    parcel.add(4, List.of(Writer.event("caller", 1)));
    Files.writeString(file(), "{\"after\":4,\"at\":\"2026-11", StandardOpenOption.APPEND);

    assertThat(outbox.parcels().get(0).content().events())
        .containsExactly(Writer.event("caller", 1));
  }

  /** They were confirmed: somebody was told that they are kept. */
  @Test
  void damaged_lines_and_those_after_them_are_set_aside_and_not_deleted() throws Exception {
    parcel.add(4, List.of(Writer.event("caller", 1), Writer.event("caller", 2)));
    parcel.add(4, List.of(Writer.event("caller", 3)));
    List<String> lines = Files.readAllLines(file());
    String damaged = "\u0000" + lines.get(1).substring(1) + "\n" + lines.get(2) + "\n";
    Files.writeString(file(), lines.get(0) + "\n" + damaged);

    Parcel left = outbox.parcels().get(0);
    assertThat(left.content().events()).containsExactly(Writer.event("caller", 1));
    left.setAside();
    left.delivered();

    assertThat(Files.readString(left.aside().orElseThrow())).isEqualTo(damaged);
    assertThat(outbox.parcels()).isEmpty();
  }

  @Test
  void a_parcel_of_which_nothing_can_be_read_is_told_of_and_one_cut_short_is_not()
      throws Exception {
    parcel.add(4, List.of(Writer.event("caller", 1)));
    Files.write(file(), new byte[] {'{', (byte) 0xff, '\n'});
    Parcel left = outbox.parcels().get(0);
    left.setAside();
    assertThat(left.aside()).isPresent();
    left.delivered();

    Parcel cut = outbox.newParcel(new CaseId(2026, 8));
    cut.add(4, List.of(Writer.event("caller", 1)));
    Files.writeString(file(), "{\"after\":4,", StandardOpenOption.APPEND);
    cut.setAside();
    assertThat(cut.aside()).isEmpty();
  }

  @Test
  void what_is_replaced_or_delivered_does_not_wait_any_more() {
    parcel.add(4, List.of(Writer.event("caller", 1)));
    parcel.replace(6, List.of(Writer.event("caller", 2)));
    assertThat(outbox.parcels().get(0).content())
        .isEqualTo(new Parcel.Content(6, List.of(Writer.event("caller", 2))));

    parcel.delivered();
    parcel.delivered();
    assertThat(outbox.parcels()).isEmpty();
    assertThat(parcel.content().events()).isEmpty();
  }

  @Test
  void nobody_else_can_read_what_waits() throws Exception {
    org.junit.jupiter.api.Assumptions.assumeTrue(
        directory.getFileSystem().supportedFileAttributeViews().contains("posix"));
    parcel.add(4, List.of(Writer.event("caller", 1)));

    assertThat(Files.getPosixFilePermissions(file().getParent())).hasSize(3);
  }
}
