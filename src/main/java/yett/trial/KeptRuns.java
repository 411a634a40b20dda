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
 * How cases came out under a rule base, kept between comparisons: the side that stays as it is need
 * not be run again and again. A run is that of the same case, to the letter, under the same content
 * by the same program; anything else is as if it were not there. What is kept only saves time: it
 * bears its user's seal, nobody is led by it at a gate, and a comparison that replays every case
 * takes nothing from here.
 */
public final class KeptRuns {
  /** Nothing is kept. */
  public static final KeptRuns NONE = new KeptRuns(Optional.empty(), "");

  /** So many rule bases' runs are kept, some hundred kilobytes each. */
  private static final int MOST = 16;

  private final Optional<SealedFiles> files;
  private final String program;

  private KeptRuns(Optional<SealedFiles> files, String program) {
    this.files = files;
    this.program = program;
  }

  /** In these files; nowhere if the program cannot tell which one it is. */
  public static KeptRuns in(SealedFiles files) {
    return OwnProgram.fingerprint().map(p -> new KeptRuns(Optional.of(files), p)).orElse(NONE);
  }

  static KeptRuns of(SealedFiles files, String program) {
    return new KeptRuns(Optional.of(files), program);
  }

  /** Those of a rule base. */
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
        before.clear(); // written by another version of what writes it
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

    /** Keeps what was run since, if that is possible. */
    void keep() {
      if (now.isEmpty()) {
        return;
      }
      Map<String, Tried> all = new TreeMap<>(before);
      all.putAll(now);
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

  /** What the file says of a case, whatever order its answers stand in. */
  private static String key(RecordedCase recorded) {
    return shortName(recorded.content());
  }

  private static String shortName(String text) {
    return Sha256.hex(text.getBytes(StandardCharsets.UTF_8), 16);
  }
}
