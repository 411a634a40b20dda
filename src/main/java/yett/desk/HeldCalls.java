package yett.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import yett.casebook.Casebook;
import yett.files.OwnFiles;

/** The calls kept on this computer, locked for this program. */
final class HeldCalls implements AutoCloseable {
  /** Name of the casebook file with the waiting calls. */
  static final String FILE = "calls.db";

  private final Path folder;
  private final FileChannel lock;
  private Casebook casebook;

  private HeldCalls(Path folder, FileChannel lock) {
    this.folder = folder;
    this.lock = lock;
  }

  /** Locks and opens the calls kept in a folder; empty if another program works with them. */
  static Optional<HeldCalls> in(Path folder) {
    try {
      OwnFiles.folder(folder);
      FileChannel channel = OwnFiles.open(folder.resolve("lock"));
      try {
        FileLock lock = channel.tryLock();
        if (lock != null) {
          return Optional.of(new HeldCalls(folder, channel));
        }
      } catch (OverlappingFileLockException e) {
        // Another desk of this program holds the lock.
      }
      channel.close();
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot keep calls on this computer in " + folder, e);
    }
  }

  HeldCalls opened() {
    casebook = Casebook.open(folder.resolve(FILE));
    return this;
  }

  Casebook casebook() {
    return casebook;
  }

  /** Deletes the casebook with all files that belong to it. */
  void delete() {
    casebook.close();
    try (var files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.getFileName().toString().startsWith(FILE)).toList()) {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot delete what was delivered from " + folder, e);
    }
  }

  @Override
  public void close() {
    if (casebook != null) {
      casebook.close();
    }
    try {
      lock.close();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot let go of " + folder, e);
    }
  }
}
