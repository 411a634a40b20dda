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
import yett.knowledge.KnowledgeFolder;
import yett.knowledge.KnowledgeFolder.Content;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Problem;

/**
 * Reads the files of a rule base while somebody edits them. In a watched folder only saved files
 * are read again.
 */
public final class WatchedFolder implements AutoCloseable {
  /** Editors save in several steps; this is how long no further step may come, in milliseconds. */
  private static final long SETTLED_MILLIS = 40;

  private final Path folder;
  private final KnowledgeFolder reader;
  private final WatchService service;
  private Content content;

  public WatchedFolder(Path folder) {
    this.folder = folder;
    this.reader = new KnowledgeFolder(folder);
    try {
      service = folder.getFileSystem().newWatchService();
      watchFolders();
      content = reader.content();
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
    return new TreeMap<>(content.texts());
  }

  /**
   * Problems of files that are not read: they lead out of the folder, are too large or are not
   * text.
   */
  public List<Problem> refused() {
    return List.copyOf(content.refused().values());
  }

  /**
   * Waits until a file of the rule base was saved.
   *
   * @return names of the changed files; empty when the watching has ended
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

  /** Reads all files, because folders were added or removed; that is rarer than a save. */
  private List<String> everything() throws IOException {
    watchFolders();
    Content before = content;
    content = reader.content();
    return Stream.of(before, content)
        .flatMap(c -> Stream.concat(c.texts().keySet().stream(), c.refused().keySet().stream()))
        .distinct()
        .filter(name -> !Objects.equals(state(before, name), state(content, name)))
        .sorted()
        .toList();
  }

  private static Object state(Content content, String name) {
    Problem refused = content.refused().get(name);
    return refused == null ? content.texts().get(name) : refused;
  }

  private Stream<String> reread(Path path) {
    String name = reader.name(path);
    if (!KnowledgeSource.wanted(name)) {
      return Stream.empty();
    }
    Object before = state(content, name);
    try {
      reader.read(name, content);
    } catch (IOException e) {
      return Stream.empty(); // in the middle of a save; another event will follow
    }
    return Objects.equals(before, state(content, name)) ? Stream.empty() : Stream.of(name);
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
