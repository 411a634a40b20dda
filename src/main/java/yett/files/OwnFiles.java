package yett.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;

/**
 * Files and folders that only their owner may read, because they contain data about people and
 * about weak gates. On file systems without such permissions (Windows, many USB sticks), only the
 * folder's own protection applies.
 */
public final class OwnFiles {
  private static final Set<PosixFilePermission> OWNER =
      EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);
  private static final Set<PosixFilePermission> WRITTEN_BY_OTHERS =
      EnumSet.of(PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);
  private static final Set<PosixFilePermission> OWNER_FOLDER =
      PosixFilePermissions.fromString("rwx------");

  private OwnFiles() {}

  /** Makes a folder and its parents. An existing folder keeps its permissions. */
  public static void folder(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder, rights(folder, OWNER_FOLDER));
    }
  }

  /**
   * Opens a file for writing and makes it if necessary. From an existing file, the permissions of
   * others are removed.
   */
  public static FileChannel open(Path file, OpenOption... how) throws IOException {
    Set<OpenOption> options = new HashSet<>(Set.of(how));
    options.add(StandardOpenOption.WRITE);
    options.add(StandardOpenOption.CREATE);
    shut(file);
    return FileChannel.open(file, options, rights(file, OWNER));
  }

  /** Removes all permissions of others from a file, if it exists and that is possible. */
  public static void shut(Path file) {
    try {
      var view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
      if (view != null && Files.exists(file)) {
        Set<PosixFilePermission> now = EnumSet.copyOf(view.readAttributes().permissions());
        if (now.retainAll(OWNER)) {
          view.setPermissions(now);
        }
      }
    } catch (IOException | IllegalArgumentException e) {
      // Somebody else's file, or a file system without permissions: it is used as it is.
    }
  }

  /** Whether others can read a folder or change what is in it. */
  public static boolean isOpen(Path folder) {
    try {
      var view = Files.getFileAttributeView(folder, PosixFileAttributeView.class);
      return view != null && !OWNER_FOLDER.containsAll(view.readAttributes().permissions());
    } catch (IOException e) {
      return false; // missing or unreadable; opening it will report that
    }
  }

  /**
   * Whether a file exists, belongs to this user, and neither it nor its folder can be changed by
   * others. On systems without such permissions (Windows), the user's own folders are closed to
   * others anyway.
   */
  public static boolean isOurs(Path file) {
    return isOurs(file, WRITTEN_BY_OTHERS)
        && isOurs(file.toAbsolutePath().getParent(), WRITTEN_BY_OTHERS);
  }

  /** Whether, in addition, others cannot read it. */
  public static boolean isSecret(Path file) {
    return isOurs(file) && isOurs(file, EnumSet.complementOf(EnumSet.copyOf(OWNER_FOLDER)));
  }

  private static boolean isOurs(Path path, Set<PosixFilePermission> denied) {
    try {
      var view =
          Files.getFileAttributeView(path, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
      if (view == null) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
      }
      PosixFileAttributes attributes = view.readAttributes();
      return !attributes.isSymbolicLink()
          && attributes.owner().equals(user(path))
          && attributes.permissions().stream().noneMatch(denied::contains);
    } catch (IOException e) {
      return false; // missing, or not readable by us
    }
  }

  private static UserPrincipal user(Path path) throws IOException {
    return path.getFileSystem()
        .getUserPrincipalLookupService()
        .lookupPrincipalByName(System.getProperty("user.name"));
  }

  /** Whether others can change what is in a folder. */
  static boolean othersWrite(Path folder) throws IOException {
    var view = Files.getFileAttributeView(folder, PosixFileAttributeView.class);
    Set<PosixFilePermission> rights = view == null ? Set.of() : view.readAttributes().permissions();
    return rights.contains(PosixFilePermission.GROUP_WRITE)
        || rights.contains(PosixFilePermission.OTHERS_WRITE);
  }

  /** Permissions for making a file; empty if the file system has none. */
  static FileAttribute<?>[] rights(Path file, Set<PosixFilePermission> rights) {
    return file.getFileSystem().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(rights)}
        : new FileAttribute<?>[0];
  }

  static FileAttribute<?>[] ownersFile(Path file) {
    return rights(file, OWNER);
  }
}
