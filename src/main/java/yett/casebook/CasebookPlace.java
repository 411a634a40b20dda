package yett.casebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Finds the file of a casebook, and refuses what cannot be one. */
final class CasebookPlace {
  private CasebookPlace() {}

  /**
   * The file itself if the path is a link, because the casebook's other files are next to the real
   * one.
   *
   * @throws CasebookException if it cannot be a casebook
   */
  static Path real(Path file) throws IOException {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return file;
    }
    if (!Files.exists(file)) {
      throw new CasebookException(
          file
              + ": this is a link that leads nowhere (to "
              + Files.readSymbolicLink(file)
              + "). Bring back what it led to, or take the link away and a new casebook begins.");
    }
    Path real = file.toRealPath();
    if (!Files.isRegularFile(real)) {
      throw new CasebookException(
          file
              + ": the casebook cannot be opened or made here, because this is a directory, a device"
              + " or a pipe. Move it away, or choose another directory by setting YETT_HOME.");
    }
    if (Files.size(real) == 0 && !Files.exists(SqliteFile.beside(real, "-wal"))) {
      throw new CasebookException(
          file
              + ": this file is empty, so the casebook that was here is lost or was never begun. Put"
              + " the last back-up in its place. If there never was one, take the empty file away"
              + " and a new casebook begins.");
    }
    if (names(real) > 1) {
      throw new CasebookException(
          file
              + ": this file has another name besides (a hard link), and the two would damage each"
              + " other. Take one of them away, or copy the file.");
    }
    return real;
  }

  private static int names(Path file) throws IOException {
    return file.getFileSystem().supportedFileAttributeViews().contains("unix")
        ? (Integer) Files.getAttribute(file, "unix:nlink")
        : 1;
  }
}
