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
 * Files and folders that nobody but their owner may read: they tell of people and of weak gates.
 * Where the file system knows no such rights (Windows, many USB sticks), the folder's own
 * protection is all there is.
 */
public final class OwnFiles {
  private static final Set<PosixFilePermission> OWNER =
      EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);
  private static final Set<PosixFilePermission> WRITTEN_BY_OTHERS =
      EnumSet.of(PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);
  private static final Set<PosixFilePermission> OWNER_FOLDER =
      PosixFilePermissions.fromString("rwx------");

  private OwnFiles() {}

  /** Makes a folder with all that it lies in. One that is there keeps its rights. */
  public static void folder(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder, rights(folder, OWNER_FOLDER));
    }
  }

  /**
   * Opens a file to write to it. It is made if need be; others lose the right to one that is there.
   */
  public static FileChannel open(Path file, OpenOption... how) throws IOException {
    Set<OpenOption> options = new HashSet<>(Set.of(how));
    options.add(StandardOpenOption.WRITE);
    options.add(StandardOpenOption.CREATE);
    shut(file);
    return FileChannel.open(file, options, rights(file, OWNER));
  }

  /** Takes from others every right to a file, if it is there and that can be done. */
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
      // Somebody else's file, or a file system without rights: it is used as it is.
    }
  }

  /** Whether others than its owner can read a folder or change what is in it. */
  public static boolean isOpen(Path folder) {
    try {
      var view = Files.getFileAttributeView(folder, PosixFileAttributeView.class);
      return view != null && !OWNER_FOLDER.containsAll(view.readAttributes().permissions());
    } catch (IOException e) {
      return false; // not there, or not to be seen: whoever opens it tells that
    }
  }

  /**
   * Whether a file is there, is this user's, and cannot be changed by others, nor its folder. Where
   * a system has no such rights (Windows), the user's own folders are closed to others by
   * themselves.
   */
  public static boolean isOurs(Path file) {
    return isOurs(file, WRITTEN_BY_OTHERS)
        && isOurs(file.toAbsolutePath().getParent(), WRITTEN_BY_OTHERS);
  }

  /** Whether, besides, others cannot even read it. */
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
      return false; // not there, or not ours to look at
    }
  }

  private static UserPrincipal user(Path path) throws IOException {
    return path.getFileSystem()
        .getUserPrincipalLookupService()
        .lookupPrincipalByName(System.getProperty("user.name"));
  }

  /** Whether others than its owner can change what is in a folder. */
  static boolean othersWrite(Path folder) throws IOException {
    var view = Files.getFileAttributeView(folder, PosixFileAttributeView.class);
    Set<PosixFilePermission> rights = view == null ? Set.of() : view.readAttributes().permissions();
    return rights.contains(PosixFilePermission.GROUP_WRITE)
        || rights.contains(PosixFilePermission.OTHERS_WRITE);
  }

  /** Rights to make a file with, none where the file system knows none. */
  static FileAttribute<?>[] rights(Path file, Set<PosixFilePermission> rights) {
    return file.getFileSystem().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(rights)}
        : new FileAttribute<?>[0];
  }

  static FileAttribute<?>[] ownersFile(Path file) {
    return rights(file, OWNER);
  }
}
