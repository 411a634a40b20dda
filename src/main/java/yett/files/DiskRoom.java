package yett.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Room on a disk. On one that is nearly full, what is left is for answers. */
public final class DiskRoom {
  /**
   * Kept for answers, in bytes: the casebook's journal grows to some 4 MB before it is taken over
   * (a settled choice: four times that).
   */
  static final long FOR_ANSWERS = 16L << 20;

  private DiskRoom() {}

  /**
   * Whether there is room for something that can be done without.
   *
   * @param place a file to be made, or a folder
   * @param bytes how large it will be
   */
  public static boolean besidesAnswers(Path place, long bytes) {
    Path there = place.toAbsolutePath();
    while (there != null && !Files.exists(there)) {
      there = there.getParent();
    }
    try {
      return there == null || Files.getFileStore(there).getUsableSpace() - bytes >= FOR_ANSWERS;
    } catch (IOException e) {
      return true; // the file system does not tell; writing will
    }
  }
}
