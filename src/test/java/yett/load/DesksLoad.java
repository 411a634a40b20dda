package yett.load;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ThreadLocalRandom;
import yett.casebook.CaseId;
import yett.casebook.CaseMovedOn;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.casebook.NewEvent;
import yett.casebook.Person;
import yett.casebook.Summary;
import yett.testing.PostgresServer;

/**
 * Ten desks take 2,000 calls an hour on one casebook, on a PostgreSQL of this machine that waits
 * for its disk; then as many as they can. Loopback only; it ends by itself, after the minutes given
 * and a fifth of that. {@code mvn -Pload test-compile exec:exec -Dminutes=2}; docs/benchmarks.md.
 *
 * <p>It measures the casebook, not the reasoning, which every desk does on its own computer.
 */
public final class DesksLoad {
  private static final int DESKS = 10;
  private static final double CALLS_AN_HOUR = 2000;
  private static final int ANSWERS = 14;
  private static final int CASES_BEFORE = 50_000;

  private final String url;
  private final Map<String, List<Long>> nanos = new LinkedHashMap<>();
  private int calls;
  private int movedOn;

  private DesksLoad(String url) {
    this.url = url;
  }

  public static void main(String[] arguments) throws Exception {
    long seconds = Math.round(60 * Double.parseDouble(arguments[0]));
    if (seconds < 10 || seconds > 1800) {
      throw new IllegalArgumentException("between 10 seconds and 30 minutes, please");
    }
    try (var server = PostgresServer.durable()) {
      String url = server.newCasebook();
      Casebook.open(url).close();
      fill(server, url.replaceAll(".*currentSchema=", ""));
      System.out.printf(
          Locale.ROOT,
          "%d cases before, %d desks, %d processors, PostgreSQL on the same machine%n",
          CASES_BEFORE,
          DESKS,
          Runtime.getRuntime().availableProcessors());
      var paced = new DesksLoad(url);
      paced.run(Duration.ofSeconds(seconds), Duration.ofMillis(pause()));
      paced.tell("2,000 calls an hour for " + seconds + " s");
      var flatOut = new DesksLoad(url);
      flatOut.run(Duration.ofSeconds(seconds / 5), Duration.ZERO);
      flatOut.tell("as many calls as they can for " + seconds / 5 + " s");
    }
  }

  /** Between the steps of a call at one desk, so that all desks together reach the rate. */
  private static long pause() {
    double secondsACall = 3600 * DESKS / CALLS_AN_HOUR;
    return Math.round(1000 * secondsACall / (ANSWERS + 3));
  }

  /** Cases of earlier years, so that the tables are not empty. */
  private static void fill(PostgresServer server, String schema) {
    server.execute(
        "postgres",
        """
        set search_path to %s;
        insert into case_file
          (id, uid, site_id, opened_at, last_event_at, last_seq, state, title, cause)
          select '2024-' || lpad(n::text, 5, '0'), gen_random_uuid()::text, 'gate-' || n %% 300,
            '2024-03-01T08:00:00.000000000Z', '2024-03-01T08:00:00.000000000Z', 12, 'CLOSED',
            'repaired and proved: Chain too slack', 'chain-slack'
          from generate_series(1, %d) n;
        insert into case_event (case_id, seq, at, written_by, type, body)
          select '2024-' || lpad(n::text, 5, '0'), s, '2024-03-01T08:00:00.000000000Z', 'caller',
            'answered', '{"type":"answered","check":"c","answer":{"kind":"cannot-tell"}}'
          from generate_series(1, %d) n, generate_series(1, 12) s;
        analyze case_file; analyze case_event;
        """
            .formatted(schema, CASES_BEFORE, CASES_BEFORE));
  }

  private void run(Duration time, Duration pause) throws Exception {
    Instant end = Instant.now().plus(time);
    var pool = Executors.newFixedThreadPool(DESKS);
    try {
      List<Callable<Void>> desks = new ArrayList<>();
      for (int d = 0; d < DESKS; d++) {
        desks.add(() -> desk(end, pause));
      }
      for (Future<Void> desk : pool.invokeAll(desks)) {
        desk.get();
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private Void desk(Instant end, Duration pause) throws Exception {
    Thread.sleep((long) (ThreadLocalRandom.current().nextDouble() * pause.toMillis()));
    try (Casebook casebook = timed("open the casebook", () -> Casebook.open(url))) {
      while (Instant.now().isBefore(end)) {
        call(casebook, end, pause);
      }
    }
    return null;
  }

  private void call(Casebook casebook, Instant end, Duration pause) throws Exception {
    Instant began = Instant.now();
    CaseId id = timed("begin a case", () -> casebook.newCase("fish-dock", began));
    wait(pause);
    timed(
        "store who calls",
        () -> {
          casebook.savePerson(id, new Person(Person.Part.CALLER, "Ina Teal", "555 0107"));
          return id;
        });
    wait(pause);
    timed("take the call", () -> casebook.append(id, 0, taken()));
    timed("read the queue", () -> queue(casebook));
    for (int n = 1; n <= ANSWERS; n++) {
      if (pause.toMillis() > 0 && Instant.now().isAfter(end)) {
        return;
      }
      answer(casebook, id, n);
      wait(pause);
    }
    timed("find it and read it, to resume", () -> casebook.events(casebook.find(id.toString())));
    synchronized (this) {
      calls++;
    }
  }

  private static NewEvent taken() {
    return new NewEvent(
        Instant.now(),
        "caller",
        "tended",
        "{\"type\":\"tended\",\"what\":\"TAKEN\",\"words\":\"Ina\"}");
  }

  /** Every open call with its events, as {@code calls} reads them. */
  private static int queue(Casebook casebook) {
    List<CaseSummary> open = casebook.cases(CaseStatus.OPEN);
    casebook.forEach(open, (line, events) -> {});
    return open.size();
  }

  private void answer(Casebook casebook, CaseId id, int n) throws Exception {
    var event =
        new NewEvent(
            Instant.now(),
            "caller",
            "answered",
            "{\"type\":\"answered\",\"check\":\"display-lit\",\"answer\":{\"kind\":\"outcome\","
                + "\"outcome\":\"steady\"}}");
    var summary =
        new Summary(
            n == ANSWERS ? CaseStatus.CLOSED : CaseStatus.OPEN,
            "Chain too slack, " + n + " %",
            "chain-slack");
    try {
      timed(
          "store an answer",
          () -> {
            var stored = casebook.append(id, n, event);
            casebook.summarise(id, n + 1, summary);
            return stored;
          });
    } catch (CaseMovedOn e) {
      synchronized (this) {
        movedOn++; // nobody else works on this case: it must not happen
      }
    }
  }

  private static void wait(Duration pause) throws InterruptedException {
    Thread.sleep(pause.toMillis());
  }

  private <T> T timed(String what, Callable<T> work) throws Exception {
    long start = System.nanoTime();
    T result = work.call();
    long took = System.nanoTime() - start;
    synchronized (this) {
      nanos.computeIfAbsent(what, w -> new ArrayList<>()).add(took);
    }
    return result;
  }

  private void tell(String heading) {
    System.out.printf(Locale.ROOT, "%n%s: %d whole calls, %d refused%n", heading, calls, movedOn);
    System.out.println(
        "| what | times | median | 95 % | 99 % | longest |\n|---|---|---|---|---|---|");
    nanos.forEach(
        (what, times) -> {
          Collections.sort(times);
          System.out.printf(
              Locale.ROOT,
              "| %s | %d | %.1f ms | %.1f ms | %.1f ms | %.1f ms |%n",
              what,
              times.size(),
              at(times, 0.5),
              at(times, 0.95),
              at(times, 0.99),
              at(times, 1));
        });
  }

  private static double at(List<Long> sorted, double share) {
    int index = (int) Math.ceil(share * sorted.size()) - 1;
    return sorted.get(Math.max(0, index)) / 1e6;
  }
}
