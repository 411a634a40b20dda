package yett.casebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The folder on this computer where answers wait while the server with their casebook is away. Each
 * casebook has its own outbox. Each program that works on a case has its own {@link Parcel}.
 */
public final class Outbox {
  private static final Pattern NAME = Pattern.compile("(\\d{4}-\\d{4,9})\\..+\\.jsonl");

  private final Path directory;

  /**
   * @param data the directory for data that must not be lost
   * @param casebook its {@link Casebook#name()}
   */
  public Outbox(Path data, String casebook) {
    String name = UUID.nameUUIDFromBytes(casebook.getBytes(StandardCharsets.UTF_8)).toString();
    this.directory = data.resolve("waiting").resolve(name);
  }

  /** A new parcel for a case; no file is made until something is added. */
  public Parcel newParcel(CaseId id) {
    return new Parcel(directory.resolve(id + "." + UUID.randomUUID() + ".jsonl"), id);
  }

  /**
   * All waiting parcels, ordered by the number of the case, then by the number of the event after
   * which they were written. Clocks decide only if two programs wrote after the same event.
   */
  public List<Parcel> parcels() {
    if (!Files.isDirectory(directory)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(directory)) {
      return files
          .map(Outbox::parcel)
          .flatMap(Optional::stream)
          .filter(p -> !p.content().events().isEmpty() || p.isDamaged())
          .sorted(
              java.util.Comparator.comparing(Parcel::caseId)
                  .thenComparing(p -> p.content().after())
                  .thenComparing(
                      p ->
                          p.content().events().stream()
                              .findFirst()
                              .map(NewEvent::at)
                              .orElse(Instant.EPOCH)))
          .toList();
    } catch (IOException e) {
      throw Troubles.explained(directory.toString(), e);
    } catch (UncheckedIOException e) {
      throw Troubles.explained(directory.toString(), e.getCause());
    }
  }

  private static Optional<Parcel> parcel(Path file) {
    var parts = NAME.matcher(file.getFileName().toString());
    return parts.matches()
        ? CaseId.parse(parts.group(1)).map(id -> new Parcel(file, id))
        : Optional.empty();
  }
}
