package yett.casebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;
import yett.files.OwnFiles;

/**
 * Events of one case that wait on this computer for their server: a file with a line for each, in
 * order. When {@link #add} returns, the events are on disk. A line that was being written during a
 * power failure had not been confirmed yet; it is skipped. Lines that were confirmed and are
 * damaged are never deleted ({@link #setAside}).
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

  /**
   * The waiting events, in the order in which they were added, up to the first line that cannot be
   * read.
   */
  public Content content() {
    List<Line> lines = read().lines();
    return new Content(
        lines.isEmpty() ? 0 : lines.get(0).after(),
        lines.stream().map(l -> new NewEvent(l.at(), l.by(), l.type(), l.body())).toList());
  }

  /**
   * What the file holds.
   *
   * @param rest from the first line on that cannot be read; empty if that is only the line that was
   *     being written during a power failure
   */
  private record Read(List<Line> lines, byte[] rest) {}

  private Read read() {
    byte[] all = bytes();
    List<Line> lines = new ArrayList<>();
    int from = 0;
    for (int end = end(all, from); end >= 0; end = end(all, from)) {
      Optional<Line> line = line(all, from, end);
      if (line.isEmpty()) {
        return new Read(lines, Arrays.copyOfRange(all, from, all.length));
      }
      lines.add(line.get());
      from = end + 1;
    }
    line(all, from, all.length).ifPresent(lines::add);
    return new Read(lines, new byte[0]);
  }

  private static int end(byte[] all, int from) {
    for (int i = from; i < all.length; i++) {
      if (all[i] == '\n') {
        return i;
      }
    }
    return -1;
  }

  private static Optional<Line> line(byte[] all, int from, int end) {
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .decode(ByteBuffer.wrap(all, from, end - from))
              .toString();
      return Optional.ofNullable(JSON.readValue(text, Line.class));
    } catch (JacksonException | CharacterCodingException e) {
      return Optional.empty();
    }
  }

  private byte[] bytes() {
    try {
      return Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
    } catch (NoSuchFileException e) {
      return new byte[0]; // delivered by another program just now
    } catch (IOException e) {
      throw failed(e);
    }
  }

  /** Whether lines that were confirmed cannot be read. */
  boolean isDamaged() {
    return read().rest().length > 0;
  }

  /** The file with what could not be read, if {@link #setAside} kept something. */
  public Optional<Path> aside() {
    return Optional.of(besides(".unreadable")).filter(Files::exists);
  }

  /** Keeps what cannot be read in a file of its own, because the parcel is going to be deleted. */
  public void setAside() {
    byte[] rest = read().rest();
    if (rest.length > 0) {
      write(besides(".unreadable"), ByteBuffer.wrap(rest), StandardOpenOption.TRUNCATE_EXISTING);
    }
  }

  private Path besides(String ending) {
    return file.resolveSibling(
        file.getFileName().toString().replaceFirst("\\.jsonl$", "") + ending);
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
    write(to, ByteBuffer.wrap(text.toString().getBytes(StandardCharsets.UTF_8)), how);
  }

  private void write(Path to, ByteBuffer bytes, StandardOpenOption how) {
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
