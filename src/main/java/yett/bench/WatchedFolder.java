package yett.bench;

import static java.nio.file.StandardWatchEventKinds.ENTRY_CREATE;
import static java.nio.file.StandardWatchEventKinds.ENTRY_DELETE;
import static java.nio.file.StandardWatchEventKinds.ENTRY_MODIFY;
import static java.nio.file.StandardWatchEventKinds.OVERFLOW;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import yett.knowledge.KnowledgeSource;

/**
 * The files of a rule base while somebody edits them. Of a folder that is watched, only files that
 * were saved are read again.
 */
public final class WatchedFolder implements AutoCloseable {
  /** Editors save in several steps; their end is awaited. */
  private static final long SETTLED_MILLIS = 40;

  private final Path folder;
  private final WatchService service;
  private SortedMap<String, String> files;

  public WatchedFolder(Path folder) {
    this.folder = folder;
    try {
      service = folder.getFileSystem().newWatchService();
      watchFolders();
      files = new TreeMap<>(KnowledgeSource.folder(folder).files());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot watch " + folder, e);
    }
  }

  private void watchFolders() throws IOException {
    try (Stream<Path> inside = Files.walk(folder)) {
      for (Path path : inside.filter(Files::isDirectory).toList()) {
        path.register(service, ENTRY_CREATE, ENTRY_MODIFY, ENTRY_DELETE);
      }
    }
  }

  public SortedMap<String, String> files() {
    return new TreeMap<>(files);
  }

  /**
   * Waits until something was saved that belongs to the rule base.
   *
   * @return names of what changed; empty when the watching has ended
   */
  public List<String> await() {
    try {
      while (true) {
        List<String> changed = changed();
        if (!changed.isEmpty()) {
          return changed;
        }
      }
    } catch (ClosedWatchServiceException e) {
      return List.of();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return List.of();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + folder, e);
    }
  }

  private List<String> changed() throws IOException, InterruptedException {
    List<Path> touched = new ArrayList<>();
    boolean all = false;
    for (WatchKey key = service.take();
        key != null;
        key = service.poll(SETTLED_MILLIS, TimeUnit.MILLISECONDS)) {
      for (WatchEvent<?> event : key.pollEvents()) {
        Path path =
            event.context() instanceof Path name ? ((Path) key.watchable()).resolve(name) : folder;
        all |= event.kind() == OVERFLOW || Files.isDirectory(path);
        touched.add(path);
      }
      all |= !key.reset();
    }
    return all ? everything() : touched.stream().distinct().flatMap(this::reread).toList();
  }

  /** Folders came or went: rarer than a save, so all is read. */
  private List<String> everything() throws IOException {
    watchFolders();
    SortedMap<String, String> before = files;
    files = new TreeMap<>(KnowledgeSource.folder(folder).files());
    return Stream.concat(before.keySet().stream(), files.keySet().stream())
        .distinct()
        .filter(name -> !Objects.equals(before.get(name), files.get(name)))
        .sorted()
        .toList();
  }

  private Stream<String> reread(Path path) {
    String name = folder.relativize(path).toString().replace('\\', '/');
    if (!KnowledgeSource.wanted(name)) {
      return Stream.empty();
    }
    String before = files.get(name);
    try {
      if (Files.isRegularFile(path)) {
        files.put(name, Files.readString(path));
      } else {
        files.remove(name);
      }
    } catch (IOException e) {
      return Stream.empty(); // between two steps of a save; the next event tells
    }
    return Objects.equals(before, files.get(name)) ? Stream.empty() : Stream.of(name);
  }

  @Override
  public void close() {
    try {
      service.close();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot stop watching " + folder, e);
    }
  }
}
