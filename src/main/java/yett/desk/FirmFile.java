package yett.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import yett.files.BoundedFile;
import yett.files.OwnFiles;
import yett.knowledge.FirmSettings;

/** The file in which a firm says what its own people may do. */
final class FirmFile {
  static final String NAME = "firm.yaml";

  /** Bytes; a page of text. */
  private static final int LARGEST = 1 << 14;

  private final Path file;

  /**
   * @param settings folder of what was decided on this computer
   */
  FirmFile(Path settings) {
    this.file = settings.resolve(NAME);
  }

  /**
   * What it says; nothing if there is none.
   *
   * @throws yett.knowledge.KnowledgeException if something in it is wrong
   * @throws UncheckedIOException if it cannot be read, or others could have written it
   */
  FirmSettings read() {
    if (!Files.exists(file)) {
      return FirmSettings.NONE;
    }
    if (!OwnFiles.isOurs(file)) {
      throw new UncheckedIOException(
          "The settings of the firm "
              + file
              + " are not used: the file, or its folder, belongs to somebody else or can be written"
              + " by others. Make both yours alone (chmod go-w), or delete the file.",
          new IOException("not ours alone"));
    }
    try {
      return FirmSettings.read(file.toString(), BoundedFile.text(file, LARGEST));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the settings of the firm in " + file, e);
    }
  }
}
