package yett.benchmark;

import java.nio.file.Path;
import java.util.List;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.course.Expertise;
import yett.knowledge.Role;
import yett.replay.CaseFile;
import yett.replay.Replayer;

/** The test cases beside the cards, as they are played to the end. */
final class RecordedInterviews {
  private RecordedInterviews() {}

  /** The first case of each file for a technician that gets as far as the complaint, as events. */
  static List<List<Entry>> all(Expertise expertise) {
    Replayer replayer = new Replayer(expertise);
    return CaseFile.among(List.of(Path.of("knowledge"))).stream()
        .flatMap(
            file ->
                CaseFile.read(file, expertise.base()).cases().stream()
                    .filter(c -> c.person() == Role.TECHNICIAN && !c.blind())
                    .limit(1))
        .map(recorded -> replayer.run(recorded).moment().entries())
        .filter(entries -> entries.stream().anyMatch(e -> e.event() instanceof Event.Complained))
        .toList();
  }
}
