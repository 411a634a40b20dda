package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Store.class)
class ConcurrencyTest {
  @TempDir Path directory;

  @Parameter Store store;
  private String address;

  @BeforeEach
  void begin() {
    address = store.newCasebook(directory);
  }

  @Test
  void the_second_writer_is_shown_what_the_first_wrote() {
    try (var first = Store.open(address);
        var second = Store.open(address)) {
      CaseId id = first.newCase("harrow-quay-3", Writer.AT);
      var written = first.append(id, 0, Writer.event("Ada", 1), Writer.event("Ada", 2));

      var moved =
          catchThrowableOfType(
              CaseMovedOn.class, () -> second.append(id, 0, Writer.event("Ben", 1)));

      assertThat(moved.caseId()).isEqualTo(id);
      assertThat(moved.newer()).isEqualTo(written);
      assertThat(moved)
          .hasMessage(
              "Case 2026-0001 has moved on: Ada wrote to it meanwhile."
                  + " Read the 2 newer events, then answer again.");
      assertThat(second.events(id)).isEqualTo(written);
    }
  }

  @Test
  void a_summary_that_does_not_know_the_last_event_is_passed_over() {
    try (var casebook = Store.open(address)) {
      CaseId id = casebook.newCase("harrow-quay-3", Writer.AT);
      casebook.append(id, 0, Writer.event("Ada", 1));

      casebook.summarise(id, 0, new Summary(CaseStatus.CLOSED, "Chain replaced"));

      assertThat(casebook.summary(id).summary()).isEqualTo(new Summary(CaseStatus.OPEN, ""));
    }
  }

  @Test
  void threads_sharing_a_casebook_lose_no_event() throws Exception {
    try (var casebook = Store.open(address)) {
      CaseId id = casebook.newCase("harrow-quay-3", Writer.AT);

      together(4, n -> appendTwenty(casebook, id, "desk " + n));

      assertAllThere(casebook, id, List.of("desk 0", "desk 1", "desk 2", "desk 3"), 20);
    }
  }

  @Test
  void threads_with_a_connection_each_lose_no_event() throws Exception {
    CaseId id;
    try (var casebook = Store.open(address)) {
      id = casebook.newCase("harrow-quay-3", Writer.AT);
    }

    together(
        4,
        n -> {
          try (var own = Store.open(address)) {
            return appendTwenty(own, id, "desk " + n);
          }
        });

    try (var casebook = Store.open(address)) {
      assertAllThere(casebook, id, List.of("desk 0", "desk 1", "desk 2", "desk 3"), 20);
    }
  }

  @Test
  void programs_appending_to_one_case_lose_no_event() throws Exception {
    try (var casebook = Store.open(address)) {
      CaseId id = casebook.newCase("harrow-quay-3", Writer.AT);
      var ada = Writer.start(address, "append-among-others", id.toString(), "Ada", "40");
      while (casebook.summary(id).lastSeq() == 0) {
        assertThat(ada.isAlive()).isTrue(); // it has not begun yet
      }

      Writer.appendAmongOthers(casebook, id.toString(), "Ben", 40);

      assertThat(told(ada)).containsExactly("done");
      assertAllThere(casebook, id, List.of("Ada", "Ben"), 40);
    }
  }

  @Test
  void programs_starting_at_once_on_a_new_file_give_every_case_its_own_id() throws Exception {
    String place = store.newAddress(Files.createDirectory(directory.resolve("new")));
    var children = new ArrayList<Process>();
    for (int i = 0; i < 2; i++) {
      children.add(Writer.start(place, "open-cases", "20"));
    }
    var ids = new ArrayList<String>();
    Writer.startAtOnce(children);
    try (var casebook = Store.open(place)) { // this program is the third
      for (int n = 0; n < 20; n++) {
        ids.add(casebook.newCase("harrow-quay-3", Writer.AT).toString());
      }
    }
    for (Process child : children) {
      ids.addAll(told(child));
    }

    var expected = IntStream.rangeClosed(1, 60).mapToObj(n -> new CaseId(2026, n).toString());
    assertThat(ids).containsExactlyInAnyOrderElementsOf(expected.toList());
  }

  @Test
  void threads_opening_a_new_file_at_once_lay_out_its_tables_once() throws Exception {
    String place = store.newAddress(Files.createDirectory(directory.resolve("new")));
    together(
        6,
        n -> {
          try (var casebook = Store.open(place)) {
            return casebook.newCase("harrow-quay-" + n, Writer.AT);
          }
        });

    try (var casebook = Store.open(place)) {
      assertThat(casebook.cases()).extracting(CaseSummary::id).doesNotHaveDuplicates().hasSize(6);
    }
  }

  private static List<String> told(Process child) throws IOException, InterruptedException {
    try (var out = child.inputReader(StandardCharsets.US_ASCII)) {
      var lines = out.lines().flatMap(Writer::told).toList();
      assertThat(child.waitFor()).isZero();
      return lines;
    }
  }

  private static long appendTwenty(Casebook casebook, CaseId id, String by) {
    long known = 0;
    for (int n = 0; n < 20; n++) {
      known = Writer.appendAfterOthers(casebook, id, known, Writer.event(by, n));
    }
    return known;
  }

  /** Each writer's own events stand in the order in which it wrote them, and none is missing. */
  private static void assertAllThere(Casebook casebook, CaseId id, List<String> writers, int each) {
    var events = casebook.events(id);
    assertThat(events)
        .extracting(StoredEvent::seq)
        .containsExactlyElementsOf(
            Stream.iterate(1L, seq -> seq + 1).limit((long) writers.size() * each).toList());
    for (String writer : writers) {
      assertThat(events)
          .filteredOn(event -> event.by().equals(writer))
          .extracting(StoredEvent::body)
          .containsExactlyElementsOf(
              IntStream.range(0, each).mapToObj(n -> "{\"n\":" + n + "}").toList());
    }
  }

  private interface Numbered<T> {
    T call(int n) throws Exception;
  }

  private static <T> void together(int threads, Numbered<T> task) throws Exception {
    var pool = Executors.newFixedThreadPool(threads);
    try {
      List<Callable<T>> tasks = new ArrayList<>();
      for (int i = 0; i < threads; i++) {
        int n = i;
        tasks.add(() -> task.call(n));
      }
      for (Future<T> done : pool.invokeAll(tasks)) {
        done.get();
      }
    } finally {
      pool.shutdownNow();
    }
  }
}
