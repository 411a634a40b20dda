package yett.rules;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.Set;

/**
 * Files on which it depends what runs: the user's own, and nobody else's to write. Where a system
 * has no such rights (Windows), the user's own folders are closed to others by themselves.
 */
final class OwnFiles {
  private static final Set<PosixFilePermission> WRITTEN_BY_OTHERS =
      EnumSet.of(PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);
  private static final Set<PosixFilePermission> OPEN_TO_OTHERS =
      EnumSet.complementOf(
          EnumSet.of(
              PosixFilePermission.OWNER_READ,
              PosixFilePermission.OWNER_WRITE,
              PosixFilePermission.OWNER_EXECUTE));

  private OwnFiles() {}

  /** Whether a file is there, is the user's, and cannot be changed by others; so its folder. */
  static boolean isOurs(Path file) {
    return isOurs(file, WRITTEN_BY_OTHERS)
        && isOurs(file.toAbsolutePath().getParent(), WRITTEN_BY_OTHERS);
  }

  /** Whether, besides, others cannot even read it. */
  static boolean isSecret(Path file) {
    return isOurs(file) && isOurs(file, OPEN_TO_OTHERS);
  }

  private static boolean isOurs(Path path, Set<PosixFilePermission> denied) {
    try {
      PosixFileAttributeView view =
          Files.getFileAttributeView(path, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
      if (view == null) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
      }
      PosixFileAttributes attributes = view.readAttributes();
      return !attributes.isSymbolicLink()
          && attributes.owner().equals(user(path))
          && attributes.permissions().stream().noneMatch(denied::contains);
    } catch (IOException e) {
      return false; // not there, or not ours to look at
    }
  }

  private static Object user(Path path) throws IOException {
    return path.getFileSystem()
        .getUserPrincipalLookupService()
        .lookupPrincipalByName(System.getProperty("user.name"));
  }

  /** Makes a folder that only the user can enter; one that is there stays as it is. */
  static void folder(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder, rights(folder, "rwx------"));
    }
  }

  /** Writes a file of the user alone; whoever reads it meanwhile finds the old one whole. */
  static void write(Path file, byte[] bytes) throws IOException {
    folder(file.toAbsolutePath().getParent());
    Path part = Files.createTempFile(file.toAbsolutePath().getParent(), "new", ".part");
    try {
      Files.write(part, bytes);
      Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** Makes an empty file of the user alone, if there is none. */
  static void create(Path file) throws IOException {
    folder(file.toAbsolutePath().getParent());
    try {
      Files.createFile(file, rights(file, "rw-------"));
    } catch (FileAlreadyExistsException e) {
      return;
    }
  }

  /** Puts bytes at the end of a file of the user alone. */
  static void append(Path file, byte[] bytes) throws IOException {
    create(file);
    Files.write(file, bytes, StandardOpenOption.APPEND);
  }

  private static FileAttribute<?>[] rights(Path path, String rights) {
    return path.getFileSystem().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
        }
        : new FileAttribute<?>[0];
  }
}
