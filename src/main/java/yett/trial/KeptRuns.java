package yett.trial;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import tools.jackson.core.JacksonException;
import yett.files.OwnProgram;
import yett.files.SealedFiles;
import yett.files.Sha256;
import yett.knowledge.RuleBase;
import yett.replay.RecordedCase;
import yett.replay.Score;
import yett.trial.Trial.Tried;

/**
 * The results of cases under a rule base, kept between comparisons, so that the unchanged side does
 * not have to be run again. A result is used only for exactly the same case under the same content
 * by the same program. It only saves time: the file has its user's seal, nobody at a gate depends
 * on it, and a comparison that replays every case does not use it.
 */
public final class KeptRuns {
  /** Keeps nothing. */
  public static final KeptRuns NONE = new KeptRuns(Optional.empty(), "");

  /** For how many rule bases runs are kept, some hundred kilobytes each. */
  private static final int MOST = 16;

  private final Optional<SealedFiles> files;
  private final String program;

  private KeptRuns(Optional<SealedFiles> files, String program) {
    this.files = files;
    this.program = program;
  }

  /** Keeps runs in these files; keeps nothing if the program cannot identify itself. */
  public static KeptRuns in(SealedFiles files) {
    return OwnProgram.fingerprint().map(p -> new KeptRuns(Optional.of(files), p)).orElse(NONE);
  }

  static KeptRuns of(SealedFiles files, String program) {
    return new KeptRuns(Optional.of(files), program);
  }

  /** The runs under a rule base. */
  Of of(RuleBase base) {
    return new Of(base);
  }

  /** One line of the file. */
  private record Line(@JsonProperty("run") String run, Account account, Score.One score) {}

  /** Runs under one rule base. Safe for several threads. */
  final class Of {
    private final String name;
    private final Set<String> causes;
    private final Map<String, Tried> before = new LinkedHashMap<>();
    private final Map<String, Tried> now = new ConcurrentHashMap<>();
    private int stored;

    private Of(RuleBase base) {
      this.name = shortName(program + "\0" + base.fingerprint()) + ".runs";
      this.causes = base.causes().keySet();
      files.flatMap(f -> f.get(name)).ifPresent(this::read);
    }

    private void read(byte[] content) {
      try {
        for (String line : new String(content, StandardCharsets.UTF_8).lines().toList()) {
          Line kept = AcceptedRun.MAPPER.readValue(line, Line.class);
          before.put(kept.run(), new Tried(kept.account(), kept.score()));
        }
      } catch (JacksonException e) {
        before.clear(); // written by another version
      }
    }

    /**
     * @param also causes to have in view besides the case's own
     */
    Optional<Tried> get(RecordedCase recorded, Set<String> also) {
      return Optional.ofNullable(before.get(key(recorded)))
          .filter(
              kept ->
                  also.stream()
                      .filter(causes::contains)
                      .allMatch(kept.account().inView()::contains))
          .map(kept -> new Tried(kept.account().seenWith(recorded, also), kept.score()));
    }

    void put(RecordedCase recorded, Tried tried) {
      if (files.isPresent()) {
        now.put(key(recorded), tried);
      }
    }

    /** Stores the new runs, if that is possible. */
    void keep() {
      Map<String, Tried> since = Map.copyOf(now);
      if (since.size() == stored) {
        return;
      }
      stored = since.size();
      Map<String, Tried> all = new TreeMap<>(before);
      all.putAll(since);
      StringBuilder lines = new StringBuilder();
      all.forEach(
          (run, tried) ->
              lines
                  .append(
                      AcceptedRun.MAPPER.writeValueAsString(
                          new Line(run, tried.account(), tried.score())))
                  .append('\n'));
      files.ifPresent(
          f -> {
            f.put(name, lines.toString().getBytes(StandardCharsets.UTF_8));
            f.tidy(MOST);
          });
    }
  }

  /** The content of a case file for one case, independent of the order of its answers. */
  private static String key(RecordedCase recorded) {
    return shortName(recorded.content());
  }

  private static String shortName(String text) {
    return Sha256.hex(text.getBytes(StandardCharsets.UTF_8), 16);
  }
}
