package yett.files;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes a file whole or not at all: first next to its place, forced to disk, and then moved into
 * place. If the program is killed on the way, or the disk is full, the old file stays.
 */
public final class WholeFile {
  private static final Pattern PART = Pattern.compile(".*\\.(\\d{1,18})\\.part");

  private WholeFile() {}

  /** Writes the content of a file. */
  public interface Content {
    void write(Writer to) throws IOException;
  }

  private interface Bytes {
    void write(OutputStream to) throws IOException;
  }

  /** Replaces a file and keeps its permissions; a new file gets the usual ones. */
  public static void replace(Path file, String text) throws IOException {
    Path real = Files.exists(file) ? file.toRealPath() : file;
    write(
        real,
        encoded(to -> to.write(text)),
        rightsOf(real),
        StandardCopyOption.REPLACE_EXISTING,
        StandardCopyOption.ATOMIC_MOVE);
  }

  /**
   * Writes a new file.
   *
   * @throws FileAlreadyExistsException if it exists
   */
  public static void create(Path file, String text) throws IOException {
    absent(file);
    write(file, encoded(to -> to.write(text)), new FileAttribute<?>[0]);
  }

  /** The same for content that is not text. */
  public static void create(Path file, byte[] content) throws IOException {
    absent(file);
    write(file, to -> to.write(content), new FileAttribute<?>[0]);
  }

  /** The same for a file that only its owner may read. */
  public static void createOwn(Path file, Content content) throws IOException {
    absent(file);
    write(file, encoded(content), OwnFiles.ownersFile(file));
  }

  /** Replaces a file; only its owner may read it. */
  public static void replaceOwn(Path file, byte[] content) throws IOException {
    write(
        file,
        to -> to.write(content),
        OwnFiles.ownersFile(file),
        StandardCopyOption.REPLACE_EXISTING,
        StandardCopyOption.ATOMIC_MOVE);
  }

  private static void absent(Path file) throws IOException {
    if (Files.exists(file)) {
      throw new FileAlreadyExistsException(file.toString());
    }
  }

  private static Bytes encoded(Content content) {
    return to -> {
      Writer writer =
          new BufferedWriter(new OutputStreamWriter(to, StandardCharsets.UTF_8.newEncoder()));
      content.write(writer);
      writer.flush();
    };
  }

  private static synchronized void write(
      Path file, Bytes content, FileAttribute<?>[] rights, CopyOption... move) throws IOException {
    sweep(file);
    Path part =
        file.resolveSibling(file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
    part.toFile().deleteOnExit(); // in case of Ctrl-C
    try {
      try (FileChannel channel =
              FileChannel.open(
                  part, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), rights);
          OutputStream to = Channels.newOutputStream(channel)) {
        content.write(to);
        channel.force(true);
      }
      Files.move(part, file, move);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** Deletes unfinished copies of this file that were left by killed programs. */
  private static void sweep(Path file) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    try (DirectoryStream<Path> beside = Files.newDirectoryStream(folder, WholeFile::isPart)) {
      for (Path part : beside) {
        if (part.getFileName().toString().startsWith(file.getFileName() + ".")
            && !isWritten(part)) {
          Files.deleteIfExists(part);
        }
      }
    }
  }

  private static boolean isPart(Path path) {
    return PART.matcher(path.getFileName().toString()).matches();
  }

  private static boolean isWritten(Path part) {
    Matcher name = PART.matcher(part.getFileName().toString());
    return name.matches()
        && Long.parseLong(name.group(1)) != ProcessHandle.current().pid()
        && ProcessHandle.of(Long.parseLong(name.group(1))).isPresent();
  }

  private static FileAttribute<?>[] rightsOf(Path file) throws IOException {
    var view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    return view == null || !Files.exists(file)
        ? new FileAttribute<?>[0]
        : OwnFiles.rights(file, view.readAttributes().permissions());
  }
}
