package yett.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Checks the free room on a disk. If it is nearly full, the rest is reserved for answers. */
public final class DiskRoom {
  /**
   * Reserved for answers, in bytes. The casebook's journal grows to about 4 MB before it is merged;
   * this is four times that (a settled choice).
   */
  static final long FOR_ANSWERS = 16L << 20;

  private DiskRoom() {}

  /**
   * Whether there is room for something that is not essential.
   *
   * @param place a file to be made, or a folder
   * @param bytes its size
   */
  public static boolean besidesAnswers(Path place, long bytes) {
    Path there = place.toAbsolutePath();
    while (there != null && !Files.exists(there)) {
      there = there.getParent();
    }
    try {
      return there == null || Files.getFileStore(there).getUsableSpace() - bytes >= FOR_ANSWERS;
    } catch (IOException e) {
      return true; // unknown; writing will show
    }
  }
}
