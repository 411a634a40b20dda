package yett.casebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;
import yett.files.OwnFiles;

/**
 * Events of one case that wait on this computer for their server: a file with a line for each, in
 * order. When {@link #add} returns, the events are on disk. A line that was being written during a
 * power failure had not been confirmed yet; it is skipped.
 */
public final class Parcel {
  private static final JsonMapper JSON = JsonMapper.shared();

  private final Path file;
  private final CaseId caseId;

  Parcel(Path file, CaseId caseId) {
    this.file = file;
    this.caseId = caseId;
  }

  /**
   * @param after number of the last event that its writer knew
   */
  private record Line(long after, Instant at, String by, String type, String body) {}

  /**
   * The waiting events.
   *
   * @param after number of the stored event after which the first of these was written
   */
  public record Content(long after, List<NewEvent> events) {}

  public CaseId caseId() {
    return caseId;
  }

  /** All waiting events, in the order in which they were added. */
  public Content content() {
    List<Line> lines = new ArrayList<>();
    for (String text : texts()) {
      try {
        lines.add(JSON.readValue(text, Line.class));
      } catch (JacksonException e) {
        break; // cut off by a power failure
      }
    }
    return new Content(
        lines.isEmpty() ? 0 : lines.get(0).after(),
        lines.stream().map(l -> new NewEvent(l.at(), l.by(), l.type(), l.body())).toList());
  }

  private List<String> texts() {
    try {
      return Files.exists(file) ? Files.readAllLines(file) : List.of();
    } catch (NoSuchFileException e) {
      return List.of(); // delivered by another program just now
    } catch (IOException e) {
      throw failed(e);
    }
  }

  /** Adds events after those that wait already. */
  public void add(long after, List<NewEvent> events) {
    write(file, after, events, StandardOpenOption.APPEND);
  }

  /** Replaces all waiting events in one step. */
  public void replace(long after, List<NewEvent> events) {
    Path next = file.resolveSibling(file.getFileName() + ".next");
    write(next, after, events, StandardOpenOption.TRUNCATE_EXISTING);
    try {
      Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw failed(e);
    }
  }

  /** Deletes the parcel, because the server has it. */
  public void delivered() {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw failed(e);
    }
  }

  private void write(Path to, long after, List<NewEvent> events, StandardOpenOption how) {
    var text = new StringBuilder();
    for (NewEvent e : events) {
      text.append(JSON.writeValueAsString(new Line(after, e.at(), e.by(), e.type(), e.body())))
          .append('\n');
    }
    var bytes = ByteBuffer.wrap(text.toString().getBytes(StandardCharsets.UTF_8));
    try {
      OwnFiles.folder(to.toAbsolutePath().getParent());
      try (var channel = OwnFiles.open(to, how)) {
        long before = channel.size();
        try {
          while (bytes.hasRemaining()) {
            channel.write(bytes);
          }
          channel.force(true);
        } catch (IOException e) {
          channel.truncate(before); // half a line would spoil the next one
          throw e;
        }
      }
    } catch (IOException e) {
      throw failed(e);
    }
  }

  private CasebookException failed(IOException e) {
    return new CasebookException(
        file
            + ": what waits for the server cannot be kept here ("
            + Troubles.told(e)
            + "). The last entry was not kept. Free some space, or write it down on paper.",
        new UncheckedIOException(e));
  }
}
