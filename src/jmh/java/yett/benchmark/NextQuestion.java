package yett.benchmark;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.moment.Moment;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

/**
 * From an answer to the next question: rules, belief and plan for one more event, without the disk
 * and the screen. The interviews are the cases of the rule base, from the complaint to the end.
 *
 * <pre>{@code
 * mvn -q -Pbenchmark -DskipTests package exec:exec@benchmark
 * }</pre>
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1, time = 20)
@Measurement(iterations = 2, time = 20)
@Fork(1)
public class NextQuestion {
  private Expertise expertise;
  private List<List<Entry>> interviews;
  private Interview interview;
  private int which = -1;
  private int answered;

  @Setup
  public void record() {
    expertise =
        Expertise.of(
            RuleBase.read(KnowledgeSource.folder(Path.of("knowledge"))),
            Path.of("target", "benchmark-rules"));
    interviews = RecordedInterviews.all(expertise);
    begin();
  }

  private void begin() {
    close();
    which = (which + 1) % interviews.size();
    interview = expertise.newInterview();
    answered = 0;
    while (!(interviews.get(which).get(answered).event() instanceof Event.Complained)) {
      answered++;
    }
    interview.at(interviews.get(which).subList(0, answered));
  }

  /** The next answer of the interview, or the complaint of the next one. */
  @Setup(Level.Invocation)
  public void answer() {
    if (answered == interviews.get(which).size()) {
      begin();
    }
    answered++;
  }

  @Benchmark
  public Moment next() {
    return interview.at(interviews.get(which).subList(0, answered));
  }

  @TearDown
  public void close() {
    if (interview != null) {
      interview.close();
    }
  }
}
